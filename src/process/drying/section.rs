//! What of the middle run is kept for pictures and for the salt: the moisture of the section, and the water of the column at the axis.

use super::run::moisture_percent;
use super::solver::DiscRun;
use crate::numeric::DiscGrid;
use crate::process::frames::FrameClock;
use crate::process::{DiscField, DiscFrame};

/// The column at the axis at one moment.
#[derive(Clone, Debug)]
pub(super) struct AxisMoment {
    pub(super) at_s: f64,
    /// Water of each node, kg per kg of dry solids, in the order of the grid's heights.
    pub(super) water: Vec<f64>,
    pub(super) shrinkage: f64,
    pub(super) temperature_c: f64,
}

/// Keeps the moments of a run.
pub(super) struct SectionKeeper {
    clock: FrameClock,
    pub(super) moisture: DiscField,
    pub(super) axis: Vec<AxisMoment>,
}

impl SectionKeeper {
    /// Returns the keeper of a run of so many hours, which are kept the closer the earlier: the skin dries in the first.
    pub(super) fn new(grid: &DiscGrid, end_h: f64) -> Self {
        Self { clock: FrameClock::new(end_h, 2), moisture: DiscField::new(grid), axis: Vec::new() }
    }

    /// Keeps the state of a run, if a picture is due.
    pub(super) fn keep(&mut self, run: &DiscRun<'_>) {
        let at_h = run.at_s / 3600.0;
        if !self.clock.due(at_h) {
            return;
        }
        let shrinkage = run.problem().shrinkage(run.mean_water());
        let water = run.water();
        let values = water.iter().map(|water| moisture_percent(water.max(0.0)) as f32).collect();
        self.moisture.frames.push(DiscFrame { at_h, shrunk: shrinkage, values });
        let heights = run.problem().grid.heights_m.len();
        self.axis.push(AxisMoment {
            at_s: run.at_s,
            water: water.iter().take(heights).copied().collect(),
            shrinkage,
            temperature_c: run.temperature_c,
        });
    }
}
