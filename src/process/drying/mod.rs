//! Drying in a cabinet or in the open air.

mod air;
mod implicit;
mod problem;
mod rates;
mod refine;
mod run;
mod salt;
mod section;
mod solver;
mod spread;
mod trays;

pub use air::{AirNow, AirPlan, Place, cabinet_humidity_percent};
pub use problem::{OpenFaces, Problem, Surface};
pub use run::problem;
pub use solver::DiscRun;
pub use trays::{CONSTANTS as TRAY_CONSTANTS, TRAY_COOLING, TrayFit, fit as tray_fit, tray_holds};

use super::{DiscField, Given, Runs, SaltProfile, SaltStuck, SaltingOutcome, StageBalance, Stream, UncertainParameters};
use crate::design::{DryingDesign, DryingPlace};
use crate::law::air_transfer::COAT_RESISTANCE;
use crate::law::moisture_diffusion::MOISTURE_DIFFUSIVITY;
use crate::law::{Matter, firmness};
use crate::numeric::Fineness;
use section::SectionKeeper;
use spread::{spread, with_diffusivity};

/// One cheese as it comes to the air.
///
/// Its default is a cheese without matter or size, at 18 °C, with top and side open and the coat of the record.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cheese {
    /// What it is made of.
    pub matter: Matter,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
    /// Its temperature.
    pub temperature_c: f64,
    /// Share of the top that the air reaches, 0 to 1.
    pub top_open: f64,
    /// Share of the side that the air reaches, 0 to 1.
    pub side_open: f64,
    /// Resistance of its coat to vapour, s/m; 0 for a bare one.
    pub coat_s_m: f64,
}

impl Default for Cheese {
    fn default() -> Self {
        Self {
            matter: Matter::default(),
            diameter_mm: 0.0,
            thickness_mm: 0.0,
            temperature_c: 18.0,
            top_open: 1.0,
            side_open: 1.0,
            coat_s_m: COAT_RESISTANCE.value,
        }
    }
}

/// One point of a drying curve, for one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DryingPoint {
    /// Hours from the start of drying.
    pub at_h: f64,
    /// Mass of the cheese.
    pub cheese_g: f64,
    /// Loss of mass since the start.
    pub loss_percent: f64,
    /// Mean moisture.
    pub moisture_percent: f64,
    /// Moisture at the centre.
    pub centre_moisture_percent: f64,
    /// Moisture of the middle of the top face.
    pub surface_moisture_percent: f64,
    /// Water activity that the mean composition would have.
    pub water_activity: f64,
    /// Water activity at the centre.
    pub centre_water_activity: f64,
    /// Temperature of the cheese.
    pub temperature_c: f64,
    /// Diameter, shrunk.
    pub diameter_mm: f64,
    /// Thickness, shrunk.
    pub thickness_mm: f64,
    /// Moisture on a fat-free basis.
    pub fat_free_moisture_percent: f64,
}

/// How the cheeses of one place dry.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TrayRun {
    /// Which cheeses: "middle tray", "first tray", "first tray, swapped" ...
    pub name: &'static str,
    /// Their curve.
    pub points: Vec<DryingPoint>,
}

/// What the drying stage worked out.
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

/// Why the cheeses cannot be dried.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DryingError {
    /// The air reaches no face.
    #[error("the air reaches no face of the cheese; open at least one of top, side and underside")]
    NoOpenFace,
    /// There is nothing to dry.
    #[error("the cheese must have water and solids to dry, but it has {moisture_percent:.1} % moisture")]
    NothingToDry {
        /// Moisture given.
        moisture_percent: f64,
    },
    /// The solver gave up.
    #[error(
        "the drying of this cheese could not be worked out: the step became too small after {hours:.2} h; choose values nearer to a kitchen's"
    )]
    NoSolution {
        /// How far it came.
        hours: f64,
    },
    /// The salt's way inwards cannot be worked out.
    #[error(transparent)]
    Salt(#[from] SaltStuck),
}

