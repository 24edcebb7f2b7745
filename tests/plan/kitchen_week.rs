//! The week by the wall clock. Dates, hours and zones are invented.

use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{BusyOnce, Design, Habitual, Reached, Stage, TakenHours, Value, Wish, read_hour};
use vatsketch::plan::{KitchenWeek, KitchenWeekError, Now, Taken, kitchen_week};

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

fn made(design: &Design) -> Batch {
    batch(design).unwrap()
}

fn planned(design: &Design) -> KitchenWeek {
    kitchen_week(&made(design), &now()).unwrap().unwrap()
}

#[test]
fn without_a_wish_there_is_no_week() {
    assert_eq!(kitchen_week(&made(&Design::default()), &now()).unwrap(), None);
}

#[test]
fn a_start_is_kept_to_the_minute() {
    let start = monday(17, 20);
    let week = planned(&wishing(Wish::StartAt(start)));
    assert_eq!((week.tasks[0].start, week.tasks[0].key.as_str(), week.tasks[0].after_min), (start, "sanitise", 0));
    assert!(week.tasks.windows(2).all(|pair| pair[0].start <= pair[1].start), "in order of time");
}

#[test]
fn a_start_soon_after_a_time_lets_the_maker_sleep_and_work() {
    let mut design = wishing(Wish::SoonAfter(monday(8, 0)));
    let hours = |from: &str, to: &str| (read_hour(from).unwrap(), read_hour(to).unwrap());
    let (from, to) = hours("9:00", "17:00");
    design.week.taken.push(TakenHours {
        by: Habitual::Work,
        days: [true, true, false, false, false, false, false],
        from,
        to,
        impossible: false,
    });
    let week = planned(&design);
    assert!(week.tasks[0].start >= monday(8, 0));
    let sleeping = week.tasks.iter().flat_map(|task| &task.lost).filter(|lost| lost.by == Taken::Sleep);
    assert_eq!(sleeping.map(|lost| lost.minutes).sum::<i64>(), 0, "{:?}", week.reasons);
    assert_eq!(week.reasons.iter().map(|reason| reason.points).sum::<i64>(), week.points, "it says all that it costs");
}

#[test]
fn finished_by_is_kept_and_the_last_day_of_keeping_follows() {
    let by = date(2031, 8, 25).at(12, 0, 0, 0);
    let mut design = wishing(Wish::FinishedBy(by));
    // Long enough for a slow cheese: what is not sour is kept for fewer days.
    design.pickling.pickling_h = 2000.0;
    let week = planned(&design);
    let finished = week.finished.unwrap();
    assert!(finished <= by && week.tasks[0].start >= now().at);
    let last = week.tasks.last().unwrap();
    let days = (last.start - finished).get_days();
    assert_eq!((last.key.as_str(), f64::from(days)), ("last_day", design.keeping.keeping_days));
}

#[test]
fn refusals_name_times_of_the_wall_clock_and_the_time_they_offer_works() {
    let past = kitchen_week(&made(&wishing(Wish::FinishedBy(monday(7, 0)))), &now()).unwrap_err();
    assert_eq!(
        past.to_string(),
        "the finish time Mon 5 May, 07:00 is in the past: it is Mon 5 May, 08:00 now; choose a later time"
    );
    let error = kitchen_week(&made(&wishing(Wish::FinishedBy(monday(20, 0)))), &now()).unwrap_err();
    let KitchenWeekError::TooSoon { soonest, .. } = error else { panic!("{error}") };
    assert!(kitchen_week(&made(&wishing(Wish::FinishedBy(soonest))), &now()).is_ok());
    let sooner = soonest.checked_sub(jiff::ToSpan::minutes(1)).unwrap();
    assert!(kitchen_week(&made(&wishing(Wish::FinishedBy(sooner))), &now()).is_err(), "the time offered is the earliest");
}

#[test]
fn from_where_the_maker_stands_nothing_that_is_done_is_planned_again() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    let cut = planned(&design).tasks.iter().find(|task| task.key == "cut").unwrap().start;
    // The curd was late by 40 minutes.
    let began = cut.checked_add(jiff::ToSpan::minutes(40)).unwrap();
    design.week.reached = Some(Reached { task: "cut".to_owned(), began });
    let now = Now { at: began.checked_add(jiff::ToSpan::minutes(5)).unwrap(), ..now() };
    let week = kitchen_week(&made(&design), &now).unwrap().unwrap();
    assert_eq!((week.tasks[0].key.as_str(), week.tasks[0].start, week.tasks[0].begun), ("cut", began, true));
    assert!(week.tasks.iter().all(|task| !["rennet", "warm"].contains(&task.key.as_str())));
    assert!(week.tasks[1].start > began);
    design.week.reached = Some(Reached { task: "cutt".to_owned(), began });
    let error = kitchen_week(&made(&design), &now).unwrap_err().to_string();
    assert!(error.contains("did you mean `cut`?"), "{error}");
}

