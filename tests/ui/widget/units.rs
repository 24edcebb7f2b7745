//! Units as a way of showing.

use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::design::Unit;
use vatsketch::ui::{Units, read_number};

/// NIST Handbook 44: a cup is 236.588 mL; t_F = 1.8 t_C + 32 by definition.
#[test]
fn temperatures_and_volumes_convert_there_and_back() {
    let units = Units { fahrenheit: true, cups: true };
    let (warm, symbol) = units.shown(Unit::Celsius, 37.0);
    assert!((warm - 98.6).abs() < 1e-12 && symbol == "°F");
    let (cups, symbol) = units.shown(Unit::Litre, 0.236_588);
    assert!((cups - 1.0).abs() < 1e-12 && symbol == "cups");
    for value in [0.5, 6.0, 34.7] {
        for unit in [Unit::Celsius, Unit::Litre, Unit::Gram] {
            assert!((units.typed(unit, units.shown(unit, value).0) - value).abs() < 1e-12);
        }
    }
}

#[test]
fn showing_fahrenheit_changes_neither_the_design_nor_the_dirty_mark() {
    let mut harness = shown(example(0), [1296.0, 816.0], Theme::Light);
    harness.state_mut().view.units.fahrenheit = true;
    harness.run();
    assert!(!harness.state().session.is_dirty());
    let node = harness.get_by_role_and_label(Role::TextInput, "Temperature of the milk as poured");
    assert_eq!(node.accesskit_node().value().as_deref(), Some("41 °F"));
    node.focus();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, "Temperature of the milk as poured").type_text("50");
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    assert!(
        (harness.state().session.design().milk.fridge_temperature_c - 10.0).abs() < 1e-9,
        "a bare number is in the unit that is shown"
    );
}

#[test]
fn a_unit_that_is_written_counts_whatever_is_shown() {
    let read = read_number("10 °C", Unit::Celsius).unwrap();
    assert!(!read.bare && read.value == 10.0);
    for (text, value) in [("½", 0.5), ("1 1/2", 1.5), ("2¼", 2.25), ("-3", -3.0), ("2,5", 2.5), (" 7 ", 7.0)] {
        assert_eq!(read_number(text, Unit::One).unwrap().value, value, "{text}");
    }
    for text in ["", "milk", "1/0", "1.2.3", "2 3", "½½", "/"] {
        assert!(read_number(text, Unit::One).is_err(), "{text}");
    }
}

/// A litre and a thousand litres must not be taken for each other.
#[test]
fn a_comma_before_three_digits_is_asked_about() {
    let refused = read_number("1,000", Unit::Litre).unwrap_err().to_string();
    assert!(refused.contains("1 or 1000"), "{refused}");
    assert!(read_number("12,500 ml", Unit::Litre).is_err());
    for (text, value) in [("0,125", 0.125), ("1,25", 1.25), ("1.000", 1.0), ("1000", 1000.0)] {
        assert_eq!(read_number(text, Unit::Litre).unwrap().value, value, "{text}");
    }
}

#[test]
fn a_refused_unit_says_what_may_be_written_only_where_something_may() {
    let refused = |unit| read_number("9 bananas", unit).unwrap_err().to_string();
    assert_eq!(refused(Unit::One), "“bananas” is no unit for this; leave it out");
    assert!(refused(Unit::Hour).ends_with("or write h, hours, min, d, days, weeks"), "{}", refused(Unit::Hour));
    assert_eq!(read_number("5 %", Unit::GramIn100Millilitre).unwrap().value, 5.0);
    assert_eq!(read_number("3 weeks", Unit::Hour).unwrap().value, 504.0);
}
