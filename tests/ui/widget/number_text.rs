//! Numbers as a maker writes them.

use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::design::Unit;
use vatsketch::ui::{Misread, Window, read_number};
use vatsketch::units::{Masses, Temperatures, Units, Volumes};

fn metric(text: &str, unit: Unit) -> Result<f64, Misread> {
    read_number(text, unit, Units::METRIC).map(|understood| understood.value)
}

/// By the definitions of the measures, which `tests/units/measures.rs` holds to their sources.
#[test]
fn units_are_understood_however_they_are_spelled() {
    for (text, unit, value) in [
        ("9 liters", Unit::Litre, 9.0),
        ("9 litres", Unit::Litre, 9.0),
        ("1 litre", Unit::Litre, 1.0),
        ("9L", Unit::Litre, 9.0),
        ("900 ml", Unit::Litre, 0.9),
        ("2 us quarts", Unit::Litre, 1.892_705_892),
        ("2 Imperial pints", Unit::Litre, 1.136_522_5),
        ("1 US gal", Unit::Millilitre, 3_785.411_784),
        ("4 imp fl. oz.", Unit::Millilitre, 113.652_25),
        ("97 °F", Unit::Celsius, 36.111_111_111),
        ("97F", Unit::Celsius, 36.111_111_111),
        ("97 ° f", Unit::Celsius, 36.111_111_111),
        ("36 C", Unit::Celsius, 36.0),
        ("2 lb 4 oz", Unit::Gram, 1_020.582_832_5),
        ("2lb4oz", Unit::Kilogram, 1.020_582_832_5),
        ("8 ounces", Unit::Gram, 226.796_185),
        ("1½ h", Unit::Minute, 90.0),
        ("1 day 6 h", Unit::Hour, 30.0),
        ("2 h 30 min", Unit::Hour, 2.5),
        ("2⅜", Unit::One, 2.375),
        ("6 g/100 mL", Unit::GramIn100Millilitre, 6.0),
        ("2 in", Unit::Millimetre, 50.8),
    ] {
        let read = metric(text, unit).unwrap_or_else(|why| panic!("{text}: {why}"));
        assert!((read - value).abs() < 1e-6, "{text} became {read}");
    }
}

#[test]
fn a_measure_of_which_there_are_two_counts_as_it_is_shown_and_is_asked_about_otherwise() {
    let read = |units: Units| read_number("2 pints", Unit::Litre, units);
    let in_volumes = |volumes| Units { volumes, ..Units::METRIC };
    let refused = read(Units::METRIC).unwrap_err().to_string();
    assert!(refused.contains("0.946 L (US) or 1.137 L (imperial)"), "{refused}");
    assert!((read(in_volumes(Volumes::UsQuarts)).unwrap().value - 0.946_352_946).abs() < 1e-9);
    assert!((read(in_volumes(Volumes::ImperialPints)).unwrap().value - 1.136_522_5).abs() < 1e-9);
    assert!(read_number("2 imperial cups", Unit::Litre, Units::METRIC).is_err(), "there is no legal imperial cup");
}

#[test]
fn how_a_number_was_understood_is_said_in_what_is_shown() {
    let said = |text, unit, units| read_number(text, unit, units).unwrap().said;
    assert_eq!(said("10 cups", Unit::Litre, Units::METRIC).as_deref(), Some("10 cups = 2.366 L"));
    assert_eq!(said("9 litres", Unit::Litre, Units::METRIC), None);
    assert_eq!(said("97F", Unit::Celsius, Units::METRIC).as_deref(), Some("97F = 36.111 °C"));
    assert_eq!(said("97F", Unit::Celsius, Units::US), None);
    assert_eq!(said("36 °C", Unit::Celsius, Units::US).as_deref(), Some("36 °C = 97 °F"));
    assert_eq!(said("9 litres", Unit::Litre, Units::US).as_deref(), Some("9 litres = 9 qt 16¼ fl oz"));
    let pounds = Units { masses: Masses::Pounds, ..Units::METRIC };
    assert_eq!(said("2 lb 4 oz", Unit::Gram, pounds), None);
}

#[test]
fn what_is_no_number_is_refused_in_plain_words() {
    let refused = |text: &str| metric(text, Unit::Litre).unwrap_err().to_string();
    assert_eq!(refused("4.24.6"), "“4.24.6” has more than one decimal point or comma; write one number, as in 2.5 or 2,5");
    assert_eq!(refused("4.24.6 l"), refused("4.24.6"));
    assert!(refused("2 lb").starts_with("“lb” cannot be used here"), "{}", refused("2 lb"));
    assert!(refused("2 l 4").contains("write a unit behind each"), "{}", refused("2 l 4"));
    assert!(refused(&"9".repeat(400)).contains("too large a number"));
    assert!(refused(&format!("1/{}", "0".repeat(40))).starts_with("write a number"));
}

/// A fraction of any length is a number: 22/7, a third in forty digits, a quotient of two numbers of thirty.
#[test]
fn fractions_of_any_length_are_read() {
    for (text, value) in [
        ("22/7", 22.0 / 7.0),
        ("0.3333333333333333333333333333333333333333", 1.0 / 3.0),
        ("100000000000000000000000000000/300000000000000000000000000000", 1.0 / 3.0),
        ("1 1/3", 4.0 / 3.0),
    ] {
        assert!((metric(text, Unit::Litre).unwrap() - value).abs() < 1e-15, "{text}");
    }
}

fn first() -> Harness<'static, Window> {
    shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light)
}

fn type_into(harness: &mut Harness<'_, Window>, label: &str, text: &str, key: Key) {
    harness.get_by_role_and_label(Role::TextInput, label).focus();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, label).type_text(text);
    harness.run();
    harness.key_press(key);
    harness.run();
}

fn text_in(harness: &Harness<'_, Window>, label: &str) -> Option<String> {
    harness.get_by_role_and_label(Role::TextInput, label).accesskit_node().value()
}

#[test]
fn a_refusal_names_the_limits_in_the_unit_that_is_shown() {
    let mut harness = first();
    harness.state_mut().view.units = Units { temperatures: Temperatures::Fahrenheit, volumes: Volumes::UsQuarts, ..Units::METRIC };
    harness.run();
    type_into(&mut harness, "Milk", "900", Key::Enter);
    // 0.5 L are 0.5283 quarts, 60 L are 63.4013: rounded inwards.
    harness.get_by_label_contains("Milk must be from 0.53 to 63.4 qt, but 900 was given");
    assert!(!harness.state().session.is_dirty());
}

#[test]
fn escape_brings_the_old_text_back_whatever_was_typed_and_refused() {
    let mut harness = first();
    for text in ["9", "bananas", "4.24.6", "900"] {
        type_into(&mut harness, "Milk", text, Key::Escape);
        assert_eq!(text_in(&harness, "Milk").as_deref(), Some("6 L"), "{text}");
    }
    let mut harness = first();
    // A text that Enter could not take stays in hand, and Escape gives it up.
    type_into(&mut harness, "Milk", "4.24.6", Key::Enter);
    assert_eq!(text_in(&harness, "Milk").as_deref(), Some("4.24.6"));
    harness.key_press(Key::Escape);
    harness.run();
    assert_eq!(text_in(&harness, "Milk").as_deref(), Some("6 L"));
    assert!(harness.query_by_label_contains("decimal point").is_none() && !harness.state().session.is_dirty());
}
