//! The supplies as they stand in a file of format 3.

use crate::design::{DesignError, Offer, SuppliesDesign, Supply as Working, lower_first};
use crate::file::frozen::saved_choices;
use serde::{Deserialize, Serialize};

saved_choices! {
    BuyFor { LeastCost = "least_cost", LeastWaste = "least_waste" }
    Good {
        Milk = "milk",
        Cream = "cream",
        SkimmedMilk = "skimmed_milk",
        Calcium = "calcium",
        Rennet = "rennet",
        Salt = "salt",
        Pepper = "pepper",
        Vinegar = "vinegar",
        Oil = "oil",
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Package {
    size: f64,
    price: f64,
    #[serde(default)]
    at_most: Option<u32>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Supply {
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
pub(super) struct Supplies {
    buy_for: BuyFor,
    waste_price: f64,
    currency: String,
    goods: Vec<Supply>,
}

impl Default for Supplies {
    fn default() -> Self {
        Self::from(&SuppliesDesign::default())
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
        let mut supplies =
            Self { buy_for: saved.buy_for.into(), waste_price: saved.waste_price, currency: saved.currency, ..Self::default() };
        for row in saved.goods {
            let offers =
                row.packages.iter().map(|package| Offer { size: package.size, price: package.price, at_most: package.at_most });
            let supply = Working { at_home: row.at_home, stretch: row.stretch, offers: offers.collect() };
            let good: crate::design::Good = row.good.into();
            if supplies.goods.insert(good, supply).is_some() {
                let what = lower_first(good.label());
                return Err(DesignError::Supply {
                    what,
                    why: "it stands twice among the supplies; put its packages together".to_owned(),
                });
            }
        }
        Ok(supplies)
    }
}
