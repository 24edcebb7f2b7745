//! What one cheese weighs while it dries, at times at which it is weighed.

use super::{Amount, Step, StepTime, Target, elapsed};
use crate::curve::Curve;
use crate::design::Unit;
use crate::units::Units;
use jiff::Span;

/// Parts into which the drying is divided by its weighings.
const PARTS: u32 = 4;
/// Minutes to which a time to weigh is rounded.
const ROUND_MIN: f64 = 5.0;

/// One time at which the marked cheese is weighed.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighing {
    /// When.
    pub time: StepTime,
    /// Hours since the cheeses went to the air.
    pub after_h: f64,
    /// What it is to weigh, and how far that may well be off.
    pub weight: Target,
}

impl Weighing {
    /// Returns the hours since the cheeses went to the air, such as `12 h`.
    #[must_use]
    pub fn after(&self, units: Units) -> String {
        if self.after_h < 0.1 { "start".to_owned() } else { elapsed(60.0 * self.after_h, units).trim_start_matches('+').to_owned() }
    }

    pub(super) fn shown_in(mut self, units: Units) -> Self {
        self.time.units = units;
        Self { weight: self.weight.shown_in(units), ..self }
    }
}

/// Returns when the marked cheese is weighed and what it is to weigh: at the beginning, three times on the way and at the end, where it is as the
/// step says.
pub(super) fn weighings(steps: &[Step], curve: &Curve) -> Vec<Weighing> {
    let weighs = |step: &&Step| step.times.iter().any(|time| time.task == "weigh") && step.verb == "Weigh";
    let (Some(lay), Some(weigh)) = (steps.iter().find(|step| step.begins_drying()), steps.iter().find(weighs)) else {
        return Vec::new();
    };
    let (Some(begins), Some(ends), Some(last)) = (lay.times.last(), weigh.times.first(), weigh.targets.first()) else {
        return Vec::new();
    };
    let minutes = match (begins.clock, ends.clock) {
        (Some(from), Some(to)) => from.duration_until(to).as_secs_f64() / 60.0,
        _ => ends.at_min - begins.at_min,
    };
    let on_the_way = (0..PARTS).filter_map(|part| {
        let after_min = ROUND_MIN * (minutes * f64::from(part) / f64::from(PARTS) / ROUND_MIN).round();
        let clock = begins.clock.and_then(|from| from.checked_add(Span::new().minutes(after_min as i64)).ok());
        let (grams, within) = weight(curve, after_min / 60.0)?;
        let time = StepTime { clock, at_min: begins.at_min + after_min, ..ends.clone() };
        let weight = Target { within: (part > 0).then_some(within), ..Target::exact("plan", Amount::new(grams, Unit::Gram, 0)) };
        Some(Weighing { time, after_h: after_min / 60.0, weight })
    });
    let end = Weighing { time: ends.clone(), after_h: minutes / 60.0, weight: Target { label: "plan".to_owned(), ..last.clone() } };
    on_the_way.chain([end]).collect()
}

/// Returns the weight at an hour and the band around it; nothing after the end of the curve.
fn weight(curve: &Curve, hour: f64) -> Option<(f64, (f64, f64))> {
    let points = &curve.series.first()?.points;
    let grams = between(points.iter().map(|[at, grams]| (*at, *grams)), hour)?;
    let band = curve.bands.first().map(|band| &band.points);
    let edge = |side: usize| {
        let points = band?.iter().map(|point| (point[0], point.get(side).copied().unwrap_or(grams)));
        between(points, hour)
    };
    Some((grams, (edge(1).unwrap_or(grams), edge(2).unwrap_or(grams))))
}

/// Returns the value at a place, straight between the points beside it.
fn between(points: impl Iterator<Item = (f64, f64)>, at: f64) -> Option<f64> {
    let mut before: Option<(f64, f64)> = None;
    for (x, y) in points {
        if x >= at {
            let Some((from_x, from_y)) = before.filter(|_| x > at) else { return Some(y) };
            return Some(from_y + (at - from_x) / (x - from_x) * (y - from_y));
        }
        before = Some((x, y));
    }
    None
}
