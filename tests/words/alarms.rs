//! Alarms in words. Dates and tasks are invented.

use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use vatsketch::batch::batch;
use vatsketch::design::{Design, Wish};
use vatsketch::plan::{KitchenWeek, Now, kitchen_week};
use vatsketch::units::{Clock, Units};
use vatsketch::words::alarm_words;

/// A week whose first tasks wake at these times, and whose others do not.
fn waking(times: &[DateTime]) -> KitchenWeek {
    let mut design = Design::default();
    design.week.wish = Wish::StartAt(date(2031, 5, 9).at(9, 0, 0, 0));
    let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
    let mut week = kitchen_week(&batch(&design).unwrap(), &now).unwrap().unwrap();
    for (place, task) in week.tasks.iter_mut().enumerate() {
        task.wakes = place < times.len();
        task.start = times.get(place).copied().unwrap_or(task.start);
    }
    week
}

#[test]
fn alarms_are_counted_and_their_times_told() {
    let at = |day: i8, hour: i8, minute: i8| date(2031, 5, day).at(hour, minute, 0, 0);
    let said = |times: &[DateTime], units: Units| alarm_words(&waking(times), units);
    assert_eq!(said(&[], Units::METRIC), None);
    assert_eq!(said(&[at(10, 3, 30)], Units::METRIC).unwrap(), "one alarm at 03:30");
    let two = [at(10, 2, 15), at(10, 5, 45)];
    assert_eq!(said(&two, Units::METRIC).unwrap(), "two alarms at night: 02:15 and 05:45");
    let halves = Units { clock: Clock::Hours12, ..Units::METRIC };
    assert_eq!(said(&two, halves).unwrap(), "two alarms at night: 2:15 am and 5:45 am");
    // Told in metric and then in others it is the same.
    assert_eq!(halves.told(&said(&two, Units::METRIC).unwrap()), said(&two, halves).unwrap());
    let nights = [at(10, 2, 15), at(10, 5, 45), at(11, 3, 0)];
    assert_eq!(
        said(&nights, Units::METRIC).unwrap(),
        "three alarms at night: Sat 10 May 02:15, Sat 10 May 05:45 and Sun 11 May 03:00"
    );
}
