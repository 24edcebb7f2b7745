//! What changed between two batches, and what was written down beside single numbers of the plan.

use crate::record::{at, begun, done, numbers};
use vatsketch::analysis::{Recorded, against, changed};
use vatsketch::batch::batch;
use vatsketch::design::Value;
use vatsketch::record::{EntryKind, EntryValue};

#[test]
fn only_choices_that_count_and_measurements_that_are_apart_differ() {
    let mut log = begun("first-vat");
    let mut design = crate::example("first-vat");
    design.set("drying_h", Value::Number(60.0)).unwrap();
    // Of no effect: the milk is no raw milk.
    design.set("cooling_water_l", Value::Number(33.0)).unwrap();
    log.begin("", at(9, 9, 0), design, None);
    numbers(&mut log, EntryKind::CheeseWeight, &[(at(5, 9, 0), 120.0), (at(7, 9, 0), 95.0)]);
    numbers(&mut log, EntryKind::TurnWhey, &[(at(5, 12, 0), 300.0), (at(5, 18, 0), 100.0)]);
    for (kind, value) in [(EntryKind::CheeseWeight, 95.8), (EntryKind::TurnWhey, 450.0), (EntryKind::MilkPoured, 5.0)] {
        log.enter(2, at(9, 18, 0), kind, EntryValue::Number(value)).unwrap();
    }
    let changed = changed(log.batch(1).unwrap(), log.batch(2).unwrap());
    let keys: Vec<_> = changed.choices.iter().map(|choice| choice.field.key).collect();
    assert_eq!(keys, ["drying_h"]);
    let of = |kind: EntryKind| changed.entries.iter().find(|entry| entry.kind == kind).unwrap();
    assert!(!of(EntryKind::CheeseWeight).differs, "a kitchen scale does not tell 95 g from 95.8 g");
    assert_eq!((of(EntryKind::TurnWhey).change(), of(EntryKind::TurnWhey).differs), (Some(50.0), true));
    assert_eq!((of(EntryKind::MilkPoured).a.clone(), of(EntryKind::MilkPoured).differs), (None, true));
    assert_eq!(changed.entries.len(), 3);
}

#[test]
fn what_is_done_at_a_time_counts_in_minutes_from_where_the_figure_counts() {
    let mut log = begun("first-vat");
    done(&mut log, EntryKind::RennetAdded, at(5, 11, 0));
    done(&mut log, EntryKind::CleanBreak, at(5, 11, 40));
    let planned = batch(&crate::example("first-vat")).unwrap();
    let beside = against(&planned, log.batch(1).unwrap());
    // Nobody wrote down when warming began, so the rennet has nothing to count from.
    assert_eq!(beside.len(), 1);
    assert!((beside[0].measured - 40.0).abs() < 1e-9);
    assert!((beside[0].planned - planned.vat.done().unwrap().clean_break_min).abs() < 1e-9);
    let again = changed(log.batch(1).unwrap(), log.batch(1).unwrap());
    assert_eq!(again.entries.iter().find(|entry| entry.kind == EntryKind::CleanBreak).unwrap().a, Some(Recorded::Number(40.0)));
}

#[test]
fn a_choice_that_has_no_effect_is_nothing_to_be_off_from() {
    let mut log = begun("open-air");
    numbers(&mut log, EntryKind::AirTemperature, &[(at(7, 9, 0), 30.0)]);
    assert!(
        against(&batch(&crate::example("open-air")).unwrap(), log.batch(1).unwrap()).is_empty(),
        "no cabinet stands in the open air"
    );
}
