//! A small dense system, symmetric and positive definite.

use nalgebra::{Cholesky, DMatrix, Dyn};

/// Returns the lower triangle L of L Lᵀ; none of a matrix that is not positive definite.
pub(super) fn cholesky(matrix: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    factored(matrix).map(|factors| rows(&factors.l()))
}

/// Returns the inverse of a symmetric positive definite matrix; none of any other.
pub(super) fn inverse(matrix: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    factored(matrix).map(|factors| rows(&factors.inverse()))
}

fn factored(matrix: &[Vec<f64>]) -> Option<Cholesky<f64, Dyn>> {
    let all = matrix.iter().flatten().copied();
    DMatrix::from_row_iterator(matrix.len(), matrix.len(), all).cholesky()
}

fn rows(matrix: &DMatrix<f64>) -> Vec<Vec<f64>> {
    matrix.row_iter().map(|row| row.iter().copied().collect()).collect()
}