/// The rule of the zone is the test's own: one hour ahead, two in summer, forward on the last Sunday of March at 02:00.
#[test]
fn over_a_change_of_the_clock_the_cheese_keeps_its_minutes() {
    let zone = TimeZone::posix("CET-1CEST,M3.5.0,M10.5.0/3").unwrap();
    let start = date(2031, 3, 29).at(9, 0, 0, 0);
    let changed = |zone| {
        let now = Now { at: start, zone };
        kitchen_week(&made(&wishing(Wish::StartAt(start))), &now).unwrap().unwrap()
    };
    let (summer, plain) = (changed(zone), changed(TimeZone::UTC));
    let unmould = |week: &KitchenWeek| week.tasks.iter().find(|task| task.key == "unmould").cloned().unwrap();
    for (week, jumps_min) in [(&summer, 60), (&plain, 0)] {
        let task = unmould(week);
        assert_eq!(task.start.duration_since(start).as_mins(), task.after_min + jumps_min);
    }
}

#[test]
fn a_busy_time_is_kept_free_where_the_turns_give() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    // At midday it gives both ways; the one before bedtime could give only by an alarm, which costs more than a short busy time.
    let turn = planned(&design).tasks.iter().find(|task| task.key == "turn_4").cloned().unwrap();
    design.week.busy.push(BusyOnce { from: turn.start, to: turn.end, impossible: false });
    let week = planned(&design);
    let moved = week.tasks.iter().find(|task| task.key == "turn_4").unwrap();
    assert!(moved.lost.is_empty() && moved.start != turn.start);
    assert!(week.taken.iter().any(|span| span.by == Taken::Busy && span.from == turn.start));
}

#[test]
fn a_zone_that_is_none_is_refused_with_what_to_write() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    design.week.zone = "Moon/Crater".to_owned();
    let error = kitchen_week(&made(&design), &now()).unwrap_err().to_string();
    assert!(error.contains("Moon/Crater") && error.contains("Etc/UTC"), "{error}");
    design.week.zone = "Etc/UTC".to_owned();
    assert!(kitchen_week(&made(&design), &now()).is_ok());
}

/// The computer stands two hours ahead of the zone that the design names: there it is not yet 07:00.
#[test]
fn what_time_it_is_counts_by_the_zone_that_the_design_names() {
    let mut design = wishing(Wish::FinishedBy(monday(7, 0)));
    design.week.zone = "Etc/UTC".to_owned();
    let now = Now { at: monday(8, 0), zone: TimeZone::fixed(jiff::tz::offset(2)) };
    let error = kitchen_week(&made(&design), &now).unwrap_err();
    assert!(matches!(error, KitchenWeekError::TooSoon { now, .. } if now == monday(6, 0)), "{error}");
}

#[test]
fn a_vat_that_stops_half_way_has_no_time_of_being_finished() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    // More cheeses than moulds can hold: the draining cannot be calculated.
    design.set("mould_count", Value::Number(1.0)).unwrap();
    design.set("mould_diameter_mm", Value::Number(20.0)).unwrap();
    design.set("mould_height_mm", Value::Number(10.0)).unwrap();
    let stops = made(&design);
    assert!(stops.vat.done().is_some() && stops.draining.done().is_none());
    let week = planned(&design);
    assert_eq!((week.finished, week.ends_before), (None, Some(Stage::Draining)));
    assert!(week.tasks.iter().any(|task| task.key == "cut"));
}

/// Kept under oil for three weeks: whatever the maker has begun since, the jars were closed when they were closed.
#[test]
fn the_last_day_never_moves_away_while_the_jars_are_looked_after() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    design.set("kept_in", Value::Choice("oil")).unwrap();
    design.set("keeping_days", Value::Number(21.0)).unwrap();
    design.set("pickling_h", Value::Number(2000.0)).unwrap();
    let before = planned(&design);
    let last = before.tasks.last().unwrap().clone();
    assert!(last.is_last_day());
    for key in ["sour", "rest", "roll_1", "roll_2"] {
        let task = before.tasks.iter().find(|task| task.key == key).unwrap();
        design.week.reached = Some(Reached { task: key.to_owned(), began: task.start });
        let now = Now { at: task.start, ..now() };
        let after = kitchen_week(&made(&design), &now).unwrap().unwrap();
        let there = after.tasks.last().unwrap();
        assert!(there.is_last_day() && there.start <= last.start, "{key}: {} instead of {}", there.start, last.start);
        if key == "sour" {
            assert_eq!((there.start, after.finished), (last.start, before.finished), "known to the minute");
        }
    }
}

#[test]
fn what_is_said_to_have_begun_later_than_now_is_refused() {
    let mut design = wishing(Wish::StartAt(monday(9, 0)));
    design.week.reached = Some(Reached { task: "cut".to_owned(), began: monday(12, 0) });
    let error = kitchen_week(&made(&design), &now()).unwrap_err().to_string();
    assert!(error.contains("4 h from now") && error.contains("really began"), "{error}");
}
