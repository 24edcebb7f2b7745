//! Densities of the components of food, and the volume of a cheese from them.

use super::Matter;

crate::correlations! {
    /// Density of water in food.
    WATER_DENSITY = { "Density of water in food", "a + b t + c t²", [997.18, 3.1439e-3, -3.7574e-3], "kg/m³", (0.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Density of protein.
    PROTEIN_DENSITY = { "Density of protein", "a + b t", [1329.9, -0.5184], "kg/m³", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Density of fat.
    FAT_DENSITY = { "Density of fat", "a + b t", [925.59, -0.41757], "kg/m³", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Density of carbohydrate.
    CARBOHYDRATE_DENSITY = { "Density of carbohydrate", "a + b t", [1599.1, -0.31046], "kg/m³", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
    /// Density of ash.
    ASH_DENSITY = { "Density of ash", "a + b t", [2423.8, -0.28063], "kg/m³", (-40.0, 150.0), "°C", AshraeRefrigeration, "component properties, after Choi and Okos", Published }
}

crate::constants! {
    /// Density of common salt.
    SALT_DENSITY = { "Density of common salt", 2165.0, "kg/m³", (2160.0, 2170.0), Textbook, "crystal at 20 °C", FromMemory }
    /// Density of acetic acid.
    ACETIC_ACID_DENSITY = { "Density of acetic acid", 1049.0, "kg/m³", (1040.0, 1050.0), Textbook, "liquid at 20 °C", FromMemory }
    /// Density of the water in a cheese.
    CHEESE_WATER_DENSITY = { "Density of the water in a cheese", 993.0, "kg/m³", (988.0, 999.0), AshraeRefrigeration, "water at 35 to 40 °C, the middle of drying", Fitted }
    /// Temperature at which the dry solids of a cheese are taken.
    SOLIDS_TEMPERATURE = { "Temperature at which the solids of a cheese are taken", 30.0, "°C", (10.0, 45.0), Ourselves, "the middle of draining and drying; solids change by 0.4 % over the range", Judged }
}

/// Returns the density of the dry solids of a cheese, salt included, kg/m³: additive volumes of its components.
///
/// 1/ρ = Σ xᵢ/ρᵢ over fat, protein, carbohydrate, ash, salt and acids; lactic acid fills the place of the lactose that it was made of. It is not a number where there are no solids.
///
/// # Source
/// [`FAT_DENSITY`] and its neighbours.
///
/// # Example
/// ```
/// use vatsketch::law::{Matter, food_density::solids_density_kg_m3};
/// let cheese = Matter { water_kg: 0.60, fat_kg: 0.19, casein_kg: 0.16, carbohydrate_kg: 0.015, ash_kg: 0.015, salt_kg: 0.02, ..Matter::default() };
/// assert!((solids_density_kg_m3(&cheese) - 1127.69).abs() < 0.01);
/// ```
#[must_use]
pub fn solids_density_kg_m3(matter: &Matter) -> f64 {
    let t = SOLIDS_TEMPERATURE.value;
    let volume_m3 = matter.fat_kg / FAT_DENSITY.polynomial(t)
        + matter.protein_kg() / PROTEIN_DENSITY.polynomial(t)
        + matter.carbohydrate_kg / CARBOHYDRATE_DENSITY.polynomial(t)
        + matter.ash_kg / ASH_DENSITY.polynomial(t)
        + matter.salt_kg / SALT_DENSITY.value
        + matter.acid_kg / ACETIC_ACID_DENSITY.value
        + (matter.lactic_kg + matter.other_acid_kg) / CARBOHYDRATE_DENSITY.polynomial(t);
    matter.solids_kg() / volume_m3
}

/// Returns the volume of a piece of curd or cheese, mL: additive volumes of its solids and its water, without holes.
///
/// # Example
/// ```
/// use vatsketch::law::{Matter, food_density::cheese_volume_ml};
/// let water = Matter::water(0.993);
/// assert!((cheese_volume_ml(&water) - 1000.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn cheese_volume_ml(matter: &Matter) -> f64 {
    let solids_kg = matter.solids_kg();
    let solids_m3 = if solids_kg > 0.0 { solids_kg / solids_density_kg_m3(matter) } else { 0.0 };
    1e6 * (solids_m3 + matter.water_kg / CHEESE_WATER_DENSITY.value)
}
