//! Many tridiagonal systems at once: all lines of a grid in one direction, eliminated side by side.
#![allow(
    clippy::indexing_slicing,
    clippy::inline_always,
    clippy::needless_range_loop,
    reason = "a numeric kernel: every index is bounded by the lengths set in `new`, checks would cost half its time, and a loop goes several at a time only where no call is left in it"
)]

use super::lanes::LANES;

/// `lines` tridiagonal systems of `length` unknowns each, stored so that the same unknown of all lines lies together.
///
/// Unknown `k` of line `l` is at `k * lines + l`: the inner loop over lines has no dependence, which a processor does several at a time, the
/// best where the number of lines is whole lanes.
#[derive(Clone, Debug)]
pub struct LineSystem {
    lines: usize,
    length: usize,
    /// Coefficient of the unknown before; not used at the first.
    pub below: Vec<f64>,
    /// Coefficient of the unknown itself.
    pub diagonal: Vec<f64>,
    /// Coefficient of the unknown after; not used at the last.
    pub above: Vec<f64>,
}

impl LineSystem {
    /// Returns systems whose coefficients are all zero.
    #[must_use]
    pub fn new(lines: usize, length: usize) -> Self {
        let zeros = vec![0.0; lines * length];
        Self { lines, length, below: zeros.clone(), diagonal: zeros.clone(), above: zeros }
    }

    /// Fills in implicit diffusion, I − factor · ∂(flow in and out)/∂x, where what flows from an unknown is as steep there as its `slope`.
    ///
    /// # Arguments
    /// * `inward`, `outward`: conductance to the unknown before and after, over what the unknown owns, as long as a line
    /// * `slope`: in the order of the unknowns
    #[inline(always)]
    pub fn fill_diffusion(&mut self, inward: &[f64], outward: &[f64], slope: &[f64], factor: f64) {
        let lines = self.lines;
        for k in 0..self.length {
            let (inward, outward) = (factor * inward[k], factor * outward[k]);
            let here = k * lines..(k + 1) * lines;
            let before = if k > 0 { (k - 1) * lines..k * lines } else { here.clone() };
            let after = if k + 1 < self.length { (k + 1) * lines..(k + 2) * lines } else { here.clone() };
            let both = inward + outward;
            set(&mut self.diagonal[here.clone()], &slope[here.clone()], |slope| 1.0 + both * slope);
            set(&mut self.below[here.clone()], &slope[before], |slope| -inward * slope);
            set(&mut self.above[here], &slope[after], |slope| -outward * slope);
        }
    }

    /// Eliminates (Thomas): afterwards `diagonal` holds inverse pivots and `above` the eliminated coefficients, and [`LineSystem::solve`] may be called.
    ///
    /// No pivoting: the systems are diagonally dominant by columns, as those of implicit diffusion are.
    #[inline(always)]
    pub fn eliminate(&mut self) {
        let lines = self.lines;
        for pivot in &mut self.diagonal[..lines] {
            *pivot = 1.0 / *pivot;
        }
        for k in 1..self.length {
            let (done, rest) = self.diagonal.split_at_mut(k * lines);
            let pivots = &done[(k - 1) * lines..];
            let above = &mut self.above[(k - 1) * lines..k * lines];
            let below = &self.below[k * lines..(k + 1) * lines];
            let (pivot_lanes, pivot_rest) = pivots.as_chunks::<LANES>();
            let (above_lanes, above_rest) = above.as_chunks_mut::<LANES>();
            let (below_lanes, below_rest) = below.as_chunks::<LANES>();
            let (now_lanes, now_rest) = rest[..lines].as_chunks_mut::<LANES>();
            for (((now, below), above), pivot) in now_lanes.iter_mut().zip(below_lanes).zip(above_lanes).zip(pivot_lanes) {
                for l in 0..LANES {
                    above[l] *= pivot[l];
                    now[l] = 1.0 / (now[l] - below[l] * above[l]);
                }
            }
            for (((now, below), above), pivot) in now_rest.iter_mut().zip(below_rest).zip(above_rest).zip(pivot_rest) {
                *above *= pivot;
                *now = 1.0 / (*now - below * *above);
            }
        }
    }

    /// Solves in place for one right-hand side, after [`LineSystem::eliminate`].
    #[inline(always)]
    pub fn solve(&self, x: &mut [f64]) {
        self.solve_all([x]);
    }

    /// Solves in place for several right-hand sides, which share the way through the coefficients.
    #[inline(always)]
    pub fn solve_all<const SIDES: usize>(&self, mut sides: [&mut [f64]; SIDES]) {
        let lines = self.lines;
        for x in &mut sides {
            for (x, pivot) in x.iter_mut().zip(&self.diagonal[..lines]) {
                *x *= pivot;
            }
        }
        for k in 1..self.length {
            let here = k * lines..(k + 1) * lines;
            let (below_lanes, below_rest) = self.below[here.clone()].as_chunks::<LANES>();
            let (pivot_lanes, pivot_rest) = self.diagonal[here].as_chunks::<LANES>();
            for x in &mut sides {
                let (done, rest) = x.split_at_mut(k * lines);
                let (before_lanes, before_rest) = done[(k - 1) * lines..].as_chunks::<LANES>();
                let (now_lanes, now_rest) = rest[..lines].as_chunks_mut::<LANES>();
                for (((now, below), pivot), before) in now_lanes.iter_mut().zip(below_lanes).zip(pivot_lanes).zip(before_lanes) {
                    for l in 0..LANES {
                        now[l] = (now[l] - below[l] * before[l]) * pivot[l];
                    }
                }
                for (((now, below), pivot), before) in now_rest.iter_mut().zip(below_rest).zip(pivot_rest).zip(before_rest) {
                    *now = (*now - below * before) * pivot;
                }
            }
        }
        self.solve_back(sides);
    }

    /// Does the second half of [`LineSystem::solve`], which is all of it where only the last unknowns have a right-hand side, each times its
    /// inverse pivot.
    #[inline(always)]
    pub fn solve_back<const SIDES: usize>(&self, mut sides: [&mut [f64]; SIDES]) {
        let lines = self.lines;
        for k in (1..self.length).rev() {
            let (above_lanes, above_rest) = self.above[(k - 1) * lines..k * lines].as_chunks::<LANES>();
            for x in &mut sides {
                let (rest, done) = x.split_at_mut(k * lines);
                let (after_lanes, after_rest) = done[..lines].as_chunks::<LANES>();
                let (now_lanes, now_rest) = rest[(k - 1) * lines..].as_chunks_mut::<LANES>();
                for ((now, above), after) in now_lanes.iter_mut().zip(above_lanes).zip(after_lanes) {
                    for l in 0..LANES {
                        now[l] -= above[l] * after[l];
                    }
                }
                for ((now, above), after) in now_rest.iter_mut().zip(above_rest).zip(after_rest) {
                    *now -= above * after;
                }
            }
        }
    }
}

#[inline(always)]
fn set(to: &mut [f64], from: &[f64], of: impl Fn(f64) -> f64) {
    let (to_lanes, to_rest) = to.as_chunks_mut::<LANES>();
    let (from_lanes, from_rest) = from.as_chunks::<LANES>();
    for (to, from) in to_lanes.iter_mut().zip(from_lanes) {
        for l in 0..LANES {
            to[l] = of(from[l]);
        }
    }
    for (to, from) in to_rest.iter_mut().zip(from_rest) {
        *to = of(*from);
    }
}
