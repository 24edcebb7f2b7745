//! The drying stage of a batch, in a cabinet or in the open air.

use super::air::cabinet_humidity_percent;
use super::cheese::Cheese;
use super::curve::{DryingPoint, TrayRun};
use super::error::DryingError;
use super::middle::middle_tray;
use super::salt;
use super::souring;
use super::spread::{spread, with_diffusivity};
use super::trays;
use crate::design::{DryingDesign, DryingPlace, PhFrom};
use crate::law::moisture_diffusion::MOISTURE_DIFFUSIVITY;
use crate::law::{Matter, firmness};
use crate::numeric::Fineness;
use crate::process::draining::made;
use crate::process::{
    DiscField, Factors, Given, Runs, SaltProfile, SaltingOutcome, SourPoint, Sourness, StageBalance, Stream, turned,
};

/// What the drying stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DryingOutcome {
    /// The cheese of the middle tray, in full: the curve that is shown.
    pub middle: TrayRun,
    /// Moisture over the section of that cheese, per cent by mass.
    pub moisture: DiscField,
    /// Its salt through the thickness while it dries.
    pub salt: SaltProfile,
    /// The cheese that dries fastest as the trays are chosen to be (swapped or not).
    pub fastest: TrayRun,
    /// The cheese that dries slowest as the trays are chosen to be.
    pub slowest: TrayRun,
    /// The middle tray if water moved in the cheese as slowly as the diffusivity's range allows.
    pub if_slow: TrayRun,
    /// The middle tray if it moved as fast as that.
    pub if_fast: TrayRun,
    /// TraySpread of the final moisture between fastest and slowest if the trays are not swapped.
    pub spread_unswapped_percent: f64,
    /// The same if they are swapped half way.
    pub spread_swapped_percent: f64,
    /// Hours at which the trays are swapped; none if they are not.
    pub swap_h: Option<f64>,
    /// The last point of the middle tray.
    pub end: DryingPoint,
    /// Codex firmness classes of that moisture on a fat-free basis (they overlap).
    pub firmness: Vec<&'static str>,
    /// How the cheese of the middle tray sours while it dries, hours from the start of drying.
    pub souring: Vec<SourPoint>,
    /// How sour the cheeses are at the end.
    pub sourness: Sourness,
    /// All cheeses after drying.
    pub cheese: Matter,
    /// Cheeses.
    pub cheese_count: u32,
    /// Relative humidity of the warmed air (by day, in the open).
    pub air_humidity_percent: f64,
    /// Cheeses that a tray holds.
    pub tray_holds: u32,
    /// Trays that these cheeses need.
    pub trays_wanted: u32,
    /// Whether the chosen trays hold them, in width and in height.
    pub trays_fit: bool,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Returns how the cheeses dry: the middle tray in full, and the fastest and the slowest as the trays stand and are swapped.
///
/// # Arguments
/// * `draining_temperature_c`: temperature of the cheeses when they come to the air
///
/// # Errors
/// [`DryingError`].
pub fn drying(design: &DryingDesign, salted: &SaltingOutcome, draining_temperature_c: f64) -> Result<DryingOutcome, DryingError> {
    drying_given(design, salted, draining_temperature_c, &Given::default())
}

/// Returns the same as [`drying()`] under other parameters.
///
/// # Errors
/// As for [`drying()`].
pub fn drying_given(
    design: &DryingDesign,
    salted: &SaltingOutcome,
    draining_temperature_c: f64,
    given: &Given,
) -> Result<DryingOutcome, DryingError> {
    let parameters = &given.parameters;
    let count = f64::from(salted.cheese_count.max(1));
    let (sourness, coming) = match design.unmoulded_ph_from {
        PhFrom::Calculated => (salted.sourness, salted.cheese),
        PhFrom::Measured => salted.sourness.measured(&salted.cheese, design.unmoulded_ph),
    };
    let cheese = Cheese {
        matter: coming * (1.0 / count),
        diameter_mm: salted.diameter_mm,
        thickness_mm: salted.thickness_mm,
        temperature_c: draining_temperature_c,
        coat_s_m: salted.coat_s_m,
        ..Cheese::default()
    };
    let (middle, section) = middle_tray(&cheese, design, parameters, Fineness::SHOWN)?;
    let end = middle.points.last().copied().unwrap_or_default();
    let spread = spread(&cheese, design, &middle, parameters)?;
    let dry_kg = 0.01 * end.moisture_percent / (1.0 - 0.01 * end.moisture_percent) * coming.solids_kg();
    let soured = souring::follow(&coming, &sourness, &middle.points);
    let turned_here = turned(soured.turned_kg);
    let dried = Matter { water_kg: dry_kg, ..coming } + turned_here;
    // Damp air may give water instead of taking it.
    let lost_kg = coming.water_kg - dry_kg;
    let trays = trays::fit(design, salted.cheese_count, salted.diameter_mm, salted.thickness_mm);
    let (fastest, slowest) = if design.tray_swap { spread.swapped } else { spread.unswapped };
    let likely = |name: &'static str, diffusivity_m2_s: f64| match given.runs {
        Runs::WithLikely => with_diffusivity(&cheese, design, name, diffusivity_m2_s, parameters),
        Runs::MiddleOnly => Ok(TrayRun { name, ..middle.clone() }),
    };
    let Factors { least, most, .. } = Factors::known_or(given.known.moisture_diffusivity, &MOISTURE_DIFFUSIVITY);
    let diffusivity = |factor: f64| factor * MOISTURE_DIFFUSIVITY.value;
    let (if_slow, if_fast) = (likely("slow cheese", diffusivity(least))?, likely("fast cheese", diffusivity(most))?);
    // One tray has nothing to be swapped with.
    let swap_h = (design.tray_swap && trays.wanted.min(design.tray_count) > 1).then_some(0.5 * design.drying_h);
    Ok(DryingOutcome {
        salt: salt::profile(salted, &section.axis, section.moisture.half, parameters)?,
        moisture: section.moisture,
        middle,
        fastest,
        slowest,
        if_slow,
        if_fast,
        spread_unswapped_percent: spread.unswapped_percent,
        spread_swapped_percent: spread.swapped_percent,
        swap_h,
        end,
        firmness: firmness::classes(end.fat_free_moisture_percent),
        souring: soured.points,
        sourness: soured.sourness,
        cheese: dried,
        cheese_count: salted.cheese_count,
        air_humidity_percent: match design.drying_place {
            DryingPlace::Cabinet => cabinet_humidity_percent(design),
            DryingPlace::OpenAir => design.day_humidity_percent,
        },
        tray_holds: trays.holds,
        trays_wanted: trays.wanted,
        trays_fit: trays.fits,
        balance: StageBalance {
            came: salted.cheese,
            added: [Stream { name: "water from the air", matter: Matter::water((-lost_kg).max(0.0)) }]
                .into_iter()
                .chain(made(&(coming - salted.cheese + turned_here)))
                .collect(),
            left: vec![Stream { name: "vapour", matter: Matter::water(lost_kg.max(0.0)) }],
            goes_on: dried,
        },
    })
}
