//! Tridiagonal lines against a dense solution with pivoting, and against a differential equation with a known solution.

use proptest::prelude::*;
use std::f64::consts::PI;
use vatsketch::numeric::LineSystem;

/// Solves a dense system by Gaussian elimination with partial pivoting; any textbook.
fn dense(mut rows: Vec<Vec<f64>>, mut right: Vec<f64>) -> Vec<f64> {
    let n = right.len();
    for column in 0..n {
        let pivot = (column..n).max_by(|one, other| rows[*one][column].abs().total_cmp(&rows[*other][column].abs())).unwrap();
        rows.swap(column, pivot);
        right.swap(column, pivot);
        let (pivot_row, pivot_right) = (rows[column].clone(), right[column]);
        for (row, value) in rows.iter_mut().zip(&mut right).skip(column + 1) {
            let factor = row[column] / pivot_row[column];
            row.iter_mut().zip(&pivot_row).for_each(|(entry, above)| *entry -= factor * above);
            *value -= factor * pivot_right;
        }
    }
    for row in (0..n).rev() {
        let known: f64 = (row + 1..n).map(|at| rows[row][at] * right[at]).sum();
        right[row] = (right[row] - known) / rows[row][row];
    }
    right
}

/// Returns the dense matrix of one line.
fn matrix(system: &LineSystem, lines: usize, length: usize, line: usize) -> Vec<Vec<f64>> {
    (0..length)
        .map(|k| {
            let mut row = vec![0.0; length];
            row[k] = system.diagonal[k * lines + line];
            if k > 0 {
                row[k - 1] = system.below[k * lines + line];
            }
            if k + 1 < length {
                row[k + 1] = system.above[k * lines + line];
            }
            row
        })
        .collect()
}

/// By hand: 2x + y = 4, x + 2y = 5 gives x = 1, y = 2; and one unknown alone, 4x = 8.
#[test]
fn two_unknowns_and_one_are_solved_as_by_hand() {
    let mut two = LineSystem::new(1, 2);
    two.diagonal.fill(2.0);
    two.above[0] = 1.0;
    two.below[1] = 1.0;
    two.eliminate();
    let mut x = [4.0, 5.0];
    two.solve(&mut x);
    assert!((x[0] - 1.0).abs() < 1e-15 && (x[1] - 2.0).abs() < 1e-15);
    let mut one = LineSystem::new(1, 1);
    one.diagonal[0] = 4.0;
    one.eliminate();
    let mut x = [8.0];
    one.solve(&mut x);
    assert_eq!(x, [2.0]);
}

#[test]
fn what_is_not_a_number_stays_in_its_own_line() {
    let (lines, length) = (3, 4);
    let mut system = LineSystem::new(lines, length);
    system.diagonal.fill(3.0);
    system.above.fill(-1.0);
    system.below.fill(-1.0);
    system.diagonal[lines + 1] = f64::NAN;
    system.eliminate();
    let mut x = vec![1.0; lines * length];
    system.solve(&mut x);
    for k in 0..length {
        let [left, middle, right] = [0, 1, 2].map(|line| x[k * lines + line]);
        assert!(left.is_finite() && right.is_finite() && middle.is_nan(), "{x:?}");
    }
}

/// −u″ = π² sin πx with u = 0 at both ends is sin πx: central differences are of second order, to 0.02 of the order.
#[test]
fn a_known_solution_is_closed_in_on_with_second_order() {
    let miss = |intervals: usize| {
        let (inner, h) = (intervals - 1, 1.0 / intervals as f64);
        let mut system = LineSystem::new(1, inner);
        system.diagonal.fill(2.0 / (h * h));
        system.above.fill(-1.0 / (h * h));
        system.below.fill(-1.0 / (h * h));
        system.eliminate();
        let sine = |at: usize| (PI * h * (at + 1) as f64).sin();
        let mut u: Vec<f64> = (0..inner).map(|at| PI * PI * sine(at)).collect();
        system.solve(&mut u);
        (0..inner).map(|at| (u[at] - sine(at)).abs()).fold(0.0, f64::max)
    };
    let order = (miss(20) / miss(40)).log2();
    assert!((order - 2.0).abs() < 0.02, "{order}");
}

proptest! {
    /// Diagonally dominant by columns, as implicit diffusion is; the dense solution is good to about 1e-13 of such a system.
    #[test]
    fn every_line_has_the_dense_solution(
        lines in 1_usize..10, length in 1_usize..12, draws in proptest::collection::vec(-1.0..1.0_f64, 4 * 10 * 12), more in 0.1..3.0_f64,
    ) {
        let count = lines * length;
        let mut system = LineSystem::new(lines, length);
        system.below.copy_from_slice(&draws[..count]);
        system.above.copy_from_slice(&draws[count..2 * count]);
        for k in 0..length {
            for line in 0..lines {
                let over = if k > 0 { system.above[(k - 1) * lines + line].abs() } else { 0.0 };
                let under = if k + 1 < length { system.below[(k + 1) * lines + line].abs() } else { 0.0 };
                system.diagonal[k * lines + line] = over + under + more;
            }
        }
        let right = &draws[3 * count..4 * count];
        let matrices: Vec<_> = (0..lines).map(|line| matrix(&system, lines, length, line)).collect();
        system.eliminate();
        let (mut x, mut twice) = (right.to_vec(), right.iter().map(|right| 2.0 * right).collect::<Vec<_>>());
        system.solve_all([&mut x, &mut twice]);
        prop_assert!(x.iter().zip(&twice).all(|(x, twice)| 2.0 * x == *twice));
        for (line, matrix) in matrices.into_iter().enumerate() {
            let wanted = dense(matrix, (0..length).map(|k| right[k * lines + line]).collect());
            for (k, wanted) in wanted.into_iter().enumerate() {
                prop_assert!((x[k * lines + line] - wanted).abs() < 1e-11 * wanted.abs().max(1.0));
            }
        }
    }
}
