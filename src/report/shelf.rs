//! Amounts and prices as a shopper reads them; paper, window and command line say them alike. Number and unit are never parted.

use super::Amount;
use crate::design::Unit;
use crate::units::Units;

/// Returns the size of a package as it is printed on it: from a litre or a kilogram on in those, with no more decimals than it has.
///
/// # Example
/// ```
/// use vatsketch::{design::Unit, report::shelf_size};
/// assert_eq!(shelf_size(1250.0, Unit::Millilitre).to_string(), "1.25\u{a0}L");
/// assert_eq!(shelf_size(12.5, Unit::Gram).to_string(), "12.5\u{a0}g");
/// ```
#[must_use]
pub fn shelf_size(value: f64, unit: Unit) -> Amount {
    let (value, unit) = in_large(value, unit);
    let most = if matches!(unit, Unit::Litre | Unit::Kilogram) { 3 } else { 2 };
    Amount::new(value, unit, decimals(value, most))
}

/// Returns the size of a package as it is shown: a round metric size stands on the package, and is not told in other units.
///
/// # Example
/// ```
/// use vatsketch::{design::Unit, report::printed_size, units::Units};
/// assert_eq!(printed_size(1250.0, Unit::Millilitre, Units::US).to_string(), "1.25\u{a0}L");
/// assert_eq!(printed_size(473.176_473, Unit::Millilitre, Units::US).to_string(), "16\u{a0}fl\u{a0}oz");
/// ```
#[must_use]
pub fn printed_size(value: f64, unit: Unit, units: Units) -> Amount {
    let round = (2.0 * value - (2.0 * value).round()).abs() < 1e-6;
    shelf_size(value, unit).shown_in(if round { Units::METRIC } else { units })
}

/// Returns what is needed, at home or left over as a kitchen measures it: litres and kilograms to the hundredth, ten and more of the small
/// units whole, less to the hundredth; no zeros at the end.
///
/// # Example
/// ```
/// use vatsketch::{design::Unit, report::kitchen_amount};
/// assert_eq!(kitchen_amount(38.64, Unit::Millilitre).to_string(), "39\u{a0}mL");
/// assert_eq!(kitchen_amount(1.174, Unit::Gram).to_string(), "1.17\u{a0}g");
/// assert_eq!(kitchen_amount(6000.0, Unit::Millilitre).to_string(), "6\u{a0}L");
/// ```
#[must_use]
pub fn kitchen_amount(value: f64, unit: Unit) -> Amount {
    let (value, unit) = in_large(value, unit);
    let large = matches!(unit, Unit::Litre | Unit::Kilogram);
    let hundredths = (100.0 * value).round() / 100.0;
    Amount::new(value, unit, if large || value < SMALL { decimals(hundredths, 2) } else { 0 })
}

/// Below this, tenths and hundredths can be weighed or dripped.
const SMALL: f64 = 10.0;

/// Returns a price with the maker's currency behind it, if there is one.
///
/// # Example
/// ```
/// use vatsketch::report::money;
/// assert_eq!((money(8.6, "coins").as_str(), money(8.6, "").as_str()), ("8.60\u{a0}coins", "8.60"));
/// ```
#[must_use]
pub fn money(price: f64, currency: &str) -> String {
    // Nothing is written as nothing, never as less than nothing.
    let price = price + 0.0;
    if currency.is_empty() { format!("{price:.2}") } else { format!("{price:.2}\u{a0}{currency}") }
}

fn in_large(value: f64, unit: Unit) -> (f64, Unit) {
    match unit {
        Unit::Millilitre if value >= 1000.0 => (0.001 * value, Unit::Litre),
        Unit::Gram if value >= 1000.0 => (0.001 * value, Unit::Kilogram),
        _ => (value, unit),
    }
}

/// Returns the decimals that a number has, at most so many.
fn decimals(value: f64, most: usize) -> usize {
    let exact = |decimals: &usize| {
        let scaled = value * 10_f64.powi(i32::try_from(*decimals).unwrap_or(0));
        (scaled - scaled.round()).abs() < 1e-6
    };
    (0..most).find(exact).unwrap_or(most)
}
