//! How the middle cheese goes on souring while it dries.

use super::curve::DryingPoint;
use crate::law::Matter;
use crate::process::souring::{SourPoint, SouringRun, Sourness};

/// Points that are kept, about.
const POINTS: usize = 60;

/// What souring comes to while the cheeses dry.
#[derive(Clone, Debug)]
pub(super) struct SouringCourse {
    pub(super) points: Vec<SourPoint>,
    /// How sour they are at the end.
    pub(super) sourness: Sourness,
    /// Lactose that has turned into lactic acid, kg.
    pub(super) turned_kg: f64,
}

/// Returns how all cheeses sour along the temperature and the water of one.
///
/// # Arguments
/// * `cheese`: all of them as they come to the air
/// * `drying`: ascending points, the first at the start
pub(super) fn follow(cheese: &Matter, sourness: &Sourness, drying: &[DryingPoint]) -> SouringCourse {
    let dried = |moisture_percent: f64| {
        let water = moisture_percent / (100.0 - moisture_percent);
        Matter { water_kg: water * cheese.solids_kg(), ..*cheese }
    };
    let mut run = SouringRun::new(sourness, cheese);
    let first_c = drying.first().map_or(0.0, |point| point.temperature_c);
    let mut points = vec![run.point(0.0, first_c, cheese)];
    let (end_h, mut end) = (drying.last().map_or(0.0, |point| point.at_h), *cheese);
    let apart_h = end_h / POINTS as f64;
    for (before, after) in drying.iter().zip(drying.iter().skip(1)) {
        let length_h = after.at_h - before.at_h;
        let between = |share: f64, of: fn(&DryingPoint) -> f64| of(before) + share * (of(after) - of(before));
        let mut at_h = 0.0;
        while at_h < length_h {
            let temperature_c = between(at_h / length_h, |point| point.temperature_c);
            let step_h = run.step_h(temperature_c, &end).min(length_h - at_h);
            at_h = if length_h - at_h - step_h < 1e-9 { length_h } else { at_h + step_h };
            end = dried(between(at_h / length_h, |point| point.moisture_percent));
            run.step(&end, temperature_c, step_h);
        }
        let last_h = points.last().map_or(0.0, |point| point.at_h);
        if after.at_h - last_h >= apart_h || after.at_h >= end_h {
            points.push(run.point(after.at_h, after.temperature_c, &end));
        }
    }
    SouringCourse { points, turned_kg: run.turned_share() * end.carbohydrate_kg, sourness: run.sourness(&end) }
}
