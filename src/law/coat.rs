//! A coat of pepper: how much of it, how thick it lies, and how it holds back vapour.

use super::air_transfer::vapour_diffusivity_m2_s;
use super::kitchen::{PEPPER_TEASPOON, TEASPOON};
use std::f64::consts::PI;

crate::constants! {
    /// Air between the grains.
    COAT_POROSITY = { "Share of air in a coat of pepper", 0.6, "1", (0.45, 0.75), Ourselves, "a teaspoon of 2.3 g is 0.47 g/mL, and grains that sink or float have about 1.1 to 1.3 g/mL", Judged }
    /// Bruggeman's power.
    COAT_TORTUOSITY_POWER = { "Power of the porosity that vapour finds in a coat of grains", 1.5, "1", (1.3, 2.0), Textbook, "Bruggeman's law for a bed of spheres", FromMemory }
    /// Temperature of the coat.
    COAT_TEMPERATURE = { "Temperature at which the coat's resistance is taken", 30.0, "°C", (15.0, 45.0), Ourselves, "the middle of drying; the resistance changes by 0.6 % a degree", Judged }
}

/// Returns the area of both faces and the side of a flat cylinder, dm².
///
/// # Arguments
/// * `diameter_mm`, `thickness_mm`: ≥ 0
///
/// # Example
/// ```
/// let area = vatsketch::law::coat::area_dm2(100.0, 20.0);
/// assert!((area - 2.199).abs() < 0.001);
/// ```
#[must_use]
pub fn area_dm2(diameter_mm: f64, thickness_mm: f64) -> f64 {
    1e-4 * PI * diameter_mm * (0.5 * diameter_mm + thickness_mm)
}

/// Returns how thick a coat of ground pepper lies, mm: coverage over bulk density.
///
/// # Arguments
/// * `pepper_g_dm2`: pepper on a square decimetre of surface, ≥ 0
///
/// # Source
/// [`PEPPER_TEASPOON`] over [`TEASPOON`] is the bulk density.
///
/// # Example
/// ```
/// let thick = vatsketch::law::coat::thickness_mm(2.3);
/// assert!((thick - 0.4929).abs() < 1e-4);
/// ```
#[must_use]
pub fn thickness_mm(pepper_g_dm2: f64) -> f64 {
    // 1 g/dm² over 1 g/mL is 0.1 mm.
    0.1 * pepper_g_dm2 * TEASPOON.value / PEPPER_TEASPOON.value
}

/// Returns the resistance of a coat to vapour, s/m: δ/(ε^1.5 D), air in the gaps of a porous layer.
///
/// Grains that swell, or pepper that fat and whey glue together, are not in it.
///
/// # Arguments
/// * `thickness_mm`: δ, ≥ 0
///
/// # Source
/// [`COAT_POROSITY`], [`COAT_TORTUOSITY_POWER`], and the diffusivity of vapour in air at [`COAT_TEMPERATURE`].
///
/// # Example
/// ```
/// let resistance = vatsketch::law::coat::resistance_s_m(0.5);
/// assert!((resistance - 41.2).abs() < 0.3);
/// ```
#[must_use]
pub fn resistance_s_m(thickness_mm: f64) -> f64 {
    let through_gaps_m2_s = COAT_POROSITY.value.powf(COAT_TORTUOSITY_POWER.value) * vapour_diffusivity_m2_s(COAT_TEMPERATURE.value);
    0.001 * thickness_mm / through_gaps_m2_s
}
