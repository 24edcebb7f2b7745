//! How finely a disc is cut up and stepped.

/// How finely a disc is cut up and stepped.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fineness {
    /// Intervals from the axis to the rim.
    pub radial: usize,
    /// Intervals over half the height.
    pub half_height: usize,
    /// Widest over narrowest interval.
    pub ratio: f64,
    /// Tolerance of a step.
    pub tolerance: f64,
}
