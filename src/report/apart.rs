//! How far two amounts are apart, without a sign: a difference of temperatures has no zero point.

use super::Amount;
use crate::design::Unit;
use crate::units::Units;

/// Returns a difference with its unit, as it is shown next to an amount.
///
/// # Arguments
/// * `next_to`: the amount, whose size decides the unit
pub(super) fn apart_text(units: Units, unit: Unit, next_to: f64, apart: f64, decimals: usize) -> String {
    match units.spread(unit, next_to, apart.abs(), decimals) {
        // Measured in two units, the smaller of them is said.
        Some(digits) if digits.contains(char::is_alphabetic) => digits,
        Some(digits) => format!("{digits} {}", units.scale(unit, next_to).symbol),
        None => Amount::new(apart.abs(), unit, decimals).to_string(),
    }
}
