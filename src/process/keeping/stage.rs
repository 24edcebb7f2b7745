//! The keeping stage of a batch: what the whole way there amounts to, and what published tables say of the end of it.

use super::so_far::SoFar;
use super::zone::{self, StageHours};
use crate::design::{KeepingDesign, KeptIn, Stage};
use crate::law::Matter;
use crate::law::acidity::acid_diffusivity_m2_s;
use crate::law::growth::{AcidClass, COLD_DRAINING, COLD_ENOUGH, Control, acid_class, growers, table_b};
use crate::law::jar::JarError;
use crate::law::nutrition::Nutrients;
use crate::law::syneresis::DRIP_STOPPED;
use crate::process::jar::jar_packing;
use crate::process::{Given, PicklePoint, StageBalance};

/// The same batch drained, soured and kept cold.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct ColdKeeping {
    /// Hours between 4 and 60 °C that would be left, drained and soured at 4 °C.
    pub zone_h: f64,
    /// Hours above 21 °C that would be left.
    pub warm_h: f64,
    /// Hours until the drip stops at 10 °C, the warmest that counts as cold draining.
    pub drip_stops_at_10_h: f64,
    /// Hours until the drip stops at 4 °C.
    pub drip_stops_at_4_h: f64,
    /// Hours until the centre is sour at 4 °C; none if it never is, or without vinegar.
    pub centre_sour_h: Option<f64>,
}

/// What the keeping stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KeepingOutcome {
    /// All cheeses.
    pub cheese: Matter,
    /// What one cheese feeds.
    pub each: Nutrients,
    /// Hours of each stage, and those between cold and hot keeping.
    pub hours: Vec<StageHours>,
    /// Hours of the whole batch between 4 and 60 °C, until the cheese is sour at its centre.
    pub zone_h: f64,
    /// Hours of the whole batch above 21 °C, likewise.
    pub warm_h: f64,
    /// Hours of the whole batch between 7 and 21 °C, likewise.
    pub cool_h: f64,
    /// The case for the cold.
    pub cold: ColdKeeping,
    /// The highest pH in a cheese at the end of the soak, at its centre.
    pub centre_ph: f64,
    /// The same in a slow cheese, which nine of ten draws stay below: what classes, germs and oil are judged by.
    pub slow_centre_ph: f64,
    /// The pH of a blended cheese then.
    pub slurry_ph: f64,
    /// The higher of the estimated water activities: at the centre before the vinegar, and after it.
    pub water_activity: f64,
    /// What table B of the Food Code says of the slow cheese's pH and that water activity.
    pub table_b: Control,
    /// The class of title 21, part 114, by the blended pH of a slow cheese.
    pub acid_class: AcidClass,
    /// The germs that no published minimum holds back where the cheeses are kept, in a slow cheese.
    pub growers: Vec<&'static str>,
    /// Vinegar that stays in the jars, all of them.
    pub vinegar_left_ml: f64,
    /// Oil that just covers the cheeses above that vinegar, all jars.
    pub oil_ml: f64,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why nothing can be said about the keeping.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum KeepingError {
    /// The cheeses do not go into the jar.
    #[error(transparent)]
    Jar(#[from] JarError),
}

/// Returns what the whole way amounts to and what published tables say of its end. The cheeses themselves stay as they are.
///
/// Hours count between 4 and 60 °C, the widest zone that the tables have, from the cold milk on; in vinegar until the centre has pH 4.2.
/// The class is that of table B of the Food Code by the pH at the centre of a slow cheese and the higher water activity, and that of title 21,
/// part 114.3, by its blended pH. Oil is what just covers the discs, at their dried size, above the vinegar that was left in the jar.
///
/// # Arguments
/// * `design`: what they are kept in, at which temperature, how long
/// * `way`: the stages before
///
/// # Errors
/// [`KeepingError::Jar`] if they are to go into oil, and not one goes into the jar.
///
/// # Source
/// [`crate::source::SourceId::FoodCode`], [`crate::source::SourceId::Cfr21`], [`crate::source::SourceId::BadBugBook`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design};
/// let batch = batch(&Design::default())?;
/// let kept = batch.keeping.done().unwrap();
/// assert!(kept.zone_h > kept.cold.zone_h);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn keeping(design: &KeepingDesign, way: &SoFar<'_>) -> Result<KeepingOutcome, KeepingError> {
    keeping_given(design, way, &Given::default())
}

