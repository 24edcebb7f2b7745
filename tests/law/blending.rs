//! Blending against published worked examples.

use super::tables::{Standardising, near, rows};
use proptest::prelude::*;
use vatsketch::law::Matter;
use vatsketch::law::blending::{BlendError, StrengthPart, addition_kg, blended, two_additions_kg};
use vatsketch::law::composition::Animal;
use vatsketch::law::density::milk_kg_l;
use vatsketch::law::kitchen::TABLESPOON;

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
    let rows: Vec<Standardising> = rows("standardising");
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

fn fat_and_casein(fat_percent: f64, casein_percent: f64) -> [StrengthPart; 2] {
    [(|matter| matter.fat_kg, fat_percent), (|matter| matter.casein_kg, casein_percent)]
}

#[test]
fn two_creams_cannot_reach_two_targets() {
    let (milk, cream) = (Animal::Cow.milk() * 10.0, Animal::Cow.cream(36.0));
    assert_eq!(two_additions_kg(&milk, &cream, &cream, fat_and_casein(4.5, 3.0)), Err(BlendError::Alike));
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
        let (x, y) = two_additions_kg(&milk, &cream, &powder(), fat_and_casein(blend.fat_percent(), blend.percent(blend.casein_kg))).unwrap();
        prop_assert!((x - cream_kg).abs() < 1e-9 && (y - powder_kg).abs() < 1e-9);
    }
}
