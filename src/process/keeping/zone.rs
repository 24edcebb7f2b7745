//! The hours that the food spends between cold and hot keeping, stage by stage.

use super::so_far::SoFar;
use crate::design::{KeepingDesign, KeptIn, Stage};
use crate::law::growth::{COLD_ENOUGH, COOL_ABOVE, HOT_ENOUGH, SERVICE_WARM, above_service_warm, in_zone};
use crate::process::{DrainingOutcome, DryingOutcome, VatOutcome};

/// The hours of one stage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StageHours {
    /// The stage.
    pub stage: Stage,
    /// How long it lasts.
    pub hours: f64,
    /// Hours of it between cold and hot keeping, 4 to 60 °C, while the food is not sour throughout.
    pub zone_h: f64,
    /// Hours of it above 21 °C, where food-service limits are short, while the food is not sour throughout.
    pub warm_h: f64,
    /// Hours of it between 7 and 21 °C, where they are allowed for longer, while the food is not sour throughout.
    pub cool_h: f64,
}

/// Returns the hours of warming, setting and cutting.
///
/// # Example
/// ```
/// use vatsketch::process::{vat_hours, VatOutcome, WarmingPoint};
/// let at = |at_min, milk_c| WarmingPoint { at_min, milk_c, ..WarmingPoint::default() };
/// let vat = VatOutcome { curve: vec![at(0.0, 2.0), at(90.0, 38.0)], ..VatOutcome::default() };
/// let hours = vat_hours(&vat);
/// // 36 K in 90 min: above 4 °C after 5 min, above 21 °C after 47.5 min.
/// assert!((hours.zone_h - 85.0 / 60.0).abs() < 1e-12 && (hours.warm_h - 42.5 / 60.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn vat_hours(vat: &VatOutcome) -> StageHours {
    let course = vat.curve.iter().map(|point| (point.at_min / 60.0, point.milk_c));
    along(Stage::Vat, &course)
}

/// Returns the hours in the moulds, by the temperature of the curd itself, which comes warm from the vat and cools.
#[must_use]
pub fn draining_hours(drained: &DrainingOutcome) -> StageHours {
    along(Stage::Draining, &drained.souring.iter().map(|point| (point.at_h, point.temperature_c)))
}

/// Returns the hours of drying, by the temperature of the cheese itself, which is cooler than the air.
#[must_use]
pub fn drying_hours(dried: &DryingOutcome) -> StageHours {
    along(Stage::Drying, &dried.middle.points.iter().map(|point| (point.at_h, point.temperature_c)))
}

/// Returns every stage's hours; in vinegar and jar those until the centre is sour.
pub(super) fn all(design: &KeepingDesign, way: &SoFar<'_>) -> Vec<StageHours> {
    let mut stages = vec![vat_hours(way.vat), draining_hours(way.drained), drying_hours(way.dried)];
    let soak_h = if way.pickled.pickled { way.pickling_design.pickling_h } else { 0.0 };
    let sour_h = way.centre_sour_h().unwrap_or(f64::INFINITY);
    let unsoured_h = soak_h.min(sour_h);
    if soak_h > 0.0 {
        stages.push(steady(Stage::Pickling, soak_h, unsoured_h, way.pickling_design.pickling_temperature_c));
    }
    let kept_h = 24.0 * design.keeping_days;
    // In their own vinegar the cheeses sour on; in oil or in the air they stay as they came out of it.
    let sours_on = design.kept_in == KeptIn::Vinegar && way.pickled.pickled;
    let rest_h = if sour_h <= soak_h {
        0.0
    } else if sours_on {
        kept_h.min(sour_h - soak_h)
    } else {
        kept_h
    };
    stages.push(steady(Stage::Keeping, kept_h, rest_h, design.keeping_temperature_c));
    stages
}

/// Returns the hours of a stage at one temperature, of which the first so many count.
fn steady(stage: Stage, hours: f64, counted_h: f64, temperature_c: f64) -> StageHours {
    let if_there = |there: bool| if there { counted_h } else { 0.0 };
    let is_cool = temperature_c > COOL_ABOVE.value && !above_service_warm(temperature_c);
    StageHours {
        stage,
        hours,
        zone_h: if_there(in_zone(temperature_c)),
        warm_h: if_there(above_service_warm(temperature_c)),
        cool_h: if_there(is_cool),
    }
}

/// Returns the hours of a stage along its curve of (hour, °C).
fn along(stage: Stage, course: &(impl Iterator<Item = (f64, f64)> + Clone)) -> StageHours {
    let between = |least_c: f64, most_c: f64| -> f64 {
        let legs = course.clone().zip(course.clone().skip(1));
        legs.map(|((from_h, from_c), (to_h, to_c))| (to_h - from_h) * share_between(from_c, to_c, least_c, most_c)).sum()
    };
    let ends = course.clone().last().map_or(0.0, |(end_h, _)| end_h);
    let begins = course.clone().next().map_or(0.0, |(begin_h, _)| begin_h);
    let hot_c = HOT_ENOUGH.value;
    StageHours {
        stage,
        hours: ends - begins,
        zone_h: between(COLD_ENOUGH.value, hot_c),
        warm_h: between(SERVICE_WARM.value, hot_c),
        cool_h: between(COOL_ABOVE.value, SERVICE_WARM.value),
    }
}

/// Returns the share of a straight line from one temperature to another that lies between two limits.
fn share_between(from_c: f64, to_c: f64, least_c: f64, most_c: f64) -> f64 {
    let (low_c, high_c) = (from_c.min(to_c), from_c.max(to_c));
    let span_k = high_c - low_c;
    let level = span_k <= f64::EPSILON * high_c.abs();
    if level {
        return if least_c < low_c && low_c < most_c { 1.0 } else { 0.0 };
    }
    ((high_c.min(most_c) - low_c.max(least_c)) / span_k).max(0.0)
}
