//! Rennet: its strength, its dose and how long it takes.

use crate::numeric::monotone;

crate::correlations! {
    /// Activity of rennet against temperature.
    ACTIVITY = { "Activity of rennet, 41 °C = 100", "at 20, 25, 30, 31, 33, 35, 37, 38, 39, 40, 41, 42, 43, 44, 45, 47 and 50 °C", [18.0, 44.0, 71.0, 74.0, 80.0, 86.0, 92.0, 94.0, 96.0, 98.0, 100.0, 98.0, 96.0, 93.0, 89.0, 78.0, 50.0], "1", (20.0, 50.0), "°C", Fleischmann, "the table", FromMemory }
}

crate::constants! {
    /// Time that clotting takes however much rennet there is.
    LEAST_CLOTTING = { "Clotting time with any amount of rennet", 2.5, "min", (1.0, 5.0), GuelphNotes, "set on its 15 to 20 minutes", Fitted }
    /// Clotting time times dose.
    CLOTTING_PRODUCT = { "Clotting time beyond that, times the dose", 600.0, "min IMCU/kg", (400.0, 800.0), GuelphNotes, "at 31 °C, pH 6.65 and 0.015 to 0.02 % calcium chloride; set on its 15 to 20 minutes", Fitted }
    /// Temperature of that product.
    CLOTTING_TEMPERATURE = { "Temperature at which the clotting time was set", 31.0, "°C", (30.0, 32.0), GuelphNotes, "the vat of its example", Fitted }
    /// pH of that product.
    CLOTTING_PH = { "pH at which the clotting time was set", 6.65, "1", (6.6, 6.7), GuelphNotes, "fresh cow's milk", Fitted }
    /// Calcium chloride of that product.
    CLOTTING_CALCIUM = { "Calcium chloride at which the clotting time was set", 0.0175, "%", (0.015, 0.02), GuelphNotes, "the middle of its 0.015 to 0.02 %", Fitted }
    /// Clotting time at a tenth of pH more.
    PH_FACTOR = { "Clotting time at 0.1 pH more", 1.25, "1", (1.19, 1.31), Textbook, "second-hand", Secondhand }
    /// Calcium chloride that halves the rennet.
    CALCIUM_HALVES = { "Calcium chloride that halves the rennet needed", 0.02, "%", (0.015, 0.03), JDairySci1958, "abstract", Secondhand }
    /// Soxhlet units in an international unit.
    SOXHLET_UNITS = { "Soxhlet strength of 1 IMCU/mL", 69.0, "1", (55.0, 83.0), Textbook, "trade's rule, ±20 %", FromMemory }
    /// Coldest milk that clots.
    COLDEST = { "Coldest milk that rennet clots", 18.0, "°C", (15.0, 20.0), Textbook, "textbooks agree roughly", FromMemory }
    /// Temperature above which the enzyme dies.
    HOTTEST = { "Temperature above which rennet dies", 55.0, "°C", (50.0, 60.0), Textbook, "textbooks agree roughly", FromMemory }
    /// Spread of the clotting time.
    CLOTTING_SPREAD = { "Spread of the clotting time between milks, either way", 30.0, "%", (20.0, 40.0), Ourselves, "as a share of the time", Judged }
}

/// The temperatures of [`ACTIVITY`], °C.
const ACTIVITY_C: [f64; 17] =
    [20.0, 25.0, 30.0, 31.0, 33.0, 35.0, 37.0, 38.0, 39.0, 40.0, 41.0, 42.0, 43.0, 44.0, 45.0, 47.0, 50.0];

/// Minutes of Soxhlet's test; part of the definition.
const SOXHLET_MINUTES: f64 = 40.0;

/// Why the milk does not clot.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum RennetError {
    /// Too cold.
    #[error("milk at {temperature_c:.1} °C does not clot: rennet needs at least {least_c:.0} °C, and works best near 41 °C")]
    TooCold {
        /// Temperature of the milk.
        temperature_c: f64,
        /// The least that is needed.
        least_c: f64,
    },
    /// Too hot.
    #[error("milk at {temperature_c:.1} °C does not clot: rennet dies above about {most_c:.0} °C, and works best near 41 °C")]
    TooHot {
        /// Temperature of the milk.
        temperature_c: f64,
        /// The most that it bears.
        most_c: f64,
    },
    /// No rennet.
    #[error("milk with {dose_imcu_kg} IMCU/kg does not clot: it needs some rennet, usually 25 to 60 IMCU/kg")]
    NoRennet {
        /// The dose.
        dose_imcu_kg: f64,
    },
}

/// What sets the clotting time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Clotting {
    /// Milk-clotting units in each kilogram of milk, usually 25 to 60.
    pub dose_imcu_kg: f64,
    /// Temperature of the milk, 18 to 55 °C.
    pub temperature_c: f64,
    /// pH of the milk, 5.8 to 7.
    pub ph: f64,
    /// Anhydrous calcium chloride added, % by mass.
    pub calcium_percent: f64,
}

