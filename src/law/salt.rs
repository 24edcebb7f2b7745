//! Salt on its way into a cheese.

crate::constants! {
    /// Diffusivity of salt in the moisture of a dry-salted cheese.
    SALT_DIFFUSIVITY = { "Diffusivity of salt in a dry-salted cheese", 2.3e-10, "m²/s", (1.0e-10, 5.0e-10), Floury2010, "table II, dry-salted, 13 °C", Published }
}

/// Seconds in a day.
const DAY_S: f64 = 86_400.0;

/// Returns the days until salt strewn on both faces is 95 % even through a cheese: t = ln 20 · L²/(π² D), the first term of the series.
///
/// # Arguments
/// * `half_thickness_m`: L, half the thickness of the cheese, > 0
/// * `diffusivity_m2_s`: D, 1 to 5 · 10⁻¹⁰ m²/s
///
/// # Source
/// [`SALT_DIFFUSIVITY`]; the series, [`crate::source::SourceId::Crank1975`].
///
/// # Example
/// ```
/// use vatsketch::law::salt::even_after_days;
/// let two_tenths_cm2_a_day = 0.2e-4 / 86_400.0;
/// assert!((even_after_days(0.0125, two_tenths_cm2_a_day) - 2.37).abs() < 0.005);
/// ```
#[must_use]
pub fn even_after_days(half_thickness_m: f64, diffusivity_m2_s: f64) -> f64 {
    20.0_f64.ln() * half_thickness_m.powi(2) / (std::f64::consts::PI.powi(2) * diffusivity_m2_s) / DAY_S
}
