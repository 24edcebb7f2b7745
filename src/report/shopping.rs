//! What to buy and to have at hand.

use super::facts::Facts;
use super::shelf::kitchen_amount;
use super::shopping_row::ShoppingRow;
use super::sourer::sourer;
use super::{Amount, Cost, Purchase};
use crate::batch::Batch;
use crate::design::{CalciumForm, Good, MilkDesign, MilkKind, Unit, lower_first};
use crate::plan::{kept_plan, milk_good, shop};
use crate::process::MilkOutcome;

/// What to buy, and what it costs.
pub(super) struct List {
    pub(super) rows: Vec<ShoppingRow>,
    pub(super) cost: Option<Cost>,
    /// Why no packages could be chosen.
    pub(super) trouble: Option<String>,
}

/// Returns what to buy, in packages where supplies are given.
pub(super) fn list(batch: &Batch, facts: &Facts) -> List {
    let (mut rows, supplies) = (shopping(batch, facts), &batch.design.supplies);
    let shopping = match shop(batch) {
        Ok(shopping) => shopping,
        Err(error) => return List { rows, cost: None, trouble: Some(error.to_string()) },
    };
    for row in &mut rows {
        let bought = shopping.bought.iter().find(|bought| good(row.what) == Some(bought.need.good));
        row.buy = bought.and_then(|bought| {
            let supply = supplies.goods.get(&bought.need.good)?;
            Some(Purchase::of(bought, &supply.offers, &supplies.currency))
        });
    }
    List { cost: Cost::of(&shopping, supplies), rows, trouble: None }
}

/// Returns which good a row is of; water and jars are none.
fn good(what: &str) -> Option<Good> {
    Good::ALL.iter().copied().find(|good| good.label() == what)
}

/// Returns what to buy, as far as the stages were calculated. Rows of nothing are left out.
fn shopping(batch: &Batch, facts: &Facts) -> Vec<ShoppingRow> {
    let mut rows: Vec<ShoppingRow> = batch.milk.done().map(|milk| for_the_vat(&batch.design.milk, milk, facts)).unwrap_or_default();
    if let Some(salting) = batch.salting.done() {
        let in_vinegar_g = batch.pickling.done().map_or(0.0, |pickling| pickling.vinegar_salt_g);
        rows.push(ShoppingRow {
            what: "Salt",
            amount: Amount::new(salting.salt_g + in_vinegar_g, Unit::Gram, 0),
            also: None,
            kitchen: (in_vinegar_g <= 0.0).then(|| facts.kitchen("salt_g")).flatten(),
            look_for: if in_vinegar_g > 0.0 {
                format!("fine and dry; {in_vinegar_g:.0}\u{a0}g of it for the vinegar")
            } else {
                "fine and dry".to_owned()
            },
            buy: None,
        });
    }
    rows.extend(pepper_vinegar_and_oil(batch, facts));
    rows.retain(|row| row.amount.value > 0.0);
    rows
}

