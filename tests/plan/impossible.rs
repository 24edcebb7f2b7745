//! Hours in which nobody can be there. Dates and hours are invented.

use super::any::{any_impossible_hours, any_run, any_start, every_way, impossible_min};
use jiff::ToSpan;
use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use proptest::prelude::*;
use vatsketch::batch::batch;
use vatsketch::design::{BusyOnce, Design, Habitual, Reached, TakenHours, Value, Wish, read_hour};
use vatsketch::plan::{Gap, Habit, Handling, Hours, KitchenWeek, Lost, Now, Span, Start, Taken, kitchen_week, schedule};

/// Longer than any of these small runs.
const UNTIL_MIN: i64 = 6000;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_way_has_fewer_impossible_minutes_and_of_those_none_costs_less(
        run in any_run(), hours in any_impossible_hours(UNTIL_MIN), start in any_start(),
    ) {
        let ways = every_way(&run, &hours, &start);
        if let Ok(plan) = schedule(&run, &hours, &start) {
            let weighed = ways.iter().map(|(points, way)| (impossible_min(&run, &hours, way), *points));
            prop_assert_eq!(Some((plan.impossible_min(), plan.points)), weighed.min());
        } else {
            prop_assert!(ways.is_empty());
        }
    }

    #[test]
    fn what_is_lost_says_every_impossible_minute(
        hours in any_impossible_hours(4000), from_min in 0_i64..3900, hands_min in 0_i64..100,
    ) {
        let lost = hours.taken(from_min, hands_min);
        let minutes: i64 = lost.iter().filter(|lost| lost.impossible).map(|lost| lost.minutes).sum();
        prop_assert_eq!(minutes, hours.impossible_min(from_min, hands_min));
        prop_assert_eq!(lost.iter().map(|lost| lost.points).sum::<i64>(), hours.points(from_min, hands_min));
    }
}

#[test]
fn an_impossible_hour_is_left_for_an_alarm_that_costs_more_than_the_same_hour_disliked() {
    let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 0), (6, 0));
    let shift = Habit::new(Taken::Work, Habit::EVERY_DAY, (15, 0), (22, 30));
    // At noon, and usually at 17:00, from 16:00 to 23:00 at most.
    let run = [Handling::new("ladle", 10, Gap::flexible(300, 60, 360, 2)), Handling::new("turn", 10, Gap::default())];
    let planned = |shift: Habit| {
        let hours = Hours::of_habits(&[sleep, shift], 2880);
        schedule(&run, &hours, &Start::Here { at_min: 720, by_min: None }).unwrap()
    };
    let disliked = planned(shift);
    assert_eq!((disliked.placed[1].start_min, disliked.points), (17 * 60, 10 * Taken::Work.points()));
    let impossible = planned(shift.as_impossible(true));
    // 22:30: an alarm, and five and a half hours later than usual, 22 quarters at 2 points.
    assert_eq!((impossible.placed[1].start_min, impossible.points), (22 * 60 + 30, Taken::Sleep.alarm_points() + 44));
    assert_eq!((impossible.impossible_min(), disliked.impossible_min()), (0, 0));
}

#[test]
fn an_impossible_span_counts_over_a_dearer_one() {
    let away = |impossible| Span { by: Taken::Busy, from_min: 50, to_min: 60, points: 1, alarm_points: 0, impossible };
    let sleep = Span { by: Taken::Sleep, from_min: 0, to_min: 100, points: 9, alarm_points: 5, impossible: false };
    let hours = |impossible| Hours::new(vec![sleep, away(impossible)], 200);
    assert_eq!(
        hours(true).taken(55, 10),
        [
            Lost { by: Taken::Busy, minutes: 5, points: 5, impossible: true },
            Lost { by: Taken::Sleep, minutes: 5, points: 45, impossible: false },
        ]
    );
    assert_eq!(hours(false).taken(55, 10), [Lost { by: Taken::Sleep, minutes: 10, points: 0, impossible: false }]);
    assert_eq!([hours(true).alarm_points(55), hours(false).alarm_points(55)], [0, 5], "who is away is not asleep");
}

/// Monday.
fn monday(hour: i8, minute: i8) -> DateTime {
    date(2031, 5, 5).at(hour, minute, 0, 0)
}

fn now() -> Now {
    Now { at: monday(8, 0), zone: TimeZone::UTC }
}

fn wishing(wish: Wish) -> Design {
    let mut design = Design::default();
    design.week.wish = wish;
    design
}

fn planned(design: &Design) -> KitchenWeek {
    kitchen_week(&batch(design).unwrap(), &now()).unwrap().unwrap()
}

fn away(from: DateTime, to: DateTime) -> BusyOnce {
    BusyOnce { from, to, impossible: true }
}

fn start_of(week: &KitchenWeek, key: &str) -> DateTime {
    week.tasks.iter().find(|task| task.key == key).unwrap().start
}

