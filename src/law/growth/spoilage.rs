//! Yeasts and moulds: they spoil, make gas in a closed jar, and show where vinegar and cold do not stop everything.

use super::cardinal::{Cardinal, Power};

/// Pure water itself lies at the end of the model of the mould.
const WETTEST: f64 = 0.9999;

crate::constants! {
    /// Coldest that the law of yeasts was fitted at.
    YEAST_COLDEST = { "Dairy yeasts: the law holds from", 2.0, "°C", (2.0, 2.0), GroPin, "model 1040, Braun and Sutherland 2004", Secondhand }
    /// Warmest.
    YEAST_WARMEST = { "Dairy yeasts: the law holds up to", 20.0, "°C", (20.0, 20.0), GroPin, "model 1040, Braun and Sutherland 2004", Secondhand }
    /// Sourest.
    YEAST_SOUREST = { "Dairy yeasts: the law holds from pH", 4.0, "pH", (4.0, 4.0), GroPin, "model 1040, Braun and Sutherland 2004", Secondhand }
    /// Least sour.
    YEAST_MILDEST = { "Dairy yeasts: the law holds up to pH", 7.5, "pH", (7.5, 7.5), GroPin, "model 1040, Braun and Sutherland 2004", Secondhand }
    /// Driest.
    YEAST_DRIEST = { "Dairy yeasts: the law holds from water activity", 0.95, "1", (0.95, 0.95), GroPin, "model 1040, Braun and Sutherland 2004", Secondhand }
    /// Wettest.
    YEAST_WETTEST = { "Dairy yeasts: the law holds up to water activity", 0.994, "1", (0.994, 0.994), GroPin, "model 1040, Braun and Sutherland 2004", Secondhand }
    /// Radius of a mould.
    MOULD_RATE = { "Blue mould: growth of the radius where it grows best", 4.19, "mm/d", (2.0, 6.0), GroPin, "model 170, Judet-Correia et al. 2010, on fruit; for the shape only", Secondhand }
}

crate::correlations! {
    /// Rate of yeasts.
    YEAST = { "Dairy yeasts: logarithm of the rate", "a + b T + c √(1 − aw) + d T² + e pH² + f (1 − aw)", [-6.001, 0.2342, 14.12, -0.003_552, 0.005_554, -76.68], "ln 1/h", (2.0, 20.0), "°C", GroPin, "model 1040, Braun and Sutherland 2004; no term for acids", Secondhand }
    /// Temperatures of a mould.
    MOULD_TEMPERATURE = { "Blue mould: temperatures of growth", "least, best and greatest temperature", [-4.4, 23.9, 32.5], "°C", (0.0, 32.5), "°C", GroPin, "model 170, Judet-Correia et al. 2010, on fruit", Secondhand }
    /// Water activity of a mould.
    MOULD_WATER = { "Blue mould: water activity of growth", "least, best and greatest water activity", [0.856, 0.981, 1.0], "1", (0.856, 1.0), "1", GroPin, "model 170, Judet-Correia et al. 2010, on fruit; power 2", Secondhand }
}

/// Returns the rate of growth of dairy yeasts, ln per hour; none outside the conditions that the law was fitted in.
///
/// ln μ = −6.001 + 0.2342 T + 14.12 b − 0.003552 T² + 0.005554 pH² − 76.68 b², b = √(1 − aw)
///
/// # Arguments
/// * `temperature_c`: 2 to 20 °C; `ph`: 4.0 to 7.5; `water_activity`: 0.95 to 0.994
///
/// # Source
/// `YEAST`. It has no term for acid: yeasts go on in vinegar.
///
/// # Example
/// ```
/// use vatsketch::law::growth::yeast_rate_per_h;
/// assert!(yeast_rate_per_h(5.0, 5.5, 0.985).is_some_and(|rate| (rate / 0.015_426_8 - 1.0).abs() < 1e-4));
/// assert_eq!(yeast_rate_per_h(30.0, 5.5, 0.985), None);
/// ```
#[must_use]
pub fn yeast_rate_per_h(temperature_c: f64, ph: f64, water_activity: f64) -> Option<f64> {
    let within = (YEAST_COLDEST.value..=YEAST_WARMEST.value).contains(&temperature_c)
        && (YEAST_SOUREST.value..=YEAST_MILDEST.value).contains(&ph)
        && (YEAST_DRIEST.value..=YEAST_WETTEST.value).contains(&water_activity);
    let [a, b, c, d, e, f] = YEAST.coefficients;
    let dry = 1.0 - water_activity;
    let logarithm = a + b * temperature_c + c * dry.sqrt() + d * temperature_c.powi(2) + e * ph.powi(2) + f * dry;
    within.then(|| logarithm.exp())
}

/// Returns how fast the radius of a blue mould's colony grows, mm per day; it needs air, and hardly minds acid.
///
/// # Source
/// `MOULD_RATE`, `MOULD_TEMPERATURE`, `MOULD_WATER`.
///
/// # Example
/// ```
/// assert!((vatsketch::law::growth::mould_mm_per_day(8.0, 0.95) / 0.925_675 - 1.0).abs() < 1e-4);
/// ```
#[must_use]
pub fn mould_mm_per_day(temperature_c: f64, water_activity: f64) -> f64 {
    let held = if water_activity > WETTEST { WETTEST } else { water_activity };
    MOULD_RATE.value
        * Cardinal::of(&MOULD_TEMPERATURE).factor(temperature_c, Power::Two)
        * Cardinal::of(&MOULD_WATER).factor(held, Power::Two)
}
