//! What a cheese feeds: by hand, and against the tables of another authority with its own factors.

use super::rows;
use proptest::prelude::*;
use serde::Deserialize;
use vatsketch::law::Matter;
use vatsketch::law::nutrition::Nutrients;

/// 100 g of a food, in kilograms of each part.
fn food(fat: f64, protein: f64, carbohydrate: f64, rest: f64) -> Matter {
    Matter {
        water_kg: rest,
        fat_kg: fat,
        casein_kg: 0.8 * protein,
        whey_protein_kg: 0.2 * protein,
        carbohydrate_kg: carbohydrate,
        ..Matter::default()
    } * 1e-3
}

/// Regulation (EU) 1169/2011, annex XIV, worked by hand: 20 g fat, 15 g protein, 2 g carbohydrate, 1 g acetic acid.
/// 740 + 255 + 34 + 13 = 1042 kJ; 180 + 60 + 8 + 3 = 251 kcal. Salt of 1.5 g: 1.5·22.99/58.44·2.5 = 1.4753 g.
#[test]
fn a_label_worked_by_hand_is_met() {
    let matter = Matter { salt_kg: 0.0015, acid_kg: 0.001, ..food(20.0, 15.0, 2.0, 60.5) };
    let label = Nutrients::of(&matter);
    assert!((label.mass_g - 100.0).abs() < 1e-9);
    assert!((label.energy_kj - 1042.0).abs() < 1e-9 && (label.energy_kcal - 251.0).abs() < 1e-9);
    assert!((label.salt_g - 1.4753).abs() < 2e-4, "{}", label.salt_g);
    assert!((label.in_100_g().energy_kj - 1042.0).abs() < 1e-6);
}

#[derive(Deserialize)]
struct Row {
    ndb: String,
    protein: f64,
    fat: f64,
    carbohydrate: f64,
}

/// USDA counts dairy with its own factors, 4.27, 8.79 and 3.87 kcal/g (calorie conversion factors of its data, as read in a copy): rounded
/// factors may differ by 4 % from them, most for protein alone.
#[test]
fn rounded_factors_are_near_those_of_another_authority() {
    let table: Vec<Row> = rows("composition_usda.csv");
    for row in &table {
        let ours = Nutrients::of(&food(row.fat, row.protein, row.carbohydrate, 0.0)).energy_kcal;
        let theirs = 4.27 * row.protein + 8.79 * row.fat + 3.87 * row.carbohydrate;
        assert!((ours / theirs - 1.0).abs() < 0.04, "{}: {ours} and {theirs}", row.ndb);
    }
    assert!(table.len() > 10);
}

/// USDA, a whey cheese of whole milk (01036), as read in a copy: protein 11.26, fat 12.98, carbohydrate 3.04 g, 174 kcal; rounded to 1 kcal.
#[test]
fn a_published_cheese_has_its_published_energy() {
    let ours = Nutrients::of(&food(12.98, 11.26, 3.04, 72.7));
    assert!((ours.energy_kcal - 174.0).abs() < 0.6, "{}", ours.energy_kcal);
    // The two units follow their own factors; one kilocalorie is 4.184 kJ, and the factors are rounded to within 3 %.
    assert!((ours.energy_kj / (4.184 * ours.energy_kcal) - 1.0).abs() < 0.03);
}

#[test]
fn nothing_feeds_nothing_and_no_number_stays_none() {
    let nothing = Nutrients::of(&Matter::default());
    assert_eq!((nothing, nothing.in_100_g()), (Nutrients::default(), Nutrients::default()));
    let none = Nutrients::of(&Matter { fat_kg: f64::NAN, ..food(0.0, 15.0, 2.0, 60.0) });
    assert!(none.energy_kj.is_nan() && none.fat_g.is_nan());
}

proptest! {
    #[test]
    fn two_cheeses_feed_twice_as_much_and_a_hundred_grams_the_same(
        fat in 0.0..40.0_f64, protein in 0.0..40.0_f64, carbohydrate in 0.0..6.0_f64, water in 1.0..90.0_f64, count in 1.0..40.0_f64,
    ) {
        let (one, all) = (food(fat, protein, carbohydrate, water), food(fat, protein, carbohydrate, water) * count);
        let (one, all) = (Nutrients::of(&one), Nutrients::of(&all));
        prop_assert!((all.energy_kj - count * one.energy_kj).abs() < 1e-9 * (1.0 + all.energy_kj));
        prop_assert!((all.in_100_g().energy_kj - one.in_100_g().energy_kj).abs() < 1e-6);
        // Pure fat is the richest.
        prop_assert!((0.0..=3700.0 + 1e-6).contains(&one.in_100_g().energy_kj));
    }
}