#[test]
fn disliked_hours_are_never_called_impossible() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    design.week.busy = vec![BusyOnce { impossible: false, ..away(monday(9, 0), monday(12, 0)) }];
    let week = planned(&design);
    assert!(week.points > 0 && week.impossible.is_none() && week.reasons.iter().all(|reason| !reason.is_impossible));
}

#[test]
fn a_start_that_is_fixed_says_what_falls_into_impossible_hours_and_offers_one_that_works() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    design.week.busy = vec![away(monday(9, 10), monday(12, 0))];
    let week = planned(&design);
    let found = week.impossible.as_ref().unwrap();
    assert_eq!(found.tasks[0], "sanitise");
    assert!(found.words.starts_with("“Sanitise” on Mon 5 May, 09:00 (10 min of it)"), "{}", found.words);
    assert!(found.words.ends_with("fall into hours when nobody can be there."), "{}", found.words);
    assert!(week.reasons[0].is_impossible && week.reasons[0].words.contains("when nobody can be there"));
    assert_eq!(week.reasons.iter().map(|reason| reason.points).sum::<i64>(), week.points, "it says all that it costs");
    let offer = found.offer.as_ref().unwrap();
    assert!(found.help.starts_with(&offer.words) && offer.words.starts_with("Begin on Mon 5 May"), "{}", found.help);
    design.week.wish = offer.wish;
    let after = planned(&design);
    assert!(after.impossible.is_none() && start_of(&after, "sanitise") >= monday(12, 0));
}

#[test]
fn a_start_that_may_be_put_off_keeps_out_of_impossible_hours_by_itself() {
    let mut design = wishing(Wish::SoonAfter(monday(9, 0)));
    design.week.busy = vec![away(monday(9, 0), date(2031, 5, 9).at(12, 0, 0, 0))];
    let week = planned(&design);
    assert!(week.impossible.is_none() && start_of(&week, "sanitise") >= date(2031, 5, 9).at(12, 0, 0, 0));
}

#[test]
fn a_finish_time_that_leaves_no_other_start_offers_a_later_one_that_works() {
    let free = planned(&wishing(Wish::StartAt(monday(9, 0))));
    let by = free.finished.unwrap();
    let mut design = wishing(Wish::FinishedBy(by));
    // The first hours are taken, and nothing later is soon enough.
    design.week.busy = vec![away(monday(8, 0), date(2031, 5, 8).at(12, 0, 0, 0))];
    let week = planned(&design);
    let offer = week.impossible.unwrap().offer.unwrap();
    let Wish::FinishedBy(later) = offer.wish else { panic!("{offer:?}") };
    assert!(later > by && offer.words.starts_with("Finish by "));
    design.week.wish = offer.wish;
    assert!(planned(&design).impossible.is_none());
}

#[test]
fn where_no_time_helps_it_says_what_else_would() {
    let mut design = wishing(Wish::SoonAfter(monday(9, 0)));
    let hour = |text: &str| read_hour(text).unwrap();
    let (from, to) = (hour("0:00"), hour("23:59"));
    design.week.taken = vec![TakenHours { by: Habitual::Work, days: [true; 7], from, to, impossible: true }];
    let found = planned(&design).impossible.unwrap();
    assert_eq!(found.offer, None);
    assert!(found.help.starts_with("No start within a week was found") && found.help.contains("somebody else"), "{}", found.help);
}

#[test]
fn a_vat_that_is_begun_is_offered_no_other_start() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    let week = planned(&design);
    let (rennet, cut) = (start_of(&week, "rennet"), start_of(&week, "cut"));
    design.week.reached = Some(Reached { task: "rennet".to_owned(), began: rennet });
    design.week.busy = vec![away(rennet, cut.checked_add(5.minutes()).unwrap())];
    let now = Now { at: rennet, ..now() };
    let week = kitchen_week(&batch(&design).unwrap(), &now).unwrap().unwrap();
    let found = week.impossible.unwrap();
    assert_eq!((found.offer, found.tasks.first().map(String::as_str)), (None, Some("test_1")));
    assert!(found.help.starts_with("The vat has been started"), "{}", found.help);
}

/// A jar is rolled four to six days after it was closed. Away from the first of these days to an hour after the last, the soak waits for an hour.
#[test]
fn the_cheeses_wait_where_the_jars_would_need_somebody_who_is_away() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    design.set("kept_in", Value::Choice("oil")).unwrap();
    design.set("keeping_days", Value::Number(21.0)).unwrap();
    design.set("pickling_h", Value::Number(2000.0)).unwrap();
    let free = planned(&design);
    let rest = start_of(&free, "rest");
    let (from, to) = (rest.checked_add(95.hours()).unwrap(), rest.checked_add(145.hours()).unwrap());
    design.week.busy = vec![away(from, to)];
    let week = planned(&design);
    assert!(week.impossible.is_none(), "{:?}", week.impossible);
    assert!(start_of(&week, "rest") > rest && start_of(&week, "roll_1") >= to);
}
