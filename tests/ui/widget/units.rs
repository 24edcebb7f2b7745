//! Units as a way of showing.

use crate::ui::{example, shown};
use egui::accesskit::Role;
use egui::{Key, Theme};
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::design::{Design, Field, Unit, Value, fields};
use vatsketch::session::{Appearance, Colours, Kept};
use vatsketch::ui::{Page, read_number};
use vatsketch::units::{Clock, LongTimes, Masses, Temperatures, Units, Volumes};

/// The settings that a thousand switches go through, one after the other.
fn some(number: usize) -> Units {
    Units {
        temperatures: [Temperatures::Celsius, Temperatures::Fahrenheit][number % 2],
        volumes: [Volumes::Litres, Volumes::UsCups, Volumes::UsQuarts, Volumes::ImperialPints][number / 2 % 4],
        masses: [Masses::Kilograms, Masses::Pounds][number / 3 % 2],
        long_times: [LongTimes::Usual, LongTimes::Days, LongTimes::Hours][number % 3],
        clock: [Clock::Hours24, Clock::Hours12][number / 5 % 2],
    }
}

#[test]
fn switching_a_thousand_times_changes_no_bit_of_the_design() {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    let design = harness.state().session.design().clone();
    let bits = |design: &Design| -> Vec<u64> {
        let number = |field: &Field| if let Value::Number(number) = field.get(design) { Some(number.to_bits()) } else { None };
        fields().filter_map(number).collect()
    };
    let before = bits(&design);
    for number in 0..1000 {
        harness.state_mut().view.units = some(number);
        // Every one is drawn, on each of the pages in turn.
        harness.state_mut().view.page = Page::ALL[number / 100 % Page::ALL.len()];
        harness.step();
    }
    assert_eq!(bits(harness.state().session.design()), before);
    assert_eq!(*harness.state().session.design(), design);
    assert!(!harness.state().session.is_dirty() && harness.state().session.history().undo_name().is_none());
}

/// The menu is as deep as it needs to be to stay in a window of 480 pixels at twice the size.
#[test]
fn the_menu_of_units_fits_into_a_low_window_at_twice_the_size() {
    let mut harness = shown(example("warm-cabinet"), [480.0, 240.0], Theme::Light);
    for label in ["View", "Units"] {
        harness.get_by_label_contains(label).click();
        harness.run();
    }
    for label in ["All at once", "Temperatures", "Volumes", "Weights", "Long times", "Clock"] {
        let place = harness.get_by_label_contains(label).rect();
        assert!(place.top() >= 0.0 && place.bottom() <= 240.0 && place.right() <= 480.0, "{label} is at {place:?}");
    }
    harness.get_by_label_contains("Volumes").click();
    harness.run();
    let place = harness.get_by_label("Volumes in imperial pints").rect();
    assert!(place.bottom() <= 240.0 && place.right() <= 480.0 && place.left() >= 0.0, "{place:?}");
    harness.get_by_label("Volumes in imperial pints").click();
    harness.run();
    assert_eq!(harness.state().view.units.volumes, Volumes::ImperialPints);
}

#[test]
fn a_file_of_an_earlier_program_is_still_read() {
    let folder = tempfile::tempdir().unwrap();
    let kept = |text: &str| {
        std::fs::write(folder.path().join("look.ron"), text).unwrap();
        Kept::<Appearance>::in_folder(folder.path()).now()
    };
    let old = kept("(colours:Dark,size_percent:150,fahrenheit:true,cups:true)");
    let units = Units { temperatures: Temperatures::Fahrenheit, volumes: Volumes::UsCups, ..Units::METRIC };
    assert_eq!(old, Appearance { colours: Colours::Dark, size_percent: 150, units });
    assert_eq!(kept("(colours:Light)"), Appearance { colours: Colours::Light, ..Appearance::default() });
    // What this program writes, it reads.
    let mut store = Kept::<Appearance>::in_folder(folder.path());
    let chosen = Appearance { units: Units::US, ..old };
    store.keep(chosen);
    assert_eq!(Kept::<Appearance>::in_folder(folder.path()).now(), chosen);
}

#[test]
fn showing_fahrenheit_changes_neither_the_design_nor_the_dirty_mark() {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    harness.state_mut().view.units.temperatures = Temperatures::Fahrenheit;
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
    let read = read_number("10 °C", Unit::Celsius, Units::METRIC).unwrap();
    assert!(!read.bare && read.value == 10.0);
    for (text, value) in [("½", 0.5), ("1 1/2", 1.5), ("2¼", 2.25), ("-3", -3.0), ("2,5", 2.5), (" 7 ", 7.0)] {
        assert_eq!(read_number(text, Unit::One, Units::METRIC).unwrap().value, value, "{text}");
    }
    for text in ["", "milk", "1/0", "1.2.3", "2 3", "½½", "/"] {
        assert!(read_number(text, Unit::One, Units::METRIC).is_err(), "{text}");
    }
}

/// A litre and a thousand litres must not be taken for each other.
#[test]
fn a_comma_before_three_digits_is_asked_about() {
    let refused = read_number("1,000", Unit::Litre, Units::METRIC).unwrap_err().to_string();
    assert!(refused.contains("1 or 1000"), "{refused}");
    assert!(read_number("12,500 ml", Unit::Litre, Units::METRIC).is_err());
    for (text, value) in [("0,125", 0.125), ("1,25", 1.25), ("1.000", 1.0), ("1000", 1000.0)] {
        assert_eq!(read_number(text, Unit::Litre, Units::METRIC).unwrap().value, value, "{text}");
    }
}

#[test]
fn a_refused_unit_says_what_may_be_written_only_where_something_may() {
    let refused = |unit| read_number("9 bananas", unit, Units::METRIC).unwrap_err().to_string();
    assert_eq!(refused(Unit::One), "“bananas” cannot be used here; write the number alone");
    assert!(refused(Unit::Hour).contains("write h, min, d, weeks, or the number alone"), "{}", refused(Unit::Hour));
    assert_eq!(read_number("5 %", Unit::GramIn100Millilitre, Units::METRIC).unwrap().value, 5.0);
    assert_eq!(read_number("3 weeks", Unit::Hour, Units::METRIC).unwrap().value, 504.0);
}
