//! Where everything comes from: what is at home, and which packages there are to buy. Plain data.

use super::{BuyFor, DesignError, Good, lower_first};
use std::collections::BTreeMap;

/// A package as a shop offers it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Offer {
    /// What it holds, in the unit of the need: mL or g.
    pub size: f64,
    /// What it costs, in the maker's currency.
    pub price: f64,
    /// How many there are; none: as many as wanted.
    pub at_most: Option<u32>,
}

/// Where something comes from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Supply {
    /// What is at home, in the unit of the need.
    pub at_home: f64,
    /// How much less would still do, in the unit of the need.
    pub stretch: f64,
    /// The packages to choose from.
    pub offers: Vec<Offer>,
}

/// Where everything for a vat comes from. What has no row is listed as needed, and costs nothing.
#[derive(Clone, Debug, PartialEq)]
pub struct SuppliesDesign {
    /// What counts first.
    pub buy_for: BuyFor,
    /// What a litre or a kilogram that is left over counts as, in the maker's currency.
    pub waste_price: f64,
    /// The maker's currency, as it is written after a price; may be empty.
    pub currency: String,
    /// Each thing's supply.
    pub goods: BTreeMap<Good, Supply>,
}

impl Default for SuppliesDesign {
    fn default() -> Self {
        Self { buy_for: BuyFor::LeastCost, waste_price: 0.0, currency: String::new(), goods: BTreeMap::new() }
    }
}

/// The most that may be given of anything, in its unit or in the currency.
pub(crate) const MOST_GIVEN: f64 = 1e6;
/// The most packages of one thing that a maker can choose among.
const MOST_OFFERS: usize = 12;
/// Longest name of a currency, letters.
const MOST_CURRENCY: usize = 8;

impl SuppliesDesign {
    /// Checks every number: sizes and prices above 0, the rest 0 or more, none beyond a million.
    ///
    /// # Errors
    /// [`DesignError::Supply`], with the thing, the number and what to do.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{Good, Offer, SuppliesDesign, Supply};
    /// let carton = |size| Supply { offers: vec![Offer { size, price: 1.3, at_most: None }], ..Supply::default() };
    /// let with = |size| SuppliesDesign { goods: [(Good::Milk, carton(size))].into(), ..SuppliesDesign::default() };
    /// assert!(with(750.0).check().is_ok());
    /// assert!(with(0.0).check().unwrap_err().to_string().contains("give a number above 0"));
    /// ```
    pub fn check(&self) -> Result<(), DesignError> {
        if self.currency.chars().count() > MOST_CURRENCY {
            let why = format!("it has more than {MOST_CURRENCY} letters; write it shorter");
            return Err(DesignError::Supply { what: format!("the currency `{}`", self.currency), why });
        }
        none_below_zero("the price of what is left over".to_owned(), self.waste_price)?;
        for (good, supply) in &self.goods {
            let good = lower_first(good.label());
            none_below_zero(format!("{good}, what is at home"), supply.at_home)?;
            none_below_zero(format!("{good}, how much less would do"), supply.stretch)?;
            if supply.offers.len() > MOST_OFFERS {
                let why = format!("{} packages are given, at most {MOST_OFFERS} can be; leave some out", supply.offers.len());
                return Err(DesignError::Supply { what: good, why });
            }
            for (number, offer) in (1..).zip(&supply.offers) {
                above_zero(format!("{good}, the size of package {number}"), offer.size)?;
                above_zero(format!("{good}, the price of package {number}"), offer.price)?;
            }
        }
        Ok(())
    }
}

fn none_below_zero(what: String, value: f64) -> Result<(), DesignError> {
    // Written so that not-a-number fails it.
    let usable = (0.0..=MOST_GIVEN).contains(&value);
    if usable {
        Ok(())
    } else {
        Err(DesignError::Supply { what, why: format!("cannot be {value}; give a number from 0 to a million") })
    }
}

fn above_zero(what: String, value: f64) -> Result<(), DesignError> {
    let usable = value > 0.0 && value <= MOST_GIVEN;
    if usable {
        Ok(())
    } else {
        Err(DesignError::Supply { what, why: format!("cannot be {value}; give a number above 0, at most a million") })
    }
}
