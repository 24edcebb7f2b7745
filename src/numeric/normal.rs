//! The normal distribution.

/// Returns the share of a standard normal distribution that lies below a place: Φ(x) = ½ erfc(−x/√2).
///
/// Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.29.
///
/// # Arguments
/// * `place`: in standard deviations
///
/// # Example
/// ```
/// use vatsketch::numeric::normal_share;
/// // Abramowitz and Stegun, table 26.1.
/// assert!((normal_share(1.0) - 0.841_344_746_068_543).abs() < 1e-14);
/// assert!((normal_share(-2.0) - 0.022_750_131_948_179).abs() < 1e-14);
/// ```
#[must_use]
pub fn normal_share(place: f64) -> f64 {
    0.5 * libm::erfc(-place * std::f64::consts::FRAC_1_SQRT_2)
}
