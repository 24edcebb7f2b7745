//! The hold of pasteurised milk against the tables of the rules.

use super::tables::near;
use proptest::prelude::*;
use vatsketch::law::Matter;
use vatsketch::law::composition::Animal;
use vatsketch::law::pasteurising::{QUICK_PASTEURISING, RICH_HOTTER, SLOW_PASTEURISING, hold_s, is_rich, least_c};

/// 21 CFR 1240.61 (b): 63 °C for 30 minutes, 72 °C for 15 seconds; note 1: 3 °C more where fat is 10 % or more.
#[test]
fn the_hold_is_that_of_the_published_table() {
    near(hold_s(63.0, false).unwrap(), 30.0 * 60.0, 1e-9);
    near(hold_s(72.0, false).unwrap(), 15.0, 1e-9);
    near(hold_s(66.0, true).unwrap(), 30.0 * 60.0, 1e-9);
    near(hold_s(75.0, true).unwrap(), 15.0, 1e-9);
    // Michigan compiled laws 288.697 gives the same for products from 10 % of fat on: 66 °C 30 min, 75 °C 15 s.
    near(least_c(true), 66.0, 1e-12);
}

/// 145, 161 and 5 °F of the same table; its degrees Celsius are rounded upwards by at most 0.4.
#[test]
fn the_degrees_are_those_of_the_table_in_fahrenheit() {
    for (fahrenheit, celsius) in [(145.0, SLOW_PASTEURISING.value), (161.0, QUICK_PASTEURISING.value)] {
        let exact: f64 = (fahrenheit - 32.0) / 1.8;
        assert!((0.0..0.4).contains(&(celsius - exact)), "{celsius}");
    }
    assert!((0.0..0.4).contains(&(RICH_HOTTER.value - 5.0 / 1.8)));
}

#[test]
fn milk_that_is_cooler_is_not_pasteurised_and_hotter_milk_gains_no_time() {
    assert_eq!((hold_s(62.9, false), hold_s(65.9, true), hold_s(f64::NAN, false)), (None, None, None));
    near(hold_s(89.0, false).unwrap(), 15.0, 1e-9);
}

/// Half way between the two points the time is their geometric mean: √(1800 · 15) = 164.32 s.
#[test]
fn between_the_points_the_logarithm_is_straight() {
    near(hold_s(67.5, false).unwrap(), 164.316_767, 1e-6);
}

/// Pasteurized Milk Ordinance, note to its table: 10 % of fat, or 18 % of solids, or more.
#[test]
fn fat_or_solids_make_milk_rich() {
    assert!(is_rich(&Animal::Sheep.milk()));
    for animal in [Animal::Cow, Animal::Goat] {
        assert!(!is_rich(&animal.milk()));
    }
    let milk = |fat_kg: f64, others_kg: f64| Matter {
        fat_kg,
        carbohydrate_kg: others_kg,
        water_kg: 1.0 - fat_kg - others_kg,
        ..Matter::default()
    };
    assert!(is_rich(&milk(0.101, 0.07)) && !is_rich(&milk(0.099, 0.07)));
    assert!(is_rich(&milk(0.08, 0.101)) && !is_rich(&milk(0.08, 0.099)));
}

proptest! {
    #[test]
    fn hotter_milk_is_never_held_longer(temperature_c in 63.0..90.0_f64, more_k in 0.0..10.0_f64) {
        prop_assert!(hold_s(temperature_c + more_k, false).unwrap() <= hold_s(temperature_c, false).unwrap());
    }
}
