//! How often somebody gets up at night for a vat, in words.

use crate::plan::{KitchenWeek, WeekTask, day_words};
use crate::units::Units;

/// Numbers that are written as words.
const COUNTS: [&str; 10] = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/// Returns the alarms of a week in the hours of sleep: "one alarm at 03:30"; nothing where it has none.
#[must_use]
pub fn alarm_words(week: &KitchenWeek, units: Units) -> Option<String> {
    let waking: Vec<&WeekTask> = week.tasks.iter().filter(|task| task.wakes).collect();
    let date = waking.first()?.start.date();
    let one_day = waking.iter().all(|task| task.start.date() == date);
    let at = |task: &&WeekTask| {
        let time = task.start_pass.said(units.hour(task.start.time()));
        if one_day { time } else { format!("{} {time}", day_words(task.start.date())) }
    };
    let times: Vec<String> = waking.iter().map(at).collect();
    let count = COUNTS.get(times.len()).map_or_else(|| times.len().to_string(), |count| (*count).to_owned());
    Some(match times.split_last() {
        Some((last, [])) => format!("{count} alarm at {last}"),
        Some((last, before)) => format!("{count} alarms at night: {} and {last}", before.join(", ")),
        None => return None,
    })
}
