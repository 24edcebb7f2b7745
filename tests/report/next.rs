//! What comes next while a batch is made.

use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Wish};
use vatsketch::plan::{Now, tasks};
use vatsketch::record::{EntryKind, EntryValue, Log};
use vatsketch::report::{NextTasks, next_tasks};
use vatsketch::units::Units;

/// An invented day.
fn at(hour: i8, minute: i8) -> DateTime {
    date(2031, 5, 9).at(hour, minute, 0, 0)
}

/// Returns an example that is to begin at seven, with an empty record of it.
fn begun(wish: Wish) -> (Batch, Log) {
    let mut design = crate::example("warm-cabinet");
    design.week.wish = wish;
    let mut log = Log::default();
    log.begin("", at(6, 0), design.clone(), None);
    (batch(&design).unwrap(), log)
}

fn next(batch: &Batch, log: &Log, now: DateTime) -> NextTasks {
    next_tasks(batch, log.batch(1).unwrap(), &Now { at: now, zone: TimeZone::UTC }, Units::METRIC)
}

fn clock(next: &NextTasks, task: &str) -> DateTime {
    next.next.iter().find(|one| one.task == task).and_then(|one| one.time.clock).unwrap()
}

fn step(log: &mut Log, now: DateTime, task: &str) {
    log.enter(1, now, EntryKind::TaskBegun, EntryValue::Words(task.to_owned())).unwrap();
}

#[test]
fn before_anything_is_written_down_the_whole_plan_lies_ahead() {
    let (batch, log) = begun(Wish::StartAt(at(7, 0)));
    let next = next(&batch, &log, at(6, 30));
    assert!(next.begun.is_none() && next.trouble.is_none());
    let keys: Vec<&str> = next.next.iter().map(|task| task.task.as_str()).collect();
    let planned = tasks(&batch);
    assert!(planned.all.iter().take(planned.until_finished).all(|task| keys.contains(&task.key.as_str())), "{keys:?}");
    assert!(next.next.iter().all(|task| task.planned.is_none()), "nothing is late yet");
    assert_eq!(next.next[0].when(at(6, 30), Units::METRIC), "Next: Fri\u{a0}9\u{a0}May,\u{a0}07:00, in 30 min");
    assert_eq!(next.next[0].when(at(7, 25), Units::METRIC), "Next, was due Fri\u{a0}9\u{a0}May,\u{a0}07:00, 25 min ago");
}

/// The curd sets by the clock of the rennet: its tests and the cut move by as much as the rennet was late.
#[test]
fn what_hangs_on_the_rennet_moves_with_it() {
    let (batch, mut log) = begun(Wish::StartAt(at(7, 0)));
    let before = next(&batch, &log, at(6, 30));
    let rennet = clock(&before, "rennet");
    let late = rennet + jiff::SignedDuration::from_mins(40);
    log.enter(1, late, EntryKind::RennetAdded, EntryValue::Done).unwrap();
    let after = next(&batch, &log, late);
    assert_eq!(after.begun.as_ref().unwrap().task, "rennet");
    assert_eq!(after.begun.as_ref().unwrap().time.clock, Some(late));
    for task in ["test_1", "cut"] {
        let moved = clock(&before, task).duration_until(clock(&after, task));
        assert_eq!(moved.as_mins(), 40, "{task}");
    }
    assert_eq!(after.next[0].moved(Units::METRIC).as_deref(), Some("40 min later than planned"));
    // What comes before it lies behind.
    assert!(after.next.iter().all(|task| task.task != "warm" && task.task != "measure"));
}

#[test]
fn early_is_said_as_well_as_late() {
    let (batch, mut log) = begun(Wish::StartAt(at(9, 0)));
    step(&mut log, at(8, 15), "sanitise");
    let next = next(&batch, &log, at(8, 16));
    assert!(
        next.next[0].moved(Units::METRIC).is_some_and(|words| words.ends_with("earlier than planned")),
        "{:?}",
        next.next[0].moved(Units::METRIC)
    );
}

#[test]
fn a_slip_of_the_finger_is_taken_back() {
    let (batch, mut log) = begun(Wish::StartAt(at(7, 0)));
    step(&mut log, at(7, 0), "sanitise");
    log.enter(1, at(7, 5), EntryKind::Ladled, EntryValue::Done).unwrap();
    let wrong = next(&batch, &log, at(7, 6));
    assert_eq!(wrong.begun.unwrap().task, "ladle");
    log.correct(wrong.begun_by.unwrap(), None, EntryValue::Withdrawn).unwrap();
    assert_eq!(next(&batch, &log, at(7, 7)).begun.unwrap().task, "sanitise");
}

