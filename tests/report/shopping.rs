//! What to buy, in packages.

use std::collections::BTreeMap;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Good, Offer, SuppliesDesign, Supply};
use vatsketch::plan::shop;
use vatsketch::report::{Plan, ShoppingRow, plan};
use vatsketch::session::EXAMPLES;

/// Invented offers: milk by two sizes, salt at home.
fn supplied() -> Batch {
    let offer = |size, price| Offer { size, price, at_most: None };
    let milk = Supply { offers: vec![offer(1250.0, 1.7), offer(400.0, 0.8)], ..Supply::default() };
    let salt = Supply { at_home: 330.0, ..Supply::default() };
    let goods = BTreeMap::from([(Good::Milk, milk), (Good::Salt, salt)]);
    let supplies = SuppliesDesign { currency: "coins".to_owned(), goods, ..SuppliesDesign::default() };
    batch(&Design { supplies, ..Design::default() }).unwrap()
}

fn row<'a>(plan: &'a Plan, what: &str) -> &'a ShoppingRow {
    plan.shopping.iter().find(|row| row.what == what).unwrap()
}

/// By hand: six litres are 24 × 250 mL; five of 1.25 L hold 6.25 L for 8.50, four and three of 0.4 L hold 6.2 L for 9.20.
#[test]
fn packages_prices_and_what_is_left_over_stand_in_the_list() {
    let plan = plan(&supplied());
    let milk = row(&plan, "Milk").buy.as_ref().unwrap();
    assert_eq!(milk.words().replace('\u{a0}', " "), "5 × 1.25 L, 8.50 coins");
    assert_eq!(milk.rest().replace('\u{a0}', " "), "left over 250 mL");
    let salt = row(&plan, "Salt").buy.as_ref().unwrap();
    assert_eq!(salt.words(), "nothing to buy");
    assert!(salt.rest().starts_with("at home 330"), "{}", salt.rest());
    assert!(row(&plan, "Rennet").buy.is_none(), "nothing is known about where it comes from");
}

#[test]
fn the_sum_is_that_of_the_shopping() {
    let batch = supplied();
    let (cost, shopping) = (plan(&batch).cost.unwrap(), shop(&batch).unwrap());
    assert_eq!((cost.price, cost.used_price), (shopping.price, shopping.used_price));
    let cheeses = f64::from(batch.draining.done().unwrap().cheese_count);
    assert!((cost.each_price.unwrap() * cheeses - cost.used_price).abs() < 1e-9);
    assert!(cost.words().starts_with("To pay 8.50"), "{}", cost.words());
}

/// The paper says what the window and the command line say: what is not in the sum.
#[test]
fn what_has_no_supply_is_named_and_never_counted_as_nothing() {
    let mut design = crate::example("warm-cabinet");
    assert!(plan(&batch(&design).unwrap()).cost.unwrap().not_counted.is_none());
    design.milk.milk_kind = vatsketch::design::MilkKind::Sheep;
    design.milk.fat_target_percent = 7.0;
    let words = plan(&batch(&design).unwrap()).cost.unwrap().words();
    assert!(words.ends_with(" Not counted, for no supply is entered: sheep's milk."), "{words}");
}

#[test]
fn every_purchase_of_the_examples_is_on_the_list() {
    for example in EXAMPLES {
        let batch = batch(&example.design().unwrap()).unwrap();
        let bought = shop(&batch).unwrap().bought.len();
        assert_eq!(plan(&batch).shopping.iter().filter(|row| row.buy.is_some()).count(), bought, "{}", example.name);
    }
}

#[test]
fn without_supplies_nothing_is_said_of_packages_and_money() {
    let plan = plan(&batch(&Design::default()).unwrap());
    assert!(plan.cost.is_none() && plan.shopping_trouble.is_none() && plan.shopping.iter().all(|row| row.buy.is_none()));
}

#[test]
fn packages_that_do_not_suffice_are_said_with_the_numbers() {
    let few = Supply { offers: vec![Offer { size: 500.0, price: 1.0, at_most: Some(2) }], ..Supply::default() };
    let supplies = SuppliesDesign { goods: BTreeMap::from([(Good::Milk, few)]), ..SuppliesDesign::default() };
    let plan = plan(&batch(&Design { supplies, ..Design::default() }).unwrap());
    assert!(plan.shopping_trouble.as_ref().is_some_and(|why| why.contains("1000")), "{:?}", plan.shopping_trouble);
    assert!(plan.cost.is_none() && !plan.shopping.is_empty());
}
