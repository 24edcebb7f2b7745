//! Specific heat and conductivity of food from its components.

use super::Matter;
use super::food_density::{ASH_DENSITY, CARBOHYDRATE_DENSITY, FAT_DENSITY, PROTEIN_DENSITY, WATER_DENSITY};

crate::correlations! {
    /// Specific heat of water.
    WATER_HEAT = { "Specific heat of water in food", "a + b t + c t²", [4.1289, -9.0864e-5, 5.4731e-6], "kJ/(kg K)", (0.0, 150.0), "°C", AshraeRefrigeration, "component properties, as the copy that was seen prints it; other printed copies have 4.1762", Published }
    /// Specific heat of protein.
    PROTEIN_HEAT = { "Specific heat of protein", "a + b t + c t²", [2.0082, 1.2089e-3, -1.3129e-6], "kJ/(kg K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Specific heat of fat.
    FAT_HEAT = { "Specific heat of fat", "a + b t + c t²", [1.9842, 1.4733e-3, -4.8008e-6], "kJ/(kg K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Specific heat of carbohydrate.
    CARBOHYDRATE_HEAT = { "Specific heat of carbohydrate", "a + b t + c t²", [1.5488, 1.9625e-3, -5.9399e-6], "kJ/(kg K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Specific heat of ash.
    ASH_HEAT = { "Specific heat of ash", "a + b t + c t²", [1.0926, 1.8896e-3, -3.6817e-6], "kJ/(kg K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Conductivity of water.
    WATER_CONDUCTIVITY = { "Conductivity of water in food", "a + b t + c t²", [0.57109, 1.7625e-3, -6.7036e-6], "W/(m K)", (0.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Conductivity of protein.
    PROTEIN_CONDUCTIVITY = { "Conductivity of protein", "a + b t + c t²", [0.17881, 1.1958e-3, -2.7178e-6], "W/(m K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Conductivity of fat.
    FAT_CONDUCTIVITY = { "Conductivity of fat", "a + b t + c t²", [0.18071, -2.7604e-4, -1.7749e-7], "W/(m K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos; some printed copies have a tenfold slope", Published }
    /// Conductivity of carbohydrate.
    CARBOHYDRATE_CONDUCTIVITY = { "Conductivity of carbohydrate", "a + b t + c t²", [0.20141, 1.3874e-3, -4.3312e-6], "W/(m K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Conductivity of ash.
    ASH_CONDUCTIVITY = { "Conductivity of ash", "a + b t + c t²", [0.32962, 1.4011e-3, -2.9069e-6], "W/(m K)", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
}

crate::constants! {
    /// Specific heat of the water that moves in a drying cheese.
    LIQUID_WATER_HEAT = { "Specific heat of liquid water", 4180.0, "J/(kg K)", (4178.0, 4190.0), Textbook, "20 to 40 °C", FromMemory }
}

/// Returns the specific heat of food, kJ/(kg K): c = Σ xᵢ cᵢ(t), the salt counted with the ash, the acid with the carbohydrate.
///
/// # Arguments
/// * `matter`: the food, with some mass
/// * `temperature_c`: 0 to 150 °C
///
/// # Source
/// [`WATER_HEAT`] and its neighbours.
///
/// # Example
/// ```
/// use vatsketch::law::{Matter, heat::specific_heat_kj_kg_k};
/// let lamb = Matter { water_kg: 0.7342, casein_kg: 0.2029, fat_kg: 0.0525, ash_kg: 0.0106, ..Matter::default() };
/// assert!((specific_heat_kj_kg_k(&lamb, 5.0) - 3.556).abs() < 0.005);
/// ```
#[must_use]
pub fn specific_heat_kj_kg_k(matter: &Matter, temperature_c: f64) -> f64 {
    let t = temperature_c;
    let whole = matter.water_kg * WATER_HEAT.polynomial(t)
        + matter.protein_kg() * PROTEIN_HEAT.polynomial(t)
        + matter.fat_kg * FAT_HEAT.polynomial(t)
        + (matter.carbohydrate_kg + matter.acids_kg()) * CARBOHYDRATE_HEAT.polynomial(t)
        + (matter.ash_kg + matter.salt_kg) * ASH_HEAT.polynomial(t);
    whole / matter.total_kg()
}

/// Returns the specific heat of the dry solids alone, J/(kg K).
///
/// # Arguments
/// As for [`specific_heat_kj_kg_k`].
#[must_use]
pub fn solids_heat_j_kg_k(matter: &Matter, temperature_c: f64) -> f64 {
    1000.0 * specific_heat_kj_kg_k(&Matter { water_kg: 0.0, ..*matter }, temperature_c)
}

/// Returns the conductivity of food, W/(m K): k = Σ φᵢ kᵢ(t) with volume shares φ, all components side by side.
///
/// # Arguments
/// As for [`specific_heat_kj_kg_k`].
///
/// # Source
/// [`WATER_CONDUCTIVITY`] and its neighbours.
#[must_use]
pub fn conductivity_w_m_k(matter: &Matter, temperature_c: f64) -> f64 {
    let t = temperature_c;
    let parts = [
        (matter.water_kg / WATER_DENSITY.polynomial(t), WATER_CONDUCTIVITY),
        (matter.protein_kg() / PROTEIN_DENSITY.polynomial(t), PROTEIN_CONDUCTIVITY),
        (matter.fat_kg / FAT_DENSITY.polynomial(t), FAT_CONDUCTIVITY),
        (matter.carbohydrate_kg / CARBOHYDRATE_DENSITY.polynomial(t), CARBOHYDRATE_CONDUCTIVITY),
        ((matter.ash_kg + matter.salt_kg) / ASH_DENSITY.polynomial(t), ASH_CONDUCTIVITY),
    ];
    let volume: f64 = parts.iter().map(|(part, _)| part).sum();
    parts.iter().map(|(part, conductivity)| part / volume * conductivity.polynomial(t)).sum()
}
