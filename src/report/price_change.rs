//! What a change costs more to buy, in words.

use super::money;
use crate::design::{Good, lower_first};
use crate::plan::PriceChange;

/// Returns how much more or less is to be paid, and what has no price and is not counted.
///
/// # Arguments
/// * `currency`: the maker's, as it may be written
///
/// # Example
/// ```
/// use vatsketch::{design::Good, plan::PriceChange, report::price_change_words};
/// let change = PriceChange { more: -0.5, not_counted: vec![Good::Rennet] };
/// assert_eq!(price_change_words(&change, "coins"), "0.50\u{a0}coins less to pay; without a price, not counted: rennet");
/// ```
#[must_use]
pub fn price_change_words(change: &PriceChange, currency: &str) -> String {
    let money = change.shows().then(|| {
        let amount = money(change.more.abs(), currency);
        format!("{amount} {} to pay", if change.more > 0.0 { "more" } else { "less" })
    });
    let goods: Vec<String> = change.not_counted.iter().copied().map(Good::label).map(lower_first).collect();
    let not_counted = (!goods.is_empty()).then(|| format!("without a price, not counted: {}", goods.join(", ")));
    let both: Vec<String> = money.into_iter().chain(not_counted).collect();
    both.join("; ")
}
