//! The salt of one cheese, layer by layer through its thickness.

use crate::numeric::{Fineness, graded_both};
use std::sync::LazyLock;

/// Intervals through the thickness, graded like them: those of the drying disc that is shown, so that its water is taken
/// node by node.
const INTERVALS: usize = 2 * Fineness::SHOWN.half_height;
/// Intervals for likely ranges.
const COARSE: usize = Fineness::SHOWN.half_height;
/// Heights of the nodes as shares of the thickness; calculated once, for all cheeses have the same.
static SHARES: LazyLock<Vec<f64>> = LazyLock::new(|| graded_both(INTERVALS, 1.0, Fineness::SHOWN.ratio));
/// The same on a coarser grid, for likely ranges.
static COARSE_SHARES: LazyLock<Vec<f64>> = LazyLock::new(|| graded_both(COARSE, 1.0, Fineness::SHOWN.ratio));

/// A face of a cheese, named as it lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// The one that lies below.
    Underside,
    /// The one on top.
    Top,
}

/// Salt through the thickness of a cheese at one moment.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SaltColumn {
    /// Heights of the nodes above the underside, as shares of the thickness.
    pub heights: Vec<f64>,
    /// Share of the thickness that each node owns.
    pub layers: Vec<f64>,
    /// Thickness to which the stretch refers.
    pub thickness_mm: f64,
    /// Salt of each layer, dissolved or not, kg per kg of salt-free solids of the whole cheese.
    pub salt: Vec<f64>,
}

impl SaltColumn {
    /// Returns a cheese of this thickness without salt, cut up as finely as the drying disc.
    #[must_use]
    pub fn unsalted(thickness_mm: f64) -> Self {
        Self::with_heights(SHARES.clone(), thickness_mm)
    }

    /// Returns a cheese of this thickness without salt, cut up half as finely: for likely ranges.
    #[must_use]
    pub fn coarse(thickness_mm: f64) -> Self {
        Self::with_heights(COARSE_SHARES.clone(), thickness_mm)
    }

    /// Returns a cheese without salt with nodes at these heights, from 0 to 1, ascending.
    #[must_use]
    pub fn with_heights(heights: Vec<f64>, thickness_mm: f64) -> Self {
        // Each node owns the thickness to half way between its neighbours; one on a face, from the face.
        let before = heights.first().into_iter().chain(&heights);
        let after = heights.iter().skip(1).chain(heights.last());
        let layers: Vec<f64> = before.zip(after).map(|(before, after)| 0.5 * (after - before)).collect();
        Self { salt: vec![0.0; heights.len()], heights, layers, thickness_mm }
    }

    /// Returns all its salt, kg per kg of salt-free solids.
    #[must_use]
    pub fn salt_in_all(&self) -> f64 {
        self.salt.iter().sum()
    }

    /// Returns it turned over.
    #[must_use]
    pub fn turned(mut self) -> Self {
        self.salt.reverse();
        self
    }

    /// Spreads salt evenly, kg per kg of salt-free solids.
    pub fn spread_evenly(&mut self, salt: f64) {
        self.salt.iter_mut().zip(&self.layers).for_each(|(node, layer)| *node += layer * salt);
    }

    /// Sprinkles salt on a face, kg per kg of salt-free solids.
    pub fn sprinkle(&mut self, face: Face, salt: f64) {
        let node = match face {
            Face::Underside => self.salt.first_mut(),
            Face::Top => self.salt.last_mut(),
        };
        if let Some(node) = node {
            *node += salt;
        }
    }
}