/// Whoever only writes down the whey of each turn is at the last of them; two things at one turn are one turn.
#[test]
fn turns_are_counted_by_what_is_written_down_at_them() {
    let (batch, mut log) = begun(Wish::StartAt(at(7, 0)));
    log.enter(1, at(9, 30), EntryKind::Ladled, EntryValue::Done).unwrap();
    for (hour, minute, kind) in [(13, 0, EntryKind::TurnSalt), (13, 4, EntryKind::TurnWhey), (18, 30, EntryKind::TurnWhey)] {
        log.enter(1, at(hour, minute), kind, EntryValue::Number(5.0)).unwrap();
    }
    let next = next(&batch, &log, at(18, 40));
    assert_eq!((next.begun.unwrap().task.as_str(), next.next[0].task.as_str()), ("turn_2", "turn_3"));
}

#[test]
fn a_finish_that_is_out_of_reach_is_said_and_the_plan_goes_on() {
    let (batch, mut log) = begun(Wish::FinishedBy(date(2031, 6, 12).at(18, 0, 0, 0)));
    let late = date(2031, 6, 11).at(9, 0, 0, 0);
    log.enter(1, late, EntryKind::RennetAdded, EntryValue::Done).unwrap();
    let next = next(&batch, &log, late);
    assert!(next.trouble.is_some());
    assert_eq!(next.next[0].task, "test_1");
    assert!(next.next[0].time.clock.is_some_and(|clock| clock > late));
}

#[test]
fn what_is_written_down_for_later_counts_only_then() {
    let (batch, mut log) = begun(Wish::StartAt(at(7, 0)));
    step(&mut log, at(7, 0), "sanitise");
    step(&mut log, at(7, 40), "measure");
    assert_eq!(next(&batch, &log, at(7, 30)).begun.unwrap().task, "sanitise");
    assert_eq!(next(&batch, &log, at(7, 50)).begun.unwrap().task, "measure");
}

/// The thermometer is held to before the rennet goes in, and the knife before the cut.
#[test]
fn what_must_be_checked_stands_with_the_task_that_waits_for_it() {
    let (batch, mut log) = begun(Wish::StartAt(at(7, 0)));
    log.enter(1, at(7, 30), EntryKind::WarmingBegan, EntryValue::Done).unwrap();
    let next = next(&batch, &log, at(7, 31));
    let hold = |task: &str| next.next.iter().find(|one| one.task == task).unwrap().hold.clone();
    assert!(hold("rennet").is_some_and(|words| words.starts_with("Hold: Is the milk at ")), "{:?}", hold("rennet"));
    assert!(hold("test_1").is_some_and(|words| words.contains("clean")), "{:?}", hold("test_1"));
    assert!(hold("turn_1").is_none());
}

/// Each task says what can be written down with it, and never again what its button says.
#[test]
fn a_task_asks_for_what_its_step_on_paper_asks_for() {
    for name in ["warm-cabinet", "first-vat", "ewes-milk"] {
        let design: Design = crate::example(name);
        let mut log = Log::default();
        log.begin("", at(6, 0), design.clone(), None);
        let next = next(&batch(&design).unwrap(), &log, at(6, 0));
        let of = |task: &str| next.next.iter().find(|one| one.task == task).map(|one| one.records.clone()).unwrap_or_default();
        assert!(of("turn_1").contains(&EntryKind::TurnWhey), "{name}");
        assert!(of("unmould").contains(&EntryKind::CheeseWeight), "{name}");
        assert!(next.next.iter().all(|task| !task.records.contains(&task.begins.0)), "{name}");
        assert!(next.next.iter().all(|task| !task.steps.is_empty() && !task.words()[0].is_empty()), "{name}");
    }
}

/// Whoever begins a batch reads first what the paper boxes before its first step, and where the plan stops.
#[test]
fn before_it_begins_stand_the_cautions_and_where_the_plan_stops() {
    let (batch, mut log) = begun(Wish::StartAt(at(7, 0)));
    assert!(!next(&batch, &log, at(6, 30)).before_all.is_empty());
    assert!(next(&batch, &log, at(6, 30)).stopped.is_none());
    step(&mut log, at(7, 0), "sanitise");
    assert!(next(&batch, &log, at(7, 1)).before_all.is_empty());

    let mut design = crate::example("warm-cabinet");
    design.milk.milk_l *= 4.0;
    let mut log = Log::default();
    log.begin("", at(6, 0), design.clone(), None);
    let next = next(&vatsketch::batch::batch(&design).unwrap(), &log, at(6, 0));
    assert_eq!(next.stopped.unwrap().stage, vatsketch::design::Stage::Draining);
    assert!(next.next.iter().all(|task| task.task != "unmould"));
}
