//! Kitchen measures against the standard, and their words read back.

use super::tables::near;
use proptest::prelude::*;
use vatsketch::law::kitchen::{
    METRIC_TABLESPOON, METRIC_TEASPOON, MOST_DROPS, TABLESPOON, TEASPOON, drops, salt_spoons, spoons, stock,
};

/// NIST Handbook 44: a gallon is 231 cubic inches of 25.4 mm, exactly; it is 256 tablespoons, 768 teaspoons. The records have six digits.
#[test]
fn united_states_measures_are_parts_of_the_gallon() {
    let gallon_ml = 231.0 * 2.54_f64.powi(3);
    for (measure, parts) in [(TABLESPOON, 256.0), (TEASPOON, 768.0)] {
        near(measure.value * parts / gallon_ml, 1.0, 3e-6);
    }
}

#[test]
fn amounts_are_said_as_a_kitchen_measures_them() {
    for (volume_ml, words) in [
        (0.63, "⅛ tsp"),
        (1.25, "¼ tsp"),
        (7.5, "1½ tsp"),
        (10.0, "2 tsp"),
        (30.0, "2 tbsp"),
        (35.0, "2 tbsp + 1 tsp"),
        (45.0, "3 tbsp"),
    ] {
        assert_eq!(spoons(volume_ml).as_deref(), Some(words), "{volume_ml} mL");
    }
    // USDA: a teaspoon of table salt weighs 6 g.
    assert_eq!(salt_spoons(6.0).as_deref(), Some("1 tsp"));
    assert_eq!(salt_spoons(12.0).as_deref(), Some("2 tsp"));
}

#[test]
fn what_no_spoon_measures_has_no_words() {
    // 0.9 mL lies between an eighth and a quarter of a teaspoon.
    for volume_ml in [0.0, -1.0, 0.1, 0.9, 500.0, f64::NAN, f64::INFINITY] {
        assert_eq!(spoons(volume_ml), None, "{volume_ml} mL");
    }
}

#[test]
fn a_volume_is_counted_in_whole_drops_where_they_come_near_enough() {
    assert_eq!(drops(0.58, 24.0), Some(14));
    assert_eq!(drops(0.3, 10.0), Some(3));
    // Three and a half: either way a seventh is missing or too much.
    assert_eq!(drops(0.35, 10.0), None);
    assert_eq!((drops(3.0, 20.0), drops(3.1, 20.0)), (Some(60), None), "beyond sixty nobody counts");
    for volume_ml in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert_eq!(drops(volume_ml, 20.0), None, "{volume_ml} mL");
    }
}

/// Reads the words back into millilitres.
fn read(words: &str) -> f64 {
    words.split(" + ").map(read_part).sum()
}

fn read_part(words: &str) -> f64 {
    let (number, unit) = words.split_once(' ').unwrap();
    let fraction = |letter| match letter {
        '⅛' => Some(0.125),
        '¼' => Some(0.25),
        '⅓' => Some(1.0 / 3.0),
        '½' => Some(0.5),
        '⅔' => Some(2.0 / 3.0),
        '¾' => Some(0.75),
        _ => None,
    };
    let whole: String = number.chars().filter(char::is_ascii_digit).collect();
    let value = whole.parse::<f64>().unwrap_or(0.0) + number.chars().find_map(fraction).unwrap_or(0.0);
    let measure = if unit == "tsp" { METRIC_TEASPOON } else { METRIC_TABLESPOON };
    value * measure.value
}

proptest! {
    #[test]
    fn counted_drops_are_no_more_than_a_tenth_off(volume_ml in 0.01..5.0_f64, drops_in_ml in 10.0..40.0_f64) {
        if let Some(count) = drops(volume_ml, drops_in_ml) {
            prop_assert!((f64::from(count) / drops_in_ml / volume_ml - 1.0).abs() <= 0.1 + 1e-12);
            prop_assert!(f64::from(count) <= MOST_DROPS.value);
        }
    }

    /// Nothing is said that is more than a tenth off: what lies between two fractions of a spoon has no words.
    #[test]
    fn what_is_said_in_spoons_is_within_a_tenth(volume_ml in 0.3..120.0_f64) {
        if let Some(words) = spoons(volume_ml) {
            let said_ml = read(&words);
            prop_assert!((said_ml - volume_ml).abs() <= 0.1 * volume_ml + 1e-9, "{} mL said as {} mL", volume_ml, said_ml);
        }
    }

    /// What is used of a solution is what was wanted, within a tenth, and can be measured.
    #[test]
    fn a_share_of_a_solution_is_what_was_wanted(amount in 0.02..5.0_f64) {
        let sizes = [100.0, 1000.0];
        if let Some(stock) = stock(amount, 10.0, &sizes) {
            let taken = stock.holds * stock.used_ml / stock.made_up_to_ml;
            prop_assert!((taken - amount).abs() <= 0.1 * amount, "{taken} of {amount}");
            prop_assert!(stock.used_ml >= 5.0);
        } else {
            prop_assert!(amount < 0.05);
        }
    }
}
