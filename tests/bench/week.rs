//! A long run over five weeks, with sleep and work; the amounts are invented.

use super::median_ms;
use criterion::Criterion;
use jiff::civil::{date, time};
use jiff::tz::TimeZone;
use std::hint::black_box;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Habitual, KeptIn, TakenHours, Wish};
use vatsketch::plan::{Gap, Habit, Handling, Hours, Now, Start, Taken, kitchen_week, schedule};

const DAY_MIN: i64 = 24 * 60;

/// Starts over five weeks of quarters of an hour; the run reaches beyond them.
const START: Start = Start::Earliest { from_min: 0, within_min: 35 * DAY_MIN, wait_points: 0 };

/// A vat with two dozen turns, drying, vinegar, oil and a dozen rollings.
fn run() -> Vec<Handling> {
    let mut run = vec![
        Handling::new("sanitise", 15, Gap { least_min: 15, usual_from_min: 15, usual_to_min: 30, most_min: 60, shift_points: 1 }),
        Handling::new("warm", 50, Gap::fixed(52)),
        Handling::new("rennet", 10, Gap::fixed(47)),
        Handling::new("cut", 12, Gap::flexible(30, 0, 45, 2)),
        Handling::new("ladle", 40, Gap::flexible(360, 135, 135, 2)),
    ];
    run.extend((1..=24).map(|turn| Handling::new(format!("turn {turn}"), 14, Gap::flexible(360, 135, 135, 2))));
    run.push(Handling::new("lay", 25, Gap::flexible(1020, 120, 120, 2)));
    run.push(Handling::new("swap", 8, Gap::flexible(1020, 120, 120, 2)));
    run.push(Handling::new("vinegar", 30, Gap::flexible(11 * DAY_MIN, 0, DAY_MIN, 2)));
    let roll = Gap {
        least_min: 3 * DAY_MIN,
        usual_from_min: 3 * DAY_MIN,
        usual_to_min: 5 * DAY_MIN,
        most_min: 5 * DAY_MIN,
        shift_points: 0,
    };
    run.extend((1..=12).map(|count| Handling::new(format!("roll {count}"), 5, roll)));
    run
}

/// Sleep every night and work on five days.
fn hours() -> Hours {
    let habits = [
        Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 45), (6, 30)),
        Habit::new(Taken::Work, [true, true, true, true, true, false, false], (8, 15), (16, 45)),
    ];
    Hours::of_habits(&habits, 140 * DAY_MIN)
}

/// The time from which the week of [`vat`] is planned.
fn now() -> Now {
    Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC }
}

/// A vat under oil that may begin at any quarter of an hour of five weeks and is looked after for five more, with sleep and work on the wall clock.
fn vat() -> Batch {
    let mut design = Design::default();
    design.keeping.kept_in = KeptIn::Oil;
    design.keeping.keeping_days = 35.0;
    design.week.taken.push(TakenHours {
        by: Habitual::Work,
        days: [true, true, true, true, true, false, false],
        from: time(8, 15, 0, 0),
        to: time(16, 45, 0, 0),
        impossible: false,
    });
    // The run takes three and a half weeks, most of them in the vinegar.
    design.week.wish = Wish::FinishedBy(date(2031, 7, 4).at(18, 0, 0, 0));
    batch(&design).unwrap()
}

/// Measures the schedule alone, and the whole week of a vat; says both in words.
pub fn measured(criterion: &mut Criterion) -> Vec<String> {
    let mut lines = Vec::new();
    let (run, hours) = (run(), hours());
    let planned = median_ms(criterion, "the schedule over five weeks", 30, || {
        black_box(schedule(black_box(&run), &hours, &START).unwrap());
    });
    if let Some(planned) = planned {
        lines.push(format!("The schedule of {} steps over five weeks takes {planned:.2} ms (aim: at most 20).", run.len()));
    }
    let (vat, now) = (vat(), now());
    let tasks = kitchen_week(&vat, &now).unwrap().unwrap().tasks.len();
    let kitchen = median_ms(criterion, "the week of a vat on the wall clock", 30, || {
        black_box(kitchen_week(black_box(&vat), &now).unwrap());
    });
    if let Some(kitchen) = kitchen {
        lines.push(format!(
            "The week of {tasks} tasks on the wall clock, five weeks of starts, takes {kitchen:.2} ms (aim: at most 20)."
        ));
    }
    lines
}
