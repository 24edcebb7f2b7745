//! Reading, checking, setting and getting inputs.

use super::any::value_at;
use proptest::prelude::*;
use vatsketch::design::{Design, DesignError, Value, field, fields};

#[test]
fn a_number_is_read_with_a_dot_or_a_comma_and_blanks_around_it() {
    let milk = field("milk_l").unwrap();
    for text in ["7.5", "7,5", " 7.5 ", "75e-1"] {
        assert_eq!(milk.read(text).unwrap(), Value::Number(7.5), "`{text}`");
    }
}

#[test]
fn what_is_no_number_is_refused_with_the_range() {
    let milk = field("milk_l").unwrap();
    for text in ["", "six", "NaN", "inf", "-inf", "1e999", "6 L", "1.2.3", "1,234.5"] {
        let refused = milk.read(text).unwrap_err();
        assert!(matches!(refused, DesignError::NotANumber { .. }), "`{text}`: {refused}");
        assert!(refused.to_string().contains("from 0.5 to 60 L"), "{refused}");
    }
}

#[test]
fn a_number_out_of_range_is_refused_with_range_and_value() {
    for text in ["0.4999", "60.001", "-3", "1e30"] {
        let refused = field("milk_l").unwrap().read(text).unwrap_err();
        assert!(matches!(refused, DesignError::OutOfRange { .. }), "`{text}`: {refused}");
    }
    let refused = field("milk_l").unwrap().read("61").unwrap_err().to_string();
    assert!(refused.contains("Milk (`milk_l`)") && refused.contains("0.5 to 60 L") && refused.contains("61"), "{refused}");
}

#[test]
fn a_count_must_be_whole() {
    let refused = field("mould_count").unwrap().read("2.5").unwrap_err();
    assert_eq!(refused, DesignError::NotWhole { label: "Number of moulds", key: "mould_count", given: 2.5 });
    assert_eq!(field("mould_count").unwrap().read("2.0").unwrap(), Value::Number(2.0));
}

#[test]
fn a_choice_and_a_switch_take_their_own_words_only() {
    let kind = field("milk_kind").unwrap();
    assert_eq!(kind.read("goat").unwrap(), Value::Choice("goat"));
    let refused = kind.read("Goat's").unwrap_err().to_string();
    assert!(refused.contains("cow, sheep, goat, buffalo, label"), "{refused}");
    let swap = field("tray_swap").unwrap();
    for (text, on) in [("yes", true), ("no", false), ("true", true), ("off", false)] {
        assert_eq!(swap.read(text).unwrap(), Value::Switch(on));
    }
    assert!(swap.read("perhaps").unwrap_err().to_string().contains("yes or no"));
}

#[test]
fn a_value_of_another_kind_is_refused_and_nothing_changes() {
    let mut design = Design::default();
    for (key, value) in [
        ("milk_l", Value::Switch(true)),
        ("milk_l", Value::Choice("cow")),
        ("milk_kind", Value::Number(1.0)),
        ("milk_kind", Value::Choice("raw")),
        ("tray_swap", Value::Number(1.0)),
        ("milk_l", Value::Number(f64::INFINITY)),
    ] {
        assert!(design.set(key, value).is_err(), "{key} {value}");
    }
    assert_eq!(design, Design::default());
}

#[test]
fn an_unknown_key_names_the_nearest_one() {
    for (given, nearest) in
        [("mlik_l", "milk_l"), ("drying_hours", "drying_h"), ("mold_count", "mould_count"), ("salt_persent", "salt_percent")]
    {
        let Err(refused) = field(given) else { panic!("{given} is no key") };
        assert_eq!(refused, DesignError::UnknownKey { key: given.to_owned(), nearest: Some(nearest) });
        assert!(refused.to_string().contains(&format!("`{nearest}`")), "{refused}");
    }
    assert!(Design::default().get("").is_err());
}

proptest! {
    #[test]
    fn every_input_gets_back_what_was_set_and_what_was_written_down(at in 0..fields().count(), share in 0.0..=1.0_f64) {
        let field = fields().nth(at).unwrap();
        let value = value_at(field, share);
        let mut design = Design::default();
        design.set(field.key, value).unwrap();
        prop_assert_eq!(design.get(field.key).unwrap(), value);
        prop_assert_eq!(field.read(&value.to_string()).unwrap(), value);
        // Nothing else moved.
        for other in fields().filter(|other| other.key != field.key) {
            prop_assert_eq!(other.get(&design), other.default(), "{} moved {}", field.key, other.key);
        }
    }

    #[test]
    fn no_text_at_all_breaks_the_reading(at in 0..fields().count(), text in super::any::any_text(12)) {
        let field = fields().nth(at).unwrap();
        if let Ok(value) = field.read(&text) {
            prop_assert!(field.check(value).is_ok());
        }
    }
}
