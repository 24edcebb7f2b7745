//! What a change costs to buy, and what of it nobody can count.

use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Good, Offer, Supply};
use vatsketch::plan::price_change;

/// Returns a vat of which only the milk is sold, in bottles of half a litre for 0.8 each.
fn vat(milk_l: f64) -> Batch {
    let mut design = Design::default();
    let bottles = Supply { offers: vec![Offer { size: 500.0, price: 0.8, at_most: None }], ..Supply::default() };
    design.supplies.goods.clear();
    design.supplies.goods.insert(Good::Milk, bottles);
    design.milk.milk_l = milk_l;
    batch(&design).unwrap()
}

#[test]
fn what_has_no_price_and_is_needed_in_another_amount_is_named() {
    let change = price_change(&vat(4.0), &vat(6.0)).unwrap();
    assert!((change.more - 4.0 * 0.8).abs() < 1e-9, "{}", change.more);
    assert!(change.not_counted.contains(&Good::Rennet) && !change.not_counted.contains(&Good::Milk), "{change:?}");
}

#[test]
fn what_is_needed_in_the_same_amount_is_not_named() {
    let one = vat(4.0);
    let mut other = one.design.clone();
    other.pickling.vinegar_ml_per_g += 0.4;
    let change = price_change(&one, &batch(&other).unwrap()).unwrap();
    assert_eq!((change.shows(), &change.not_counted[..]), (false, &[Good::Vinegar][..]));
}

#[test]
fn what_changes_no_amount_has_no_price() {
    let one = vat(4.0);
    let mut other = one.design.clone();
    other.pickling.pickling_h += 24.0;
    assert_eq!(price_change(&one, &batch(&other).unwrap()), None);
}
