//! What a changed design costs more to buy.

use super::{Need, Shopping, shop};
use crate::batch::Batch;
use crate::design::Good;

/// Less than this is no other price: half of the last digit that is shown.
const SAME_PRICE: f64 = 0.005;
/// Amounts that differ by less than this part of themselves are the same.
const SAME_AMOUNT: f64 = 1e-6;

/// What one batch costs more to buy than another.
#[derive(Clone, Debug, PartialEq)]
pub struct PriceChange {
    /// How much more is to be paid, less than nothing if less, in the currency of the supplies.
    pub more: f64,
    /// What is needed in other amounts and has no supply: its price is not counted.
    pub not_counted: Vec<Good>,
}

impl PriceChange {
    /// Returns whether the price itself differs by what is shown.
    #[must_use]
    pub fn shows(&self) -> bool {
        self.more.abs() >= SAME_PRICE
    }
}

/// Returns how much more is to be paid for one batch than for another; none where the design has no prices, or either
/// was not calculated to its end or cannot be bought for, and none where nothing differs.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, plan::price_change};
/// let one = batch(&Design::default())?;
/// assert_eq!(price_change(&one, &one), None);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn price_change(before: &Batch, after: &Batch) -> Option<PriceChange> {
    let priced =
        |batch: &Batch| batch.design.supplies.goods.values().any(|supply| supply.offers.iter().any(|offer| offer.price > 0.0));
    let whole = |batch: &Batch| batch.first_missing().is_none();
    if ![before, after].into_iter().all(|batch| priced(batch) && whole(batch)) {
        return None;
    }
    let (was, is) = (shop(before).ok()?, shop(after).ok()?);
    let change = PriceChange { more: is.price - was.price, not_counted: other_amounts(&was, &is) };
    (change.shows() || !change.not_counted.is_empty()).then_some(change)
}

/// Returns the goods without a supply of which other amounts are needed.
fn other_amounts(was: &Shopping, is: &Shopping) -> Vec<Good> {
    let needed = |shopping: &Shopping, good: Good| {
        shopping.without_supply.iter().find(|need| need.good == good).map_or(0.0, |need: &Need| need.amount)
    };
    let differs = |good: &Good| {
        let (was, is) = (needed(was, *good), needed(is, *good));
        (is - was).abs() > SAME_AMOUNT * was.max(is)
    };
    Good::ALL.iter().copied().filter(differs).collect()
}
