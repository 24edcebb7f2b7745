//! The way to the belief after the records: straight misfits about some places, draws from the belief that follows, and again from their mean.

use super::chain::{Drawn, Straight, scale};
use super::groups::Groups;
use super::problem::{Point, Problem, cost, covariance, slope_step, taken};
use super::{LearnError, Unknown};
use crate::design::Design;

/// Steps at most, and how small one must be to be the last, in standard deviations of the belief before.
const STEPS: usize = 6;
const LAST_STEP: f64 = 0.15;
/// A step is halved so often, where it is worse at its end.
const HALVED: i32 = 4;

/// Where the way ends.
pub(super) struct Found {
    /// The mean of what was drawn.
    pub(super) end: Point,
    /// Draws from the belief.
    pub(super) drawn: Drawn,
}

/// Goes the way.
///
/// `slopes`: how each misfit moves with each place at the beginning
pub(super) fn found(
    problem: &Problem<'_>,
    start: Point,
    mut slopes: Vec<Vec<f64>>,
    (groups, design): (&Groups, &Design),
) -> Result<Found, LearnError> {
    let mut here = start;
    for step in 1.. {
        let (worse, drawn) = believed(problem, &here, &slopes, (groups, design))?;
        let mean = mean_places(&problem.unknowns, design, &drawn);
        let dear = |point: &Point| cost(&groups.independent(&point.off(), &worse), &point.places);
        let now = dear(&here);
        let mut there = None;
        for half in 0..=HALVED {
            let part = 0.5_f64.powi(half);
            let places = here.places.iter().zip(&mean).map(|(from, to)| from + part * (to - from)).collect();
            let point = problem.at(places, Some(&here))?;
            // The mean is not the least of the cost: it may be a little above it.
            if dear(&point) < now + 1.0 {
                there = Some(point);
                break;
            }
        }
        let Some(there) = there else { return Ok(Found { end: here, drawn }) };
        let moved = there.places.iter().zip(&here.places).map(|(to, from)| (to - from).abs()).fold(0.0, f64::max);
        here = there;
        if moved < LAST_STEP || step >= STEPS {
            return Ok(Found { end: here, drawn });
        }
        slopes = problem.slopes(&here)?;
    }
    Err(LearnError::NotFinite)
}

/// Returns how much worse than it scatters each reading is met, and draws from the belief.
fn believed(
    problem: &Problem<'_>,
    here: &Point,
    slopes: &[Vec<f64>],
    (groups, design): (&Groups, &Design),
) -> Result<(Vec<f64>, Drawn), LearnError> {
    let blurred = here.blurred();
    let with = |worse: &[f64]| -> Vec<Vec<f64>> { slopes.iter().map(|slope| groups.independent(slope, worse)).collect() };
    let as_read = with(&blurred);
    let off = groups.independent(&here.off(), &blurred);
    let share = taken(&as_read, &covariance(&as_read).ok_or(LearnError::NotFinite)?, off.len());
    // At the beginning the unknowns have not taken their share yet; what is left then is not the model's fault.
    let left = left_after(&as_read, &off).ok_or(LearnError::NotFinite)?;
    let worse = groups.worse(&blurred, &left, &share);
    let own = with(&worse);
    let covariance = covariance(&own).ok_or(LearnError::NotFinite)?;
    let in_scale = |((slope, unknown), place): ((Vec<f64>, &Unknown), &f64)| -> Vec<f64> {
        let moved = slope_step(*place);
        let by = (scale(*unknown, design, place + moved) - scale(*unknown, design, *place)) / moved;
        slope.iter().map(|own| own / by).collect()
    };
    let straight = Straight {
        unknowns: &problem.unknowns,
        design,
        places: &here.places,
        off: &groups.independent(&here.off(), &worse),
        slopes: &own.into_iter().zip(&problem.unknowns).zip(&here.places).map(in_scale).collect::<Vec<_>>(),
    };
    let drawn = straight.drawn(&covariance).ok_or(LearnError::NotFinite)?;
    Ok((worse, drawn))
}

/// Returns what would be left of misfits if all slopes stayed and the unknowns went where they are least.
fn left_after(slopes: &[Vec<f64>], off: &[f64]) -> Option<Vec<f64>> {
    let covariance = covariance(slopes)?;
    let dot = |one: &[f64], other: &[f64]| one.iter().zip(other).map(|(a, b)| a * b).sum::<f64>();
    let pull: Vec<f64> = slopes.iter().map(|slope| dot(slope, off)).collect();
    let step: Vec<f64> = covariance.iter().map(|row| -dot(row, &pull)).collect();
    let mut left = off.to_vec();
    for (slope, by) in slopes.iter().zip(&step) {
        left.iter_mut().zip(slope).for_each(|(left, slope)| *left += by * slope);
    }
    Some(left)
}

/// Returns the places at which each unknown is what the draws have as their mean.
fn mean_places(unknowns: &[Unknown], design: &Design, drawn: &Drawn) -> Vec<f64> {
    let place = |(at, unknown): (usize, &Unknown)| {
        let mean = drawn.mean(at, |place| scale(*unknown, design, place));
        let (mut low, mut high) = (-6.0, 6.0);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if scale(*unknown, design, middle) < mean { low = middle } else { high = middle }
        }
        0.5 * (low + high)
    };
    unknowns.iter().enumerate().map(place).collect()
}
