//! Being woken, by hand: sleep from 22:00 to 06:00.

use vatsketch::plan::{Gap, Habit, Handling, Hours, Schedule, Start, Taken, schedule};

const NIGHT: i64 = 200;

fn planned(run: &[Handling], at_min: i64) -> Schedule {
    let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 0), (6, 0));
    schedule(run, &Hours::of_habits(&[sleep], 4000), &Start::Here { at_min, by_min: None }).unwrap()
}

fn alarms(plan: &Schedule) -> Vec<i64> {
    plan.placed.iter().filter(|placed| placed.alarm_points > 0).map(|placed| placed.start_min).collect()
}

#[test]
fn an_alarm_costs_what_its_record_says_however_long_the_work_takes() {
    assert_eq!(Taken::Sleep.alarm_points(), NIGHT);
    for hands_min in [1, 10, 120] {
        let plan = planned(&[Handling::new("turn", hands_min, Gap::default())], 180);
        assert_eq!((plan.points, alarms(&plan)), (NIGHT, vec![180]), "{hands_min} min");
    }
    assert_eq!(planned(&[Handling::new("rest", 0, Gap::default())], 180).points, 0, "nobody gets up for it");
}

#[test]
fn what_follows_before_anybody_could_sleep_again_rings_no_other_alarm() {
    let run = |gap_min: i64| [5, 5, 5].map(|hands_min| Handling::new("stir", hands_min, Gap::fixed(gap_min)));
    // 02:00 to 02:05, and on at 02:35: thirty minutes; at 02:36 one more alarm.
    assert_eq!(alarms(&planned(&run(35), 120)), [120]);
    assert_eq!(alarms(&planned(&run(36), 120)), [120, 156, 192]);
    assert_eq!(planned(&run(36), 120).points, 3 * NIGHT);
}

#[test]
fn one_alarm_is_preferred_over_two() {
    // Usually two hours apart; 15 to 120 min are possible.
    let run = [Handling::new("one", 10, Gap::flexible(120, 105, 0, 1)), Handling::new("other", 10, Gap::default())];
    let plan = planned(&run, 60);
    // 01:00 and 01:30, an hour and a half early: 6 points of shift instead of a second alarm at 03:00.
    assert_eq!(plan.placed[1].start_min, 90);
    assert_eq!((plan.points, alarms(&plan)), (NIGHT + 6, vec![60]));
    // By day nothing is drawn together.
    assert_eq!(planned(&run, 600).placed[1].start_min, 720);
}

#[test]
fn a_task_that_was_begun_at_night_rings_nothing_for_what_follows_it_at_once() {
    let run = [Handling::new("begun", 0, Gap::fixed(20)), Handling::new("next", 10, Gap::default())];
    assert_eq!(planned(&run, 120).points, 0);
    assert_eq!(alarms(&planned(&run, 1310)), [1330], "begun by day at 21:50, and the next at 22:10");
}

#[test]
fn the_reasons_say_which_task_wakes_and_leave_its_minutes_out() {
    let run = [Handling::new("turn 3", 6, Gap::default())];
    let plan = planned(&run, 210);
    let reasons = plan.reasons(&run);
    assert_eq!(reasons.len(), 1);
    assert_eq!(
        (reasons[0].words.as_str(), reasons[0].points, reasons[0].is_alarm),
        ("an alarm wakes you for “turn 3”", NIGHT, true)
    );
    assert_eq!(plan.placed[0].lost.iter().map(|lost| lost.minutes).sum::<i64>(), 6);
}
