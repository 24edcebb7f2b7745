//! Entries, corrections, and what counts.

use super::{at, begun, done, numbers};
use proptest::prelude::*;
use vatsketch::record::{Anchor, EntryKind, EntryValue, RecordError};

#[test]
fn a_correction_takes_the_place_and_keeps_what_was_there() {
    let mut log = begun("first-vat");
    numbers(&mut log, EntryKind::CheeseWeight, &[(at(6, 9, 0), 59.0)]);
    let second = log.correct(1, None, EntryValue::Number(95.0)).unwrap();
    let third = log.correct(second, Some(at(6, 9, 30)), EntryValue::Number(96.0)).unwrap();
    let batch = log.batch(1).unwrap();
    let standing = batch.standing();
    assert_eq!(standing.len(), 1);
    assert_eq!((standing[0].number, standing[0].at, standing[0].amount()), (third, at(6, 9, 30), Some(96.0)));
    let earlier: Vec<_> = batch.earlier(standing[0]).iter().map(|entry| entry.amount().unwrap()).collect();
    assert_eq!(earlier, [95.0, 59.0]);
    assert_eq!(batch.entries.len(), 3, "nothing that was written is gone");
}

#[test]
fn what_is_taken_back_no_longer_counts_and_is_kept() {
    let mut log = begun("first-vat");
    done(&mut log, EntryKind::RennetAdded, at(5, 11, 0));
    let back = log.correct(1, None, EntryValue::Withdrawn).unwrap();
    assert!(log.batch(1).unwrap().standing().is_empty());
    assert_eq!(log.batch(1).unwrap().entries.len(), 2);
    let again = log.correct(1, None, EntryValue::Done);
    assert_eq!(again, Err(RecordError::Corrected { number: 1, by: back, withdrawn: true }));
    // Taking back what was taken back brings nothing back either.
    log.correct(back, None, EntryValue::Done).unwrap();
    assert_eq!(log.batch(1).unwrap().latest(EntryKind::RennetAdded).unwrap().at, at(5, 11, 0));
}

#[test]
fn what_cannot_be_is_refused_with_what_can() {
    let mut log = begun("first-vat");
    let before = log.clone();
    for (kind, value, said) in [
        (EntryKind::MilkTemperature, EntryValue::Number(345.0), "between 0 and 100 °C"),
        (EntryKind::MilkTemperature, EntryValue::Number(f64::NAN), "cannot be right"),
        (EntryKind::CentrePh, EntryValue::Number(42.0), "look at the decimal point"),
        (EntryKind::Note, EntryValue::Number(1.0), "holds words"),
        (EntryKind::RennetAdded, EntryValue::Words("soon".to_owned()), "nothing but its time"),
        (EntryKind::Note, EntryValue::Words("x".repeat(20_001)), "at most 20000"),
        (EntryKind::Note, EntryValue::Withdrawn, "no entry to take back"),
    ] {
        let refused = log.enter(1, at(5, 10, 0), kind, value).unwrap_err();
        assert!(refused.to_string().contains(said), "{refused}");
    }
    assert_eq!(
        log.enter(2, at(5, 10, 0), EntryKind::Note, EntryValue::Words("x".into())),
        Err(RecordError::NoBatch { number: 2, known: 1 })
    );
    assert_eq!(log.correct(7, None, EntryValue::Done), Err(RecordError::NoEntry { number: 7 }));
    assert_eq!(log, before);
}

#[test]
fn hours_count_from_what_was_written_down_and_from_nothing_else() {
    let mut log = begun("first-vat");
    numbers(&mut log, EntryKind::CheeseWeight, &[(at(7, 21, 30), 80.0), (at(7, 9, 0), 95.0)]);
    assert!(
        log.batch(1).unwrap().series(EntryKind::CheeseWeight, Anchor::Air).is_empty(),
        "nobody wrote down when they went to the air"
    );
    numbers(&mut log, EntryKind::AirTemperature, &[(at(7, 9, 0), 18.0)]);
    assert_eq!(log.batch(1).unwrap().series(EntryKind::CheeseWeight, Anchor::Air), [(0.0, 95.0), (12.5, 80.0)]);
    // The time itself counts more than the reading of the air.
    done(&mut log, EntryKind::AirBegan, at(7, 8, 0));
    assert_eq!(log.batch(1).unwrap().series(EntryKind::CheeseWeight, Anchor::Air), [(1.0, 95.0), (13.5, 80.0)]);
}

#[test]
fn the_design_of_the_day_stays_what_it_was() {
    let mut design = crate::example("first-vat");
    let mut log = vatsketch::record::Log::default();
    log.begin("Monday", at(5, 9, 0), design.clone(), None);
    let then = design.clone();
    design.milk.milk_l = 9.0;
    assert_eq!(log.batch(1).unwrap().design, then);
    assert_eq!(log.batch(1).unwrap().title(), "batch 1, Monday");
}

proptest! {
    /// In whatever order things are written down, what counts is the same and by time.
    #[test]
    fn entries_may_come_in_any_order(minutes in proptest::collection::vec(0_i32..5000, 1..40)) {
        let (mut log, mut backwards) = (begun("small-vat"), begun("small-vat"));
        let moment = |minute: i32| at(5, 9, 0).checked_add(jiff::Span::new().minutes(minute)).unwrap();
        let of: Vec<_> = minutes.iter().map(|minute| (moment(*minute), f64::from(*minute % 90))).collect();
        numbers(&mut log, EntryKind::MilkTemperature, &of);
        numbers(&mut backwards, EntryKind::MilkTemperature, &of.iter().rev().copied().collect::<Vec<_>>());
        let times = |log: &vatsketch::record::Log| -> Vec<_> { log.batch(1).unwrap().standing().iter().map(|entry| entry.at).collect() };
        prop_assert_eq!(times(&log), times(&backwards));
        prop_assert!(times(&log).windows(2).all(|pair| pair[0] <= pair[1]));
    }
}
