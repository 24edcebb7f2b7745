//! Tests of the page of the log.

use super::{begun, on_disk, saved, typed};
use crate::ui::{example, settled, shown};
use egui::Theme;
use egui::accesskit::Role;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use vatsketch::record::EntryKind;

const SIZE: [f32; 2] = [1296.0, 816.0];

#[test]
fn a_design_in_no_file_is_to_be_saved_first() {
    let mut harness = shown(example("first-vat"), SIZE, Theme::Light);
    harness.get_by_label("Page Log").click();
    settled(&mut harness);
    harness.get_by_label("Save the design…");
    assert!(harness.query_by_label("Begin a batch").is_none());
}

#[test]
fn a_number_is_written_down_at_once_and_can_be_taken_back() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = saved(folder.path(), SIZE, Theme::Light);
    assert!(!on_disk(folder.path()).path().exists(), "looking at a log writes nothing");
    harness.get_by_label("Begin a batch").click();
    settled(&mut harness);
    typed(&mut harness, "Milk into the pot", "4,2");
    let latest = |folder| on_disk(folder).chosen().unwrap().latest(EntryKind::MilkPoured).map(|entry| (entry.amount(), entry.at));
    assert_eq!(latest(folder.path()), Some((Some(4.2), date(2031, 5, 5).at(8, 0, 0, 0))), "at the time of the clock");
    harness.get_by_label_contains("Take back Milk into the pot").click_accesskit();
    settled(&mut harness);
    assert_eq!(latest(folder.path()), None);
    assert_eq!(on_disk(folder.path()).chosen().unwrap().entries.len(), 2, "what it said is kept");
}

#[test]
fn what_was_done_earlier_is_written_down_with_its_time() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    typed(&mut harness, "Time of the next entries", "7:15");
    harness.get_by_label("Warming began: Done Mon\u{a0}5\u{a0}May,\u{a0}07:15").click_accesskit();
    settled(&mut harness);
    let book = on_disk(folder.path());
    assert_eq!(book.chosen().unwrap().latest(EntryKind::WarmingBegan).unwrap().at, date(2031, 5, 5).at(7, 15, 0, 0));
}

#[test]
fn what_cannot_be_right_stays_in_its_box_with_the_reason() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    typed(&mut harness, "Milk into the pot", "4200");
    harness.get_by_label_contains("cannot be right");
    assert_eq!(harness.get_by_role_and_label(Role::TextInput, "Milk into the pot").value().as_deref(), Some("4200"));
    assert!(on_disk(folder.path()).chosen().unwrap().entries.is_empty());
}

#[test]
fn degrees_are_read_in_the_units_that_are_shown() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.state_mut().view.units = vatsketch::units::Units::US;
    settled(&mut harness);
    typed(&mut harness, "Temperature of the milk", "86");
    let read = on_disk(folder.path()).chosen().unwrap().latest(EntryKind::MilkTemperature).unwrap().amount().unwrap();
    assert!((read - 30.0).abs() < 1e-9, "{read} °C");
}

#[test]
fn what_was_off_is_told_beside() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.get_by_label_contains("Nothing to compare yet");
    typed(&mut harness, "Milk into the pot", "3");
    harness.get_by_label_contains("The one measurement differs from the plan");
    harness.get_by_label_contains("below");
}

#[test]
fn what_was_measured_lies_on_the_curves() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.state_mut().view.log.at = Some(date(2031, 5, 5).at(7, 0, 0, 0));
    typed(&mut harness, "Milk into the pot", "5");
    harness.state_mut().view.log.at = Some(date(2031, 5, 5).at(7, 12, 0, 0));
    typed(&mut harness, "Temperature of the milk", "18.5");
    harness.get_by_label("Page Design").click();
    settled(&mut harness);
    harness.get_by_label_contains("Measured: milk 18.5 °C after 12.0 min.");
}

/// The unit beside a box is the one in which its number is read, whatever its size.
#[test]
fn amounts_are_read_in_the_unit_beside_their_box_and_in_others_where_these_are_written() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.state_mut().view.units = vatsketch::units::Units::US;
    settled(&mut harness);
    let read = || on_disk(folder.path()).chosen().unwrap().latest(EntryKind::MilkPoured).unwrap().amount().unwrap();
    harness.get_by_label("Milk into the pot, L");
    typed(&mut harness, "Milk into the pot", "0.1");
    assert!((read() - 0.1).abs() < 1e-9, "{} L", read());
    typed(&mut harness, "Milk into the pot", "5 quarts");
    assert!((read() - 5.0 * 0.946_352_946).abs() < 1e-6, "{} L", read());
}
