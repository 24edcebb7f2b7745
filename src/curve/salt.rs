//! The curve of salt, from the first salt to the last air.

use super::axes::{highest, round_up};
use super::{Axis, Curve, CurveKey, Event, Role, Series, Tone};
use crate::batch::Batch;
use crate::process::{SaltPoint, SaltingOutcome};

/// Greatest salt in moisture that is shown: brine is saturated at about 36 g in 100 g of water.
const MOST_SHOWN: f64 = 40.0;

pub(super) fn salt(batch: &Batch, salted: &SaltingOutcome) -> Curve {
    let drying = batch.drying.done().map_or(&[][..], |dried| &dried.salt.points);
    // Both parts hold the moment of unmoulding, and may differ in its last digit.
    let drying = drying.iter().filter(|point| point.at_h > salted.unmoulded_h);
    let mut points: Vec<&SaltPoint> = salted.profile.points.iter().collect();
    points.extend(drying);
    let line = |of: fn(&SaltPoint) -> f64| points.iter().map(|point| [point.at_h, of(point)]).collect::<Vec<_>>();
    let series = vec![
        Series { name: "faces", role: Role::Companion, tone: Tone::Face, points: line(|point| point.surface_percent) },
        Series { name: "mean", role: Role::Main, tone: Tone::Salt, points: line(|point| point.mean_percent) },
        Series { name: "centre", role: Role::Companion, tone: Tone::Centre, points: line(|point| point.centre_percent) },
    ];
    let most = series.iter().map(|series| highest(&series.points)).fold(4.0, f64::max);
    let last_h = points.last().map_or(1.0, |point| point.at_h);
    let turns_h = batch.draining.done().map_or(&[][..], |drained| &drained.turns_h);
    let salted_turns = if salted.salt_g > 0.0 { batch.design.salting.salted_turns as usize } else { 0 };
    let mut events: Vec<Event> = turns_h.iter().take(salted_turns).map(|at| Event { name: "salt", at: *at }).collect();
    if batch.drying.done().is_some() {
        events.push(Event { name: "unmould", at: salted.unmoulded_h });
    }
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: CurveKey::Salt.title(),
        x: Axis { label: "time from ladling", unit: "h", least: 0.0, most: round_up(last_h) },
        y: Axis { label: "salt in moisture", unit: "g/100 g", least: 0.0, most: round_up(most * 1.1).min(MOST_SHOWN) },
        series,
        bands: Vec::new(),
        events,
        empty_because: None,
        in_words: points.last().map_or_else(String::new, |end| {
            format!(
                "Salt in moisture: after {:.0} h {:.1} g in 100 g of water on average, {:.1} at the faces and {:.1} at the centre.",
                end.at_h, end.mean_percent, end.surface_percent, end.centre_percent
            )
        }),
    }
}
