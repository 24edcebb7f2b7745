//! How warm a place really is.

use crate::source::Constant;

crate::constants! {
    /// How warm it is around the moulds.
    MOULDS_WARMTH = { "Absolute temperature around the moulds where 20 °C are chosen", 293.15, "K", (291.15, 295.15), Ourselves, "2 K to either side: a room that nobody regulates, and a household thermometer", Judged }
    /// How warm the drying air is.
    AIR_WARMTH = { "Absolute temperature of the drying air where 30 °C are chosen", 303.15, "K", (301.15, 305.15), Ourselves, "2 K to either side: a household thermostat, and the corners of a cabinet", Judged }
    /// How warm it is around the jar.
    JAR_WARMTH = { "Absolute temperature around the jar where 4 °C are chosen", 277.15, "K", (276.15, 279.65), Ourselves, "1 K colder to 2.5 K warmer: a fridge that is opened, and its door", Judged }
}

/// Returns how warm a place is, °C: T = T_chosen + (factor − 1) · T_record, and not below 0 °C, for a jar does not freeze.
pub(super) fn met_c(chosen_c: f64, factor: f64, record_k: f64) -> f64 {
    let off_k = (factor - 1.0) * record_k;
    if off_k == 0.0 { chosen_c } else { (chosen_c + off_k).max(0.0) }
}

/// Returns the record that says how far a place may be off, by the key of the choice how warm it is; none for other choices.
///
/// # Example
/// ```
/// use vatsketch::process::place_warmth;
/// assert_eq!(place_warmth("keeping_temperature_c").unwrap().unit, "K");
/// assert!(place_warmth("milk_l").is_none());
/// ```
#[must_use]
pub fn place_warmth(choice: &str) -> Option<Constant> {
    match choice {
        "draining_temperature_c" => Some(MOULDS_WARMTH),
        "cabinet_temperature_c" | "day_temperature_c" | "night_temperature_c" => Some(AIR_WARMTH),
        "pickling_temperature_c" | "keeping_temperature_c" => Some(JAR_WARMTH),
        _ => None,
    }
}
