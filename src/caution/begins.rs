//! Where a caution begins, for the mark on a slider.

/// Returns the value of an input from which a caution is likely, where that does not depend on the other inputs.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::caution::caution_begins("calcium_dose_percent"), Some(0.02));
/// assert_eq!(vatsketch::caution::caution_begins("milk_l"), None);
/// ```
#[must_use]
pub fn caution_begins(key: &str) -> Option<f64> {
    match key {
        "calcium_dose_percent" => Some(crate::law::calcium::LEGAL_LIMIT.value),
        "draining_temperature_c" => Some(crate::law::growth::COLD_DRAINING.value),
        "acid_g_per_100ml" => Some(crate::law::acidity::LEAST_VINEGAR.value),
        "pickling_temperature_c" | "keeping_temperature_c" => Some(crate::law::growth::COLD_ENOUGH.value),
        "bath_set_temperature_c" => Some(crate::law::bath::DEPOSITS_BEGIN.value),
        "cabinet_temperature_c" | "day_temperature_c" => Some(crate::law::growth::SERVICE_WARM.value),
        _ => None,
    }
}