/// Returns how one cheese dries in the middle of the air, at the hours asked for (or at every step where none are asked for).
///
/// # Arguments
/// * `cheese`: one cheese, with water, solids and protein
/// * `design`: the drying; its `drying_h` is the end where no hours are asked for
/// * `report_h`: hours to report, ascending, ≥ 0
///
/// # Errors
/// [`DryingError`].
///
/// # Example
/// ```
/// use vatsketch::{design::DryingDesign, law::Matter, process::{dry_cheese, Cheese}};
/// let matter = Matter { water_kg: 0.030, fat_kg: 0.010, casein_kg: 0.008, ash_kg: 0.001, ..Matter::default() };
/// let cheese = Cheese { matter, diameter_mm: 60.0, thickness_mm: 17.0, ..Cheese::default() };
/// let run = dry_cheese(&cheese, &DryingDesign::default(), &[6.0, 24.0])?;
/// assert!(run.points[1].moisture_percent < run.points[0].moisture_percent);
/// # Ok::<(), vatsketch::process::DryingError>(())
/// ```
pub fn dry_cheese(cheese: &Cheese, design: &DryingDesign, report_h: &[f64]) -> Result<TrayRun, DryingError> {
    if report_h.is_empty() {
        return Ok(middle_tray(cheese, design, &UncertainParameters::default())?.0);
    }
    let problem = run::problem(cheese, design.underside_open_percent / 100.0, Fineness::SHOWN)?;
    let plan = AirPlan::of(design, Place::MIDDLE, 0.001 * cheese.diameter_mm);
    let mut disc = DiscRun::new(&problem);
    let mut points = Vec::new();
    for hour in report_h {
        run::follow(&mut disc, &plan, 3600.0 * hour, &mut |_| ())?;
        points.push(run::point(&disc, cheese));
    }
    Ok(TrayRun { name: MIDDLE_TRAY, points })
}

const MIDDLE_TRAY: &str = "middle tray";

/// Returns how one cheese dries in the middle of the air, at every step, and what of its section is kept.
fn middle_tray(
    cheese: &Cheese,
    design: &DryingDesign,
    parameters: &UncertainParameters,
) -> Result<(TrayRun, SectionKeeper), DryingError> {
    let problem = run::problem_given(cheese, design.underside_open_percent / 100.0, Fineness::SHOWN, parameters)?;
    let plan = plan_given(cheese, design, Place::MIDDLE, parameters);
    let mut disc = DiscRun::new(&problem);
    let mut section = SectionKeeper::new(&problem.grid, design.drying_h);
    let mut points = Vec::new();
    let mut note = |disc: &DiscRun<'_>| {
        points.push(run::point(disc, cheese));
        section.keep(disc);
    };
    note(&disc);
    run::follow(&mut disc, &plan, 3600.0 * design.drying_h, &mut note)?;
    Ok((TrayRun { name: MIDDLE_TRAY, points }, section))
}

/// Returns the air that one cheese meets at a place.
fn plan_given(cheese: &Cheese, design: &DryingDesign, place: Place, parameters: &UncertainParameters) -> AirPlan {
    AirPlan::of(design, place, 0.001 * cheese.diameter_mm).transferring(parameters.air_transfer)
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
    let cheese = Cheese {
        matter: salted.cheese * (1.0 / count),
        diameter_mm: salted.diameter_mm,
        thickness_mm: salted.thickness_mm,
        temperature_c: draining_temperature_c,
        coat_s_m: salted.coat_s_m,
        ..Cheese::default()
    };
    let (middle, section) = middle_tray(&cheese, design, parameters)?;
    let end = middle.points.last().copied().unwrap_or_default();
    let spread = spread(&cheese, design, &middle, parameters)?;
    let dry_kg = 0.01 * end.moisture_percent / (1.0 - 0.01 * end.moisture_percent) * salted.cheese.solids_kg();
    let dried = Matter { water_kg: dry_kg, ..salted.cheese };
    // Damp air may give water instead of taking it.
    let lost_kg = salted.cheese.water_kg - dry_kg;
    let trays = trays::fit(design, salted.cheese_count, salted.diameter_mm, salted.thickness_mm);
    let (fastest, slowest) = if design.tray_swap { spread.swapped } else { spread.unswapped };
    let beside = |name: &'static str, diffusivity_m2_s: f64| match given.runs {
        Runs::WithLikely => with_diffusivity(&cheese, design, name, diffusivity_m2_s, parameters),
        Runs::MiddleOnly => Ok(TrayRun { name, ..middle.clone() }),
    };
    let (if_slow, if_fast) =
        (beside("slow cheese", MOISTURE_DIFFUSIVITY.range.0)?, beside("fast cheese", MOISTURE_DIFFUSIVITY.range.1)?);
    let swap_h = (design.tray_swap && design.tray_count > 1).then_some(0.5 * design.drying_h);
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
            added: vec![Stream { name: "water from the air", matter: Matter::water((-lost_kg).max(0.0)) }],
            left: vec![Stream { name: "vapour", matter: Matter::water(lost_kg.max(0.0)) }],
            goes_on: dried,
        },
    })
}

impl TrayRun {
    /// Returns the moisture at the end.
    #[must_use]
    pub fn end_moisture_percent(&self) -> f64 {
        self.points.last().map_or(0.0, |point| point.moisture_percent)
    }
}
