//! What a batch needs, in packages. Sizes and prices are invented.

use std::collections::BTreeMap;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Good, Offer, Supply, Unit, Value};
use vatsketch::plan::{Aim, PackageError, Shopping, ShoppingError, needs, shopping};

fn made(changes: &[(&str, Value)]) -> Batch {
    let mut design = Design::default();
    for (key, value) in changes {
        design.set(key, *value).unwrap();
    }
    batch(&design).unwrap()
}

fn offer(size: f64, price: f64) -> Offer {
    Offer { size, price, at_most: None }
}

fn supply(at_home: f64, offers: &[Offer]) -> Supply {
    Supply { at_home, stretch: 0.0, offers: offers.to_vec() }
}

/// An invented shop.
fn shop() -> BTreeMap<Good, Supply> {
    BTreeMap::from([
        (Good::Milk, supply(0.0, &[offer(1750.0, 2.15), offer(800.0, 1.05)])),
        (Good::Cream, supply(0.0, &[offer(150.0, 0.85), offer(400.0, 1.95)])),
        (Good::Calcium, supply(0.0, &[offer(40.0, 3.6)])),
        (Good::Rennet, supply(0.0, &[offer(30.0, 5.4)])),
        (Good::Salt, supply(300.0, &[])),
        (Good::Pepper, supply(0.0, &[offer(45.0, 2.3)])),
        (Good::Vinegar, supply(0.0, &[offer(700.0, 1.1)])),
        (Good::Oil, supply(0.0, &[offer(900.0, 6.5)])),
    ])
}

const CHEAP: Aim = Aim::LeastCost { waste_price: 0 };

fn of(shopping: &Shopping, good: Good) -> &vatsketch::plan::Bought {
    shopping.bought.iter().find(|bought| bought.need.good == good).unwrap()
}

#[test]
fn the_needs_are_those_of_the_stages() {
    // Long enough in vinegar for oil to be planned.
    let batch = made(&[("kept_in", Value::Choice("oil")), ("pickling_h", Value::Number(2000.0))]);
    let (milk, salting) = (batch.milk.done().unwrap(), batch.salting.done().unwrap());
    let (pickling, keeping) = (batch.pickling.done().unwrap(), batch.keeping.done().unwrap());
    let all = needs(&batch);
    let amount = |good| all.iter().find(|need| need.good == good).map_or(0.0, |need| need.amount);
    assert_eq!(amount(Good::Milk), 1000.0 * batch.design.milk.milk_l);
    assert_eq!((amount(Good::Cream), amount(Good::SkimmedMilk)), (milk.cream_ml, 1000.0 * milk.skim_l));
    assert_eq!((amount(Good::Calcium), amount(Good::Rennet)), (milk.calcium_g, milk.rennet_ml));
    assert_eq!((amount(Good::Salt), amount(Good::Pepper)), (salting.salt_g, salting.pepper_g));
    assert_eq!((amount(Good::Vinegar), amount(Good::Oil)), (pickling.vinegar_ml, keeping.oil_ml));
    assert!(all.iter().all(|need| need.amount > 0.0));
    assert!(all.windows(2).all(|pair| pair[0].good < pair[1].good), "in the trade's order");
}

#[test]
fn calcium_in_solution_is_needed_by_volume_and_flakes_by_weight() {
    let unit = |form| {
        let all = needs(&made(&[("calcium_form", Value::Choice(form))]));
        all.iter().find(|need| need.good == Good::Calcium).unwrap().unit
    };
    assert_eq!((unit("solution"), unit("dihydrate")), (Unit::Millilitre, Unit::Gram));
}

/// 6000 mL from cartons of 1750 (2.15) and 800 (1.05): 3 + 1 = 6050 mL for 7.50; calculated by hand over all counts.
#[test]
fn milk_in_cartons_costs_the_least_there_is_and_what_is_over_is_told() {
    let batch = made(&[("milk_l", Value::Number(6.0))]);
    let shopping = shopping(&batch, &shop(), CHEAP).unwrap();
    let milk = of(&shopping, Good::Milk);
    assert_eq!((milk.counts.clone(), milk.amount, milk.left_over, milk.price), (vec![3, 1], 6050.0, 50.0, 7.5));
    assert!((milk.used_price - 7.5 * 6000.0 / 6050.0).abs() < 1e-9);
    assert_eq!(shopping.milk_at_hand_l(), Some(6.05));
}

