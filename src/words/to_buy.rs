//! What the milk of a batch comes to in the shop, in a few words next to the choices that decide it.

use crate::batch::Batch;
use crate::design::{CreamBy, Unit};
use crate::units::Units;

/// Smallest amount of cream or skimmed milk that is worth naming, g and L.
const LEAST: (f64, f64) = (0.5, 0.005);

/// Returns what is to be bought beside the milk: cream, or skimmed milk, or nothing; why not, where the milk was not calculated.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, units::Units, words::to_buy};
/// assert!(to_buy(&batch(&Design::default())?, Units::default()).starts_with("buy "));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn to_buy(batch: &Batch, units: Units) -> String {
    let Some(milk) = batch.milk.done() else { return "this fat cannot be reached: change the fat target or the cream".to_owned() };
    let amount = |unit: Unit, value: f64, decimals: usize, what: &str| {
        let amount = units.text(unit, value, decimals).unwrap_or_else(|| format!("{value:.decimals$} {}", unit.symbol()));
        format!("{amount} of {what}")
    };
    let cream = (milk.cream_g >= LEAST.0).then(|| amount(Unit::Gram, milk.cream_g, 0, "cream"));
    let skimmed = (milk.skim_l >= LEAST.1).then(|| amount(Unit::Litre, milk.skim_l, 2, "skimmed milk"));
    // Cream at hand is not bought.
    let verb = if batch.design.milk.cream_by == CreamBy::CreamAmount { "with" } else { "buy" };
    cream.or(skimmed).map_or_else(|| "no cream needed".to_owned(), |amount| format!("{verb} {amount}"))
}
