//! The implicit part of a step: two families of lines, and the disc's temperature coupled to all of them.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use super::problem::Problem;
use super::rates::{DiscRates, LEAST_WATER, Work};
use crate::numeric::{DiscGrid, GAMMA, LineSystem};

impl Work {
    /// Fills and eliminates both implicit systems, I − γ·step·(∂rate/∂X in one direction).
    pub(super) fn assemble(&mut self, problem: &Problem, water: &[f64], step_s: f64, look: DiscRates) {
        let grid = &problem.grid;
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let implicit_s = GAMMA * step_s;
        let diffusion = problem.diffusion;
        for (turned, x) in self.turned.iter_mut().zip(water) {
            *turned = implicit_s * look.diffusivity_m2_s * diffusion.relative(x.max(LEAST_WATER));
        }
        let strength = &self.turned;
        for i in 0..radii {
            let area = grid.ring_area_m2[i];
            let inward = if i > 0 { grid.radial[i - 1] / area } else { 0.0 };
            let outward = if i + 1 < radii { grid.radial[i] / area } else { 0.0 };
            for j in 0..heights {
                let at = i * heights + j;
                self.radial.below[at] = if i > 0 { -inward * strength[at - heights] } else { 0.0 };
                self.radial.above[at] = if i + 1 < radii { -outward * strength[at + heights] } else { 0.0 };
                self.radial.diagonal[at] = 1.0 + (inward + outward) * strength[at];
            }
        }
        let rim = (radii - 1) * heights;
        for j in 0..heights {
            self.radial.diagonal[rim + j] += implicit_s * self.side_slope[j];
        }
        for j in 0..heights {
            let layer = grid.layer_m[j];
            let down = if j > 0 { grid.axial[j - 1] / layer } else { 0.0 };
            let up = if j + 1 < heights { grid.axial[j] / layer } else { 0.0 };
            for i in 0..radii {
                let (at, from) = (j * radii + i, i * heights + j);
                self.axial.below[at] = if j > 0 { -down * strength[from - 1] } else { 0.0 };
                self.axial.above[at] = if j + 1 < heights { -up * strength[from + 1] } else { 0.0 };
                self.axial.diagonal[at] = 1.0 + (down + up) * strength[from];
            }
        }
        for i in 0..radii {
            self.axial.diagonal[(heights - 1) * radii + i] += implicit_s * self.top_slope[i];
            self.axial.diagonal[i] += implicit_s * self.underside_slope[i];
        }
        self.radial.eliminate();
        self.axial.eliminate();
    }

    /// Solves the implicit system of all rings and the disc's temperature for one stage, in place; returns the stage's warming.
    ///
    /// Eliminated by blocks: x = M⁻¹ r + γh T M⁻¹ b and T (1 − γh s − (γh)² c·M⁻¹ b) = r_T + γh c·M⁻¹ r, with b how the rings answer to
    /// warmth and c how the disc cools as its faces are wet. Left explicit, this coupling would force steps of a minute.
    pub(super) fn solve_coupled(
        &mut self,
        grid: &DiscGrid,
        which: Which,
        warming_k_s: f64,
        warming_slope: f64,
        implicit_s: f64,
    ) -> f64 {
        if which == Which::First {
            self.answer_to_warmth.copy_from_slice(&self.rate_with_warmth);
            solve_both(&self.radial, &self.axial, grid, &mut self.answer_to_warmth, &mut self.turned);
            // The second stage uses the first's coupling, although its own look has overwritten these.
            self.kept_cooling.copy_from_slice(&self.warming_with_water);
        }
        let stage = if which == Which::First { &mut self.first } else { &mut self.second };
        solve_both(&self.radial, &self.axial, grid, stage, &mut self.turned);
        let dot = |x: &[f64]| x.iter().zip(&self.kept_cooling).map(|(x, c)| x * c).sum::<f64>();
        let pivot = 1.0 - implicit_s * warming_slope - implicit_s * implicit_s * dot(&self.answer_to_warmth);
        let warmed = (warming_k_s + implicit_s * dot(stage)) / pivot;
        for (x, answer) in stage.iter_mut().zip(&self.answer_to_warmth) {
            *x += implicit_s * warmed * answer;
        }
        warmed
    }
}

/// Which stage of a step.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Which {
    First,
    Second,
}

/// Solves for one direction after the other, in place.
fn solve_both(radial: &LineSystem, axial: &LineSystem, grid: &DiscGrid, x: &mut [f64], turned: &mut [f64]) {
    let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
    radial.solve(x);
    for i in 0..radii {
        for j in 0..heights {
            turned[j * radii + i] = x[i * heights + j];
        }
    }
    axial.solve(turned);
    for i in 0..radii {
        for j in 0..heights {
            x[i * heights + j] = turned[j * radii + i];
        }
    }
}
