//! Pasteurising: how long milk is held at which temperature, as rules for dairies have it.

use super::Matter;

crate::constants! {
    /// Pasteurising slowly.
    SLOW_PASTEURISING = { "Temperature of slow pasteurising", 63.0, "°C", (62.8, 63.0), Cfr21, "1240.61 (b), 145 °F", Published }
    /// For how long.
    SLOW_PASTEURISING_TIME = { "Time of slow pasteurising", 30.0, "min", (30.0, 30.0), Cfr21, "1240.61 (b)", Published }
    /// Pasteurising quickly.
    QUICK_PASTEURISING = { "Temperature of quick pasteurising", 72.0, "°C", (71.7, 72.0), Cfr21, "1240.61 (b), 161 °F", Published }
    /// For how long.
    QUICK_PASTEURISING_TIME = { "Time of quick pasteurising", 15.0, "s", (15.0, 15.0), Cfr21, "1240.61 (b)", Published }
    /// Milk that is rich in fat.
    RICH_FAT = { "Fat from which milk is held hotter", 10.0, "%", (10.0, 10.0), Cfr21, "1240.61 (b), note 1", Published }
    /// Milk that is rich in solids.
    RICH_SOLIDS = { "Solids from which milk is held hotter", 18.0, "%", (18.0, 18.0), PasteurizedMilkOrdinance, "definition of pasteurisation, note to the table", Secondhand }
    /// How much hotter.
    RICH_HOTTER = { "Rich milk is held hotter by", 3.0, "K", (2.8, 3.0), Cfr21, "1240.61 (b), note 1, 5 °F; for solids the Pasteurized Milk Ordinance", Published }
    /// How fast milk is cooled.
    LONGEST_COOLING = { "Longest cooling after pasteurising", 2.0, "h", (0.5, 2.0), FoodCode, "3-501.14, from 57 to 21 °C; from memory", FromMemory }
}

/// Returns whether rules count milk as rich: from 10 % of fat or 18 % of solids on it is held hotter. Most sheep's milk is.
///
/// # Source
/// [`RICH_FAT`], [`RICH_SOLIDS`].
///
/// # Example
/// ```
/// use vatsketch::law::{composition::Animal, pasteurising::is_rich};
/// assert!(!is_rich(&Animal::Cow.milk()));
/// ```
#[must_use]
pub fn is_rich(milk: &Matter) -> bool {
    let solids_percent = 100.0 - milk.moisture_percent();
    milk.fat_percent() >= RICH_FAT.value || solids_percent >= RICH_SOLIDS.value
}

/// Returns the least temperature of pasteurising, °C.
///
/// # Arguments
/// * `rich`: whether the milk is rich ([`is_rich`])
#[must_use]
pub fn least_c(rich: bool) -> f64 {
    SLOW_PASTEURISING.value + if rich { RICH_HOTTER.value } else { 0.0 }
}

/// Returns how long milk is held at a temperature, s; none below the least temperature of the rules.
///
/// The rules give two points, 30 min at 63 °C and 15 s at 72 °C. Between them we draw a straight line in the logarithm of the time,
/// log t = log t₁ + (T − T₁)/(T₂ − T₁) (log t₂ − log t₁), which no rule says; beyond 72 °C it is held 15 s.
///
/// # Arguments
/// * `temperature_c`: of every drop of the milk, all the time
/// * `rich`: whether the milk is rich ([`is_rich`]); both points are then 3 °C hotter
///
/// # Source
/// [`SLOW_PASTEURISING`], [`QUICK_PASTEURISING`]; the line between them is our own.
///
/// # Example
/// ```
/// use vatsketch::law::pasteurising::hold_s;
/// assert_eq!(hold_s(63.0, false), Some(1800.0));
/// assert_eq!(hold_s(63.0, true), None);
/// assert!((hold_s(75.0, true).unwrap() - 15.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn hold_s(temperature_c: f64, rich: bool) -> Option<f64> {
    let above_k = temperature_c - least_c(rich);
    let enough = above_k >= 0.0;
    let (slow_s, quick_s) = (60.0 * SLOW_PASTEURISING_TIME.value, QUICK_PASTEURISING_TIME.value);
    let share = (above_k / (QUICK_PASTEURISING.value - SLOW_PASTEURISING.value)).min(1.0);
    enough.then(|| slow_s * (quick_s / slow_s).powf(share))
}

/// Returns whether a rule has milk held at this temperature for so long: at either published point, or hotter or longer than it. Where not, the
/// time is by our own line.
///
/// # Arguments
/// * `temperature_c`, `held_s`: of every drop of the milk, all the time
/// * `rich`: whether the milk is rich ([`is_rich`])
///
/// # Source
/// [`SLOW_PASTEURISING`], [`QUICK_PASTEURISING`].
///
/// # Example
/// ```
/// use vatsketch::law::pasteurising::is_of_a_rule;
/// assert!(is_of_a_rule(63.0, 1800.0, false) && is_of_a_rule(66.0, 1800.0, false) && is_of_a_rule(73.0, 15.0, false));
/// assert!(!is_of_a_rule(66.0, 420.0, false) && !is_of_a_rule(72.0, 60.0, true));
/// ```
#[must_use]
pub fn is_of_a_rule(temperature_c: f64, held_s: f64, rich: bool) -> bool {
    let hotter_k = least_c(rich) - least_c(false);
    let points = [(&SLOW_PASTEURISING, 60.0 * SLOW_PASTEURISING_TIME.value), (&QUICK_PASTEURISING, QUICK_PASTEURISING_TIME.value)];
    // Minutes in seconds may have lost their last digits.
    points.into_iter().any(|(point, least_s)| temperature_c >= point.value + hotter_k && held_s >= least_s - 1e-6)
}

/// Shorter times are counted in seconds, s.
const COUNTED_S: f64 = 120.0;

/// Returns whether a time of holding is counted in seconds and not in minutes.
#[must_use]
pub fn in_seconds(hold_s: f64) -> bool {
    hold_s < COUNTED_S
}

/// Returns a time of holding as a kitchen clock shows it, s: rounded up to whole minutes, or to whole seconds where it is short.
///
/// # Example
/// ```
/// use vatsketch::law::pasteurising::on_a_clock_s;
/// assert_eq!((on_a_clock_s(14.2), on_a_clock_s(621.0)), (15.0, 660.0));
/// ```
#[must_use]
pub fn on_a_clock_s(hold_s: f64) -> f64 {
    // What is whole already may have lost its last digits.
    let up = |count: f64| (count - 1e-9).ceil();
    if in_seconds(hold_s) { up(hold_s) } else { 60.0 * up(hold_s / 60.0) }
}
