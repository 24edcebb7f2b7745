//! The belief after the records where misfits are straight lines in the unknowns: draws from it, by Metropolis's rule.
//!
//! Misfits are taken as straight in the factor of an unknown, or in its logarithm where it is drawn in that; what was believed before is exact, with
//! the corner that it has where the two sides of a range differ. No batch is calculated here.

use super::Unknown;
use super::linear::cholesky;
use crate::design::Design;
use crate::numeric::Draws;
use crate::process::LIKELY_SHARES;

/// Rounds of the chain, those that are forgotten at its beginning, and steps in all directions at once in each round.
const ROUNDS: usize = 4000;
const FORGOTTEN: usize = 400;
const JOINT_STEPS: usize = 4;
/// Always the same chain.
const SEED: u64 = 20_260;

/// What a place is measured in: the factor, or its logarithm.
pub(super) fn scale(unknown: Unknown, design: &Design, place: f64) -> f64 {
    let factor = unknown.factor(design, place);
    if unknown.is_in_logarithm(design) { factor.ln() } else { factor }
}

/// Straight misfits about some places.
pub(super) struct Straight<'a> {
    pub(super) unknowns: &'a [Unknown],
    pub(super) design: &'a Design,
    /// The places.
    pub(super) places: &'a [f64],
    /// The misfits there.
    pub(super) off: &'a [f64],
    /// How each moves with the scale of each unknown.
    pub(super) slopes: &'a [Vec<f64>],
}

/// What was drawn: for each unknown its places.
pub(super) struct Drawn(pub(super) Vec<Vec<f64>>);

impl Straight<'_> {
    /// Returns places drawn from the belief; none only where numbers are not finite.
    ///
    /// `covariance`: of the places as a normal distribution has them, which tells in which directions to step
    pub(super) fn drawn(&self, covariance: &[Vec<f64>]) -> Option<Drawn> {
        let size = self.places.len();
        let lower = cholesky(covariance)?;
        let mut chain = Chain::at(self);
        let mut drawn = vec![Vec::with_capacity(ROUNDS - FORGOTTEN); size];
        // The best step in so many directions (Gelman, Roberts and Gilks 1996).
        let joint = 2.38 / (size as f64).sqrt();
        let alone: Vec<f64> = (0..size).map(|at| 2.38 * chain.own_spread(at)).collect();
        for round in 0..ROUNDS {
            for (at, step) in alone.iter().enumerate() {
                let mut by = vec![0.0; size];
                *by.get_mut(at)? = step * chain.normal();
                chain.step(&by);
            }
            for _ in 0..JOINT_STEPS {
                let even: Vec<f64> = (0..size).map(|_| joint * chain.normal()).collect();
                let by: Vec<f64> = lower.iter().map(|row| dot(row, &even)).collect();
                chain.step(&by);
            }
            if round >= FORGOTTEN {
                drawn.iter_mut().zip(&chain.places).for_each(|(of, place)| of.push(*place));
            }
        }
        Some(Drawn(drawn))
    }
}

/// Where the chain is.
struct Chain<'a> {
    of: &'a Straight<'a>,
    /// S Sᵀ, and S times the misfits at the beginning.
    squares: Vec<Vec<f64>>,
    pull: Vec<f64>,
    begun: Vec<f64>,
    places: Vec<f64>,
    cost: f64,
    chance: Draws,
}

impl<'a> Chain<'a> {
    fn at(of: &'a Straight<'a>) -> Self {
        let squares = of.slopes.iter().map(|one| of.slopes.iter().map(|other| dot(one, other)).collect()).collect();
        let pull = of.slopes.iter().map(|slope| dot(slope, of.off)).collect();
        let mut chain =
            Self { of, squares, pull, begun: Vec::new(), places: of.places.to_vec(), cost: 0.0, chance: Draws::new(SEED) };
        chain.begun = chain.scales(of.places);
        chain.cost = chain.cost_at(of.places);
        chain
    }

    fn scales(&self, places: &[f64]) -> Vec<f64> {
        self.of.unknowns.iter().zip(places).map(|(unknown, place)| scale(*unknown, self.of.design, *place)).collect()
    }

    /// Returns the cost but for what is the same everywhere.
    fn cost_at(&self, places: &[f64]) -> f64 {
        let by: Vec<f64> = self.scales(places).iter().zip(&self.begun).map(|(to, from)| to - from).collect();
        let misfit: f64 =
            self.squares.iter().zip(&self.pull).zip(&by).map(|((row, pull), own)| own * (2.0 * pull + dot(row, &by))).sum();
        misfit + dot(places, places)
    }

    /// Returns how far one place alone may go.
    fn own_spread(&self, at: usize) -> f64 {
        let place = self.places.get(at).copied().unwrap_or_default();
        let moved = self.of.unknowns.get(at).map_or(0.0, |unknown| {
            0.5 * (scale(*unknown, self.of.design, place + 1.0) - scale(*unknown, self.of.design, place - 1.0))
        });
        let square = self.squares.get(at).and_then(|row| row.get(at)).copied().unwrap_or_default();
        (1.0 + square * moved * moved).sqrt().recip()
    }

    fn step(&mut self, by: &[f64]) {
        let there: Vec<f64> = self.places.iter().zip(by).map(|(from, by)| from + by).collect();
        let cost = self.cost_at(&there);
        if cost <= self.cost || self.chance.share() < (0.5 * (self.cost - cost)).exp() {
            (self.places, self.cost) = (there, cost);
        }
    }

    /// The sum of twelve even draws less six has the spread 1 and is nearly normal.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.chance.share()).sum::<f64>() - 6.0
    }
}

impl Drawn {
    /// Returns the mean of the scale of an unknown.
    pub(super) fn mean(&self, at: usize, of: impl Fn(f64) -> f64) -> f64 {
        let places = self.0.get(at).map_or(&[][..], Vec::as_slice);
        places.iter().map(|place| of(*place)).sum::<f64>() / places.len().max(1) as f64
    }

    /// Returns the places of an unknown below which a tenth and nine tenths of the draws lie.
    pub(super) fn tenths(&self, at: usize) -> (f64, f64) {
        let mut places = self.0.get(at).cloned().unwrap_or_default();
        places.sort_by(f64::total_cmp);
        let quantile = |share: f64| crate::numeric::quantile(&places, share).unwrap_or_default();
        (quantile(LIKELY_SHARES.0), quantile(LIKELY_SHARES.1))
    }
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}
