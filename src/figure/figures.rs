//! The figures that a batch gives.

use super::{Axis, Figure};
use crate::batch::Batch;

/// Which figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FigureKey {
    /// Bath and milk against time.
    Warming,
    /// Loss of mass in drying against time.
    DryingLoss,
    /// Whey from the moulds against time.
    WheyDrip,
    /// Moisture of mean, centre and surface in drying.
    Moisture,
    /// Water activity of mean and centre in drying.
    WaterActivity,
}

/// Returns one figure of a batch.
#[must_use]
pub fn figure(_batch: &Batch, _key: FigureKey) -> Figure {
    let axis = Axis { label: "time", unit: "h", least: 0.0, most: 1.0 };
    Figure {
        title: "",
        x: axis.clone(),
        y: axis,
        series: vec![],
        bands: vec![],
        events: vec![],
        empty_because: None,
        in_words: String::new(),
    }
}
