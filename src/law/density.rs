//! Density of milk, cream, water and whey.

use super::Matter;

crate::correlations! {
    /// Volume of fat in milk.
    FAT_VOLUME = { "Specific volume of fat in milk", "a + b t + c t²", [1.025_657, 2.262_02e-3, -5.636_06e-6], "L/kg", (4.0, 40.0), "°C", GuelphNotes, "fitted to the 32 points of the density table; rms 0.48, at most 1.32 kg/m³", Fitted }
    /// Volume of solids-not-fat in milk.
    SOLIDS_NOT_FAT_VOLUME = { "Specific volume of solids-not-fat in milk", "a + b t + c t²", [0.605_526, 1.175_290e-3, -1.044_850e-5], "L/kg", (4.0, 40.0), "°C", GuelphNotes, "fitted to the 32 points of the density table; rms 0.48, at most 1.32 kg/m³", Fitted }
    /// Numerator of Kell's density of water.
    WATER_NUMERATOR = { "Density of water, numerator", "a + b t + c t² + d t³ + e t⁴ + f t⁵", [999.839_52, 16.945_176, -7.987_040_1e-3, -46.170_461e-6, 105.563_02e-9, -280.542_53e-12], "kg/m³", (0.0, 100.0), "°C", Kell1975, "the formula", Published }
    /// Denominator of Kell's density of water.
    WATER_DENOMINATOR = { "Density of water, denominator", "1 + a t", [1.0, 16.879_850e-3], "1", (0.0, 100.0), "°C", Kell1975, "the formula", Published }
    /// A second opinion on the density of milk.
    COLD_MILK_DENSITY = { "Density of cold milk", "a + b t + c F + d N", [1.003_073, -0.000_179, -0.000_368, 0.003_74], "kg/L", (1.0, 10.0), "°C", WatsonTittsler1961, "abstract; fat 3.1 to 6.4 %, solids-not-fat 8.2 to 10.2 %", Secondhand }
}

crate::constants! {
    /// Greatest density of sheep's milk.
    SHEEP_MOST_DENSITY = { "Greatest density of sheep's milk", 1.037, "kg/L", (1.034, 1.038), Ourselves, "published notes have 1.034 to 1.038, and the fit for cow's milk comes out higher", Judged }
    /// Density of whey.
    WHEY_DENSITY = { "Density of whey", 1.025, "kg/L", (1.023, 1.027), GuelphNotes, "sweet whey", Secondhand }
}

/// Returns the density of water, kg/L.
///
/// # Arguments
/// * `temperature_c`: 0 to 100 °C
///
/// # Source
/// [`WATER_NUMERATOR`] and [`WATER_DENOMINATOR`].
///
/// # Example
/// ```
/// use vatsketch::law::density::water_kg_l;
/// assert!((water_kg_l(20.0) - 0.998_204).abs() < 2e-6);
/// ```
#[must_use]
pub fn water_kg_l(temperature_c: f64) -> f64 {
    WATER_NUMERATOR.polynomial(temperature_c) / WATER_DENOMINATOR.polynomial(temperature_c) / 1000.0
}

/// Returns the density of milk or cream, kg/L, from volumes that add up: 100/ρ = F·v(fat) + N·v(solids-not-fat) + (100 − F − N)/ρ(water).
///
/// True to ±1 kg/m³ for milk and ±3 for cream. From 1 to 4 °C and above 37 % of fat it is continued beyond its table.
///
/// # Arguments
/// * `fat_percent`: 0 to 48 %
/// * `solids_not_fat_percent`: 4.5 to 12.5 %
/// * `temperature_c`: 1 to 40 °C
///
/// # Source
/// [`FAT_VOLUME`], [`SOLIDS_NOT_FAT_VOLUME`] and [`water_kg_l`].
///
/// # Example
/// ```
/// use vatsketch::law::density::milk_kg_l;
/// assert!((10.0 * milk_kg_l(3.25, 8.62, 4.0) - 10.336).abs() < 0.001);
/// ```
#[must_use]
pub fn milk_kg_l(fat_percent: f64, solids_not_fat_percent: f64, temperature_c: f64) -> f64 {
    let water = 100.0 - fat_percent - solids_not_fat_percent;
    let volume = fat_percent * FAT_VOLUME.polynomial(temperature_c)
        + solids_not_fat_percent * SOLIDS_NOT_FAT_VOLUME.polynomial(temperature_c)
        + water / water_kg_l(temperature_c);
    100.0 / volume
}

/// Returns the density of an amount of milk or cream, kg/L, as [`milk_kg_l`] has it.
#[must_use]
pub fn of_milk_kg_l(milk: &Matter, temperature_c: f64) -> f64 {
    milk_kg_l(milk.fat_percent(), milk.solids_not_fat_percent(), temperature_c)
}

/// Returns a second opinion on the density of cold milk, kg/L: ρ = 1.003073 − 0.000179 t − 0.000368 F + 0.00374 N.
///
/// # Arguments
/// * `fat_percent`: 3.1 to 6.4 %
/// * `solids_not_fat_percent`: 8.2 to 10.2 %
/// * `temperature_c`: 1 to 10 °C
///
/// # Source
/// [`COLD_MILK_DENSITY`].
#[must_use]
pub fn cold_milk_kg_l(fat_percent: f64, solids_not_fat_percent: f64, temperature_c: f64) -> f64 {
    let terms = [1.0, temperature_c, fat_percent, solids_not_fat_percent];
    COLD_MILK_DENSITY.coefficients.iter().zip(terms).map(|(coefficient, term)| coefficient * term).sum()
}
