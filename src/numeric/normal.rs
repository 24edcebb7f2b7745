//! The normal distribution.

/// Returns the share of a standard normal distribution that lies below a place: Φ(x), by Marsaglia's series
/// ½ + φ(x) (x + x³/3 + x⁵/15 + …), which is exact to the last digits.
///
/// Marsaglia G. (2004), Evaluating the Normal Distribution, J. Stat. Softw. 11(4).
///
/// # Arguments
/// * `place`: in standard deviations; beyond eight nothing is left
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
    if place.abs() > 8.0 {
        return if place > 0.0 { 1.0 } else { 0.0 };
    }
    let (mut sum, mut term, mut odd, mut before) = (place, place, 1.0, f64::NAN);
    while sum.to_bits() != f64::to_bits(before) {
        before = sum;
        odd += 2.0;
        term *= place * place / odd;
        sum += term;
    }
    let density = (-0.5 * place * place).exp() / (2.0 * std::f64::consts::PI).sqrt();
    (0.5 + density * sum).clamp(0.0, 1.0)
}
