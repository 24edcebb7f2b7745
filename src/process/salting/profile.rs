//! Salt through the thickness over the hours, as it is shown.

use super::run::SaltRun;
use crate::numeric::Half;
use crate::process::{DiscField, DiscFrame};

/// One point of the curves of salt, for one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SaltPoint {
    /// Hours from ladling.
    pub at_h: f64,
    /// Dissolved salt over all water of the column at the axis, g per 100 g.
    pub mean_percent: f64,
    /// The same in the moisture of the faces, the mean of both.
    pub surface_percent: f64,
    /// The same in the moisture at the centre.
    pub centre_percent: f64,
    /// Salt that is not dissolved: what lies on the faces, and crystals where a crust is too dry for it.
    pub undissolved_g: f64,
}

/// Salt through the thickness over the hours.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SaltProfile {
    /// The curves.
    pub points: Vec<SaltPoint>,
    /// Salt in the moisture, g per 100 g, over the section: the column at the axis, alike at every radius.
    pub field: DiscField,
}

impl SaltProfile {
    /// Returns a profile without any point of a cheese of this size, whose nodes stand at these shares of the thickness.
    pub(in crate::process) fn of(diameter_mm: f64, thickness_mm: f64, shares: &[f64]) -> Self {
        let field = DiscField {
            radii_mm: vec![0.0, 0.5 * diameter_mm],
            heights_mm: shares.iter().map(|share| share * thickness_mm).collect(),
            half: Half::Whole,
            frames: Vec::new(),
        };
        Self { points: Vec::new(), field }
    }

    /// Notes the state of a run.
    ///
    /// # Arguments
    /// * `at_h`: hours from ladling
    /// * `solids_g`: salt-free solids of the cheese
    pub(in crate::process) fn note(&mut self, run: &SaltRun<'_>, at_h: f64, solids_g: f64) {
        let undissolved = run.undissolved();
        self.points.push(SaltPoint {
            at_h,
            mean_percent: 100.0 * (run.column.salt_in_all() - undissolved) / run.water_in_all(),
            surface_percent: 100.0 * run.on_average_at_the_faces(),
            centre_percent: 100.0 * run.at_the_centre(),
            undissolved_g: undissolved * solids_g,
        });
    }

    /// Keeps the state of a run for the picture, at hours since the start of the stage and with the linear shrinkage.
    pub(in crate::process) fn keep(&mut self, run: &SaltRun<'_>, stage_h: f64, shrinkage: f64) {
        let column = (0..run.column.salt.len()).map(|node| (100.0 * run.salt_in_water(node)) as f32);
        let values = column.clone().chain(column).collect();
        self.field.frames.push(DiscFrame { at_h: stage_h, shrunk: shrinkage, values });
    }
}
