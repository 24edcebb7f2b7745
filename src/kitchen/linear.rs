//! A small dense system, symmetric and positive definite (Cholesky).

/// Returns the lower triangle L of L Lᵀ; none of a matrix that is not positive definite.
pub(super) fn cholesky(matrix: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    let size = matrix.len();
    let mut lower = vec![vec![0.0; size]; size];
    for row in 0..size {
        for column in 0..=row {
            let dot: f64 = (0..column).map(|at| get(&lower, row, at) * get(&lower, column, at)).sum();
            let rest = get(matrix, row, column) - dot;
            let value = if row == column {
                if rest.is_nan() || rest <= 0.0 {
                    return None;
                }
                rest.sqrt()
            } else {
                rest / get(&lower, column, column)
            };
            *lower.get_mut(row)?.get_mut(column)? = value;
        }
    }
    Some(lower)
}

/// Returns the inverse of a symmetric positive definite matrix; none of any other.
pub(super) fn inverse(matrix: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    let size = matrix.len();
    let lower = cholesky(matrix)?;
    let unit = |of: usize| (0..size).map(|at| if at == of { 1.0 } else { 0.0 }).collect::<Vec<f64>>();
    Some((0..size).map(|of| solved(&lower, unit(of))).collect())
}

/// Solves with the lower triangle and then with its transpose.
fn solved(lower: &[Vec<f64>], mut right: Vec<f64>) -> Vec<f64> {
    let size = right.len();
    for row in 0..size {
        let dot: f64 = (0..row).map(|at| get(lower, row, at) * value(&right, at)).sum();
        let solution = (value(&right, row) - dot) / get(lower, row, row);
        if let Some(place) = right.get_mut(row) {
            *place = solution;
        }
    }
    for row in (0..size).rev() {
        let dot: f64 = (row + 1..size).map(|at| get(lower, at, row) * value(&right, at)).sum();
        let solution = (value(&right, row) - dot) / get(lower, row, row);
        if let Some(place) = right.get_mut(row) {
            *place = solution;
        }
    }
    right
}

fn get(matrix: &[Vec<f64>], row: usize, column: usize) -> f64 {
    matrix.get(row).map_or(0.0, |row| value(row, column))
}

fn value(row: &[f64], at: usize) -> f64 {
    row.get(at).copied().unwrap_or(0.0)
}
