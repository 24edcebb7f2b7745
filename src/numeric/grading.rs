//! Grids that are finer where a function changes fastest.

use super::{Bracket, brent};

/// Returns the nodes of `intervals` intervals on 0 to `length`, finest at `length`: the widest is `ratio` times the last.
///
/// x = length · tanh(d·s)/tanh(d) for s from 0 to 1, with d such that the ratio comes out.
///
/// # Arguments
/// * `intervals`: at least 2
/// * `length`: > 0
/// * `ratio`: widest over narrowest interval, ≥ 1
///
/// # Example
/// ```
/// let nodes = vatsketch::numeric::graded(10, 1.0, 8.0);
/// assert_eq!(nodes.len(), 11);
/// assert!((nodes[1] - nodes[0]) / (nodes[10] - nodes[9]) > 7.99);
/// ```
#[must_use]
pub fn graded(intervals: usize, length: f64, ratio: f64) -> Vec<f64> {
    stretched(intervals, length, ratio, |d, s| (d * s).tanh() / d.tanh())
}

/// Returns the nodes of `intervals` intervals on 0 to `length`, finest at both ends: the widest is `ratio` times the last.
///
/// # Arguments
/// As for [`graded`].
#[must_use]
pub fn graded_both(intervals: usize, length: f64, ratio: f64) -> Vec<f64> {
    stretched(intervals, length, ratio, |d, s| 0.5 * (1.0 + (d * (2.0 * s - 1.0)).tanh() / d.tanh()))
}

fn stretched(intervals: usize, length: f64, ratio: f64, map: impl Fn(f64, f64) -> f64) -> Vec<f64> {
    let count = intervals.max(2);
    let place = |node: usize| node as f64 / count as f64;
    let step = |d: f64, before: usize| map(d, place(before + 1)) - map(d, place(before));
    // The widest interval is the first, or the middle one where both ends are fine: there the map is steepest.
    let excess = |d: f64| step(d, 0).max(step(d, count / 2)) / step(d, count - 1) - ratio;
    // Without a bracket (a ratio of 1 or less) the nodes are even, which is what d → 0 gives.
    let d = brent(excess, Bracket { from: 1e-4, to: 12.0 }, 1e-10).unwrap_or(1e-4);
    (0..=count).map(|node| length * map(d, place(node))).collect()
}
