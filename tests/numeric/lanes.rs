//! Numbers a few at a time against the same one by one.

use proptest::prelude::*;
use vatsketch::numeric::{dot_in_lanes, in_lanes, turn_lanes};

proptest! {
    #[test]
    fn a_grid_turned_twice_is_itself_and_turned_once_lies_on_its_side(rows in 1_usize..6, columns in 1_usize..6) {
        let (rows, columns) = (in_lanes(rows), in_lanes(columns));
        let grid: Vec<f64> = (0..rows * columns).map(|at| at as f64).collect();
        let (mut turned, mut back) = (vec![0.0; grid.len()], vec![0.0; grid.len()]);
        turn_lanes(&grid, &mut turned, rows, columns);
        turn_lanes(&turned, &mut back, columns, rows);
        prop_assert_eq!(&back, &grid);
        prop_assert!((0..rows).all(|row| (0..columns).all(|column| turned[column * rows + row] == grid[row * columns + column])));
    }

    #[test]
    fn a_sum_of_products_is_that_of_one_after_another(pairs in proptest::collection::vec((-1.0..1.0_f64, -1.0..1.0_f64), 0..40)) {
        let (x, y): (Vec<f64>, Vec<f64>) = pairs.into_iter().unzip();
        let plain: f64 = x.iter().zip(&y).map(|(x, y)| x * y).sum();
        prop_assert!((dot_in_lanes(&x, &y) - plain).abs() < 1e-14);
    }
}
