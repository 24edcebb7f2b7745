//! What a batch needs, bought in packages: what it costs, and what is left over.

use super::{Aim, Package, PackageError, Want, choose, kept_plan};
use crate::batch::Batch;
use crate::design::{
    BuyFor, CalciumForm, CultureBy, Good, MOST_GIVEN, MilkAcid, MilkDesign, MilkKind, SouredBy, SuppliesDesign, Supply, Unit,
    lower_first,
};
use crate::process::MilkSouring;
use std::collections::BTreeMap;

/// Returns how many parts of a millilitre or gram are counted: what is used by the drop is counted finer.
const fn parts(good: Good) -> i64 {
    match good {
        Good::Calcium | Good::Rennet | Good::Culture | Good::MilkAcid | Good::Lactone => 100,
        Good::Milk
        | Good::SheepMilk
        | Good::GoatMilk
        | Good::BuffaloMilk
        | Good::Cream
        | Good::SkimmedMilk
        | Good::Salt
        | Good::Pepper
        | Good::Vinegar
        | Good::Oil => 1,
    }
}

/// How much of something a batch needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Need {
    /// Of what.
    pub good: Good,
    /// How much, in `unit`.
    pub amount: f64,
    /// Millilitres, grams or packets.
    pub unit: Unit,
}

/// Returns what a batch needs, as far as its stages were calculated; nothing that it does not need.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::{Design, Good}, plan::needs};
/// let needs = needs(&batch(&Design::default())?);
/// assert_eq!((needs[0].good, needs[0].amount), (Good::Milk, 6000.0));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn needs(batch: &Batch) -> Vec<Need> {
    let design = &batch.design;
    let mut all = Vec::new();
    let mut need = |good, amount, unit| all.push(Need { good, amount, unit });
    if let Some(milk) = batch.milk.done() {
        need(milk_good(design.milk.milk_kind), 1000.0 * design.milk.milk_l, Unit::Millilitre);
        need(Good::Cream, milk.cream_ml, Unit::Millilitre);
        need(Good::SkimmedMilk, 1000.0 * milk.skim_l, Unit::Millilitre);
        match design.milk.calcium_form {
            CalciumForm::Solution => need(Good::Calcium, milk.calcium_ml, Unit::Millilitre),
            CalciumForm::Anhydrous | CalciumForm::Dihydrate => need(Good::Calcium, milk.calcium_g, Unit::Gram),
        }
        need(Good::Rennet, milk.rennet_ml, Unit::Millilitre);
        if let Some((good, amount, unit)) = sourer(&design.milk, &milk.soured) {
            need(good, amount, unit);
        }
    }
    if let Some(salting) = batch.salting.done() {
        let in_vinegar_g = batch.pickling.done().map_or(0.0, |pickling| pickling.vinegar_salt_g);
        need(Good::Salt, salting.salt_g + in_vinegar_g, Unit::Gram);
        need(Good::Pepper, salting.pepper_g, Unit::Gram);
    }
    if let Some(pickling) = batch.pickling.done() {
        need(Good::Vinegar, pickling.vinegar_ml, Unit::Millilitre);
    }
    if let Some(keeping) = batch.keeping.done().filter(|_| !kept_plan(batch).without_oil) {
        need(Good::Oil, keeping.oil_ml, Unit::Millilitre);
    }
    all.retain(|need| need.amount > 0.0);
    all
}

/// Returns which good the milk of the vat is: each animal's has a price of its own.
///
/// # Example
/// ```
/// use vatsketch::{design::{Good, MilkKind}, plan::milk_good};
/// assert_eq!((milk_good(MilkKind::Label), milk_good(MilkKind::Sheep)), (Good::Milk, Good::SheepMilk));
/// ```
#[must_use]
pub const fn milk_good(kind: MilkKind) -> Good {
    match kind {
        MilkKind::Cow | MilkKind::Label => Good::Milk,
        MilkKind::Sheep => Good::SheepMilk,
        MilkKind::Goat => Good::GoatMilk,
        MilkKind::Buffalo => Good::BuffaloMilk,
    }
}

