//! What comes next, on the page of the log.

use super::{begun, on_disk, session, show};
use crate::ui::{settled, shown, type_path};
use egui::Theme;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use vatsketch::record::{EntryKind, EntryValue};
use vatsketch::session::Session;

const SIZE: [f32; 2] = [1296.0, 816.0];

#[test]
fn one_press_says_that_a_task_was_begun_and_the_next_one_follows() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.get_by_label("What comes next");
    harness.get_by_label_contains(": Begin now").click_accesskit();
    settled(&mut harness);
    let record = on_disk(folder.path()).chosen().unwrap().clone();
    assert_eq!(record.standing().len(), 1);
    harness.get_by_label_contains("Under way since");
    // Pressed by mistake, it is taken back.
    harness.get_by_label_contains("Take back: ").click_accesskit();
    settled(&mut harness);
    assert!(on_disk(folder.path()).chosen().unwrap().standing().is_empty());
    assert!(harness.query_by_label_contains("Under way since").is_none());
}

#[test]
fn a_task_goes_down_with_the_time_that_was_said() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.state_mut().view.log.at = Some(date(2031, 5, 5).at(7, 20, 0, 0));
    settled(&mut harness);
    harness.get_by_label_contains(": Begun Mon\u{a0}5\u{a0}May,\u{a0}07:20").click_accesskit();
    settled(&mut harness);
    assert_eq!(on_disk(folder.path()).chosen().unwrap().standing()[0].at, date(2031, 5, 5).at(7, 20, 0, 0));
}

/// Whoever begins another batch while one is in the vinegar loses nothing of it.
#[test]
fn an_earlier_batch_goes_on_beside_a_new_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    harness.get_by_label("Begin another batch").click_accesskit();
    settled(&mut harness);
    harness.get_by_label("What comes next");
    harness.get_by_label_contains("batch 1, begun").click();
    settled(&mut harness);
    harness.get_by_label("What comes next");
}

#[test]
fn a_batch_has_the_name_that_was_typed_before_it() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = shown(session(folder.path()), SIZE, Theme::Light);
    show(&mut harness);
    harness.state_mut().view.log.name = "for the fair ".to_owned();
    settled(&mut harness);
    harness.get_by_label("Begin a batch").click();
    settled(&mut harness);
    assert_eq!(on_disk(folder.path()).chosen().unwrap().name, "for the fair");
    assert_eq!(harness.state().view.log.name, "", "the next one is another");
}

#[test]
fn the_invented_log_can_be_looked_at_and_left() {
    let mut harness = shown(Session::open(crate::example("first-vat"), None).unwrap(), SIZE, Theme::Light);
    show(&mut harness);
    harness.get_by_label("Look at an invented log").click();
    settled(&mut harness);
    harness.get_by_label_contains("This log is invented");
    harness.get_by_label("All batches").click();
    settled(&mut harness);
    harness.get_by_label_contains("3 batches, the newest first");
    harness.state_mut().view.log.sought = "rennet".to_owned();
    settled(&mut harness);
    harness.get_by_label_contains("1 of 3 batches");
    harness.get_by_label_contains("batch 3, invented, with more rennet, begun Mon\u{a0}19\u{a0}May: ").click();
    settled(&mut harness);
    harness.get_by_label("Compare with batch 1, invented, first").click_accesskit();
    settled(&mut harness);
    harness.get_by_label("Back to my own log").click();
    settled(&mut harness);
    harness.get_by_label("Save the design…");
}

#[test]
fn a_probe_s_table_is_looked_at_before_it_is_written_down() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = begun(folder.path(), SIZE, Theme::Light);
    let table = folder.path().join("probe.csv");
    std::fs::write(&table, "Time,Probe\n2031-05-05 08:00,9\n2031-05-05 08:10,18\n2031-05-05 08:20,?\n").unwrap();
    harness.get_by_label("Read in a probe’s file…").click_accesskit();
    settled(&mut harness);
    type_path(&mut harness, &table);
    settled(&mut harness);
    harness.get_by_label_contains("1 line cannot be read");
    harness.get_by_label("Write down 2 values: Temperature of the milk").click();
    settled(&mut harness);
    let book = on_disk(folder.path());
    let read: Vec<EntryValue> =
        book.chosen().unwrap().of_kind(EntryKind::MilkTemperature).iter().map(|entry| entry.value.clone()).collect();
    assert_eq!(read, [EntryValue::Number(9.0), EntryValue::Number(18.0)]);
    assert!(harness.query_by_label("Write down 2 values: Temperature of the milk").is_none());
}
