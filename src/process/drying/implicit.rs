//! The implicit part of a step: two families of lines, and the disc's temperature coupled to all of them.
#![allow(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]

use super::rates::{DiscRates, Work};
use super::shape::Shape;
use crate::numeric::{LineSystem, turn_lanes};

impl Work {
    /// Fills and eliminates both implicit systems, I − γ·step·(∂rate/∂X in one direction).
    #[inline(always)]
    pub(super) fn assemble(&mut self, implicit_s: f64, look: DiscRates) {
        let diffuses = implicit_s * look.diffusivity_m2_s;
        let (along_radius, along_height) = (&self.along_radius, &self.along_height);
        self.radial.fill_diffusion(&along_radius.inward, &along_radius.outward, &self.strength, diffuses);
        turn_lanes(&self.strength, &mut self.turned, self.shape.rows, self.shape.columns);
        self.axial.fill_diffusion(&along_height.inward, &along_height.outward, &self.turned, diffuses);
        self.skin.damp(&mut self.radial, &mut self.axial, implicit_s);
        self.radial.eliminate();
        self.axial.eliminate();
    }

    /// Solves the implicit system of all rings and the disc's temperature for one stage, in place; returns the stage's warming.
    ///
    /// Eliminated by blocks: x = M⁻¹ r + γh T M⁻¹ b and T (1 − γh s − (γh)² c·M⁻¹ b) = r_T + γh c·M⁻¹ r, with b how the rings answer to
    /// warmth and c how the disc cools as its faces are wet. Left explicit, this coupling would force steps of a minute. The second stage has the
    /// coupling of the first.
    #[inline(always)]
    pub(super) fn solve_coupled(
        &mut self,
        which: Which,
        (warming_k_s, warming_slope): (f64, f64),
        implicit_s: f64,
        warms: bool,
    ) -> f64 {
        let Self { radial, axial, shape, first, second, answer_to_warmth, turned, turned_answer, .. } = self;
        let stage: &mut [f64] = match which {
            Which::First if warms => {
                radial.solve_all([first, answer_to_warmth]);
                turn_lanes(first, turned, shape.rows, shape.columns);
                turn_lanes(answer_to_warmth, turned_answer, shape.rows, shape.columns);
                axial.solve_all([turned, turned_answer]);
                turn_lanes(turned, first, shape.columns, shape.rows);
                turn_lanes(turned_answer, answer_to_warmth, shape.columns, shape.rows);
                first
            }
            Which::First => solved(radial, axial, *shape, first, turned),
            Which::Second => solved(radial, axial, *shape, second, turned),
        };
        if !warms {
            return 0.0;
        }
        let pivot = 1.0 - implicit_s * warming_slope - implicit_s * implicit_s * self.skin.cooled_by(&self.answer_to_warmth);
        let warmed = (warming_k_s + implicit_s * self.skin.cooled_by(stage)) / pivot;
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
#[inline(always)]
fn solved<'a>(radial: &LineSystem, axial: &LineSystem, shape: Shape, x: &'a mut [f64], turned: &mut [f64]) -> &'a mut [f64] {
    radial.solve(x);
    turn_lanes(x, turned, shape.rows, shape.columns);
    axial.solve(turned);
    turn_lanes(turned, x, shape.columns, shape.rows);
    x
}
