//! A long run over five weeks, with sleep and work; the amounts are invented.

use vatsketch::plan::{Gap, Habit, Handling, Hours, Start, Taken};

const DAY_MIN: i64 = 24 * 60;

/// Starts over five weeks of quarters of an hour; the run reaches beyond them.
pub const START: Start = Start::Earliest { from_min: 0, within_min: 35 * DAY_MIN, wait_points: 0 };

/// A vat with two dozen turns, drying, vinegar, oil and a dozen rollings.
pub fn run() -> Vec<Handling> {
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
pub fn hours() -> Hours {
    let habits = [
        Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 45), (6, 30)),
        Habit::new(Taken::Work, Habit::WORKING_DAYS, (8, 15), (16, 45)),
    ];
    Hours::of_habits(&habits, 140 * DAY_MIN)
}
