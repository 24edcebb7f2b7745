//! Tables of measured points, read between the points without over-shooting.

/// Returns the value at `x` of a table of (x, y) points in ascending x, by a cubic through each pair that never leaves the pair's range.
///
/// Slopes at the points are the weighted harmonic mean of the neighbouring slopes, or zero at a turn (Fritsch and Butland 1984, from
/// memory); at an end that of the parabola through three points, held likewise. Outside the table the end value is kept.
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
    if x.is_nan() {
        return f64::NAN;
    }
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
    let slope_left = before.map_or_else(|| end_slope(left, right, beyond), |before| slope(before, left, right));
    let slope_right = beyond.map_or_else(|| end_slope(right, left, before), |beyond| slope(left, right, beyond));
    let s = (x - left.0) / width;
    let (s2, s3) = (s * s, s * s * s);
    left.1 * (2.0 * s3 - 3.0 * s2 + 1.0)
        + right.1 * (3.0 * s2 - 2.0 * s3)
        + width * (slope_left * (s3 - 2.0 * s2 + s) + slope_right * (s3 - s2))
}

/// Returns the slope of the straight line through two points; which of them comes first does not matter.
fn secant(from: (f64, f64), to: (f64, f64)) -> f64 {
    (to.1 - from.1) / (to.0 - from.0)
}

/// Returns the slope at a point between two others.
fn slope(before: (f64, f64), point: (f64, f64), after: (f64, f64)) -> f64 {
    let (left, right) = (secant(before, point), secant(point, after));
    if left * right <= 0.0 {
        return 0.0;
    }
    let (h_left, h_right) = (point.0 - before.0, after.0 - point.0);
    let (w_left, w_right) = (2.0 * h_right + h_left, h_right + 2.0 * h_left);
    (w_left + w_right) / (w_left / left + w_right / right)
}

/// Returns the slope at an end, from its neighbour and the one after that.
fn end_slope(end: (f64, f64), next: (f64, f64), further: Option<(f64, f64)>) -> f64 {
    let near = secant(end, next);
    let Some(further) = further else { return near };
    let far = secant(next, further);
    let (h_near, h_far) = (next.0 - end.0, further.0 - next.0);
    let parabola = ((2.0 * h_near + h_far) * near - h_near * far) / (h_near + h_far);
    if parabola * near <= 0.0 {
        0.0
    } else if near * far <= 0.0 && parabola.abs() > 3.0 * near.abs() {
        3.0 * near
    } else {
        parabola
    }
}
