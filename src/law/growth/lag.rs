//! From a dose of growth to an increase: with or without a lag, with or without a greatest density.

use std::f64::consts::LN_10;

/// Returns the increase of the logarithm, ln, that a dose gives after a lag: Baranyi and Roberts in closed form for any history.
///
/// A = ln(1 + e^M/(e^h0 − 1)) − ln(1 + 1/(e^h0 − 1)) = ln(e^M + e^h0 − 1) − h0, written so that nothing overflows and nothing cancels.
fn after_lag(dose: f64, h0: f64) -> f64 {
    let (m, h) = (dose.max(0.0), h0.max(0.0));
    if m > h { (m - h) + ((h - m).exp() * -(-h).exp_m1()).ln_1p() } else { ((m - h).exp() * -(-m).exp_m1()).ln_1p() }
}

/// Returns the potential increase that a dose of growth gives, log₁₀, without any greatest density.
///
/// # Arguments
/// * `dose`: the growth rate over time, ln; less than none counts as none
/// * `h0`: work of the lag; 0 for cells that grow already
///
/// # Source
/// Baranyi and Roberts 1994, in closed form by our calculation.
///
/// # Example
/// ```
/// use vatsketch::law::growth::increase_log10;
/// assert!((increase_log10(2.0 * std::f64::consts::LN_10, 0.0) - 2.0).abs() < 1e-12);
/// assert!(increase_log10(4.6, 2.0) < increase_log10(4.6, 0.0));
/// ```
#[must_use]
pub fn increase_log10(dose: f64, h0: f64) -> f64 {
    after_lag(dose, h0) / LN_10
}

/// Returns the potential increase that a dose of growth gives, log₁₀, up to a greatest density.
///
/// log₁₀ Nmax/(1 + (Nmax/N0 − 1) e^−A) − log₁₀ N0, with A of [`increase_log10`]; a start at the greatest density or above grows no more.
///
/// # Arguments
/// * `dose`, `h0`: as for [`increase_log10`]
/// * `start_log`, `most_log`: density at the start and greatest density, log₁₀ per gram
///
/// # Example
/// ```
/// use vatsketch::law::growth::increase_capped_log10;
/// assert!((increase_capped_log10(80.0, 0.0, 2.0, 8.0) - 6.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn increase_capped_log10(dose: f64, h0: f64, start_log: f64, most_log: f64) -> f64 {
    let room = most_log - start_log;
    if room <= 0.0 {
        return 0.0;
    }
    let empty = -(-room * LN_10).exp_m1();
    let grown = -(empty * (-after_lag(dose, h0)).exp_m1()).ln_1p() / LN_10;
    grown.min(room)
}
