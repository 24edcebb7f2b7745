//! Many tridiagonal systems at once: all lines of a grid in one direction, eliminated side by side.
#![allow(
    clippy::indexing_slicing,
    reason = "a numeric kernel: every index is bounded by the lengths set in `new`, and checks would cost half its time"
)]

/// `lines` tridiagonal systems of `length` unknowns each, stored so that the same unknown of all lines lies together.
///
/// Unknown `k` of line `l` is at `k * lines + l`: the inner loop over lines has no dependence, which a processor does several at a time.
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

    /// Eliminates (Thomas): afterwards `diagonal` holds inverse pivots and `above` the eliminated coefficients, and [`LineSystem::solve`] may be called.
    ///
    /// No pivoting: the systems are diagonally dominant by columns, as those of implicit diffusion are.
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
            for (((now, below), above), pivot) in rest[..lines].iter_mut().zip(below).zip(above).zip(pivots) {
                *above *= pivot;
                *now = 1.0 / (*now - below * *above);
            }
        }
    }

    /// Solves in place for one right-hand side, after [`LineSystem::eliminate`].
    pub fn solve(&self, x: &mut [f64]) {
        let (lines, all) = (self.lines, self.lines * self.length);
        let x = &mut x[..all];
        for (x, pivot) in x.iter_mut().zip(&self.diagonal[..lines]) {
            *x *= pivot;
        }
        for k in 1..self.length {
            let (done, rest) = x.split_at_mut(k * lines);
            let before = &done[(k - 1) * lines..];
            let (below, pivots) = (&self.below[k * lines..(k + 1) * lines], &self.diagonal[k * lines..(k + 1) * lines]);
            for (((now, below), pivot), before) in rest[..lines].iter_mut().zip(below).zip(pivots).zip(before) {
                *now = (*now - below * before) * pivot;
            }
        }
        for k in (1..self.length).rev() {
            let (rest, done) = x.split_at_mut(k * lines);
            let above = &self.above[(k - 1) * lines..k * lines];
            for ((now, above), after) in rest[(k - 1) * lines..].iter_mut().zip(above).zip(done.iter()) {
                *now -= above * after;
            }
        }
    }
}
