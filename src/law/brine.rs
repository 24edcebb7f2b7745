//! Water activity of common salt in water.

use super::moist_air::WATER_MOLAR_MASS;
use crate::numeric::quick_exp;

crate::correlations! {
    /// Osmotic coefficient of common salt in water.
    SALT_OSMOTIC = {
        "Osmotic coefficient of common salt in water at 25 °C",
        "φ = 1 − A√m/(1 + 1.2√m) + m(β₀ + β₁ e^(−2√m)) + C m²; A, β₀, β₁, C",
        [0.392, 0.0765, 0.2664, 0.00127], "1", (0.0, 6.147), "mol/kg", PitzerMayorga1973, "sodium chloride; 40 °C differs by less than 0.001 in water activity", Secondhand
    }
}

crate::constants! {
    /// Molality at which salt no longer dissolves.
    SALT_SATURATION = { "Saturation of common salt in water", 6.147, "mol/kg", (6.1, 6.2), Textbook, "25 °C", FromMemory }
    /// Molar mass of common salt.
    SALT_MOLAR_MASS = { "Molar mass of common salt", 0.058_44, "kg/mol", (0.0584, 0.0585), Textbook, "sum of atomic masses", FromMemory }
}

/// The constant in the Debye–Hückel term, (kg/mol)^½; part of the form, the same for every salt.
const CLOSEST_APPROACH: f64 = 1.2;

/// Returns the osmotic coefficient of common salt in water.
///
/// # Arguments
/// * `molality`: mol per kg of water, 0 to saturation
///
/// # Source
/// [`SALT_OSMOTIC`].
#[must_use]
pub fn osmotic_coefficient(molality: f64) -> f64 {
    let [a, b0, b1, c] = SALT_OSMOTIC.coefficients;
    let s = molality.sqrt();
    1.0 - a * s / (1.0 + CLOSEST_APPROACH * s) + molality * (b0 + b1 * (-2.0 * s).exp()) + c * molality * molality
}

/// Returns the water activity of salt in water: a = exp(−2 m M φ); above saturation that of the saturated brine.
///
/// # Arguments
/// * `molality`: mol per kg of water, ≥ 0
///
/// # Example
/// ```
/// use vatsketch::law::brine::water_activity;
/// assert!((water_activity(1.0) - 0.96685).abs() < 1e-5);
/// assert_eq!(water_activity(8.0), water_activity(6.147));
/// ```
#[must_use]
pub fn water_activity(molality: f64) -> f64 {
    activity_and_log_slope(molality).0
}

/// Returns the slope d ln a / dm of [`water_activity`]; zero above saturation.
#[must_use]
pub fn log_activity_slope(molality: f64) -> f64 {
    activity_and_log_slope(molality).1
}

/// Returns [`water_activity`] and [`log_activity_slope`], which share most of the work; without branches, so that many are taken at a time.
#[inline(always)]
#[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left")]
pub(super) fn activity_and_log_slope(molality: f64) -> (f64, f64) {
    let [a, b0, b1, c] = SALT_OSMOTIC.coefficients;
    let m = molality.min(SALT_SATURATION.value);
    let s = m.sqrt();
    let root = 1.0 + CLOSEST_APPROACH * s;
    let decay = quick_exp(-2.0 * s);
    let per_root = 1.0 / root;
    let osmotic = 1.0 - a * s * per_root + m * (b0 + b1 * decay) + c * m * m;
    // m φ, differentiated term by term; √m cancels, so the slope is finite at zero.
    let slope = 1.0 - a * s * (1.5 + CLOSEST_APPROACH * s) * (per_root * per_root) + 2.0 * m * (b0 + b1 * decay)
        - b1 * m * s * decay
        + 3.0 * c * m * m;
    let twice_kg = -2.0 * WATER_MOLAR_MASS.value;
    (quick_exp(twice_kg * m * osmotic), if molality >= SALT_SATURATION.value { 0.0 } else { twice_kg * slope })
}
