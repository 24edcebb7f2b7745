//! Amounts and prices as a shopper reads them.

use crate::design::{SuppliesDesign, Unit};
use crate::report::Amount;

/// Returns an amount: from a litre or a kilogram on in those, small ones with two decimals.
pub(super) fn amount_words(value: f64, unit: Unit) -> String {
    let amount = match unit {
        Unit::Millilitre if value >= 1000.0 => Amount::new(0.001 * value, Unit::Litre, 2),
        Unit::Gram if value >= 1000.0 => Amount::new(0.001 * value, Unit::Kilogram, 2),
        _ => Amount::new(value, unit, if value < 10.0 { 2 } else { 0 }),
    };
    amount.to_string()
}

/// Returns a price with the maker's currency behind it.
pub(super) fn price_words(value: f64, supplies: &SuppliesDesign) -> String {
    format!("{value:.2} {}", supplies.currency).trim_end().to_owned()
}