/// Returns the same as [`keeping()`] under other parameters.
///
/// # Errors
/// As for [`keeping()`].
pub fn keeping_given(design: &KeepingDesign, way: &SoFar<'_>, given: &Given) -> Result<KeepingOutcome, KeepingError> {
    let (cheese, cheese_count) = (way.pickled.cheese, way.pickled.cheese_count);
    let hours = zone::all(design, way);
    // Without vinegar these are the cheese's own.
    let PicklePoint { centre_ph, slurry_ph, .. } = way.pickled.end;
    let slow = way.pickled.if_slow.last().copied().unwrap_or(way.pickled.end);
    // At its coarser steps the slow cheese may come out a hair below the middle one: the worse of the two counts.
    let slow_centre_ph = slow.centre_ph.max(centre_ph);
    let water_activity = way.dried.end.centre_water_activity.max(way.pickled.water_activity);
    let spent_ml = way.spent_ml();
    let (vinegar_left_ml, oil_ml) = match design.kept_in {
        KeptIn::Vinegar => (spent_ml, 0.0),
        KeptIn::Bare => (0.0, 0.0),
        KeptIn::Oil => {
            let left_ml = (1.0 - 0.01 * design.poured_off_percent) * spent_ml;
            let packed = jar_packing(way.pickling_design, way.dried)?;
            let per_jar = if way.pickled.pickled { way.pickled.cheeses_per_jar } else { packed.count };
            (left_ml, (packed.covering_ml(cheese_count, per_jar) - left_ml).max(0.0))
        }
    };
    Ok(KeepingOutcome {
        each: Nutrients::of(&(cheese * (1.0 / f64::from(cheese_count.max(1))))),
        zone_h: hours.iter().map(|stage| stage.zone_h).sum(),
        warm_h: hours.iter().map(|stage| stage.warm_h).sum(),
        cool_h: hours.iter().map(|stage| stage.cool_h).sum(),
        cold: cold_way(&hours, way, given),
        hours,
        centre_ph,
        slurry_ph,
        water_activity,
        slow_centre_ph,
        table_b: table_b(water_activity, slow_centre_ph),
        acid_class: acid_class(water_activity, way.pickled.start_ph, slow.slurry_ph.max(slurry_ph)),
        growers: growers(design.keeping_temperature_c, slow_centre_ph, water_activity).iter().map(|germ| germ.name).collect(),
        vinegar_left_ml,
        oil_ml,
        cheese,
        balance: StageBalance { came: cheese, goes_on: cheese, ..StageBalance::default() },
    })
}

/// Returns the same batch drained, soured and kept at 4 °C: only vat and drying are left. Acid then moves slower, by its diffusivity.
fn cold_way(hours: &[StageHours], way: &SoFar<'_>, given: &Given) -> ColdKeeping {
    let left = || hours.iter().filter(|stage| matches!(stage.stage, Stage::Vat | Stage::Drying));
    let drip_stops_h = |temperature_c: f64| -DRIP_STOPPED.value.ln() * given.parameters.drip().in_moulds_h(temperature_c);
    let slower = acid_diffusivity_m2_s(way.pickling_design.pickling_temperature_c) / acid_diffusivity_m2_s(COLD_ENOUGH.value);
    ColdKeeping {
        zone_h: left().map(|stage| stage.zone_h).sum(),
        warm_h: left().map(|stage| stage.warm_h).sum(),
        drip_stops_at_10_h: drip_stops_h(COLD_DRAINING.value),
        drip_stops_at_4_h: drip_stops_h(COLD_ENOUGH.value),
        centre_sour_h: way.centre_sour_h().map(|hours| hours * slower),
    }
}
