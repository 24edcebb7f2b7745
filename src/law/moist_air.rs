//! Moist air: saturation, humidity ratio, warmed air.

crate::correlations! {
    /// Saturation pressure over liquid water.
    SATURATION = {
        "Saturation pressure over liquid water", "ln p = a/T + b + c T + d T² + e T³ + f ln T, T in K",
        [-5.800_220_6e3, 1.391_499_3, -4.864_023_9e-2, 4.176_476_8e-5, -1.445_209_3e-8, 6.545_967_3],
        "Pa", (0.0, 200.0), "°C", AshraeFundamentals, "psychrometrics, after Hyland and Wexler", Published
    }
    /// Latent heat of evaporation.
    LATENT_HEAT = { "Latent heat of evaporation of water", "a + b t", [2.5009e6, -2.361e3], "J/kg", (0.0, 60.0), "°C", Ourselves, "straight line within 0.1 % of steam tables", Fitted }
}

crate::constants! {
    /// Pressure of the air.
    AIR_PRESSURE = { "Pressure of the air", 101_325.0, "Pa", (80_000.0, 105_000.0), Textbook, "standard atmosphere at sea level", FromMemory }
    /// Molar mass of water over that of air.
    VAPOUR_TO_AIR = { "Molar mass of water over that of dry air", 0.621_945, "1", (0.6219, 0.6221), AshraeFundamentals, "humidity ratio", Published }
    /// Molar mass of water.
    WATER_MOLAR_MASS = { "Molar mass of water", 0.018_015_28, "kg/mol", (0.018_01, 0.018_02), Textbook, "sum of atomic masses", FromMemory }
    /// The gas constant.
    GAS_CONSTANT = { "Molar gas constant", 8.314_462_618, "J/(mol K)", (8.3144, 8.3145), Codata, "exact since 2019", Published }
    /// Zero of the Celsius scale.
    ZERO_CELSIUS = { "Zero of the Celsius scale", 273.15, "K", (273.15, 273.15), Codata, "by definition", Published }
}

/// Returns a temperature in kelvin.
#[must_use]
pub fn kelvin(temperature_c: f64) -> f64 {
    temperature_c + ZERO_CELSIUS.value
}

/// Returns the saturation pressure over liquid water, Pa.
///
/// # Arguments
/// * `temperature_c`: 0 to 200 °C
///
/// # Source
/// [`SATURATION`].
///
/// # Example
/// ```
/// let p = vatsketch::law::moist_air::saturation_pa(20.0);
/// assert!((p / 2338.804 - 1.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn saturation_pa(temperature_c: f64) -> f64 {
    let t = kelvin(temperature_c);
    let [a, b, c, d, e, f] = SATURATION.coefficients;
    (a / t + b + t * (c + t * (d + t * e)) + f * t.ln()).exp()
}

/// Returns the latent heat of evaporation of water, J/kg.
///
/// # Arguments
/// * `temperature_c`: 0 to 60 °C
#[must_use]
pub fn latent_heat_j_kg(temperature_c: f64) -> f64 {
    LATENT_HEAT.polynomial(temperature_c)
}

/// Returns the humidity ratio, kg of water per kg of dry air: W = 0.621945 p_w / (p − p_w).
///
/// # Arguments
/// * `temperature_c`: 0 to 200 °C
/// * `relative_humidity`: 0 to 1
/// * `pressure_pa`: pressure of the air
///
/// # Example
/// ```
/// let w = vatsketch::law::moist_air::humidity_ratio(25.0, 0.5, 101_325.0);
/// assert!((w - 0.009881).abs() < 1e-6);
/// ```
#[must_use]
pub fn humidity_ratio(temperature_c: f64, relative_humidity: f64, pressure_pa: f64) -> f64 {
    let vapour_pa = relative_humidity * saturation_pa(temperature_c);
    VAPOUR_TO_AIR.value * vapour_pa / (pressure_pa - vapour_pa)
}

/// Returns the relative humidity, 0 to 1, of air that is warmed or cooled without losing or taking up water; at most 1.
///
/// φ₂ = φ₁ p(t₁)/p(t₂); below the dew point water would condense and the air stays saturated.
///
/// # Arguments
/// * `from_c`, `relative_humidity`: the air as it is drawn in
/// * `to_c`: the air as it leaves the heater
///
/// # Example
/// ```
/// let warmed = vatsketch::law::moist_air::warmed_humidity(21.0, 0.45, 40.0);
/// assert!((warmed - 0.15162).abs() < 1e-5);
/// ```
#[must_use]
pub fn warmed_humidity(from_c: f64, relative_humidity: f64, to_c: f64) -> f64 {
    (relative_humidity * saturation_pa(from_c) / saturation_pa(to_c)).min(1.0)
}
