//! What the coarse grid of the trays misses, learnt from the middle tray, which is dried on both grids.

use super::cheese::Cheese;
use super::curve::{DryingPoint, TrayRun};
use super::problem::Problem;
use super::run::with_mean_water;
use crate::numeric::monotone;

/// The mean water content of the middle tray over the hours, on the grid that is shown and on that of the trays, kg per kg of dry solids.
pub(super) struct Refinement {
    shown: Vec<(f64, f64)>,
    coarse: Vec<(f64, f64)>,
}

impl Refinement {
    pub(super) fn new(shown: &TrayRun, coarse: &[DryingPoint]) -> Self {
        Self { shown: waters(&shown.points), coarse: waters(coarse) }
    }

    /// Returns the points of a place with their means moved by what the finer grid changes for the middle tray at the same hour.
    pub(super) fn refine(&self, problem: &Problem, cheese: &Cheese, points: &[DryingPoint]) -> Vec<DryingPoint> {
        points
            .iter()
            .map(|point| {
                let missed = monotone(&self.shown, point.at_h) - monotone(&self.coarse, point.at_h);
                with_mean_water(problem, cheese, (water(point) + missed).max(0.0), *point)
            })
            .collect()
    }
}

fn waters(points: &[DryingPoint]) -> Vec<(f64, f64)> {
    points.iter().map(|point| (point.at_h, water(point))).collect()
}

/// Returns the mean water content of a point, kg per kg of dry solids.
fn water(point: &DryingPoint) -> f64 {
    point.moisture_percent / (100.0 - point.moisture_percent)
}
