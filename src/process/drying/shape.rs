//! How the rings of a disc lie in memory while they are stepped: in whole lanes, so that nothing is left over.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use crate::numeric::{DiscGrid, in_lanes};

/// A grid in whole lanes: the ring at radius i and height j is at i·columns + j, on its side at j·rows + i.
#[derive(Clone, Copy, Debug)]
pub(super) struct Shape {
    pub(super) radii: usize,
    pub(super) heights: usize,
    /// Radii and heights in whole lanes.
    pub(super) rows: usize,
    pub(super) columns: usize,
}

impl Shape {
    pub(super) const fn of(grid: &DiscGrid) -> Self {
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        Self { radii, heights, rows: in_lanes(radii), columns: in_lanes(heights) }
    }

    /// Returns how many numbers such a grid takes.
    pub(super) const fn size(self) -> usize {
        self.rows * self.columns
    }

    /// Lays out what stands ring by ring; what is beyond the rings stays.
    pub(super) fn lay_out(self, rings: &[f64], to: &mut [f64]) {
        for (from, to) in rings.chunks_exact(self.heights).zip(to.chunks_exact_mut(self.columns)) {
            to[..self.heights].copy_from_slice(from);
        }
    }

    /// Gathers ring by ring what was laid out.
    pub(super) fn gather(self, from: &[f64], rings: &mut [f64]) {
        for (to, from) in rings.chunks_exact_mut(self.heights).zip(from.chunks_exact(self.columns)) {
            to.copy_from_slice(&from[..self.heights]);
        }
    }
}

/// Conductances of one direction over what a node owns, 1/m²: to the node before and to the one after.
#[derive(Clone, Debug)]
pub(super) struct Conductances {
    pub(super) inward: Vec<f64>,
    pub(super) outward: Vec<f64>,
}

impl Conductances {
    /// Returns those of a direction, none at its ends and none beyond them.
    ///
    /// * `between`: conductances between neighbours; `own`: what each node owns; `length`: at least as many
    pub(super) fn of(between: &[f64], own: &[f64], length: usize) -> Self {
        let over = |conductance: Option<&f64>, own: &f64| conductance.map_or(0.0, |conductance| conductance / own);
        let padded = |mut values: Vec<f64>| {
            values.resize(length, 0.0);
            values
        };
        Self {
            inward: padded(
                own.iter().enumerate().map(|(k, own)| over(k.checked_sub(1).and_then(|k| between.get(k)), own)).collect(),
            ),
            outward: padded(own.iter().enumerate().map(|(k, own)| over(between.get(k), own)).collect()),
        }
    }
}
