//! Curves through the points of a table that rise and fall only where the table does.
#![allow(clippy::indexing_slicing, reason = "the lengths are checked once, before any index is taken")]

/// Returns the value at `x` of the monotone cubic through the points (`xs`, `ys`); beyond the table its first or last chord goes straight on.
///
/// Between two points the cubic of Hermite; the slope at a point is the weighted harmonic mean of the slopes beside it, and nought at a peak,
/// so that the curve never swings past the table. It is not a number where the table has fewer than two points, or lists of unequal length.
///
/// # Arguments
/// * `xs`: arguments, strictly rising
/// * `ys`: values, as many
/// * `x`: where the value is wanted
///
/// # Source
/// F. N. Fritsch and J. Butland 1984, SIAM J. Sci. Stat. Comput. 5:300 (from memory).
///
/// # Example
/// ```
/// use vatsketch::numeric::monotone;
/// let (xs, ys) = ([0.0, 1.0, 2.0], [0.0, 1.0, 4.0]);
/// assert_eq!(monotone(&xs, &ys, 1.0), 1.0);
/// assert_eq!(monotone(&xs, &ys, 3.0), 7.0);
/// ```
#[must_use]
pub fn monotone(xs: &[f64], ys: &[f64], x: f64) -> f64 {
    let last = xs.len().saturating_sub(1);
    let usable = last >= 1 && xs.len() == ys.len();
    if !usable {
        return f64::NAN;
    }
    let chord = |at: usize| (ys[at + 1] - ys[at]) / (xs[at + 1] - xs[at]);
    if x <= xs[0] {
        return ys[0] + chord(0) * (x - xs[0]);
    }
    if x >= xs[last] {
        return ys[last] + chord(last - 1) * (x - xs[last]);
    }
    let slope = |at: usize| {
        if at == 0 || at == last {
            return chord(at.min(last - 1));
        }
        let (before, after) = (chord(at - 1), chord(at));
        if before * after <= 0.0 {
            return 0.0;
        }
        let (width_before, width_after) = (xs[at] - xs[at - 1], xs[at + 1] - xs[at]);
        let (w1, w2) = (2.0 * width_after + width_before, width_after + 2.0 * width_before);
        (w1 + w2) / (w1 / before + w2 / after)
    };
    let at = xs.partition_point(|point| *point <= x).clamp(1, last) - 1;
    let width = xs[at + 1] - xs[at];
    let s = (x - xs[at]) / width;
    let rest = 1.0 - s;
    rest * rest * ((1.0 + 2.0 * s) * ys[at] + s * width * slope(at))
        + s * s * ((1.0 + 2.0 * rest) * ys[at + 1] - rest * width * slope(at + 1))
}
