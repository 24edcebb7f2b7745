//! What else goes on in vinegar: salt moves out of the cheese, and water into it.

use super::acidity::{ACETIC_DIFFUSIVITY, acid_diffusivity_m2_s};
use super::brine::SALT_SATURATION;

crate::constants! {
    /// Diffusivity of common salt in water.
    SALT_WATER_DIFFUSIVITY = { "Diffusivity of common salt in water at 25 °C", 1.61e-9, "m²/s", (1.5e-9, 1.7e-9), CrcHandbook, "diffusion in dilute aqueous solution", FromMemory }
    /// How much slower salt moves in the water of a cheese.
    SALT_OBSTRUCTION = { "Diffusivity of salt in cheese over (share of water by volume × diffusivity in water)", 0.33, "1", (0.28, 0.56), Floury2010, "17 cheeses of table II have 0.40 and spread by a factor of 1.41 either way; taken as for the acid, to the slow side", Judged }
    /// Water at the face of a cheese in vinegar.
    SWELLING_WATER = { "Water that a cheese in vinegar holds at its face for each kg of its protein", 3.0, "kg/kg protein", (2.0, 4.0), CaseinWater, "dried acid casein takes up 2.0 again, a renneted gel settles near 3.0, and white cheese in brine at 3 °C needs 3.3 to 4.0 for its published moisture; warmth makes it less, by how much is not known, so that lies within the range; no cheese in vinegar was measured", Judged }
    /// Water that salt holds back.
    SALT_HOLDS_WATER = { "Share of the water at the face that each mol of salt in a kg of the water around it holds back", 0.13, "kg/mol", (0.11, 0.15), BrinedCheese, "two rows of a hard cheese, 12 days at 18 °C: the outer millimetre loses 29.2 % of its porosity in brine of 18 % and 50.8 % in saturated brine; of a third row, not fitted, it gives 1.1 to 1.6 times; where the face would else hold what its protein does, 0.26 and 0.82 times of the first two; no cheese in salted vinegar was measured", Fitted }
    /// When a cheese is called softer.
    SOFTNESS_FELT = { "Water for each part of protein over what it was, from which a cheese is called softer", 1.1, "1", (1.05, 1.2), Ourselves, "a tenth: less is within what one cheese differs from the next", Judged }
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

/// Returns the water that the face of a cheese holds in a liquid around it, kg per kg of dry solids.
///
/// X = max(w p, X̄)(1 − s m): what its protein holds, or what the cheese came with if that is more, less what the salt around it holds back. Only salt
/// takes water out of a cheese on the whole. Acid, calcium and temperature have no term: no row says how much they change.
///
/// # Arguments
/// * `water_per_protein`: w, kg/kg, > 0; see [`SWELLING_WATER`]
/// * `protein_share`: p, kg of protein in a kg of dry solids, 0 to 1
/// * `mean_water`: X̄, the water that the cheese came with, kg per kg of dry solids, > 0
/// * `molality`: m, mol of common salt in a kg of the water around it, ≥ 0; more than dissolves counts as saturated
///
/// # Source
/// [`SWELLING_WATER`], [`SALT_HOLDS_WATER`].
///
/// # Example
/// ```
/// use vatsketch::law::soaking::face_water;
/// // A third of the solids is protein: as much water as solids.
/// assert!((face_water(3.0, 1.0 / 3.0, 0.5, 0.0) - 1.0).abs() < 1e-12);
/// // 2.7 mol/kg, some 15 g of salt in 100 mL, hold a third of it back.
/// assert!((face_water(3.0, 1.0 / 3.0, 0.5, 2.7) - 0.649).abs() < 1e-12);
/// ```
#[must_use]
pub fn face_water(water_per_protein: f64, protein_share: f64, mean_water: f64, molality: f64) -> f64 {
    let salted = SALT_HOLDS_WATER.value * molality.min(SALT_SATURATION.value);
    (water_per_protein * protein_share).max(mean_water) * (1.0 - salted)
}
