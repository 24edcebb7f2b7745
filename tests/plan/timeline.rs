//! The picture of the week, as data. Dates, hours and vats are invented.

use jiff::civil::{Date, DateTime, date};
use jiff::tz::TimeZone;
use proptest::prelude::*;
use vatsketch::batch::batch;
use vatsketch::design::{BusyOnce, Design, Habitual, KeptIn, Wish};
use vatsketch::plan::{KitchenWeek, Now, Taken, Timeline, TimelineDay, TimelineRow, TimelineWait, counted, kitchen_week, timeline};

fn monday(hour: i8, minute: i8) -> DateTime {
    date(2031, 5, 5).at(hour, minute, 0, 0)
}

fn planned(design: &Design) -> KitchenWeek {
    let now = Now { at: monday(8, 0), zone: TimeZone::UTC };
    kitchen_week(&batch(design).unwrap(), &now).unwrap().unwrap()
}

fn starting(at: DateTime) -> Design {
    let mut design = Design::default();
    design.week.wish = Wish::StartAt(at);
    design
}

fn days(picture: &Timeline) -> Vec<&TimelineDay> {
    picture.rows.iter().filter_map(|row| if let TimelineRow::Day(day) = row { Some(day) } else { None }).collect()
}

fn waits(picture: &Timeline) -> Vec<&TimelineWait> {
    picture.rows.iter().filter_map(|row| if let TimelineRow::Wait(wait) = row { Some(wait) } else { None }).collect()
}

/// Returns how many days the rows cover, and whether each begins the day after the one before.
fn covered(picture: &Timeline) -> (i64, bool) {
    let spans: Vec<(Date, Date, i64)> = picture
        .rows
        .iter()
        .map(|row| match row {
            TimelineRow::Day(day) => (day.date, day.date, 1),
            TimelineRow::Wait(wait) => (wait.from, wait.to, wait.days),
        })
        .collect();
    let follows = spans.windows(2).all(|pair| pair[0].1.tomorrow().unwrap() == pair[1].0);
    (spans.iter().map(|span| span.2).sum(), follows)
}

#[test]
fn every_task_stands_on_its_day_at_its_minute() {
    let week = planned(&starting(monday(14, 20)));
    let picture = timeline(&week, None);
    let first = days(&picture)[0].clone();
    assert_eq!((first.date, first.blocks[0].from_min, first.blocks[0].to_min), (date(2031, 5, 5), 14 * 60 + 20, 14 * 60 + 40));
    for (place, task) in week.tasks.iter().enumerate() {
        let own: Vec<_> =
            days(&picture).into_iter().flat_map(|day| day.blocks.iter().filter(|block| block.task == place)).collect();
        assert_eq!(own.iter().map(|block| block.to_min - block.from_min).sum::<i64>(), task.hands_min, "{}", task.name);
    }
}

#[test]
fn the_weeks_in_the_vinegar_are_one_row() {
    let week = planned(&starting(monday(9, 0)));
    let picture = timeline(&week, None);
    let vinegar = week.tasks.iter().find(|task| task.key == "vinegar").unwrap();
    let sour = week.tasks.iter().find(|task| task.key == "sour").unwrap();
    let between = (sour.start.date() - vinegar.start.date()).get_days() - 1;
    let wait = waits(&picture).into_iter().find(|wait| wait.from > vinegar.start.date()).unwrap();
    assert_eq!(wait.words, format!("{between} days in the vinegar"));
    assert!(picture.rows.len() < 12, "five weeks are to be read at one look: {} rows", picture.rows.len());
}

#[test]
fn rolling_the_jars_makes_no_rows_of_its_own() {
    let mut design = starting(monday(9, 0));
    design.keeping.kept_in = KeptIn::Oil;
    design.pickling.pickling_h = 2000.0;
    let week = planned(&design);
    let rolls = week.tasks.iter().filter(|task| task.key.starts_with("roll_")).count();
    let picture = timeline(&week, None);
    assert!(rolls > 1);
    assert_eq!(waits(&picture).iter().map(|wait| wait.tasks.len()).sum::<usize>(), rolls);
    assert!(waits(&picture).iter().any(|wait| wait.words.contains("roll the jars")), "{:?}", waits(&picture));
}

#[test]
fn a_night_is_cut_at_midnight_and_a_busy_time_is_on_its_day() {
    let mut design = starting(monday(9, 0));
    design.week.busy = vec![BusyOnce { from: monday(12, 0), to: monday(13, 30), impossible: false }];
    design.week = design.week.with_taken(Habitual::Work);
    let week = planned(&design);
    let picture = timeline(&week, None);
    let bands: Vec<(Taken, i64, i64)> = days(&picture)[0].bands.iter().map(|band| (band.by, band.from_min, band.to_min)).collect();
    for wanted in [
        // The night of the default week, 22:45 to 06:45.
        (Taken::Sleep, 0, 6 * 60 + 45),
        (Taken::Sleep, 22 * 60 + 45, 24 * 60),
        (Taken::Work, 9 * 60, 17 * 60),
        (Taken::Busy, 12 * 60, 13 * 60 + 30),
    ] {
        assert!(bands.contains(&wanted), "{wanted:?} is not among {bands:?}");
    }
}

#[test]
fn what_a_task_disturbs_stands_on_its_block() {
    let mut design = starting(monday(9, 0));
    design.week.busy = vec![BusyOnce { from: monday(9, 5), to: monday(9, 10), impossible: false }];
    let week = planned(&design);
    let picture = timeline(&week, None);
    assert_eq!(days(&picture)[0].blocks[0].disturbs, [Taken::Busy]);
}

#[test]
fn a_day_before_the_start_can_be_asked_for() {
    let week = planned(&starting(monday(9, 0)));
    let picture = timeline(&week, Some(date(2031, 5, 3)));
    assert!(matches!(&picture.rows[0], TimelineRow::Day(day) if day.date == date(2031, 5, 3) && day.blocks.is_empty()));
    assert_eq!(timeline(&week, Some(date(2031, 6, 1))), timeline(&week, None), "a later one changes nothing");
}

#[test]
fn counted_tasks_are_those_of_the_week_in_the_same_order() {
    let batch = batch(&Design::default()).unwrap();
    let counted = counted(&batch);
    let week = planned(&starting(monday(9, 0)));
    let keys: Vec<&str> = week.tasks.iter().map(|task| task.key.as_str()).filter(|key| *key != "last_day").collect();
    assert_eq!(counted.tasks.iter().map(|task| task.key.as_str()).collect::<Vec<_>>(), keys);
    assert!(counted.tasks.windows(2).all(|pair| pair[0].after_min <= pair[1].after_min));
    // Without hours of a maker nothing is in the way of the usual times.
    let mut free = starting(monday(9, 0));
    free.week.taken.clear();
    let planned = planned(&free);
    let apart = planned.tasks.iter().zip(&counted.tasks).map(|(planned, counted)| (planned.after_min - counted.after_min).abs());
    // Each wait that gives ends on a quarter of an hour.
    assert!(apart.max().unwrap() <= 15 * i64::try_from(counted.tasks.len()).unwrap());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn rows_follow_each_other_without_a_gap(minute in 0_i64..10_000) {
        let week = planned(&starting(monday(0, 0).checked_add(jiff::Span::new().minutes(minute)).unwrap()));
        let picture = timeline(&week, None);
        let (first, last) = (week.tasks[0].start.date(), week.tasks.last().unwrap().end.date());
        let (days, follows) = covered(&picture);
        prop_assert!(follows);
        prop_assert_eq!(days, i64::from((last - first).get_days()) + 1);
    }
}
