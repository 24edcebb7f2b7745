//! The steps on two pages: the day on which the curd is made, and the days after.

use super::{Day, Hold, Line, Plan, Step, StepTime, agenda};
use crate::record::EntryKind;

/// The two pages.
#[derive(Clone, Debug, PartialEq)]
pub struct TwoPages<'a> {
    /// The make day: until the curd is in the moulds and what belongs to that evening.
    pub make_day: Vec<Day<'a>>,
    /// All turns, told once with their times.
    pub turns: Vec<Turns<'a>>,
    /// What comes after.
    pub after: Vec<Day<'a>>,
}

/// Turns that are done alike.
#[derive(Clone, Debug, PartialEq)]
pub struct Turns<'a> {
    /// What is done.
    pub step: &'a Step,
    /// When.
    pub times: &'a [StepTime],
}

impl Line<'_> {
    /// Returns what is checked after this line; a step that goes on under another day is checked after its last line.
    #[must_use]
    pub fn hold(&self) -> Option<&Hold> {
        let ends = self.times.last().map(|time| &time.task) == self.step.times.last().map(|time| &time.task);
        self.step.hold.as_ref().filter(|_| ends)
    }

    /// Returns what its blanks are in the log, in the order in which they are printed: where it has a hold, only those of the hold are.
    #[must_use]
    pub fn records(&self) -> Vec<EntryKind> {
        self.hold().map_or_else(|| self.step.record.into_iter().collect(), |hold| hold.records.clone())
    }
}

/// Returns the steps of a plan on two pages.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, report::{plan, two_pages}};
/// let plan = plan(&batch(&Design::default())?);
/// let pages = two_pages(&plan);
/// assert_eq!(pages.make_day[0].lines.last().unwrap().step.verb, "Ladle");
/// assert_eq!(pages.after[0].lines[0].step.verb, "Unmould");
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn two_pages(plan: &Plan) -> TwoPages<'_> {
    let is_turn = |step: &&Step| step.times.iter().any(|time| time.task.starts_with("turn_"));
    let later = |step: &Step| is_turn(&step) || step.times.iter().any(|time| time.task == "unmould");
    let ends = plan.steps.iter().position(later).unwrap_or(plan.steps.len());
    let (first, rest) = plan.steps.split_at(ends);
    TwoPages {
        make_day: agenda(first),
        turns: rest.iter().filter(is_turn).map(|step| Turns { step, times: &step.times }).collect(),
        after: agenda(rest.iter().filter(|step| !is_turn(step))),
    }
}