/// Returns the minutes from rennet to clotting: t = a + k/(E·fT·fpH·fCa).
///
/// fT is the activity of the table to that at 31 °C, on a monotone curve; from 18 to 20 and from 50 to 55 °C its end chords go on.
/// fpH falls by a factor 1.25 for each tenth of pH more. fCa doubles with 0.02 % of calcium chloride, up to that dose.
///
/// # Errors
/// [`RennetError`] below 18 °C, above 55 °C, and without rennet.
///
/// # Source
/// [`CLOTTING_PRODUCT`], [`ACTIVITY`], [`PH_FACTOR`] and [`CALCIUM_HALVES`].
///
/// # Example
/// ```
/// use vatsketch::law::rennet::{clotting_min, Clotting};
/// let milk = Clotting { dose_imcu_kg: 40.0, temperature_c: 35.0, ph: 6.65, calcium_percent: 0.0175 };
/// assert!((clotting_min(milk)? - 15.41).abs() < 0.05);
/// # Ok::<(), vatsketch::law::rennet::RennetError>(())
/// ```
pub fn clotting_min(milk: Clotting) -> Result<f64, RennetError> {
    let Clotting { dose_imcu_kg, temperature_c, ph, calcium_percent } = milk;
    let has_rennet = dose_imcu_kg > 0.0;
    if !has_rennet {
        return Err(RennetError::NoRennet { dose_imcu_kg });
    }
    let warm_enough = temperature_c >= COLDEST.value;
    if !warm_enough {
        return Err(RennetError::TooCold { temperature_c, least_c: COLDEST.value });
    }
    let cool_enough = temperature_c <= HOTTEST.value;
    if !cool_enough {
        return Err(RennetError::TooHot { temperature_c, most_c: HOTTEST.value });
    }
    let by_temperature = activity(temperature_c) / activity(CLOTTING_TEMPERATURE.value);
    let by_ph = PH_FACTOR.value.powf((CLOTTING_PH.value - ph) / 0.1);
    // The published halving ends at 0.02 %; more is not known to help.
    let calcium = calcium_percent.clamp(0.0, CALCIUM_HALVES.value) - CLOTTING_CALCIUM.value;
    let by_calcium = (calcium / CALCIUM_HALVES.value).exp2();
    Ok(LEAST_CLOTTING.value + CLOTTING_PRODUCT.value / (dose_imcu_kg * by_temperature * by_ph * by_calcium))
}

/// Returns the activity of rennet, 100 at 41 °C.
fn activity(temperature_c: f64) -> f64 {
    monotone(&ACTIVITY_C, ACTIVITY.coefficients, temperature_c)
}

/// Returns the Soxhlet strength from a test: S = 40 V/(T v), parts of milk that one part of rennet clots in 40 minutes at 35 °C.
///
/// # Arguments
/// * `milk_ml`, `rennet_ml`: volumes of the test, > 0
/// * `minutes`: until it clotted, > 0
///
/// # Source
/// [`crate::source::SourceId::GuelphNotes`], cheese notes.
///
/// # Example
/// ```
/// use vatsketch::law::rennet::soxhlet_parts;
/// assert!((soxhlet_parts(1000.0, 1.0, 2.4) - 16_667.0).abs() < 0.5);
/// ```
#[must_use]
pub fn soxhlet_parts(milk_ml: f64, rennet_ml: f64, minutes: f64) -> f64 {
    SOXHLET_MINUTES * milk_ml / (minutes * rennet_ml)
}

/// Returns the strength in international units of a rennet of a Soxhlet strength, IMCU/mL; true to ±20 %.
///
/// # Source
/// [`SOXHLET_UNITS`].
#[must_use]
pub fn imcu_from_soxhlet(parts: f64) -> f64 {
    parts / SOXHLET_UNITS.value
}

/// Returns the Soxhlet strength of a rennet of so many international units, parts; true to ±20 %.
///
/// # Source
/// [`SOXHLET_UNITS`].
#[must_use]
pub fn soxhlet_from_imcu(imcu_ml: f64) -> f64 {
    imcu_ml * SOXHLET_UNITS.value
}

/// Returns the rennet to measure, mL: dose times milk over strength.
///
/// # Arguments
/// * `milk_kg`: ≥ 0
/// * `dose_imcu_kg`: units in each kilogram of milk
/// * `strength_imcu_ml`: units in each millilitre of rennet, > 0
#[must_use]
pub fn dose_ml(milk_kg: f64, dose_imcu_kg: f64, strength_imcu_ml: f64) -> f64 {
    dose_imcu_kg * milk_kg / strength_imcu_ml
}
