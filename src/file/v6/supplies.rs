//! The supplies in a file of format 6.

use super::choices::{BuyFor, Good, MilkKind};
use crate::file::v5 as before;
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Package {
    pub(in crate::file) size: f64,
    pub(in crate::file) price: f64,
    #[serde(default)]
    pub(in crate::file) at_most: Option<u32>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Supply {
    pub(in crate::file) good: Good,
    #[serde(default)]
    pub(in crate::file) at_home: f64,
    #[serde(default)]
    pub(in crate::file) stretch: f64,
    #[serde(default)]
    pub(in crate::file) packages: Vec<Package>,
}

/// Where everything comes from.
#[derive(Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(in crate::file) struct Supplies {
    pub(in crate::file) buy_for: BuyFor,
    pub(in crate::file) waste_price: f64,
    pub(in crate::file) currency: String,
    pub(in crate::file) goods: Vec<Supply>,
}

impl Default for Supplies {
    fn default() -> Self {
        Self { buy_for: BuyFor::LeastCost, waste_price: 0.0, currency: String::new(), goods: Vec::new() }
    }
}

impl From<before::Supplies> for Supplies {
    fn from(saved: before::Supplies) -> Self {
        let before::Supplies { buy_for, waste_price, currency, goods } = saved;
        let package = |before::Package { size, price, at_most }| Package { size, price, at_most };
        let supply = |before::Supply { good, at_home, stretch, packages }| Supply {
            good: good.into(),
            at_home,
            stretch,
            packages: packages.into_iter().map(package).collect(),
        };
        Self { buy_for: buy_for.into(), waste_price, currency, goods: goods.into_iter().map(supply).collect() }
    }
}

impl Supplies {
    /// Returns the same with what was there as milk as the milk of an animal: before format 6 it was that of the vat.
    pub(super) fn with_milk_of(mut self, kind: MilkKind) -> Self {
        let own = match kind {
            MilkKind::Cow | MilkKind::Label => Good::Milk,
            MilkKind::Sheep => Good::SheepMilk,
            MilkKind::Goat => Good::GoatMilk,
            MilkKind::Buffalo => Good::BuffaloMilk,
        };
        for supply in &mut self.goods {
            if matches!(supply.good, Good::Milk) {
                supply.good = own;
            }
        }
        self
    }
}
