//! The steps by days, as they are printed: what is done again on another day is listed again under that day.

use super::{Step, StepTime};
use jiff::civil::Date;

/// One day's lines.
#[derive(Clone, Debug, PartialEq)]
pub struct Day<'a> {
    /// The day; none where times only count from the start of warming.
    pub date: Option<Date>,
    /// What is done, in order.
    pub lines: Vec<Line<'a>>,
}

/// A step, or as much of it as one day holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Line<'a> {
    /// The step.
    pub step: &'a Step,
    /// Those of its times that fall on this day.
    pub times: &'a [StepTime],
    /// Whether it stood already under a day before.
    pub again: bool,
    /// Whether it follows at once on the line before, as a part of the same task.
    pub at_once: bool,
    /// Whether its times have each their own day, which is said with them; a single one stands under its day like any other.
    pub by_date: bool,
}

/// Boxes that one line may hold where each has its own day; more would not fit on a page with certainty.
const MOST_DATES: usize = 12;

/// Returns the steps by days. Without a week they are one day without a date.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, report::{agenda, plan}};
/// let plan = plan(&batch(&Design::default())?);
/// let days = agenda(&plan.steps);
/// assert_eq!((days.len(), days[0].date, days[0].lines.len()), (1, None, plan.steps.len()));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn agenda<'a>(steps: impl IntoIterator<Item = &'a Step>) -> Vec<Day<'a>> {
    let mut days: Vec<Day<'a>> = Vec::new();
    let mut before: Option<&str> = None;
    for step in steps {
        for (number, times) in pieces(step).into_iter().enumerate() {
            let date = times.first().and_then(StepTime::day);
            let task = times.first().map(|time| time.task.as_str());
            let line = Line {
                step,
                times,
                again: number > 0,
                at_once: number == 0 && task.is_some() && task == before,
                by_date: step.by_date && times.len() > 1,
            };
            before = times.last().map(|time| time.task.as_str());
            match days.last_mut() {
                Some(day) if day.date == date => day.lines.push(line),
                Some(_) | None => days.push(Day { date, lines: vec![line] }),
            }
        }
    }
    days
}

/// Returns the times of a step in pieces of one day each, or of a few days where each time has its own.
fn pieces(step: &Step) -> Vec<&[StepTime]> {
    if step.by_date {
        step.times.chunks(MOST_DATES).collect()
    } else {
        step.times.chunk_by(|one, next| one.day() == next.day()).collect()
    }
}
