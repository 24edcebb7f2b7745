//! The clock on the wall and the minutes that pass.

use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use proptest::prelude::*;
use vatsketch::design::{BusyOnce, read_moment};
use vatsketch::plan::{Clock, ClockError, Gap, Habit, Handling, Start, Taken, schedule};

/// An hour ahead of UTC and two in summer, from the last Sunday of March 02:00 to the last of October 03:00 (the rule written as POSIX has it).
const TWO_SEASONS: &str = "CET-1CEST,M3.5.0,M10.5.0/3";

fn clock(text: &str) -> Clock {
    Clock::of_week(read_moment(text).unwrap().date(), TimeZone::posix(TWO_SEASONS).unwrap()).unwrap()
}

fn at(text: &str) -> DateTime {
    read_moment(text).unwrap()
}

/// The days of 2031 on which the rule changes the clock, calculated by hand: 30 March and 26 October are the last Sundays.
#[test]
fn a_week_of_spring_is_an_hour_shorter_and_one_of_autumn_an_hour_longer() {
    for (monday, next, hours) in [
        ("2031-03-24 00:00", "2031-03-31 00:00", 167),
        ("2031-10-20 00:00", "2031-10-27 00:00", 169),
        ("2031-06-02 00:00", "2031-06-09 00:00", 168),
    ] {
        let clock = clock(monday);
        assert_eq!(clock.minute(at(monday)).unwrap(), 0);
        assert_eq!(clock.minute(at(next)).unwrap(), 60 * hours);
    }
}

#[test]
fn a_skipped_time_is_refused_and_of_a_repeated_one_the_first_is_taken() {
    let spring = clock("2031-03-26 12:00");
    let error = spring.minute(at("2031-03-30 02:15")).unwrap_err();
    assert!(matches!(error, ClockError::Skipped { .. }));
    assert!(error.to_string().contains("2031-03-30"), "{error}");
    let autumn = clock("2031-10-22 12:00");
    let (first, three) = (autumn.minute(at("2031-10-26 02:15")).unwrap(), autumn.minute(at("2031-10-26 03:00")).unwrap());
    assert_eq!(three - first, 105);
}

#[test]
fn sleep_keeps_to_the_wall_clock_when_it_changes() {
    let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (23, 0), (7, 0));
    for (saturday, hours_slept) in [("2031-03-29 22:30", 7), ("2031-10-25 22:30", 9), ("2031-06-07 22:30", 8)] {
        let clock = clock(saturday);
        let from = clock.minute(at(saturday)).unwrap();
        let hours = clock.hours(&[sleep], &[], from + 1440).unwrap();
        assert_eq!(hours.points(from, 12 * 60), hours_slept * 60 * Taken::Sleep.points(), "{saturday}");
    }
}

/// The gap of 7 h is 7 h that pass: over the night of the change in spring the wall clock shows 8.
#[test]
fn a_gap_over_the_change_is_kept_in_minutes_and_shown_by_the_wall_clock() {
    let clock = clock("2031-03-29 12:00");
    let run = [Handling::new("turn 1", 10, Gap::fixed(420)), Handling::new("turn 2", 10, Gap::default())];
    let start = Start::Earliest { from_min: clock.minute(at("2031-03-29 22:30")).unwrap(), within_min: 0, wait_points: 0 };
    let hours = clock.hours(&[], &[], 20_000).unwrap();
    let plan = schedule(&run, &hours, &start).unwrap();
    let shown: Vec<DateTime> = plan.placed.iter().map(|placed| clock.local(placed.start_min).unwrap()).collect();
    assert_eq!(shown, [at("2031-03-29 22:30"), at("2031-03-30 06:30")]);
}

#[test]
fn busy_times_count_once_and_must_run_forwards() {
    let clock = clock("2031-06-04 09:00");
    let (from, to) = (at("2031-06-05 14:00"), at("2031-06-05 16:30"));
    let hours = clock.hours(&[], &[BusyOnce { from, to, impossible: false }], 10_080).unwrap();
    assert_eq!(hours.points(0, 10_080), 150 * Taken::Busy.points());
    assert!(matches!(
        clock.hours(&[], &[BusyOnce { from: to, to: from, impossible: false }], 10_080),
        Err(ClockError::Backwards { .. })
    ));
}

#[test]
fn what_is_no_time_is_refused_with_an_example() {
    for text in
        ["", "soon", "2031-13-01 10:00", "2031-02-30 10:00", "2031-05-09", "10:30", "2031-05-09 18:30+02:00", "2031-05-09T18:30Z"]
    {
        let error = read_moment(text).unwrap_err();
        assert!(error.to_string().contains("2031-05-09 18:30"), "{text}: {error}");
    }
    assert_eq!(at(" 2031-05-09T06:05 "), date(2031, 5, 9).at(6, 5, 0, 0));
    assert_eq!(at("2031-05-09 06:05:50"), date(2031, 5, 9).at(6, 5, 0, 0), "a file keeps minutes, so seconds are cut off at once");
}

#[test]
fn the_ends_of_the_calendar_are_refused_and_not_a_panic() {
    let clock = clock("2031-06-04 09:00");
    for minute in [i64::MAX, i64::MIN, 60 * 24 * 366 * 20_000] {
        assert!(matches!(clock.local(minute), Err(ClockError::Beyond { .. })));
    }
    let first = Clock::of_week(date(-9999, 1, 1), TimeZone::UTC);
    assert!(
        first.is_err() || first.unwrap().hours(&[Habit::new(Taken::Sleep, Habit::EVERY_DAY, (1, 0), (2, 0))], &[], 10).is_err()
    );
}

proptest! {
    #[test]
    fn a_minute_comes_back_from_the_wall_clock_unless_the_clock_repeats_it(minute in 0_i64..600_000) {
        let clock = clock("2031-01-08 12:00");
        let back = clock.minute(clock.local(minute).unwrap()).unwrap();
        prop_assert!(back == minute || back + 60 == minute, "{minute} came back as {back}");
    }

    #[test]
    fn without_a_change_of_the_clock_habits_are_as_in_the_plain_week(from in 0_u8..24, to in 0_u8..24, days in prop::array::uniform7(any::<bool>())) {
        let habit = Habit::new(Taken::Work, days, (from, 20), (to, 50));
        let clock = clock("2031-06-04 09:00");
        let (wall, plain) = (clock.hours(&[habit], &[], 20_000).unwrap(), vatsketch::plan::Hours::of_habits(&[habit], 20_000));
        for minute in (0..20_000).step_by(10) {
            prop_assert_eq!(wall.points(minute, 1), plain.points(minute, 1));
        }
    }
}
