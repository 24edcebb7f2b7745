//! The slow cheese of many draws.

use vatsketch::analysis::{DrawnSoak, LEAST_DRAWS, drawn_batch, draws, slow_soak};
use vatsketch::batch::{batch, judged_by};
use vatsketch::design::Design;

/// The ninth decile counted by hand: of a hundred draws, nine in ten lie at or below it.
#[test]
fn nine_draws_of_ten_stay_on_the_better_side_of_the_slow_cheese() {
    let design = Design::default();
    let batches: Vec<_> = draws(&design, LEAST_DRAWS).iter().map(|one| drawn_batch(&design, one).unwrap()).collect();
    let drawn: Vec<DrawnSoak> = batches.iter().filter_map(DrawnSoak::of).collect();
    let slow = slow_soak(&drawn).unwrap();
    let soaks = || batches.iter().map(|batch| batch.pickling.done().unwrap());
    let below = soaks().filter(|soak| soak.end.centre_ph <= slow.centre_ph).count();
    assert!((90..=92).contains(&below), "{below} of {LEAST_DRAWS}");
    let hours = slow.targets[1].centre_h.unwrap_or(f64::INFINITY);
    let sooner = soaks().filter(|soak| soak.targets[1].centre_h.is_some_and(|own| own <= hours)).count();
    assert!((90..=92).contains(&sooner) || hours.is_infinite(), "{sooner} of {LEAST_DRAWS}");
    assert!(slow_soak(&drawn[1..]).is_none(), "too few");
    // All that is judged by the slow cheese follows; what the maker reads of the middle one stays.
    let plain = batch(&design).unwrap();
    let judged = judged_by(&plain, &slow);
    let (before, after) = (plain.keeping.done().unwrap(), judged.keeping.done().unwrap());
    assert_eq!((after.slow_centre_ph, after.centre_ph), (slow.centre_ph.max(before.centre_ph), before.centre_ph));
    assert_eq!(judged.pickling.done().unwrap().targets_if_slow, slow.targets);
    assert_eq!(judged.pickling.done().unwrap().end, plain.pickling.done().unwrap().end);
}

#[test]
fn without_vinegar_there_is_nothing_to_judge() {
    let mut design = Design::default();
    design.pickling.pickled = false;
    let plain = batch(&design).unwrap();
    assert!(DrawnSoak::of(&plain).is_none());
    assert_eq!(judged_by(&plain, &vatsketch::process::SlowSoak { centre_ph: 5.0, ..Default::default() }), plain);
}
