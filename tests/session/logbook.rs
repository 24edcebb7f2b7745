//! Tests of `src/session/logbook.rs`; the batches are invented.

use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use std::path::PathBuf;
use vatsketch::design::Design;
use vatsketch::plan::Now;
use vatsketch::record::{Anchor, EntryKind, EntryValue};
use vatsketch::session::Logbook;

fn at(hour: i8) -> DateTime {
    date(2031, 5, 5).at(hour, 0, 0, 0)
}

fn now(hour: i8) -> Now {
    Now { at: at(hour), zone: TimeZone::UTC }
}

fn place() -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let design = folder.path().join("vat.vat.ron");
    (folder, design)
}

#[test]
fn what_is_entered_is_in_the_file_at_once() {
    let (_folder, design) = place();
    let mut book = Logbook::open(&design).unwrap();
    assert!(book.chosen().is_none() && !book.path().exists(), "an empty log is no file");
    book.begin("Tuesday", &now(8), &Design::default(), None).unwrap();
    book.enter(at(9), EntryKind::MilkPoured, &EntryValue::Number(4.5)).unwrap();
    let again = Logbook::open(&design).unwrap();
    assert_eq!(again.batches(), book.batches());
    assert_eq!(again.chosen().unwrap().latest(EntryKind::MilkPoured).unwrap().amount(), Some(4.5));
}

#[test]
fn what_somebody_else_adds_in_the_meantime_is_kept() {
    let (_folder, design) = place();
    let mut one = Logbook::open(&design).unwrap();
    one.begin("", &now(8), &Design::default(), None).unwrap();
    let mut other = Logbook::open(&design).unwrap();
    other.enter(at(9), EntryKind::MilkPoured, &EntryValue::Number(4.5)).unwrap();
    one.enter(at(10), EntryKind::RennetPoured, &EntryValue::Number(1.2)).unwrap();
    let kinds: Vec<EntryKind> =
        Logbook::open(&design).unwrap().chosen().unwrap().standing().iter().map(|entry| entry.kind).collect();
    assert_eq!(kinds, [EntryKind::MilkPoured, EntryKind::RennetPoured]);
}

#[test]
fn what_is_taken_back_is_kept_in_the_file() {
    let (_folder, design) = place();
    let mut book = Logbook::open(&design).unwrap();
    book.begin("", &now(8), &Design::default(), None).unwrap();
    let entry = book.enter(at(9), EntryKind::MilkPoured, &EntryValue::Number(45.0)).unwrap();
    book.correct(entry, &EntryValue::Withdrawn).unwrap();
    let again = Logbook::open(&design).unwrap();
    let batch = again.chosen().unwrap();
    assert!(batch.latest(EntryKind::MilkPoured).is_none());
    assert_eq!(batch.entries[0].amount(), Some(45.0));
}

#[test]
fn a_file_that_is_no_log_is_refused_and_left_alone() {
    let (_folder, design) = place();
    std::fs::write(Logbook::beside(&design), "a shopping list").unwrap();
    assert!(Logbook::open(&design).is_err());
    assert_eq!(std::fs::read_to_string(Logbook::beside(&design)).unwrap(), "a shopping list");
}

/// Where clocks are changed in the night, an hour less passes than the clock on the wall says: the zone is kept with the batch.
#[test]
fn hours_are_those_that_pass_also_where_clocks_are_changed() {
    let (_folder, design) = place();
    let zone = TimeZone::get("Europe/Berlin").unwrap();
    let evening = date(2031, 3, 29).at(20, 0, 0, 0);
    let mut book = Logbook::open(&design).unwrap();
    book.begin("", &Now { at: evening, zone }, &Design::default(), None).unwrap();
    book.enter(evening, EntryKind::AirBegan, &EntryValue::Done).unwrap();
    book.enter(date(2031, 3, 30).at(8, 0, 0, 0), EntryKind::CheeseWeight, &EntryValue::Number(90.0)).unwrap();
    let again = Logbook::open(&design).unwrap();
    assert_eq!(again.chosen().unwrap().zone, "Europe/Berlin");
    assert_eq!(again.chosen().unwrap().series(EntryKind::CheeseWeight, Anchor::Air), [(11.0, 90.0)]);
}
