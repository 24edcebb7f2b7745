//! One row of the shopping list.

use super::{Amount, Purchase};

/// One thing to buy.
#[derive(Clone, Debug, PartialEq)]
pub struct ShoppingRow {
    /// What.
    pub what: &'static str,
    /// How much.
    pub amount: Amount,
    /// The same in another unit.
    pub also: Option<Amount>,
    /// The same in kitchen measures.
    pub kitchen: Option<String>,
    /// What to look for on the label.
    pub look_for: String,
    /// In which packages, where the maker's supplies say.
    pub buy: Option<Purchase>,
}
