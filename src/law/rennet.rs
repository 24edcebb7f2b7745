//! Rennet: its strength, its dose, and how fast it clots milk.

use crate::numeric::monotone;

crate::constants! {
    /// Weight of liquid rennet.
    LIQUID_DENSITY = { "Density of liquid rennet", 1.08, "kg/L", (1.0, 1.15), Textbook, "salted extract, some with glycerol; for a rough weight only", FromMemory }
    /// Between the two ways of stating strength.
    SOXHLET_PER_IMCU = { "Soxhlet units in one IMCU per mL", 69.0, "parts mL/IMCU", (55.0, 83.0), Iso11815, "±20 %", FromMemory }
    /// Time that does not depend on the dose.
    CLOTTING_LEAST = { "Clotting time that no dose shortens", 2.5, "min", (1.0, 4.0), GuelphNotes, "set on the 15 to 20 min of the notes", Fitted }
    /// Time times dose.
    CLOTTING_PRODUCT = { "Clotting time × dose at 31 °C, pH 6.65 and full calcium", 600.0, "min IMCU/kg", (420.0, 780.0), GuelphNotes, "set on the 15 to 20 min of the notes; ±30 % between milks", Fitted }
    /// Spread between milks.
    CLOTTING_SPREAD = { "Spread of clotting times between milks", 0.30, "1", (0.2, 0.4), Ourselves, "our reference is set on notes that give 15 to 20 min", Judged }
    /// pH of the reference.
    CLOTTING_PH = { "pH of the reference clotting time", 6.65, "1", (6.65, 6.65), Ourselves, "cow's milk", Judged }
    /// How much slower at a higher pH.
    CLOTTING_PH_FACTOR = { "Clotting time per 0.1 of pH", 1.25, "1", (1.19, 1.31), GuelphNotes, "quoted", Secondhand }
    /// Activity without added calcium.
    CLOTTING_WITHOUT_CALCIUM = { "Rennet activity without added calcium", 0.5, "1", (0.4, 0.7), JDairySci1958, "0.02 % of calcium chloride about halves the rennet needed", Secondhand }
    /// Dose above which more calcium does nothing.
    CLOTTING_FULL_CALCIUM = { "Calcium chloride that gives full activity", 0.015, "%", (0.01, 0.02), JDairySci1958, "0.015 to 0.02 % taken as one", Judged }
    /// Temperature below which nothing clots.
    CLOTTING_COLDEST = { "No clot below", 18.0, "°C", (15.0, 20.0), GuelphNotes, "setting temperatures", Secondhand }
    /// Temperature above which the enzyme dies.
    CLOTTING_HOTTEST = { "Rennet dies above", 55.0, "°C", (50.0, 60.0), GuelphNotes, "setting temperatures", Secondhand }
    /// From one test of the break to the next.
    TEST_AGAIN = { "Test again after", 12.0, "min", (5.0, 20.0), Ourselves, "estimate: long enough for the curd to have changed", Judged }
}

crate::correlations! {
    /// Activity against temperature.
    TEMPERATURE_ACTIVITY = {
        "Rennet activity at a temperature, 41 °C = 100", "at 20, 25, 30, 31, 33, 35, 37, 38, 39, 40, 41, 42, 43, 44, 45, 47 and 50 °C",
        [18.0, 44.0, 71.0, 74.0, 80.0, 86.0, 92.0, 94.0, 96.0, 98.0, 100.0, 98.0, 96.0, 93.0, 89.0, 78.0, 50.0],
        "%", (20.0, 50.0), "°C", Fleischmann, "table", FromMemory
    }
}

/// Temperatures of [`TEMPERATURE_ACTIVITY`], °C.
const TEMPERATURES_C: [f64; 17] =
    [20.0, 25.0, 30.0, 31.0, 33.0, 35.0, 37.0, 38.0, 39.0, 40.0, 41.0, 42.0, 43.0, 44.0, 45.0, 47.0, 50.0];
/// Activity at the reference of 31 °C, in the table's unit.
const REFERENCE_ACTIVITY: f64 = 74.0;

/// Returns the strength in IMCU/mL of a rennet labelled 1 : N, ±20 %.
///
/// # Example
/// ```
/// assert!((vatsketch::law::rennet::imcu_per_ml(10_000.0) - 145.0).abs() < 0.5);
/// ```
#[must_use]
pub fn imcu_per_ml(parts: f64) -> f64 {
    parts / SOXHLET_PER_IMCU.value
}

/// Returns the activity at a temperature relative to 31 °C.
///
/// # Arguments
/// * `temperature_c`: 20 to 50 °C; outside, the end values are kept
#[must_use]
pub fn temperature_factor(temperature_c: f64) -> f64 {
    let points: Vec<(f64, f64)> = TEMPERATURES_C.into_iter().zip(TEMPERATURE_ACTIVITY.coefficients.iter().copied()).collect();
    monotone(&points, temperature_c) / REFERENCE_ACTIVITY
}

/// Returns the activity at a pH relative to the reference: 1.25 times slower per 0.1 of pH.
#[must_use]
pub fn ph_factor(ph: f64) -> f64 {
    CLOTTING_PH_FACTOR.value.powf(-(ph - CLOTTING_PH.value) / 0.1)
}

/// Returns the activity at a dose of calcium relative to full calcium: half without any, doubling up to 0.015 %.
#[must_use]
pub fn calcium_factor(calcium_percent: f64) -> f64 {
    let lacking = (1.0 - calcium_percent / CLOTTING_FULL_CALCIUM.value).max(0.0);
    CLOTTING_WITHOUT_CALCIUM.value.powf(lacking)
}

/// Returns the clotting time, min: t = a + k/(E f_T f_pH f_Ca), ±30 % between milks.
///
/// # Arguments
/// * `dose_imcu_kg`: > 0
/// * `temperature_c`: 20 to 50 °C; `ph`: 5.8 to 7.0; `calcium_percent`: added anhydrous calcium chloride, ≥ 0
///
/// # Source
/// [`CLOTTING_PRODUCT`] and its neighbours.
///
/// # Example
/// ```
/// let minutes = vatsketch::law::rennet::clotting_min(40.0, 35.0, 6.65, 0.015);
/// assert!((minutes - 15.41).abs() < 0.05);
/// ```
#[must_use]
pub fn clotting_min(dose_imcu_kg: f64, temperature_c: f64, ph: f64, calcium_percent: f64) -> f64 {
    let activity = dose_imcu_kg * temperature_factor(temperature_c) * ph_factor(ph) * calcium_factor(calcium_percent);
    CLOTTING_LEAST.value + CLOTTING_PRODUCT.value / activity
}
