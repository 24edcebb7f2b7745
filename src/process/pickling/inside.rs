//! Salt and water inside a cheese while it lies in vinegar, as curves and cuts show them.

use super::error::PicklingError;
use super::leach::LeachRun;
use super::soak::Soak;
use super::swell::SwollenPoint;
use crate::law::Matter;
use crate::numeric::monotone;
use crate::process::frames::FrameClock;
use crate::process::{DiscField, DiscFrame};

/// One moment of a quantity inside a cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct InsidePoint {
    /// Hours in the vinegar.
    pub at_h: f64,
    /// In the whole cheese.
    pub mean: f64,
    /// At its centre.
    pub centre: f64,
    /// In the middle of its top face.
    pub face: f64,
}

/// A quantity inside a cheese over the hours of its soak.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Inside {
    /// The curves.
    pub points: Vec<InsidePoint>,
    /// Over the cross-section.
    pub field: DiscField,
}

/// Returns the moisture inside a cheese, %, from how it takes up water.
pub(super) fn moisture(water: &[SwollenPoint], field: DiscField) -> Inside {
    let percent = |water: f64| 100.0 * water / (1.0 + water);
    let points = water.iter().map(|point| InsidePoint {
        at_h: point.at_h,
        mean: percent(point.water),
        centre: percent(point.centre),
        face: percent(point.face),
    });
    Inside { points: points.collect(), field }
}

/// What salt a cheese and its vinegar bring, and how the water of the cheese changes meanwhile.
pub(super) struct Saltiness<'a> {
    /// The cheeses as they come.
    pub(super) dried: &'a Matter,
    /// Salt that cheeses as salty as the vinegar would bring, kg.
    pub(super) even_kg: f64,
    /// How one takes up water.
    pub(super) water: &'a [SwollenPoint],
}

impl Saltiness<'_> {
    /// Returns the salt in the moisture, g in 100 g of water, where plain vinegar would leave a share of what the cheese brought.
    ///
    /// Diffusion is linear: what the vinegar brings comes in as what the cheese brings goes out. All places share the water of the mean.
    fn percent(&self, at_h: f64, left: f64) -> f64 {
        let now: Vec<(f64, f64)> = self.water.iter().map(|point| (point.at_h, point.water)).collect();
        let before = self.water.first().map_or(1.0, |point| point.water);
        let salt_kg = left * self.dried.salt_kg + (1.0 - left) * self.even_kg;
        100.0 * salt_kg / self.dried.water_kg * before / monotone(&now, at_h)
    }

    /// Returns the salt inside a cheese as a soak goes, and at its end the share that plain vinegar leaves.
    ///
    /// # Errors
    /// As for [`LeachRun::advance`].
    pub(super) fn follow(&self, run: &mut LeachRun<'_>, soak: &Soak, end_h: f64) -> Result<Inside, PicklingError> {
        let size: Vec<(f64, f64)> = self.water.iter().map(|point| (point.at_h, point.size)).collect();
        let mut inside = Inside { points: Vec::new(), field: DiscField::new(&soak.grid) };
        let mut clock = FrameClock::new(end_h, 2);
        let mut note = |run: &LeachRun<'_>| {
            let at_h = run.at_s / 3600.0;
            let at = |left: f64| self.percent(at_h, left);
            let (centre, face) = run.centre_and_face();
            inside.points.push(InsidePoint { at_h, mean: at(run.left()), centre: at(centre), face: at(face) });
            if clock.due(at_h) {
                let values = run.rings().iter().map(|left| at(left.max(0.0)) as f32).collect();
                inside.field.frames.push(DiscFrame { at_h, shrunk: monotone(&size, at_h), values });
            }
        };
        note(run);
        run.advance(3600.0 * end_h, &mut note)?;
        Ok(inside)
    }

    /// Returns the salt at centre and face of a run, g in 100 g of water, at the end of the soak.
    pub(super) fn at_end(&self, run: &LeachRun<'_>) -> (f64, f64) {
        let end_h = self.water.last().map_or(0.0, |point| point.at_h);
        let (centre, face) = run.centre_and_face();
        (self.percent(end_h, centre), self.percent(end_h, face))
    }
}
