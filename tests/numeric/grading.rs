//! Grids that are finer where a function changes fastest.

use proptest::prelude::*;
use vatsketch::numeric::{graded, graded_both};

fn steps(nodes: &[f64]) -> Vec<f64> {
    nodes.windows(2).map(|pair| pair[1] - pair[0]).collect()
}

/// By hand: of two intervals the first, three times the last, is three quarters of the length.
#[test]
fn two_intervals_in_a_ratio_of_three_split_at_three_quarters() {
    let nodes = graded(2, 4.0, 3.0);
    assert_eq!(nodes.len(), 3);
    assert!((nodes[1] - 3.0).abs() < 1e-8, "{nodes:?}");
}

#[test]
fn without_a_ratio_the_nodes_are_even() {
    // The map of d = 1e-4 differs from a straight line by d²/3.
    for ratio in [1.0, 0.5, -2.0, f64::NAN] {
        for nodes in [graded(5, 1.0, ratio), graded_both(5, 1.0, ratio)] {
            for (at, node) in nodes.iter().enumerate() {
                assert!((node - at as f64 / 5.0).abs() < 1e-8, "{ratio}: {nodes:?}");
            }
        }
    }
}

#[test]
fn fewer_than_two_intervals_are_two() {
    assert_eq!(graded(0, 1.0, 2.0).len(), 3);
    assert_eq!(graded_both(1, 1.0, 2.0).len(), 3);
}

proptest! {
    #[test]
    fn the_last_interval_is_the_finest_and_the_ratio_is_met(intervals in 2_usize..60, length in 0.001..10.0_f64, ratio in 1.01..50.0_f64) {
        let nodes = graded(intervals, length, ratio);
        prop_assert_eq!(nodes.len(), intervals + 1);
        prop_assert!(nodes[0].abs() < 1e-15 && (nodes[intervals] - length).abs() < 1e-14 * length);
        let steps = steps(&nodes);
        prop_assert!(steps.windows(2).all(|pair| pair[1] <= pair[0] * (1.0 + 1e-9)), "each is finer than the one before");
        prop_assert!((steps[0] / steps[intervals - 1] / ratio - 1.0).abs() < 1e-6);
    }

    #[test]
    fn both_ends_are_alike_and_the_ratio_is_met(intervals in 3_usize..60, length in 0.001..10.0_f64, ratio in 1.01..50.0_f64) {
        let nodes = graded_both(intervals, length, ratio);
        prop_assert!(nodes[0].abs() < 1e-15 && (nodes[intervals] - length).abs() < 1e-14 * length);
        let steps = steps(&nodes);
        for (one, other) in steps.iter().zip(steps.iter().rev()) {
            prop_assert!((one - other).abs() < 1e-9 * length);
        }
        let widest = steps.iter().copied().fold(0.0, f64::max);
        prop_assert!((widest / steps[intervals - 1] / ratio - 1.0).abs() < 1e-6);
    }
}
