//! Density of milk, cream and whey.

crate::correlations! {
    /// Specific volume of the fat of milk.
    FAT_VOLUME = { "Specific volume of milk fat in milk", "a + b t + c t²", [1.025_657, 2.262_02e-3, -5.636_06e-6], "L/kg", (4.0, 40.0), "°C", GuelphNotes, "our fit to the 32 points of the density table; rms 0.48, greatest 1.32 kg/m³", Fitted }
    /// Specific volume of the solids-not-fat of milk.
    SOLIDS_VOLUME = { "Specific volume of milk solids-not-fat in milk", "a + b t + c t²", [0.605_526, 1.175_290e-3, -1.044_850e-5], "L/kg", (4.0, 40.0), "°C", GuelphNotes, "our fit to the 32 points of the density table", Fitted }
    /// Density of water, numerator.
    WATER_NUMERATOR = { "Density of water, numerator", "Σ cᵢ tⁱ", [999.839_52, 16.945_176, -7.987_040_1e-3, -46.170_461e-6, 105.563_02e-9, -280.542_53e-12], "kg/m³", (0.0, 150.0), "°C", Kell1975, "air-free water at standard pressure", Published }
    /// Density of water, denominator.
    WATER_DENOMINATOR = { "Density of water, denominator", "1 + b t", [1.0, 16.879_850e-3], "1", (0.0, 150.0), "°C", Kell1975, "air-free water at standard pressure", Published }
}

crate::constants! {
    /// The density above which ours is wrong for sheep's milk.
    SHEEP_LIMIT = { "Greatest density of sheep's milk", 1.037, "kg/L", (1.034, 1.038), Ourselves, "our fit gives 1.0415 where the literature has 1.034 to 1.038", Judged }
    /// Density of whey.
    WHEY_DENSITY = { "Density of whey", 1.025, "kg/L", (1.023, 1.027), GuelphNotes, "whey of soft cheese", Secondhand }
}

/// Returns the density of water, kg/L.
///
/// # Arguments
/// * `temperature_c`: 0 to 150 °C
#[must_use]
pub fn water_kg_l(temperature_c: f64) -> f64 {
    WATER_NUMERATOR.polynomial(temperature_c) / WATER_DENOMINATOR.polynomial(temperature_c) / 1000.0
}

/// Returns the density of milk or cream, kg/L: the specific volumes of fat, solids-not-fat and water add up.
///
/// 100/ρ = F v_F(t) + N v_N(t) + (100 − F − N)/ρ_water(t). Good to ±0.001 for milk and ±0.003 for cream; sheep's milk comes out too high.
///
/// # Arguments
/// * `fat_percent`: 0 to 37 (to 48 extrapolated)
/// * `solids_not_fat_percent`: 5 to 10
/// * `temperature_c`: 4 to 40 °C
///
/// # Source
/// [`FAT_VOLUME`], [`SOLIDS_VOLUME`].
///
/// # Example
/// ```
/// let density = vatsketch::law::density::milk_kg_l(3.25, 8.62, 4.0);
/// assert!((10.0 * density - 10.336).abs() < 0.001);
/// ```
#[must_use]
pub fn milk_kg_l(fat_percent: f64, solids_not_fat_percent: f64, temperature_c: f64) -> f64 {
    let (f, n, t) = (fat_percent, solids_not_fat_percent, temperature_c);
    100.0 / (f * FAT_VOLUME.polynomial(t) + n * SOLIDS_VOLUME.polynomial(t) + (100.0 - f - n) / water_kg_l(t))
}
