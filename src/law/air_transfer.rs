//! How fast air brings heat to a cheese and takes vapour from it.

use super::moist_air::{AIR_PRESSURE, kelvin};

crate::correlations! {
    /// Viscosity of air.
    AIR_VISCOSITY = { "Viscosity of air", "a T^1.5/(T + b)", [1.458e-6, 110.4], "Pa s", (-50.0, 100.0), "°C", StandardAtmosphere1976, "Sutherland's form", FromMemory }
    /// Conductivity of air.
    AIR_CONDUCTIVITY = { "Conductivity of air", "a T^1.5/(T + b 10^(−12/T))", [2.646_38e-3, 245.4], "W/(m K)", (-50.0, 100.0), "°C", StandardAtmosphere1976, "conductivity of air", FromMemory }
    /// Diffusivity of vapour in air.
    VAPOUR_DIFFUSIVITY = { "Diffusivity of water vapour in air", "a (T/273.15)^b", [2.16e-5, 1.8], "m²/s", (0.0, 60.0), "°C", Textbook, "fit of Montgomery's type, at standard pressure", FromMemory }
    /// Heat transfer over a flat plate.
    PLATE = { "Mean heat transfer over a flat plate in laminar flow", "Nu = a Re^½ Pr^⅓", [0.664], "1", (100.0, 500_000.0), "1", Textbook, "mean over the plate's length", FromMemory }
}

crate::constants! {
    /// Gas constant of air.
    AIR_GAS_CONSTANT = { "Specific gas constant of dry air", 287.05, "J/(kg K)", (287.0, 287.1), Textbook, "molar gas constant over molar mass", FromMemory }
    /// Specific heat of air.
    AIR_HEAT = { "Specific heat of air", 1006.0, "J/(kg K)", (1004.0, 1010.0), Textbook, "20 to 60 °C", FromMemory }
    /// Radiation to a cheese.
    RADIATION = { "Heat transfer by radiation", 5.0, "W/(m² K)", (4.0, 6.5), Textbook, "surfaces near 40 °C; it adds to the heat only", FromMemory }
    /// How much better or worse than over a plate.
    PLATE_SCALE = { "Heat and vapour transfer of a cheese over that of a flat plate", 1.0, "1", (0.7, 1.5), Ourselves, "gusts and the edge of a thick disc help, the wake of its neighbours and rough turning of the air hinder; until your own log says better", Judged }
    /// Resistance of a coat.
    COAT_RESISTANCE = { "Resistance of the coat to vapour", 100.0, "s/m", (0.0, 1000.0), Ourselves, "a thin coat; 0 to 1000 s/m moves the time to dry by 5 %", Judged }
}

/// Properties of air at a temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// Density, kg/m³.
    pub density_kg_m3: f64,
    /// Kinematic viscosity, m²/s.
    pub viscosity_m2_s: f64,
    /// Conductivity, W/(m K).
    pub conductivity_w_m_k: f64,
    /// Prandtl number.
    pub prandtl: f64,
    /// Schmidt number of water vapour.
    pub schmidt: f64,
}

/// Returns the properties of air.
///
/// # Arguments
/// * `temperature_c`: −50 to 100 °C
///
/// # Source
/// [`AIR_VISCOSITY`], [`AIR_CONDUCTIVITY`], [`VAPOUR_DIFFUSIVITY`].
#[must_use]
pub fn air(temperature_c: f64) -> Air {
    let t = kelvin(temperature_c);
    let density_kg_m3 = AIR_PRESSURE.value / (AIR_GAS_CONSTANT.value * t);
    let [a, b] = AIR_VISCOSITY.coefficients;
    let viscosity_pa_s = a * t.powf(1.5) / (t + b);
    let [a, b] = AIR_CONDUCTIVITY.coefficients;
    let conductivity_w_m_k = a * t.powf(1.5) / (t + b * 10.0_f64.powf(-12.0 / t));
    let vapour_m2_s = vapour_diffusivity_m2_s(temperature_c);
    let viscosity_m2_s = viscosity_pa_s / density_kg_m3;
    Air {
        density_kg_m3,
        viscosity_m2_s,
        conductivity_w_m_k,
        prandtl: viscosity_pa_s * AIR_HEAT.value / conductivity_w_m_k,
        schmidt: viscosity_m2_s / vapour_m2_s,
    }
}

/// Returns the diffusivity of water vapour in air at standard pressure, m²/s: a (T/273.15)^b.
///
/// # Arguments
/// * `temperature_c`: 0 to 60 °C
///
/// # Source
/// [`VAPOUR_DIFFUSIVITY`].
///
/// # Example
/// ```
/// assert!((vatsketch::law::air_transfer::vapour_diffusivity_m2_s(25.0) / 2.53e-5 - 1.0).abs() < 0.01);
/// ```
#[must_use]
pub fn vapour_diffusivity_m2_s(temperature_c: f64) -> f64 {
    let [a, b] = VAPOUR_DIFFUSIVITY.coefficients;
    a * (kelvin(temperature_c) / 273.15).powf(b)
}

/// Returns the mean heat transfer coefficient of a cheese in moving air, W/(m² K): a flat plate as long as the cheese is wide.
///
/// # Arguments
/// * `speed_m_s`: 0.05 to 3 m/s
/// * `diameter_m`: > 0
/// * `temperature_c`: of the air
///
/// # Source
/// [`PLATE`], [`PLATE_SCALE`].
///
/// # Example
/// ```
/// let h = vatsketch::law::air_transfer::heat_w_m2_k(1.0, 0.06, 40.0);
/// assert!((h - 15.98).abs() < 0.01);
/// ```
#[must_use]
pub fn heat_w_m2_k(speed_m_s: f64, diameter_m: f64, temperature_c: f64) -> f64 {
    let air = air(temperature_c);
    let reynolds = speed_m_s * diameter_m / air.viscosity_m2_s;
    PLATE_SCALE.value * (air.conductivity_w_m_k / diameter_m * PLATE.polynomial(0.0) * reynolds.sqrt() * air.prandtl.cbrt())
}

/// Returns the vapour transfer coefficient that goes with a heat transfer coefficient, m/s.
///
/// Chilton and Colburn's analogy: h/(ρ c hₘ) = Le^⅔ with Le = Sc/Pr.
///
/// # Arguments
/// * `heat_w_m2_k`: convective only, without radiation
/// * `temperature_c`: of the air
///
/// # Example
/// ```
/// let hm = vatsketch::law::air_transfer::vapour_m_s(15.98, 40.0);
/// assert!((hm - 0.01546).abs() < 1e-5);
/// ```
#[must_use]
pub fn vapour_m_s(heat_w_m2_k: f64, temperature_c: f64) -> f64 {
    let air = air(temperature_c);
    let lewis = air.schmidt / air.prandtl;
    heat_w_m2_k / (air.density_kg_m3 * AIR_HEAT.value * lewis.powf(2.0 / 3.0))
}
