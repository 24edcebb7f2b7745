//! What a changed design costs more to buy.

use super::shop;
use crate::batch::Batch;

/// Less than this is no other price: half of the last digit that is shown.
const SAME_PRICE: f64 = 0.005;

/// Returns how much more is to be paid for one batch than for another, less than nothing if less; none where the design has no prices, or either
/// was not calculated to its end or cannot be bought for, and none where no difference shows. What has no supply in the design (a culture, say) is not counted.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, plan::price_change};
/// let one = batch(&Design::default())?;
/// assert_eq!(price_change(&one, &one), None);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn price_change(before: &Batch, after: &Batch) -> Option<f64> {
    let priced =
        |batch: &Batch| batch.design.supplies.goods.values().any(|supply| supply.offers.iter().any(|offer| offer.price > 0.0));
    let whole = |batch: &Batch| batch.first_missing().is_none();
    if ![before, after].into_iter().all(|batch| priced(batch) && whole(batch)) {
        return None;
    }
    let more = shop(after).ok()?.price - shop(before).ok()?.price;
    (more.abs() >= SAME_PRICE).then_some(more)
}