/// Returns what sours the milk, how much of it and in what it is bought; nothing where a culture is given by its living cells, which nobody sells.
fn sourer(design: &MilkDesign, soured: &MilkSouring) -> Option<(Good, f64, Unit)> {
    match design.soured_by {
        SouredBy::Nothing => None,
        SouredBy::Culture => match design.culture_by {
            CultureBy::Packet => Some((Good::Culture, design.culture_packets, Unit::Packet)),
            CultureBy::Bulk => Some((Good::Culture, soured.bulk_g, Unit::Gram)),
            CultureBy::Cells => None,
        },
        SouredBy::Acid => Some(match design.milk_acid {
            MilkAcid::Citric => (Good::MilkAcid, soured.acid_g, Unit::Gram),
            MilkAcid::Vinegar | MilkAcid::Lactic => (Good::MilkAcid, soured.acid_ml, Unit::Millilitre),
        }),
        SouredBy::Lactone => Some((Good::Lactone, soured.acid_g, Unit::Gram)),
    }
}

/// What is bought of one thing.
#[derive(Clone, Debug, PartialEq)]
pub struct Bought {
    /// What is needed.
    pub need: Need,
    /// How many of each offer, in their order.
    pub counts: Vec<i64>,
    /// What those packages hold, in the unit of the need.
    pub amount: f64,
    /// What was at home, in the unit of the need.
    pub at_home: f64,
    /// What is left over, with what was at home.
    pub left_over: f64,
    /// What is short; never more than the stretch.
    pub short: f64,
    /// What is paid.
    pub price: f64,
    /// What of that goes into this vat.
    pub used_price: f64,
}

/// Everything that is bought for a batch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shopping {
    /// What is bought, in the trade's order.
    pub bought: Vec<Bought>,
    /// What is needed and has no supply.
    pub without_supply: Vec<Need>,
    /// What is paid.
    pub price: f64,
    /// What of that goes into this vat; the rest is left over for the next.
    pub used_price: f64,
    /// Price of what goes into one cheese, if there are any.
    pub each_price: Option<f64>,
    /// Price of what goes into a kilogram of dried cheese, if there is any.
    pub kilogram_price: Option<f64>,
}

impl Shopping {
    /// Returns the milk that will be at hand, L: bought and at home. A design may take it over.
    #[must_use]
    pub fn milk_at_hand_l(&self) -> Option<f64> {
        let is_milk = |good| MilkKind::ALL.iter().any(|kind| milk_good(*kind) == good);
        let milk = self.bought.iter().find(|bought| is_milk(bought.need.good))?;
        Some(0.001 * (milk.amount + milk.at_home))
    }
}

impl Shopping {
    /// Returns what is needed and has no supply, as in the middle of a sentence: it is counted nowhere. Nothing where all have one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{Design, Good, Supply};
    /// use vatsketch::{batch::batch, plan::shop};
    /// let mut design = Design::default();
    /// assert!(shop(&batch(&design)?)?.missing_words().is_some_and(|goods| goods.starts_with("milk, cream, ")));
    /// for good in Good::ALL {
    ///     design.supplies.goods.insert(*good, Supply { at_home: 1e5, ..Supply::default() });
    /// }
    /// assert_eq!(shop(&batch(&design)?)?.missing_words(), None);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn missing_words(&self) -> Option<String> {
        let goods: Vec<String> = self.without_supply.iter().map(|need| lower_first(need.good.label())).collect();
        (!goods.is_empty()).then(|| goods.join(", "))
    }
}

/// Why something cannot be bought.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ShoppingError {
    /// No packages fit.
    #[error("{}: {why}", lower_first(good.label()))]
    Packages {
        /// Of what.
        good: Good,
        /// Why.
        why: PackageError,
    },
    /// Not a usable number.
    #[error("{}: {what} cannot be {value}; give a number from 0 to a million", lower_first(good.label()))]
    NoNumber {
        /// Of what.
        good: Good,
        /// Which number.
        what: &'static str,
        /// What was given.
        value: f64,
    },
}

impl ShoppingError {
    /// Returns the thing that it is about.
    #[must_use]
    pub const fn good(&self) -> Good {
        match self {
            Self::Packages { good, .. } | Self::NoNumber { good, .. } => *good,
        }
    }
}

/// What rounding may add to a whole number before it is rounded up.
const ROUNDING: f64 = 1e-6;