#[test]
fn the_milk_at_hand_can_become_the_design() {
    let mut batch = made(&[]);
    let at_hand_l = shopping(&batch, &shop(), CHEAP).unwrap().milk_at_hand_l().unwrap();
    let mut design = batch.design.clone();
    design.set("milk_l", Value::Number(at_hand_l)).unwrap();
    batch = vatsketch::batch::batch(&design).unwrap();
    let milk = shopping(&batch, &shop(), CHEAP).unwrap();
    assert!(of(&milk, Good::Milk).left_over < 1e-9);
}

#[test]
fn costs_add_up_and_are_shared_among_the_cheeses() {
    let batch = made(&[]);
    let shopping = shopping(&batch, &shop(), CHEAP).unwrap();
    let near = |one: f64, other: f64| assert!((one - other).abs() < 1e-9, "{one} {other}");
    near(shopping.price, shopping.bought.iter().map(|bought| bought.price).sum());
    near(shopping.each_price.unwrap() * f64::from(batch.draining.done().unwrap().cheese_count), shopping.used_price);
    near(shopping.kilogram_price.unwrap() * batch.drying.done().unwrap().cheese.total_kg(), shopping.used_price);
    assert!(shopping.used_price < shopping.price);
    // Salt is at home and costs nothing now.
    let salt = of(&shopping, Good::Salt);
    assert_eq!((salt.price, salt.amount), (0.0, 0.0));
    assert!(salt.left_over > 0.0);
    assert!(shopping.without_supply.is_empty());
}

/// A few drops of rennet are not rounded up to a whole millilitre.
#[test]
fn what_is_used_by_the_drop_is_counted_in_hundredths() {
    let batch = made(&[("milk_l", Value::Number(2.0))]);
    let rennet_ml = batch.milk.done().unwrap().rennet_ml;
    let shopping = shopping(&batch, &shop(), CHEAP).unwrap();
    let rennet = of(&shopping, Good::Rennet);
    assert!((rennet.left_over - (30.0 - rennet_ml)).abs() <= 0.01, "{} {rennet_ml}", rennet.left_over);
}

#[test]
fn what_has_no_supply_is_listed_and_not_forgotten() {
    let mut shop = shop();
    shop.remove(&Good::Rennet);
    let shopping = shopping(&made(&[]), &shop, CHEAP).unwrap();
    assert_eq!(shopping.without_supply.iter().map(|need| need.good).collect::<Vec<_>>(), [Good::Rennet]);
}

#[test]
fn a_wrong_package_is_refused_with_the_thing_that_it_is_about() {
    let with = |offer: Offer| {
        let mut shop = shop();
        shop.insert(Good::Cream, supply(0.0, &[offer]));
        shopping(&made(&[]), &shop, CHEAP)
    };
    let zero = with(offer(0.0, 1.2)).unwrap_err();
    assert_eq!(zero, ShoppingError::Packages { good: Good::Cream, why: PackageError::WrongSize { number: 1, size: 0 } });
    assert!(zero.to_string().starts_with("cream: "), "{zero}");
    assert!(matches!(with(offer(-200.0, 1.2)), Err(ShoppingError::Packages { why: PackageError::WrongSize { .. }, .. })));
    assert!(matches!(with(offer(200.0, 0.0)), Err(ShoppingError::Packages { why: PackageError::WrongPrice { .. }, .. })));
    for value in [f64::NAN, f64::INFINITY, 2e6] {
        assert!(matches!(with(offer(value, 1.2)), Err(ShoppingError::NoNumber { good: Good::Cream, .. })));
        assert!(matches!(with(offer(200.0, value)), Err(ShoppingError::NoNumber { good: Good::Cream, .. })));
    }
    let mut none = shop();
    none.insert(Good::Milk, supply(100.0, &[]));
    let error = shopping(&made(&[]), &none, CHEAP).unwrap_err();
    assert!(
        matches!(error, ShoppingError::Packages { good: Good::Milk, why: PackageError::NothingToChooseFrom { need: 5900 } }),
        "{error}"
    );
}