/// Returns what is bought for the vat.
fn for_the_vat(design: &MilkDesign, milk: &MilkOutcome, facts: &Facts) -> Vec<ShoppingRow> {
    let mut rows = Vec::new();
    rows.push(ShoppingRow {
        what: milk_good(design.milk_kind).label(),
        amount: Amount::new(design.milk_l, Unit::Litre, 2),
        also: Some(Amount::new(milk.bought_kg, Unit::Kilogram, 2)),
        kitchen: None,
        look_for: match design.milk_kind {
            MilkKind::Cow => format!("cow's, {}", lower_first(design.milk_treatment.label())),
            MilkKind::Label | MilkKind::Sheep | MilkKind::Goat | MilkKind::Buffalo => lower_first(design.milk_treatment.label()),
        },
        buy: None,
    });
    rows.push(ShoppingRow {
        what: "Cream",
        amount: Amount::new(milk.cream_g, Unit::Gram, 0),
        also: Some(Amount::new(milk.cream_ml, Unit::Millilitre, 0)),
        kitchen: facts.kitchen("cream_ml").or_else(|| facts.kitchen("cream_g")),
        look_for: format!("{:.0}\u{a0}% fat on the carton", design.cream_strength_percent),
        buy: None,
    });
    rows.push(ShoppingRow {
        what: "Skimmed milk",
        amount: Amount::new(1000.0 * milk.skim_kg, Unit::Gram, 0),
        also: Some(Amount::new(milk.skim_l, Unit::Litre, 2)),
        kitchen: facts.kitchen("skim_l").or_else(|| facts.kitchen("skim_kg")),
        look_for: "to lower the fat".to_owned(),
        buy: None,
    });
    rows.push(ShoppingRow {
        what: "Calcium chloride",
        amount: Amount::new(milk.calcium_g, Unit::Gram, 2),
        also: (milk.calcium_ml > 0.0).then(|| Amount::new(milk.calcium_ml, Unit::Millilitre, 1)),
        kitchen: facts.kitchen("calcium_ml").or_else(|| facts.kitchen("calcium_g")),
        look_for: match design.calcium_form {
            CalciumForm::Solution => format!("solution of {:.0}\u{a0}%, food grade", design.calcium_solution_percent),
            CalciumForm::Anhydrous | CalciumForm::Dihydrate => {
                format!("{}, food grade", lower_first(design.calcium_form.label()))
            }
        },
        buy: None,
    });
    rows.push(ShoppingRow {
        what: "Rennet",
        amount: Amount::new(milk.rennet_ml, Unit::Millilitre, 2),
        also: None,
        kitchen: facts.kitchen("rennet_ml"),
        look_for: format!("{:.0}\u{a0}IMCU/mL; check the date", milk.rennet_strength_imcu_ml),
        buy: None,
    });
    rows.push(ShoppingRow {
        what: "Water for the rennet",
        amount: Amount::new(milk.rennet_water_ml, Unit::Millilitre, 0),
        also: None,
        kitchen: facts.kitchen("rennet_water_ml"),
        look_for: "cool, without chlorine".to_owned(),
        buy: None,
    });
    rows.extend(sourer(design, &milk.soured, facts));
    rows
}

/// Returns what is bought for the coat and the jar.
fn pepper_vinegar_and_oil(batch: &Batch, facts: &Facts) -> Vec<ShoppingRow> {
    let row = |what, amount, key: &str, look_for: String| ShoppingRow {
        what,
        amount,
        also: None,
        kitchen: facts.kitchen(key),
        look_for,
        buy: None,
    };
    let pepper = batch.salting.done().map(|salting| {
        let look_for =
            if batch.design.salting.pepper_treated { "ground, steam-treated" } else { "ground; treated pepper is better" };
        row("Pepper", Amount::new(salting.pepper_g, Unit::Gram, 0), "pepper_g", look_for.to_owned())
    });
    let vinegar = batch.pickling.done().map(|pickling| {
        let look_for = format!("{:.1}\u{a0}g of acid in 100\u{a0}mL on the label", batch.design.pickling.acid_g_per_100ml);
        row("Vinegar", kitchen_amount(pickling.vinegar_ml, Unit::Millilitre), "vinegar_ml", look_for)
    });
    let jars = batch.pickling.done().filter(|pickling| pickling.pickled).map(|pickling| {
        let design = &batch.design.pickling;
        let look_for =
            format!("{:.0}\u{a0}mm wide inside, {:.0}\u{a0}mm to the fill line", design.jar_width_mm, design.jar_height_mm);
        row("Jars", Amount::new(f64::from(pickling.jars), Unit::One, 0), "jars", look_for)
    });
    let oil = batch.keeping.done().filter(|_| !kept_plan(batch).without_oil).map(|keeping| {
        row("Oil", kitchen_amount(keeping.oil_ml, Unit::Millilitre), "oil_ml", "fresh; keep refrigerated".to_owned())
    });
    [pepper, vinegar, jars, oil].into_iter().flatten().collect()
}
