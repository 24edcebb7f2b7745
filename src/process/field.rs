//! What a quantity is at every place of one cheese, at a few moments: for the picture of its cross-section.

use crate::numeric::{DiscGrid, Half};

/// A quantity over the rings of one cheese, at a few moments.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DiscField {
    /// Radii of the nodes at the start, from the axis to the rim.
    pub radii_mm: Vec<f64>,
    /// Heights of the nodes at the start, from the underside or the middle up to the top.
    pub heights_mm: Vec<f64>,
    /// Whether the heights begin at the underside or in the middle, of which the lower half is the mirror image.
    pub half: Half,
    /// The moments, ascending.
    pub frames: Vec<DiscFrame>,
}

/// One moment.
#[derive(Clone, Debug, PartialEq)]
pub struct DiscFrame {
    /// Hours since the stage began.
    pub at_h: f64,
    /// Size of the cheese relative to the start, along each line.
    pub shrunk: f64,
    /// The quantity; that at radius i and height j is at i · heights + j.
    pub values: Vec<f32>,
}

impl DiscField {
    /// Returns a field without any moment yet.
    #[must_use]
    pub fn new(grid: &DiscGrid) -> Self {
        let mm = |metres: &[f64]| metres.iter().map(|m| 1000.0 * m).collect();
        Self { radii_mm: mm(&grid.radii_m), heights_mm: mm(&grid.heights_m), half: grid.half, frames: Vec::new() }
    }
}
