//! Many numbers a few at a time: lengths that a processor takes without a rest, a grid turned on its side, and a sum of products.
#![allow(
    clippy::indexing_slicing,
    clippy::needless_range_loop,
    reason = "a numeric kernel: all indices run over lengths that are checked at the beginning"
)]

/// Numbers that are taken at a time.
pub const LANES: usize = 4;

/// Returns a length rounded up to whole lanes.
///
/// # Example
/// ```
/// assert_eq!([7, 8, 9].map(vatsketch::numeric::in_lanes), [8, 8, 12]);
/// ```
#[must_use]
pub const fn in_lanes(length: usize) -> usize {
    length.next_multiple_of(LANES)
}

/// Turns a grid of `rows` × `columns`, both whole lanes, on its side.
#[inline(always)]
#[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]
pub fn turn_lanes(from: &[f64], to: &mut [f64], rows: usize, columns: usize) {
    let (from, to) = (&from[..rows * columns], &mut to[..rows * columns]);
    for row in (0..rows).step_by(LANES) {
        for column in (0..columns).step_by(LANES) {
            let mut block = [[0.0; LANES]; LANES];
            for (k, lane) in block.iter_mut().enumerate() {
                lane.copy_from_slice(&from[(row + k) * columns + column..][..LANES]);
            }
            for k in 0..LANES {
                let turned = [block[0][k], block[1][k], block[2][k], block[3][k]];
                to[(column + k) * rows + row..][..LANES].copy_from_slice(&turned);
            }
        }
    }
}

/// Returns Σ x y over two slices, as long as the shorter; added up in as many sums as there are lanes, then those.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::numeric::dot_in_lanes(&[1.0, 2.0, 3.0, 4.0, 5.0], &[1.0; 5]), 15.0);
/// ```
#[must_use]
#[inline(always)]
#[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]
pub fn dot_in_lanes(x: &[f64], y: &[f64]) -> f64 {
    let ((x_lanes, x_rest), (y_lanes, y_rest)) = (x.as_chunks::<LANES>(), y.as_chunks::<LANES>());
    let mut sums = [0.0; LANES];
    for (x, y) in x_lanes.iter().zip(y_lanes) {
        for l in 0..LANES {
            sums[l] += x[l] * y[l];
        }
    }
    let rest: f64 = x_rest.iter().zip(y_rest).map(|(x, y)| x * y).sum();
    (sums[0] + sums[1]) + (sums[2] + sums[3]) + rest
}