/// Returns what to buy for a batch, each thing by itself at the least cost or with the least waste ([`choose`]).
///
/// # Arguments
/// * `supplies`: where each thing comes from; what has none is listed and costs nothing
/// * `aim`: what counts first; a price on waste is for each litre or kilogram
///
/// # Errors
/// [`ShoppingError`], with the thing that it is about.
pub fn shopping(batch: &Batch, supplies: &BTreeMap<Good, Supply>, aim: Aim) -> Result<Shopping, ShoppingError> {
    let mut shopping = Shopping::default();
    for need in needs(batch) {
        match supplies.get(&need.good) {
            Some(supply) => shopping.bought.push(buy(need, supply, aim)?),
            None => shopping.without_supply.push(need),
        }
    }
    shopping.price = shopping.bought.iter().map(|bought| bought.price).sum();
    shopping.used_price = shopping.bought.iter().map(|bought| bought.used_price).sum();
    let per = |many: f64| (many > 0.0).then_some(shopping.used_price / many);
    shopping.each_price = batch.draining.done().and_then(|drained| per(f64::from(drained.cheese_count)));
    shopping.kilogram_price = batch.drying.done().and_then(|dried| per(dried.cheese.total_kg()));
    Ok(shopping)
}

/// Returns what to buy for a batch, from the supplies that its design names.
///
/// # Errors
/// [`ShoppingError`], as for [`shopping`].
///
/// # Example
/// ```
/// use vatsketch::design::{Design, Good, Offer, Supply};
/// use vatsketch::{batch::batch, plan::shop};
/// let mut design = Design::default();
/// let milk = Supply { offers: vec![Offer { size: 1700.0, price: 2.1, at_most: None }], ..Supply::default() };
/// design.supplies.goods.insert(Good::Milk, milk);
/// assert_eq!(shop(&batch(&design)?)?.bought[0].counts, [4]);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn shop(batch: &Batch) -> Result<Shopping, ShoppingError> {
    let supplies = &batch.design.supplies;
    shopping(batch, &supplies.goods, aim(supplies))
}

/// Returns what counts first, in the units of the calculation.
fn aim(supplies: &SuppliesDesign) -> Aim {
    match supplies.buy_for {
        BuyFor::LeastWaste => Aim::LeastWaste,
        BuyFor::LeastCost => Aim::LeastCost { waste_price: (supplies.waste_price * HUNDREDTHS as f64).round() as i64 },
    }
}

fn buy(need: Need, supply: &Supply, aim: Aim) -> Result<Bought, ShoppingError> {
    let good = need.good;
    let parts = parts(good);
    let counted = |what, value: f64, times: i64| {
        let usable = value.abs() <= MOST_GIVEN;
        if usable { Ok(value * times as f64) } else { Err(ShoppingError::NoNumber { good, what, value }) }
    };
    let whole = |what, value, times| counted(what, value, times).map(|parts| parts.round() as i64);
    let packages = supply.offers.iter().map(|offer| {
        let (size, price) = (whole("the size of a package", offer.size, parts)?, whole("its price", offer.price, HUNDREDTHS)?);
        Ok(Package { size, price, at_most: offer.at_most.map(i64::from) })
    });
    let packages = packages.collect::<Result<Vec<_>, ShoppingError>>()?;
    // What is needed is rounded up and what there is down, so that nothing is short by rounding.
    let want = Want {
        need: (counted("the need", need.amount, parts)? - ROUNDING).ceil() as i64,
        stretch: (counted("how much less would do", supply.stretch, parts)? + ROUNDING).floor() as i64,
        at_home: (counted("what is at home", supply.at_home, parts)? + ROUNDING).floor() as i64,
        aim: match aim {
            Aim::LeastCost { waste_price } => Aim::LeastCost { waste_price: waste_price / parts },
            Aim::LeastWaste => Aim::LeastWaste,
        },
    };
    let basket = choose(&want, &packages).map_err(|why| ShoppingError::Packages { good, why })?;
    let amount = |count: i64| count as f64 / parts as f64;
    let price = basket.price as f64 / HUNDREDTHS as f64;
    let used = (want.need - want.at_home).clamp(0, basket.bought);
    Ok(Bought {
        need,
        amount: amount(basket.bought),
        at_home: amount(want.at_home),
        left_over: amount(basket.left_over),
        short: amount(basket.short),
        price,
        used_price: if basket.bought > 0 { price * used as f64 / basket.bought as f64 } else { 0.0 },
        counts: basket.counts,
    })
}

/// Parts of the currency that prices are counted in.
const HUNDREDTHS: i64 = 100;
