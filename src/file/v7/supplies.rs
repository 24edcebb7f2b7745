//! The supplies in a file of format 7.

use super::choices::{BuyFor, Good};
use crate::design::{DesignError, Offer, SuppliesDesign, Supply as Working, lower_first};
use crate::file::v6 as before;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Package {
    size: f64,
    price: f64,
    #[serde(default)]
    at_most: Option<u32>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Supply {
    good: Good,
    #[serde(default)]
    at_home: f64,
    #[serde(default)]
    stretch: f64,
    #[serde(default)]
    packages: Vec<Package>,
}

/// Where everything comes from.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(in crate::file) struct Supplies {
    buy_for: BuyFor,
    waste_price: f64,
    currency: String,
    goods: Vec<Supply>,
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

impl From<&SuppliesDesign> for Supplies {
    fn from(supplies: &SuppliesDesign) -> Self {
        let package = |offer: &Offer| Package { size: offer.size, price: offer.price, at_most: offer.at_most };
        let goods = supplies.goods.iter().map(|(good, supply)| Supply {
            good: (*good).into(),
            at_home: supply.at_home,
            stretch: supply.stretch,
            packages: supply.offers.iter().map(package).collect(),
        });
        Self {
            buy_for: supplies.buy_for.into(),
            waste_price: supplies.waste_price,
            currency: supplies.currency.clone(),
            goods: goods.collect(),
        }
    }
}

impl TryFrom<Supplies> for SuppliesDesign {
    type Error = DesignError;

    fn try_from(saved: Supplies) -> Result<Self, DesignError> {
        let mut supplies = Self {
            buy_for: saved.buy_for.into(),
            waste_price: saved.waste_price,
            currency: saved.currency,
            goods: BTreeMap::new(),
        };
        for row in saved.goods {
            let offers =
                row.packages.iter().map(|package| Offer { size: package.size, price: package.price, at_most: package.at_most });
            let supply = Working { at_home: row.at_home, stretch: row.stretch, offers: offers.collect() };
            let good: crate::design::Good = row.good.into();
            if supplies.goods.insert(good, supply).is_some() {
                let what = lower_first(good.label());
                return Err(DesignError::Supply {
                    what,
                    why: "it is there twice among the supplies; put its packages together".to_owned(),
                });
            }
        }
        Ok(supplies)
    }
}
