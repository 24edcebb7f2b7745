//! What else goes on in vinegar: salt moves out of the cheese, and water into it.

use super::acidity::{ACETIC_DIFFUSIVITY, acid_diffusivity_m2_s};

crate::constants! {
    /// Diffusivity of common salt in water.
    SALT_WATER_DIFFUSIVITY = { "Diffusivity of common salt in water at 25 °C", 1.61e-9, "m²/s", (1.5e-9, 1.7e-9), CrcHandbook, "diffusion in dilute aqueous solution", FromMemory }
    /// How much slower salt moves in the water of a cheese.
    SALT_OBSTRUCTION = { "Diffusivity of salt in cheese over (share of water by volume × diffusivity in water)", 0.33, "1", (0.28, 0.56), Floury2010, "17 cheeses of table II have 0.40 and spread by a factor of 1.41 either way; taken as for the acid, to the slow side", Judged }
    /// Water at the face of a cheese in vinegar.
    SWELLING_WATER = { "Water that a dried cheese takes up at its face in vinegar", 1.0, "kg/kg dry", (0.8, 1.5), Ourselves, "no measured value found; isotherms of drying cannot give it", Judged }
}

/// Returns the diffusivity of salt in the water of a cheese that lies in vinegar, m²/s: obstruction × share of water by volume × that in
/// water, which goes with temperature as that of the acid does.
///
/// Beside [`super::salt::SALT_DIFFUSIVITY`], which was measured in fresh cheese, this follows the water that drying has left.
///
/// # Arguments
/// * `water_share`: water of the cheese by volume, 0 to 1
/// * `temperature_c`: 0 to 100 °C
///
/// # Source
/// [`SALT_OBSTRUCTION`], [`SALT_WATER_DIFFUSIVITY`].
///
/// # Example
/// ```
/// let d = vatsketch::law::soaking::salt_in_vinegar_m2_s(0.5, 25.0);
/// assert!((d / (0.33 * 0.5 * 1.61e-9) - 1.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn salt_in_vinegar_m2_s(water_share: f64, temperature_c: f64) -> f64 {
    let warmth = acid_diffusivity_m2_s(temperature_c) / ACETIC_DIFFUSIVITY.value;
    SALT_OBSTRUCTION.value * water_share * SALT_WATER_DIFFUSIVITY.value * warmth
}
