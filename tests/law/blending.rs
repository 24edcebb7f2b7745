//! Blending against published worked examples.

use super::tables::{near, rows};
use proptest::prelude::*;
use vatsketch::law::Matter;
use vatsketch::law::blending::{BlendError, addition_for_ratio_kg, addition_kg, additions_kg, blended};
use vatsketch::law::composition::Animal;
use vatsketch::law::density::milk_kg_l;
use vatsketch::law::kitchen::TABLESPOON;

#[derive(serde::Deserialize)]
struct Row {
    source: String,
    base: f64,
    base_fat: f64,
    add_fat: f64,
    target: f64,
    expected_add: f64,
}

/// Returns a kilogram of low-heat non-fat dry milk: USDA row 01091, casein 0.77 of its protein.
fn powder() -> Matter {
    Matter {
        water_kg: 0.0316,
        fat_kg: 0.0077,
        casein_kg: 0.77 * 0.3616,
        whey_protein_kg: 0.23 * 0.3616,
        carbohydrate_kg: 0.5198,
        ash_kg: 0.0793,
        ..Matter::default()
    }
}

/// Sources in the table; tolerance 0.1 %, the rounding of the examples.
#[test]
fn the_published_examples_of_standardising_are_met() {
    let rows: Vec<Row> = rows("standardising");
    assert_eq!(rows.len(), 3);
    for row in rows {
        let got = addition_kg(row.base, row.base_fat, row.add_fat, row.target).unwrap();
        assert!((got / row.expected_add - 1.0).abs() <= 0.001, "{}: {got}, the example has {}", row.source, row.expected_add);
    }
}

/// A published note takes 45 of 40 % cream from 1000 of 3.8 % milk to leave 2 %; the exact answer is 47.37, and ours is the exact one.
/// The milk is what is left blended with what is taken: the same square. The note's row is kept and disagrees.
#[test]
fn taking_cream_away_is_exact_where_a_published_note_is_not() {
    let cream_per_left = addition_kg(1.0, 2.0, 40.0, 3.8).unwrap();
    let taken = 1000.0 * cream_per_left / (1.0 + cream_per_left);
    near(taken, 47.37, 0.005);
    assert!((taken - 45.0).abs() > 2.0);
    near((1000.0 * 3.8 - taken * 40.0) / (1000.0 - taken), 2.0, 1e-12);
}

/// Common practice, no source: 8 L of 3.25 % milk reach 3.5 % with about four and a half tablespoons of 35 % cream; half a spoon of tolerance.
#[test]
fn four_and_a_half_tablespoons_of_cream_lift_eight_litres_by_a_quarter_of_a_per_cent() {
    let base_kg = 8.0 * milk_kg_l(3.25, 8.62, 4.0);
    let cream_kg = addition_kg(base_kg, 3.25, 35.0, 3.5).unwrap();
    let spoons = 1000.0 * cream_kg / milk_kg_l(35.0, Animal::Cow.cream(35.0).solids_not_fat_percent(), 4.0) / TABLESPOON.value;
    near(spoons, 4.5, 0.5);
}

#[test]
fn a_target_beyond_both_streams_is_refused_with_the_range() {
    assert_eq!(addition_kg(10.0, 3.6, 28.0, 29.0), Err(BlendError::OutOfReach { target: 29.0, least: 3.6, most: 28.0 }));
    assert!(addition_kg(10.0, 3.6, 28.0, 3.0).is_err());
    assert!(addition_kg(10.0, 3.6, 28.0, 28.0).is_err(), "the cream's own strength is never met");
    assert!(addition_kg(10.0, f64::NAN, 28.0, 4.0).is_err());
    assert!(addition_kg(10.0, 3.6, 28.0, f64::NAN).is_err());
    let words = addition_kg(10.0, 0.1, 40.0, 50.0).unwrap_err().to_string();
    assert!(words.contains("50") && words.contains("0.1") && words.contains("40"), "{words}");
}

#[test]
fn a_target_that_is_met_already_wants_nothing() {
    assert_eq!(addition_kg(10.0, 3.6, 28.0, 3.6), Ok(0.0));
}

