//! Hours that are taken.

use super::any::any_hours;
use proptest::prelude::*;
use vatsketch::plan::{Habit, Hours, Lost, Span, Taken};

#[test]
fn a_night_that_began_on_sunday_reaches_into_the_first_monday() {
    let mut days = [false; 7];
    days[6] = true;
    let hours = Hours::of_habits(&[Habit::new(Taken::Sleep, days, (23, 0), (6, 0))], 8 * 1440);
    assert_eq!([0, 359, 360, 1440].map(|minute| hours.alarm_points(minute) > 0), [true, true, false, false]);
    assert_eq!(hours.points(1440, 420), 0);
    // Work that goes on from 22:59 keeps from bed for the whole night.
    assert_eq!(hours.points(7 * 1440 - 61, 481), 420 * Taken::Sleep.points());
}

#[test]
fn where_spans_overlap_the_dearest_counts() {
    let spans = vec![
        Span { by: Taken::Work, from_min: 0, to_min: 100, points: 4, alarm_points: 0, impossible: false },
        Span { by: Taken::Busy, from_min: 50, to_min: 60, points: 9, alarm_points: 0, impossible: false },
        Span { by: Taken::Sleep, from_min: 55, to_min: 70, points: 2, alarm_points: 0, impossible: false },
    ];
    let hours = Hours::new(spans, 200);
    assert_eq!(hours.points(0, 200), 90 * 4 + 10 * 9);
    let lost = [
        Lost { by: Taken::Work, minutes: 20, points: 80, impossible: false },
        Lost { by: Taken::Busy, minutes: 10, points: 90, impossible: false },
    ];
    assert_eq!(hours.taken(40, 30), lost);
}

#[test]
fn a_habit_that_ends_where_it_began_fills_the_day() {
    let away = Habit::new(Taken::Busy, Habit::EVERY_DAY, (0, 0), (0, 0));
    assert_eq!(Hours::of_habits(&[away], 3000).points(100, 500), 500 * Taken::Busy.points());
}

#[test]
fn an_alarm_costs_once_whatever_is_done_and_only_work_that_goes_on_into_the_night_is_counted_by_the_minute() {
    let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 0), (6, 0));
    let work = Habit::new(Taken::Work, Habit::EVERY_DAY, (6, 0), (14, 0));
    let hours = Hours::of_habits(&[sleep, work], 2880);
    assert_eq!((hours.points(200, 5), hours.points(200, 90)), (0, 0));
    assert_eq!(hours.alarm_points(200), Taken::Sleep.alarm_points());
    assert_eq!(hours.points(22 * 60 - 10, 30), 20 * Taken::Sleep.points());
    assert_eq!(hours.alarm_points(22 * 60 - 10), 0);
    // Begun by alarm at 05:50, twenty of its minutes are working hours; the ten before are lost and cost nothing more.
    assert_eq!(hours.points(350, 30), 20 * Taken::Work.points());
    let lost = [
        Lost { by: Taken::Sleep, minutes: 10, points: 0, impossible: false },
        Lost { by: Taken::Work, minutes: 20, points: 80, impossible: false },
    ];
    assert_eq!(hours.taken(350, 30), lost);
}

proptest! {
    #[test]
    fn what_is_lost_adds_up_to_the_points(hours in any_hours(4000), from_min in 0_i64..3900, hands_min in 0_i64..100) {
        let lost = hours.taken(from_min, hands_min);
        prop_assert_eq!(lost.iter().map(|lost| lost.points).sum::<i64>(), hours.points(from_min, hands_min));
        prop_assert!(lost.iter().map(|lost| lost.minutes).sum::<i64>() <= hands_min);
    }
}
