//! Monotone curves through tables.

use proptest::prelude::*;
use vatsketch::numeric::monotone;

/// Returns the curve through two lists.
fn through(xs: &[f64], ys: &[f64], x: f64) -> f64 {
    let points: Vec<(f64, f64)> = xs.iter().copied().zip(ys.iter().copied()).collect();
    monotone(&points, x)
}

#[test]
fn the_curve_goes_through_its_points_and_keeps_its_ends_beyond_them() {
    let (xs, ys) = ([1.0, 2.0, 4.0, 7.0], [3.0, 5.0, 4.0, -2.0]);
    for (x, y) in xs.into_iter().zip(ys) {
        assert!((through(&xs, &ys, x) - y).abs() < 1e-12);
    }
    assert_eq!(through(&xs, &ys, 0.0), 3.0);
    assert_eq!(through(&xs, &ys, 8.0), -2.0);
}

#[test]
fn a_straight_table_gives_a_straight_curve() {
    let (xs, ys) = ([0.0, 1.0, 3.0, 4.0], [1.0, 3.0, 7.0, 9.0]);
    for step in 0..=40 {
        let x = f64::from(step) / 10.0;
        assert!((through(&xs, &ys, x) - (1.0 + 2.0 * x)).abs() < 1e-12);
    }
}

#[test]
fn an_empty_table_gives_no_number_and_a_single_point_its_value() {
    assert!(monotone(&[], 1.0).is_nan());
    assert_eq!(monotone(&[(1.0, 5.0)], 3.0), 5.0);
    assert!(monotone(&[(1.0, 1.0), (2.0, 2.0)], f64::NAN).is_nan());
}

/// Halving the spacing shrinks the miss on e^x at least fourfold: second order where the ends are straight chords, more inside.
#[test]
fn the_curve_comes_nearer_with_the_square_of_the_spacing() {
    let miss = |points: i32| {
        let xs: Vec<f64> = (0..=points).map(|at| f64::from(at) / f64::from(points)).collect();
        let ys: Vec<f64> = xs.iter().map(|x| x.exp()).collect();
        (0..=1000).map(|at| f64::from(at) / 1000.0).map(|x| (through(&xs, &ys, x) - x.exp()).abs()).fold(0.0, f64::max)
    };
    let (coarse, fine) = (miss(8), miss(16));
    assert!(coarse / fine > 3.5, "{coarse} to {fine}");
}

proptest! {
    #[test]
    fn between_two_points_the_curve_stays_between_them(ys in proptest::collection::vec(-10.0..10.0_f64, 5), x in 0.0..4.0_f64) {
        let xs = [0.0, 1.0, 2.0, 3.0, 4.0];
        let at = (x as usize).min(3);
        let value = through(&xs, &ys, x);
        prop_assert!(value >= ys[at].min(ys[at + 1]) - 1e-9 && value <= ys[at].max(ys[at + 1]) + 1e-9);
    }
}