/// Our own computation: cow's milk of the table, casein to fat 0.746, is brought to the usual 0.70 (abstract) with cream.
#[test]
fn cream_brings_casein_to_fat_down_and_skimmed_milk_brings_it_up() {
    let (milk, cream) = (Animal::Cow.milk() * 10.0, Animal::Cow.cream(36.0));
    let cream_kg = addition_for_ratio_kg(&milk, &cream, 0.70).unwrap();
    let blend = milk + cream * cream_kg;
    near(blend.casein_kg / blend.fat_kg, 0.70, 1e-12);
    let skimmed_kg = addition_for_ratio_kg(&milk, &Animal::Cow.cream(0.08), 0.9).unwrap();
    let blend = milk + Animal::Cow.cream(0.08) * skimmed_kg;
    near(blend.casein_kg / blend.fat_kg, 0.9, 1e-12);
    let refused = addition_for_ratio_kg(&milk, &cream, 0.9);
    assert!(matches!(refused, Err(BlendError::OutOfReach { .. })), "{refused:?}");
}

#[test]
fn two_targets_out_of_reach_are_refused() {
    let (milk, cream) = (Animal::Cow.milk() * 10.0, Animal::Cow.cream(36.0));
    for (fat_percent, casein_percent) in [(40.0, 3.0), (4.5, 2.0), (2.0, 3.0), (f64::NAN, 3.0)] {
        let refused = additions_kg(&milk, &cream, &powder(), fat_percent, casein_percent);
        assert!(refused.is_err(), "{fat_percent} % and {casein_percent} %: {refused:?}");
    }
    assert_eq!(additions_kg(&milk, &cream, &cream, 4.5, 3.0), Err(BlendError::Alike), "two creams are one");
}

/// By hand: cow's milk (3.25 % fat, 2.4255 % casein), cream of 36 % and a powder of 1 % fat and 28 % casein, all by mass. At 4.5 % fat
/// milk with cream reaches least casein, and powder with cream most: 28 + 3.5/35·(1.651 − 28).
#[test]
fn two_targets_out_of_reach_name_what_the_three_reach() {
    let (milk, cream) = (Animal::Cow.milk() * 10.0, Animal::Cow.cream(36.0));
    let powder = powder();
    let strength = |matter: &Matter| (matter.fat_percent(), matter.percent(matter.casein_kg));
    let ((fat_m, casein_m), (fat_c, casein_c), (fat_p, casein_p)) = (strength(&milk), strength(&cream), strength(&powder));
    let least = casein_m + (4.5 - fat_m) / (fat_c - fat_m) * (casein_c - casein_m);
    let most = casein_p + (4.5 - fat_p) / (fat_c - fat_p) * (casein_c - casein_p);
    match additions_kg(&milk, &cream, &powder, 4.5, 2.0).unwrap_err() {
        BlendError::Negative { least_percent, most_percent, .. } => {
            near(least_percent, least, 1e-9);
            near(most_percent, most, 1e-9);
        }
        other => panic!("{other}"),
    }
    // What is named is reached: just inside both ends a blend is found.
    for casein_percent in [least + 1e-6, most - 1e-3] {
        assert!(additions_kg(&milk, &cream, &powder, 4.5, casein_percent).is_ok(), "{casein_percent}");
    }
    let too_fat = additions_kg(&milk, &cream, &powder, 40.0, 3.0).unwrap_err();
    assert!(
        matches!(too_fat, BlendError::OutOfReach { target, most, .. } if target == 40.0 && (most - 36.0).abs() < 1e-9),
        "{too_fat}"
    );
}

proptest! {
    #[test]
    fn adding_what_was_worked_out_gives_the_target(base in 0.1..100.0_f64, lean in 0.0..8.0, rich in 12.0..48.0, share in 0.01..0.95) {
        let target = lean + share * (rich - lean);
        let up = addition_kg(base, lean, rich, target).unwrap();
        prop_assert!((blended(base, lean, up, rich) - target).abs() < 1e-9);
        let down = addition_kg(base, rich, lean, target).unwrap();
        prop_assert!((blended(base, rich, down, lean) - target).abs() < 1e-9);
    }

    #[test]
    fn two_additions_give_both_targets(cream_kg in 0.001..5.0_f64, powder_kg in 0.001..2.0_f64) {
        let (milk, cream) = (Animal::Cow.milk() * 10.0, Animal::Cow.cream(36.0));
        let blend = milk + cream * cream_kg + powder() * powder_kg;
        let (x, y) = additions_kg(&milk, &cream, &powder(), blend.fat_percent(), blend.percent(blend.casein_kg)).unwrap();
        prop_assert!((x - cream_kg).abs() < 1e-9 && (y - powder_kg).abs() < 1e-9);
    }
}
