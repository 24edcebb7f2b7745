//! What would lift a warning.

use crate::caution::cautions::{CASES, with};
use crate::design::any::any_design;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use std::collections::{BTreeMap, BTreeSet};
use vatsketch::analysis::{Change, Lift, Lifted, WhyNot, lift_in_turn, lifts};
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{Caution, CautionKind, Severity, cautions};
use vatsketch::design::{Design, Kind, Value};
use vatsketch::units::Units;
use vatsketch::words::{changes_words, lift_lines, why_not_words};

const NO_PINS: BTreeSet<&'static str> = BTreeSet::new();

/// Returns the serious warnings and cautions that a design can change.
fn own(batch: &Batch) -> Vec<Caution> {
    cautions(batch).into_iter().filter(|caution| caution.severity > Severity::Note && !caution.always).collect()
}

fn own_serious(batch: &Batch) -> Vec<Caution> {
    own(batch).into_iter().filter(|caution| caution.severity == Severity::Stop).collect()
}

/// Returns a design with the changes of a lift and nothing else.
fn taken_over(design: &Design, lift: &Lift) -> Design {
    let mut design = design.clone();
    for change in &lift.changes {
        assert_eq!(change.field.get(&design), change.from, "{}", change.field.key);
        change.field.set(&mut design, change.to).unwrap();
    }
    design
}

/// Returns whether a batch is warned of the same: the key of germs that grow counts for one stage, that of their toxin for all.
fn warned_of(warning: &Caution, batch: &Batch) -> bool {
    let stage = |caution: &Caution| if let CautionKind::Germs(germs) = &caution.kind { Some(germs.stage) } else { None };
    cautions(batch).iter().any(|caution| {
        let here = caution.key != "germs_could_grow" || stage(caution) == stage(warning);
        caution.key == warning.key && here && caution.severity >= warning.severity && !caution.always
    })
}

/// Returns whether a slider stops at the new value of a choice: at a step, or at an end of its range.
fn on_a_step(change: &Change) -> bool {
    let (Kind::Number { least, most, step, .. }, Value::Number(to)) = (change.field.kind, change.to) else { return true };
    let steps = to / step;
    (steps - steps.round()).abs() < 1e-6 || to == least || to == most
}

/// Judges a lift by its changes alone: a batch calculated from nothing has no such warning, and every stage is done.
fn check(before: &Batch, lifted: &Lifted) {
    assert!(lifted.lifts.len() <= 2);
    for lift in &lifted.lifts {
        let words = changes_words(&lift.changes, Units::METRIC);
        assert!(!lift.changes.is_empty() && lift.moved > 0.0, "{}", lifted.warning.key);
        assert!(lift.changes.iter().all(on_a_step), "{}: {words}", lifted.warning.key);
        let after = batch(&taken_over(&before.design, lift)).unwrap();
        assert_eq!(after.first_missing(), None, "{}: {words}", lifted.warning.key);
        assert!(!warned_of(&lifted.warning, &after), "{} is not lifted by {words}", lifted.warning.key);
        // Of a serious warning a caution may stay, which is then said.
        let stays = own(&after).iter().any(|caution| caution.key == lifted.warning.key && caution.key != "germs_could_grow");
        assert!(!stays || lift.stays.is_some(), "{} stays less gravely with {words}", lifted.warning.key);
        assert_eq!(own_serious(&after).len(), lift.serious_left, "{}: {words}", lifted.warning.key);
        let new = own_serious(&after).into_iter().filter(|serious| !warned_of(serious, before)).count();
        assert!(lift.serious_brought() >= new, "{}: {words}", lifted.warning.key);
    }
    assert_eq!(lifted.lifts.is_empty(), lifted.why_not.is_some());
}

/// Few, and always the same.
#[test]
fn a_lift_lifts_in_any_design() {
    let mut runner = TestRunner::deterministic();
    let mut seen = 0;
    for _ in 0..3 {
        let design = any_design(0.06).new_tree(&mut runner).unwrap().current();
        let batch = batch(&design).unwrap();
        for warning in own(&batch) {
            let lifted = lifts(&batch, &NO_PINS, &warning);
            check(&batch, &lifted);
            seen += lifted.lifts.len();
        }
    }
    assert!(seen > 12, "{seen} lifts");
}

/// The batches of the tests of the cautions bring about every caution there is; each is lifted in one of them.
#[test]
fn every_caution_is_lifted_somewhere() {
    let mut lifted_once: BTreeMap<&str, bool> = BTreeMap::new();
    let failing: &[&[&str]] = &[&["mould_count=1"], &["salted_turns=9"]];
    for batch in CASES.iter().map(|(_, _, there, _)| *there).chain(failing.iter().copied()).map(with) {
        for warning in own(&batch) {
            if lifted_once.get(warning.key) == Some(&true) {
                continue;
            }
            let lifted = lifts(&batch, &NO_PINS, &warning);
            check(&batch, &lifted);
            *lifted_once.entry(warning.key).or_default() |= !lifted.lifts.is_empty();
        }
    }
    let never: Vec<&str> = lifted_once.iter().filter(|(_, lifted)| !**lifted).map(|(key, _)| *key).collect();
    assert!(never.is_empty() && lifted_once.len() > 35, "{never:?} of {}", lifted_once.len());
}

