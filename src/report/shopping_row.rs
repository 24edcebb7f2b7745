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

/// Where something is bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShopPlace {
    /// With the milk, cold.
    Cold,
    /// With salt, spices and vinegar.
    Dry,
    /// From a supplier for makers of cheese, or a chemist.
    Supplier,
    /// At home already, as a rule.
    Home,
}

impl ShopPlace {
    /// Every place, in the order of a list.
    pub const ALL: [Self; 4] = [Self::Supplier, Self::Dry, Self::Cold, Self::Home];

    /// Returns its name; what is cold is bought last.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Cold => "From the cold shelf, last",
            Self::Dry => "With salt, spices and vinegar",
            Self::Supplier => "From a supplier for cheesemakers or a chemist, days before",
            Self::Home => "At home, or with the kitchen goods",
        }
    }
}

impl ShoppingRow {
    /// Returns where it is bought.
    #[must_use]
    pub fn place(&self) -> ShopPlace {
        match self.what {
            "Calcium chloride" | "Rennet" | "Culture" | "Acid for the milk" | "Glucono-delta-lactone" => ShopPlace::Supplier,
            "Salt" | "Pepper" | "Vinegar" | "Oil" => ShopPlace::Dry,
            "Water for the rennet" | "Jars" => ShopPlace::Home,
            _ => ShopPlace::Cold,
        }
    }
}
