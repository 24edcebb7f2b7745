//! How fast salt moves in a cheese, how much its moisture dissolves, and how long dry salt takes to even out.

use super::acidity::water_viscosity_pa_s;
use super::brine::{SALT_MOLAR_MASS, SALT_SATURATION};
use super::moist_air::kelvin;
use std::f64::consts::PI;

crate::constants! {
    /// Diffusivity of common salt.
    SALT_DIFFUSIVITY = { "Diffusivity of common salt in the water of cheese", 2.3e-10, "m²/s", (1.0e-10, 5.0e-10), Floury2010, "table II, dry-salted cheese of the brined kind at 13 °C; 1.2 to 4 over its cheeses at 4 to 20 °C", Published }
    /// Temperature of that diffusivity.
    SALT_DIFFUSIVITY_TEMPERATURE = { "Temperature of the diffusivity of salt", 13.0, "°C", (13.0, 13.0), Floury2010, "table II, the same row", Published }
}

/// Seconds in a day.
const SECONDS_PER_DAY: f64 = 86_400.0;
/// Unevenness that is left, as a share of what there was.
const LEFT: f64 = 0.05;

/// Returns the diffusivity of common salt in the moisture of cheese, m²/s: that of the record times T/μ over the same at its temperature.
///
/// Stokes and Einstein's law, D ∝ T/μ, with μ the viscosity of water; it is used up to the temperatures of drying, where no value for
/// cheese was found.
///
/// # Arguments
/// * `temperature_c`: 0 to 60 °C
///
/// # Source
/// [`SALT_DIFFUSIVITY`], [`super::acidity::WATER_VISCOSITY`].
///
/// # Example
/// ```
/// use vatsketch::law::salt::{SALT_DIFFUSIVITY, salt_diffusivity_m2_s};
/// assert_eq!(salt_diffusivity_m2_s(13.0), SALT_DIFFUSIVITY.value);
/// assert!((salt_diffusivity_m2_s(40.0) / 4.6e-10 - 1.0).abs() < 0.02);
/// ```
#[must_use]
pub fn salt_diffusivity_m2_s(temperature_c: f64) -> f64 {
    let of_record_c = SALT_DIFFUSIVITY_TEMPERATURE.value;
    let warmer = kelvin(temperature_c) / kelvin(of_record_c);
    SALT_DIFFUSIVITY.value * (warmer * (water_viscosity_pa_s(of_record_c) / water_viscosity_pa_s(temperature_c)))
}

/// Returns the salt that water dissolves, kg per kg of water.
///
/// # Source
/// [`SALT_SATURATION`], [`SALT_MOLAR_MASS`].
///
/// # Example
/// ```
/// assert!((vatsketch::law::salt::saturated_kg_kg() - 0.3592).abs() < 1e-4);
/// ```
#[must_use]
pub fn saturated_kg_kg() -> f64 {
    SALT_SATURATION.value * SALT_MOLAR_MASS.value
}

/// Returns the days until the unevenness of salt has fallen to a twentieth: t = ln 20 · L²/(π² D).
///
/// Salt lies on the faces, none leaves the cheese, and the side is not looked at. The slowest part of the unevenness then falls as
/// e^(−π² D t/L²) over a depth L, the depth from a salted face to the middle, or to the other face if that is not salted. Salt that is
/// slow to dissolve, and the water that it draws, are not in it.
///
/// # Arguments
/// * `depth_mm`: L, ≥ 0; half the thickness of a cheese that is salted on both faces
/// * `diffusivity_m2_s`: D, > 0
///
/// # Source
/// [`SALT_DIFFUSIVITY`]; the law is the slowest mode of diffusion in a slab (Crank 1975, chapter 4).
///
/// # Example
/// ```
/// use vatsketch::law::salt::{even_days, SALT_DIFFUSIVITY};
/// let days = even_days(11.0, SALT_DIFFUSIVITY.value);
/// assert!((days - 1.848).abs() < 0.001);
/// ```
#[must_use]
pub fn even_days(depth_mm: f64, diffusivity_m2_s: f64) -> f64 {
    let depth_m = 0.001 * depth_mm;
    -LEFT.ln() * depth_m * depth_m / (PI * PI * diffusivity_m2_s) / SECONDS_PER_DAY
}
