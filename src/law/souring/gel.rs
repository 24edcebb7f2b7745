//! What souring does to the gel: how fast it clots and drips, and where acid alone clots milk.

use crate::law::rennet::ph_factor;

crate::constants! {
    /// Where the law of clotting and pH ends.
    CLOTTING_PH_LEAST = { "pH below which clotting is taken to get no quicker", 6.0, "pH", (5.8, 6.2), Ourselves, "it was not measured below", Judged }
    /// How much quicker the drip gets.
    DRIP_PH_FACTOR = { "Time of the drip for each 0.1 of pH less", 0.85, "1", (0.75, 0.95), Ourselves, "syneresis quickens with lower pH; figures 10.9 and 10.10 of a textbook show it without numbers", Judged }
    /// Where that begins.
    DRIP_PH_FROM = { "pH below which the drip quickens", 6.6, "pH", (6.4, 6.7), Ourselves, "that of milk", Judged }
    /// Where that ends.
    DRIP_PH_TO = { "pH below which the drip gets no quicker", 6.0, "pH", (5.8, 6.2), Ourselves, "firmness falls again below", Judged }
    /// Where acid clots cold milk as it falls.
    ACID_CLOT_PH = { "pH below which stirred-in acid clots milk where it falls", 5.3, "pH", (5.0, 5.6), CommonPractice, "if the milk is warmer than cool", FromMemory }
    /// How warm the milk is for that.
    ACID_CLOT_C = { "Temperature above which stirred-in acid clots milk where it falls", 15.0, "°C", (10.0, 20.0), CommonPractice, "below the pH of an acid clot", FromMemory }
    /// Where warm milk is an acid clot.
    WARM_ACID_CLOT_PH = { "pH below which warm milk is an acid clot and no rennet curd", 5.2, "pH", (5.0, 5.4), Textbook, "at 35 °C", FromMemory }
    /// How cold the milk is to be.
    STIR_ACID_BELOW_C = { "Acid is stirred into milk no warmer than", 10.0, "°C", (4.0, 12.0), CommonPractice, "diluted and slowly", FromMemory }
}

/// Returns the time of the drip over that of unsoured curd: × 0.85 for each 0.1 of pH from 6.6 down to 6.0, then constant.
///
/// # Source
/// [`DRIP_PH_FACTOR`] and its neighbours.
///
/// # Example
/// ```
/// use vatsketch::law::souring::drip_factor;
/// assert!((drip_factor(6.5) - 0.85).abs() < 1e-9 && drip_factor(6.65) == 1.0);
/// ```
#[must_use]
pub fn drip_factor(ph: f64) -> f64 {
    // `clamp` lets what is no number through.
    let tenths = (DRIP_PH_FROM.value - ph.clamp(DRIP_PH_TO.value, DRIP_PH_FROM.value)) / 0.1;
    DRIP_PH_FACTOR.value.powf(tenths)
}

/// Returns the clotting time over that at the reference pH, 1.25 for each 0.1 of pH; held below pH 6.0, where it was not measured.
///
/// # Source
/// [`crate::law::rennet::CLOTTING_PH_FACTOR`], [`CLOTTING_PH_LEAST`].
///
/// # Example
/// ```
/// assert!((vatsketch::law::souring::clotting_factor(6.35) - 0.512).abs() < 1e-6);
/// ```
#[must_use]
pub fn clotting_factor(ph: f64) -> f64 {
    let held = if ph < CLOTTING_PH_LEAST.value { CLOTTING_PH_LEAST.value } else { ph };
    1.0 / ph_factor(held)
}

/// Returns whether acid that is stirred into milk clots it where it falls.
///
/// # Arguments
/// * `temperature_c`: of the milk; `ph`: that it comes to
#[must_use]
pub fn clots_where_it_falls(temperature_c: f64, ph: f64) -> bool {
    temperature_c > ACID_CLOT_C.value && ph < ACID_CLOT_PH.value
}