#[test]
fn a_stage_that_fails_is_lifted_first() {
    for settings in [&["mould_count=1"][..], &["salted_turns=9"], &["soured_by=culture", "culture_packets=20", "ripening_h=20"]] {
        let now = with(settings);
        let own = own(&now);
        let lifted = lifts(&now, &NO_PINS, &own[0]);
        check(&now, &lifted);
        assert!(own[0].key == "stage_failed" && !lifted.lifts.is_empty(), "{settings:?}");
        assert_eq!(lifts(&now, &NO_PINS, &own[1]).why_not, Some(WhyNot::StageFailed), "{settings:?}");
    }
}

#[test]
fn of_one_number_the_nearest_step_is_found() {
    let mut design = Design::default();
    design.milk.calcium_dose_percent = 0.0287;
    design.keeping.keeping_temperature_c = 9.25;
    let now = batch(&design).unwrap();
    // By their records the limits are 0.02 % and 4 °C; the sliders go in steps of 0.001 % and 0.5 °C.
    for (key, choice, to) in [("calcium_above_limit", "calcium_dose_percent", 0.02), ("warm_keeping", "keeping_temperature_c", 4.0)]
    {
        let warning = own(&now).into_iter().find(|caution| caution.key == key).unwrap();
        let lifted = lifts(&now, &NO_PINS, &warning);
        let change = lifted.lifts[0].changes[0];
        assert_eq!((change.field.key, change.to, lifted.lifts[0].changes.len()), (choice, Value::Number(to), 1));
        let Kind::Number { step, .. } = change.field.kind else { panic!("{choice} is a number") };
        let mut short = design.clone();
        change.field.set(&mut short, Value::Number(to + step)).unwrap();
        assert!(warned_of(&warning, &batch(&short).unwrap()), "one step before {to} of {choice}");
    }
}

#[test]
fn what_is_pinned_is_left_alone() {
    let now = batch(&crate::example("own-carton")).unwrap();
    let mut pinned = 0;
    for warning in own_serious(&now) {
        let free = lifts(&now, &NO_PINS, &warning);
        let pins: BTreeSet<&str> = free.lifts.iter().flat_map(|lift| lift.changes.iter().map(|change| change.field.key)).collect();
        let lifted = lifts(&now, &pins, &warning);
        check(&now, &lifted);
        for change in lifted.lifts.iter().flat_map(|lift| &lift.changes) {
            assert!(!pins.contains(change.field.key), "{}: {}", warning.key, change.field.key);
        }
        pinned += lifted.pinned.len();
        if lifted.lifts.is_empty() && !lifted.pinned.is_empty() {
            assert!(why_not_words(&lifted).unwrap().contains("Pinned"), "{}", warning.key);
        }
    }
    assert!(pinned > 3, "{pinned} choices were pinned and asked for");
}

#[test]
fn what_is_always_true_is_lifted_by_nothing() {
    let now = batch(&crate::example("first-vat")).unwrap();
    let always: Vec<Caution> = cautions(&now).into_iter().filter(|caution| caution.always).collect();
    assert!(!always.is_empty());
    for warning in always {
        assert_eq!(lifts(&now, &NO_PINS, &warning).why_not, Some(WhyNot::AlwaysTrue), "{}", warning.key);
    }
}

/// The five examples as they were saved before a culture could be chosen come to no serious warning that their choices can change.
#[test]
fn the_examples_from_before_souring_come_to_no_serious_warning_in_three_presses() {
    // The last format without a culture; the two before it hold the same five vats.
    let format = 3;
    for name in ["first-vat", "small-vat", "open-air", "ewes-milk", "own-carton"] {
        let path = format!("{}/tests/saved/{format}-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
        let now = batch(&vatsketch::file::read(path.as_ref()).unwrap()).unwrap();
        assert!(own_serious(&now).len() > 2, "{format}-{name}");
        let way = lift_in_turn(&now, &NO_PINS, 3);
        let mut design = now.design.clone();
        for (_, lift) in &way.presses {
            design = taken_over(&design, lift);
        }
        let keys: Vec<&str> = own_serious(&batch(&design).unwrap()).iter().map(|warning| warning.key).collect();
        assert!(keys.is_empty() && way.left.is_empty(), "{format}-{name} after {} presses: {keys:?}", way.presses.len());
        assert!(way.presses.len() <= 3);
    }
}

#[test]
fn no_words_about_a_lift_promise_anything() {
    let now = batch(&crate::example("small-vat")).unwrap();
    let mut read = 0;
    for warning in own(&now) {
        let lifted = lifts(&now, &NO_PINS, &warning);
        let mut said: Vec<String> = why_not_words(&lifted).into_iter().collect();
        for lift in &lifted.lifts {
            said.push(changes_words(&lift.changes, Units::US));
            said.extend(lift_lines(lift, &lifted.warning, Some("0.50 coins more to pay"), Units::US));
        }
        for words in said {
            let lower = words.to_lowercase();
            let mut single = lower.split(|letter: char| !letter.is_alphabetic());
            assert!(!single.any(|word| ["safe", "safely", "safer", "ready"].contains(&word)), "{words}");
            assert!(!lower.contains("°c"), "{words}");
            read += 1;
        }
    }
    assert!(read > 20, "{read} texts");
}
