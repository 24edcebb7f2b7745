//! A whole vat in somebody's week; the hours are invented.

use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Stage, Value};
use vatsketch::plan::{
    ClockError, Habit, Here, Hours, Schedule, ScheduleError, Span, Start, Taken, Tasks, WeekError, on_from_here, stretches, tasks,
    week,
};

fn made(changes: &[(&str, Value)]) -> (Batch, Tasks) {
    let mut design = Design::default();
    for (key, value) in changes {
        design.set(key, *value).unwrap();
    }
    let batch = batch(&design).unwrap();
    let tasks = tasks(&batch);
    (batch, tasks)
}

#[allow(clippy::unnecessary_wraps, reason = "hours may fail where a calendar gives them")]
fn nights(until_min: i64) -> Result<Hours, ClockError> {
    Ok(Hours::of_habits(&[Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 30), (6, 30))], until_min))
}

const ANY_TIME: Start = Start::Earliest { from_min: 0, within_min: 7 * 1440, wait_points: 0 };

#[test]
fn the_first_vat_lets_its_maker_sleep() {
    let (_, tasks) = made(&[]);
    let plan = week(&tasks, &ANY_TIME, nights).unwrap();
    assert_eq!(plan.placed.len(), tasks.all.len());
    assert!(plan.placed.iter().all(|placed| placed.lost.is_empty()), "{:?}", plan.reasons(&tasks.handlings()));
}

#[test]
fn every_task_of_a_week_keeps_its_limits_and_the_vat_keeps_to_the_minute() {
    let (_, tasks) =
        made(&[("kept_in", Value::Choice("oil")), ("keeping_days", Value::Number(20.0)), ("pickling_h", Value::Number(2000.0))]);
    let plan = week(&tasks, &ANY_TIME, nights).unwrap();
    for (task, pair) in tasks.all.iter().zip(plan.placed.windows(2)) {
        let gap_min = pair[1].start_min - pair[0].start_min;
        let limits = task.handling.then;
        assert!((limits.least_min..=limits.most_min).contains(&gap_min), "{}: {gap_min} not in {limits:?}", task.key);
    }
    assert_eq!(plan.reasons(&tasks.handlings()).iter().map(|reason| reason.points).sum::<i64>(), plan.points);
}

#[test]
fn finished_by_is_about_the_cheeses_and_not_about_the_rolling_of_their_jars() {
    let (_, tasks) =
        made(&[("kept_in", Value::Choice("oil")), ("keeping_days", Value::Number(20.0)), ("pickling_h", Value::Number(2000.0))]);
    let by_min = 120 * 1440;
    let plan = week(&tasks, &Start::FinishedBy { by_min, from_min: 0, spare_points: 1 }, nights).unwrap();
    let finished = &plan.placed[tasks.until_finished - 1];
    assert!(finished.start_min + finished.hands_min <= by_min);
    assert!(plan.end_min() > by_min);
}

/// Away for all of the days in which the jars want their first rolling: the cheeses are finished some hours sooner than wished, and the jars are
/// rolled before the maker leaves.
#[test]
fn a_finish_time_gives_way_a_little_to_jars_that_nobody_could_roll() {
    let (_, tasks) =
        made(&[("kept_in", Value::Choice("oil")), ("keeping_days", Value::Number(20.0)), ("pickling_h", Value::Number(2000.0))]);
    let wish = Start::FinishedBy { by_min: 120 * 1440, from_min: 0, spare_points: 1 };
    let finished = |plan: &Schedule| {
        let last = &plan.placed[tasks.until_finished - 1];
        last.start_min + last.hands_min
    };
    let free = week(&tasks, &wish, nights).unwrap();
    let (from_min, to_min) = (finished(&free) + 4 * 1440 - 120, finished(&free) + 6 * 1440 + 120);
    let away = Span { by: Taken::Busy, from_min, to_min, points: 9, alarm_points: 0, impossible: true };
    let hours = |until_min: i64| {
        let night = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 30), (6, 30));
        Ok(Hours::new(night.spans(until_min).chain([away]).collect(), until_min))
    };
    let plan = week(&tasks, &wish, hours).unwrap();
    assert_eq!(plan.impossible_min(), 0, "{:?}", plan.placed[tasks.until_finished..].first());
    assert!(finished(&plan) < finished(&free) && finished(&plan) >= finished(&free) - 1440);
    assert_eq!(plan.reasons(&tasks.handlings()).iter().map(|reason| reason.points).sum::<i64>(), plan.points);
}

