//! The packages to buy, as they stand on a shopping list.

use super::{Amount, kitchen_amount, money, shelf_size};
use crate::design::{Offer, SuppliesDesign, Unit};
use crate::law::legal_measures::POUND;
use crate::plan::{Bought, Shopping};
use crate::units::{Masses, Units};

/// What is bought of one thing, in packages.
#[derive(Clone, Debug, PartialEq)]
pub struct Purchase {
    /// How many of which package; empty where what is at home will do.
    pub packages: Vec<(i64, Amount)>,
    /// What they cost, in the maker's currency.
    pub price: f64,
    /// The maker's currency; may be empty.
    pub currency: String,
    /// What is at home already, if anything.
    pub at_home: Option<Amount>,
    /// What is left over in the end, if anything.
    pub left_over: Option<Amount>,
    /// What is short, which the maker said would do.
    pub short: Option<Amount>,
}

/// What all of it costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Cost {
    /// The maker's currency; may be empty.
    pub currency: String,
    /// What is paid.
    pub price: f64,
    /// What of that goes into this vat.
    pub used_price: f64,
    /// The same for one cheese.
    pub each_price: Option<f64>,
    /// The same for a kilogram of dried cheese.
    pub kilogram_price: Option<f64>,
    /// What is needed and has no supply, so that its price is not in it; as in the middle of a sentence.
    pub not_counted: Option<String>,
    /// The units that it is shown in.
    pub units: Units,
}

/// Returns the price of the weight by which things are sold, and what it is called.
///
/// # Example
/// ```
/// use vatsketch::{report::weight_price, units::Units};
/// assert_eq!(weight_price(10.0, Units::METRIC), (10.0, "kilogram"));
/// let (price, sold_by) = weight_price(10.0, Units::US);
/// assert!((price - 4.535_923_7).abs() < 1e-9 && sold_by == "pound");
/// ```
#[must_use]
pub fn weight_price(kilogram_price: f64, units: Units) -> (f64, &'static str) {
    match units.masses {
        Masses::Kilograms => (kilogram_price, "kilogram"),
        Masses::Pounds => (0.001 * POUND.value * kilogram_price, "pound"),
    }
}

/// Returns how many of which package: `4 × 1.25 L`; packets that are sold one by one are counted only.
fn counted((count, size): &(i64, Amount)) -> String {
    let one_by_one = size.unit == Unit::Packet && (size.value - 1.0).abs() < f64::EPSILON;
    if one_by_one { Amount::new(*count as f64, Unit::Packet, 0).to_string() } else { format!("{count}\u{a0}×\u{a0}{size}") }
}

impl Purchase {
    pub(super) fn of(bought: &Bought, offers: &[Offer], currency: &str) -> Self {
        let unit = bought.need.unit;
        let some = |value: f64| (value > 0.0).then(|| kitchen_amount(value, unit));
        let packages = bought.counts.iter().zip(offers).filter(|(count, _)| **count > 0);
        Self {
            packages: packages.map(|(count, offer)| (*count, shelf_size(offer.size, unit))).collect(),
            price: bought.price,
            currency: currency.to_owned(),
            at_home: some(bought.at_home),
            left_over: some(bought.left_over),
            short: some(bought.short),
        }
    }

    /// Returns what to put into the basket and what it costs: `4 × 1.25 L + 1 × 750 mL, 8.03 coins`.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, report::{Amount, Purchase}};
    /// let size = Amount::new(1.25, Unit::Litre, 2);
    /// let milk = Purchase { packages: vec![(5, size)], price: 8.6, currency: "coins".to_owned(), at_home: None, left_over: None, short: None };
    /// assert_eq!(milk.words(), "5 × 1.25 L, 8.60 coins".replace(" L", "\u{a0}L").replace("5 ×", "5\u{a0}×").replace("× ", "×\u{a0}").replace("60 ", "60\u{a0}"));
    /// ```
    #[must_use]
    pub fn words(&self) -> String {
        if self.packages.is_empty() {
            return "nothing to buy".to_owned();
        }
        let packages: Vec<String> = self.packages.iter().map(counted).collect();
        format!("{}, {}", packages.join(" + "), money(self.price, &self.currency))
    }

    /// Returns what is at home, left over or short; empty where there is nothing of it.
    #[must_use]
    pub fn rest(&self) -> String {
        let said = |what: &str, amount: Option<Amount>| amount.map(|amount| format!("{what} {amount}"));
        let all = [said("at home", self.at_home), said("left over", self.left_over), said("short by", self.short)];
        all.into_iter().flatten().collect::<Vec<_>>().join(", ")
    }
}

impl Cost {
    /// Returns what everything costs; nothing where no supplies are given.
    pub(super) fn of(shopping: &Shopping, supplies: &SuppliesDesign) -> Option<Self> {
        (!shopping.bought.is_empty()).then(|| Self {
            currency: supplies.currency.clone(),
            price: shopping.price,
            used_price: shopping.used_price,
            each_price: shopping.each_price,
            kilogram_price: shopping.kilogram_price,
            not_counted: shopping.missing_words(),
            units: Units::METRIC,
        })
    }

    /// Returns the costs in words, the sum first; what has no supply is named, never counted as nothing.
    #[must_use]
    pub fn words(&self) -> String {
        let money = |price: f64| money(price, &self.currency);
        let each = self.each_price.map(|price| format!(", {} a cheese", money(price))).unwrap_or_default();
        let kilogram = self.kilogram_price.map(|price| self.a_weight(price)).unwrap_or_default();
        let missing =
            self.not_counted.as_ref().map(|goods| format!(" Not counted, for no supply is entered: {goods}.")).unwrap_or_default();
        format!("To pay {}. Used in this vat {}{each}{kilogram}.{missing}", money(self.price), money(self.used_price))
    }

    /// Returns the price of a kilogram or of a pound.
    fn a_weight(&self, kilogram_price: f64) -> String {
        let (price, weight) = weight_price(kilogram_price, self.units);
        format!(", {} a {weight} of dried cheese", money(price, &self.currency))
    }
}
