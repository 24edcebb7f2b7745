//! Tables of measured points, read between the points without over-shooting.

/// Returns the value at `x` of a table of (x, y) points in ascending x, by a cubic through each pair that never leaves the pair's range.
///
/// Slopes at the points are the weighted harmonic mean of the neighbouring slopes, or zero at a turn (Fritsch and Carlson 1980, from
/// memory). Outside the table the end value is kept.
///
/// # Arguments
/// * `points`: at least one, x ascending
///
/// # Example
/// ```
/// let table = [(0.0, 0.0), (1.0, 1.0), (2.0, 1.0)];
/// assert_eq!(vatsketch::numeric::monotone(&table, 1.0), 1.0);
/// assert!(vatsketch::numeric::monotone(&table, 1.5) <= 1.0);
/// ```
#[must_use]
pub fn monotone(points: &[(f64, f64)], x: f64) -> f64 {
    let (Some(first), Some(last)) = (points.first(), points.last()) else { return f64::NAN };
    if x <= first.0 {
        return first.1;
    }
    if x >= last.0 {
        return last.1;
    }
    let after = points.partition_point(|point| point.0 <= x);
    let at = |index: usize| points.get(index).copied();
    let (Some(left), Some(right)) = (at(after - 1), at(after)) else { return last.1 };
    let before = after.checked_sub(2).and_then(at);
    let beyond = at(after + 1);
    let width = right.0 - left.0;
    let slope_left = slope(before, left, Some(right));
    let slope_right = slope(Some(left), right, beyond);
    let s = (x - left.0) / width;
    let (s2, s3) = (s * s, s * s * s);
    left.1 * (2.0 * s3 - 3.0 * s2 + 1.0)
        + right.1 * (3.0 * s2 - 2.0 * s3)
        + width * (slope_left * (s3 - 2.0 * s2 + s) + slope_right * (s3 - s2))
}

/// Returns the slope at a point from its neighbours; at an end, that of the only interval.
fn slope(before: Option<(f64, f64)>, point: (f64, f64), after: Option<(f64, f64)>) -> f64 {
    let secant = |from: (f64, f64), to: (f64, f64)| (to.1 - from.1) / (to.0 - from.0);
    match (before, after) {
        (Some(before), Some(after)) => {
            let (left, right) = (secant(before, point), secant(point, after));
            if left * right <= 0.0 {
                return 0.0;
            }
            let (h_left, h_right) = (point.0 - before.0, after.0 - point.0);
            let (w_left, w_right) = (2.0 * h_right + h_left, h_right + 2.0 * h_left);
            (w_left + w_right) / (w_left / left + w_right / right)
        }
        (Some(before), None) => secant(before, point),
        (None, Some(after)) => secant(point, after),
        (None, None) => 0.0,
    }
}