/// The same for a maker who is in the middle of the vat already.
#[test]
fn going_on_from_here_a_finish_time_gives_way_to_the_jars_as_well() {
    let (_, tasks) =
        made(&[("kept_in", Value::Choice("oil")), ("keeping_days", Value::Number(20.0)), ("pickling_h", Value::Number(2000.0))]);
    let done = tasks.position("vinegar").unwrap();
    let here = Here { done, began_min: 10 * 1440 + 600, now_min: 10 * 1440 + 630 };
    let finished = |plan: &Schedule| {
        let last = &plan.placed[tasks.until_finished - 1 - done];
        last.start_min + last.hands_min
    };
    let free = on_from_here(&tasks, &here, None, nights).unwrap();
    let by_min = finished(&free) + 720;
    let wished = on_from_here(&tasks, &here, Some(by_min), nights).unwrap();
    let (from_min, to_min) = (finished(&wished) + 4 * 1440 - 120, finished(&wished) + 6 * 1440 + 120);
    let away = Span { by: Taken::Busy, from_min, to_min, points: 9, alarm_points: 0, impossible: true };
    let hours = |until_min: i64| {
        let night = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 30), (6, 30));
        Ok(Hours::new(night.spans(until_min).chain([away]).collect(), until_min))
    };
    let plan = on_from_here(&tasks, &here, Some(by_min), hours).unwrap();
    assert_eq!(plan.impossible_min(), 0, "{:?}", plan.placed.last());
    assert!(finished(&plan) <= by_min);
}

#[test]
fn a_finished_by_too_soon_is_refused_with_the_longest_wait() {
    let (_, tasks) = made(&[]);
    let error = week(&tasks, &Start::FinishedBy { by_min: 3 * 1440, from_min: 0, spare_points: 0 }, nights).unwrap_err();
    let WeekError::Schedule(ScheduleError::NoFeasibleStart { longest, later_min, .. }) = error else { panic!("{error}") };
    assert_eq!(longest, "Cover with vinegar");
    assert!(week(&tasks, &Start::FinishedBy { by_min: 3 * 1440 + later_min, from_min: 0, spare_points: 0 }, nights).is_ok());
}

#[test]
fn a_week_of_nothing_says_what_to_do() {
    let (_, none) = made(&[("fat_target_percent", Value::Number(12.0)), ("cream_strength_percent", Value::Number(10.0))]);
    let error = week(&none, &ANY_TIME, nights).unwrap_err();
    assert_eq!(error, WeekError::Schedule(ScheduleError::NothingToPlan));
}

#[test]
fn what_the_week_makes_longer_is_said_with_what_it_does_to_the_loss() {
    let (batch, tasks) = made(&[]);
    let plan = week(&tasks, &ANY_TIME, nights).unwrap();
    let at = |key: &str| plan.placed[tasks.position(key).unwrap()].start_min;
    let all = stretches(&batch, &tasks, &plan);
    for stretch in &all {
        let (from, to) = match stretch.stage {
            Stage::Draining => ("ladle", "unmould"),
            Stage::Drying => ("unmould", "weigh"),
            Stage::Pickling => ("vinegar", "sour"),
            other => panic!("{other:?}"),
        };
        assert_eq!(stretch.planned_min, at(to) - at(from));
        assert_ne!(stretch.planned_min, stretch.reckoned_min);
        assert_eq!(stretch.loss_percent.is_some(), stretch.stage == Stage::Drying);
    }
    // A plan that runs longer loses more, a shorter one less.
    let mut longer = plan.clone();
    for placed in &mut longer.placed[tasks.position("weigh").unwrap()..] {
        placed.start_min += 120;
    }
    let dried = batch.drying.done().unwrap().end.loss_percent;
    let loss = |plan| stretches(&batch, &tasks, plan).iter().find_map(|stretch| stretch.loss_percent).unwrap_or(dried);
    assert!(loss(&longer) > loss(&plan));
    assert!(loss(&plan) - dried < 1.6 && dried - loss(&plan) < 1.6, "drying gives by about a per cent of loss");
}

#[test]
fn from_here_on_the_rest_of_the_vat_is_planned_again() {
    let (_, tasks) = made(&[]);
    let plan = week(&tasks, &ANY_TIME, nights).unwrap();
    let cut = tasks.position("cut").unwrap();
    let late_min = plan.placed[cut].start_min + 40;
    let again = on_from_here(&tasks, &Here { done: cut, began_min: late_min, now_min: late_min + 5 }, None, nights).unwrap();
    assert_eq!(again.placed.len(), tasks.all.len() - cut);
    assert_eq!(again.placed[0].start_min, late_min);
    assert!(again.placed[1].start_min >= late_min + tasks.all[cut].handling.then.least_min);
}

#[test]
fn a_jar_that_was_rolled_late_is_rolled_again_days_after_that() {
    let (_, tasks) =
        made(&[("kept_in", Value::Choice("oil")), ("keeping_days", Value::Number(20.0)), ("pickling_h", Value::Number(2000.0))]);
    let first = tasks.position("roll_1").unwrap();
    let again = on_from_here(&tasks, &Here { done: first, began_min: 50_000, now_min: 50_010 }, Some(10), nights).unwrap();
    let gap_min = again.placed[1].start_min - 50_000;
    assert!((3 * 1440..=5 * 1440).contains(&gap_min), "{gap_min}");
}
