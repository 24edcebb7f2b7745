//! Years of records: a log of a thousand generated batches, read from its file and laid side by side.

use super::median_ms;
use criterion::Criterion;
use jiff::SignedDuration;
use jiff::civil::date;
use std::hint::black_box;
use vatsketch::design::Design;
use vatsketch::file::LogFile;
use vatsketch::record::{EntryKind, EntryValue, Log};
use vatsketch::report::batch_lines;

/// Batches of years: four a week for five years.
const BATCHES: u32 = 1000;

/// Returns the generated log: of each batch what a careful maker writes down.
fn log() -> Log {
    let mut log = Log::default();
    for number in 1..=BATCHES {
        let begun = date(2031, 5, 5).at(8, 0, 0, 0) + SignedDuration::from_hours(42 * i64::from(number));
        let mut design = Design::default();
        design.milk.milk_l = 3.0 + f64::from(number % 7);
        let batch = log.begin(&format!("generated {number}"), begun, design, None);
        let mut enter = |hours: i64, kind, value| {
            log.enter(batch, begun + SignedDuration::from_hours(hours), kind, value).unwrap();
        };
        enter(0, EntryKind::MilkPoured, EntryValue::Number(3.0 + f64::from(number % 7)));
        enter(0, EntryKind::WarmingBegan, EntryValue::Done);
        for hour in 0..10 {
            enter(hour / 8, EntryKind::MilkTemperature, EntryValue::Number(10.0 + 2.0 * hour as f64));
        }
        for (hour, kind) in
            [(2, EntryKind::RennetAdded), (3, EntryKind::CleanBreak), (3, EntryKind::CurdCut), (4, EntryKind::Ladled)]
        {
            enter(hour, kind, EntryValue::Done);
        }
        for turn in 0..8 {
            enter(8 + 5 * turn, EntryKind::TurnWhey, EntryValue::Number(100.0));
        }
        enter(48, EntryKind::AirBegan, EntryValue::Done);
        for weighing in 0..8 {
            enter(48 + 6 * weighing, EntryKind::CheeseWeight, EntryValue::Number(120.0 - 3.0 * weighing as f64));
        }
        enter(96, EntryKind::VinegarPoured, EntryValue::Number(1500.0));
        for week in 1..=3 {
            enter(96 + 168 * week, EntryKind::CentrePh, EntryValue::Number(5.0 - 0.3 * week as f64));
        }
        enter(700, EntryKind::Note, EntryValue::Words("generated, of no batch that was ever made".to_owned()));
    }
    log
}

/// Measures and returns what to print; nothing where the caller has filtered it out.
pub fn measured(criterion: &mut Criterion) -> Option<String> {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("years.log.ron");
    LogFile::of(log()).append(&path).unwrap();
    let size = 1e-6 * std::fs::metadata(&path).unwrap().len() as f64;
    let read = median_ms(criterion, "a log of a thousand batches, read", 10, || {
        black_box(LogFile::read(black_box(&path)).unwrap());
    })?;
    let all = LogFile::read(&path).unwrap().log;
    let found = median_ms(criterion, "a log of a thousand batches, side by side", 10, || {
        black_box(batch_lines(black_box(&all.batches), "generated 77"));
    })?;
    Some(format!(
        "A log of {BATCHES} batches ({size:.1} MB) is read in {read:.0} ms and searched in {found:.0} ms (aim: together at most 1000)."
    ))
}
