//! One step of the drying disc.
#![allow(
    clippy::indexing_slicing,
    clippy::inline_always,
    clippy::needless_range_loop,
    reason = "a numeric kernel: all indices run over the grid that the vectors were made for, and a loop goes several at a time only where no call is left in it"
)]

use super::air::AirNow;
use super::implicit::Which;
use super::problem::Problem;
use super::rates::{At, Work};
use crate::numeric::{GAMMA, LANES};

/// Water of a ring, kg per kg of dry solids, that counts as much as what is there in the tolerance of a step.
pub(super) const LITTLE_WATER: f64 = 0.05;
/// Error of the temperature that counts as much as one tolerance of the water, K per unit of tolerance.
const KELVIN_PER_TOLERANCE: f64 = 40.0;
/// Error that stands for a ring with less than no water: far enough above 1 that the step is cut short.
const OVERDRAWN: f64 = 16.0;

impl Work {
    /// Calculates one step from `now` into `trial`; returns its error in tolerances and the warming of the disc.
    ///
    /// # Arguments
    /// * `air`: at its beginning and at its end
    #[inline(always)]
    pub(super) fn try_step(&mut self, problem: &Problem, temperature_c: f64, air: (AirNow, AirNow), step_s: f64) -> (f64, f64) {
        let implicit_s = GAMMA * step_s;
        let look = self.look(problem, At::Now, temperature_c, &air.0);
        self.assemble(implicit_s, look);
        self.first.copy_from_slice(&self.rate);
        let warm_first = self.solve_coupled(Which::First, (look.warming_k_s, look.warming_slope), implicit_s, problem.warms);
        for ((trial, water), first) in self.trial.iter_mut().zip(&self.now).zip(&self.first) {
            *trial = water + step_s * first;
        }
        let later = self.look(problem, At::Trial, temperature_c + step_s * warm_first, &air.1);
        for ((second, rate), first) in self.second.iter_mut().zip(&self.rate).zip(&self.first) {
            *second = rate - 2.0 * first;
        }
        let warming = (later.warming_k_s - 2.0 * warm_first, look.warming_slope);
        let warm_second = self.solve_coupled(Which::Second, warming, implicit_s, problem.warms);
        let (square, below_nothing) = self.finish(step_s, problem.tolerance);
        let water_error = (square / self.volume_m3).sqrt();
        let (warmed_k, warmth_error) = if problem.warms {
            (
                step_s * (1.5 * warm_first + 0.5 * warm_second),
                0.5 * step_s * (warm_first + warm_second) / (problem.tolerance * KELVIN_PER_TOLERANCE),
            )
        } else {
            (air.1.temperature_c - temperature_c, 0.0)
        };
        if below_nothing {
            // The mean forgives one skin that a sudden change of the air overdraws; no ring can hold less than no water.
            return (OVERDRAWN, warmed_k);
        }
        // `max` would drop what is not a number; the sum keeps it.
        let worst = if water_error >= warmth_error.abs() { water_error } else { warmth_error.abs() + 0.0 * water_error };
        (worst, warmed_k)
    }

    /// Fills in where both stages lead; returns the square of the error in tolerances over the volume, and whether a ring holds less than nothing.
    #[inline(always)]
    fn finish(&mut self, step_s: f64, tolerance: f64) -> (f64, bool) {
        let columns = self.shape.columns;
        let layers = self.layer_m.as_chunks::<LANES>().0;
        let per_tolerance = 0.5 * step_s / tolerance;
        let (mut square, mut least) = (0.0, [f64::INFINITY; LANES]);
        for (i, area) in self.area_m2.iter().take(self.shape.radii).enumerate() {
            let row = i * columns..(i + 1) * columns;
            let trials = self.trial[row.clone()].as_chunks_mut::<LANES>().0;
            let stages = self.first[row.clone()].as_chunks::<LANES>().0.iter().zip(self.second[row.clone()].as_chunks::<LANES>().0);
            let waters = self.now[row].as_chunks::<LANES>().0;
            let mut sums = [0.0; LANES];
            for (((trial, water), (first, second)), layer) in trials.iter_mut().zip(waters).zip(stages).zip(layers) {
                for l in 0..LANES {
                    let error = per_tolerance * (first[l] + second[l]) / (LITTLE_WATER + water[l].abs());
                    sums[l] += layer[l] * error * error;
                    trial[l] = water[l] + step_s * (1.5 * first[l] + 0.5 * second[l]);
                    least[l] = if trial[l] < least[l] { trial[l] } else { least[l] };
                }
            }
            square += area * ((sums[0] + sums[1]) + (sums[2] + sums[3]));
        }
        (square, least.iter().any(|least| *least < 0.0))
    }
}
