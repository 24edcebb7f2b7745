//! What is shown of a batch, calculated again only after an entry, or when the clock has gone on.

use crate::batch::{Batch, batch};
use crate::curve::{MeasuredLine, Spread, measured, run_measured};
use crate::design::Stage;
use crate::plan::{Now, tasks};
use crate::record::{BatchRecord, Entry, EntryValue, Holds};
use crate::report::{AgainstPlan, LogForm, NextTasks, against_plan, entry_words, log_form, may_be_going_on, next_tasks, plan_at};
use crate::units::Units;
use jiff::civil::DateTime;
use std::collections::BTreeMap;
use std::sync::Arc;

/// How a batch is looked at.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Look<'a> {
    /// What time it is.
    pub(in crate::ui) now: &'a Now,
    /// The units that are shown.
    pub(in crate::ui) units: Units,
    /// How far the plan of the open design may be wrong, once that is known.
    pub(in crate::ui) spread: Option<&'a Arc<Spread>>,
}

/// What can be written down of a batch, in the order of its plan, and what was measured beside it.
#[derive(Clone, Debug)]
pub(in crate::ui) struct LogShown {
    /// What it was calculated from.
    of: (BatchRecord, Units, Option<Arc<Spread>>),
    /// The batch as it was planned; none where the design of the day cannot be calculated any more.
    planned: Option<Batch>,
    /// What can be written down.
    pub(in crate::ui) form: LogForm,
    /// What was measured, as it lies on the curves.
    pub(in crate::ui) lines: Vec<MeasuredLine>,
    /// What was weighed, at the stations of the run, kg.
    pub(in crate::ui) weighed: Vec<(Stage, f64)>,
    /// What was measured beside the plan; none where the design of the day cannot be calculated any more.
    pub(in crate::ui) against: Option<AgainstPlan>,
    /// What comes next, and the minute for which it was calculated; none where it was not asked for.
    next: Option<(DateTime, Option<NextTasks>)>,
    /// What the plan calls its tasks, by their keys.
    names: BTreeMap<String, String>,
}

impl LogShown {
    /// Returns what is shown of a batch.
    ///
    /// * `kept`: what was shown last
    pub(in crate::ui) fn of(record: &BatchRecord, look: Look<'_>, kept: Option<Self>) -> Self {
        // The spread is that of the open design; of another one nothing is known.
        let spread = look.spread.filter(|spread| spread.design.same_cheese(&record.design));
        let is_it = |kept: &Self| {
            let (of, units, known) = &kept.of;
            let same_spread = match (known, spread) {
                (Some(known), Some(spread)) => Arc::ptr_eq(known, spread),
                (known, spread) => known.is_none() && spread.is_none(),
            };
            *units == look.units && same_spread && of == record
        };
        kept.filter(is_it).unwrap_or_else(|| Self::calculated(record, look, spread))
    }

    fn calculated(record: &BatchRecord, look: Look<'_>, spread: Option<&Arc<Spread>>) -> Self {
        let of = (record.clone(), look.units, spread.cloned());
        let Ok(made) = batch(&record.design) else {
            let (lines, weighed) = (Vec::new(), Vec::new());
            return Self {
                of,
                planned: None,
                form: log_form(None),
                lines,
                weighed,
                against: None,
                next: None,
                names: BTreeMap::new(),
            };
        };
        let spread = spread.map(AsRef::as_ref);
        let lines = measured(&made, record, spread);
        Self {
            of,
            form: log_form(Some(&plan_at(&made, look.now).shown_in(look.units))),
            weighed: run_measured(&made, record, &lines),
            lines,
            against: Some(against_plan(&made, record, spread, look.units)),
            names: tasks(&made).all.into_iter().map(|task| (task.key, task.handling.name)).collect(),
            planned: Some(made),
            next: None,
        }
    }

    /// Calculates what comes next, where the clock has gone on by a minute since.
    pub(in crate::ui) fn follow_clock(&mut self, now: &Now) {
        let (record, units, _) = &self.of;
        let here = now.for_week(&record.design.week).at;
        // Whole minutes: what is shown changes with them alone.
        let minute = here.date().at(here.hour(), here.minute(), 0, 0);
        if self.next.as_ref().is_none_or(|(at, _)| *at != minute) {
            let going = self.planned.as_ref().filter(|planned| may_be_going_on(planned, record, here));
            self.next = Some((minute, going.map(|planned| next_tasks(planned, record, now, *units))));
        }
    }

    /// Returns what the plan calls a task.
    fn task_name(&self, key: &str) -> Option<&str> {
        self.names.get(key).map(String::as_str)
    }

    /// Returns what an entry says; a task by its name in the plan.
    pub(in crate::ui) fn words(&self, entry: &Entry) -> String {
        let named = match (&entry.value, entry.kind.row().holds) {
            (EntryValue::Words(key), Holds::Task) => self.task_name(key),
            _ => None,
        };
        named.map_or_else(|| entry_words(entry, self.of.1), |name| format!("“{name}”"))
    }

    /// Leaves out what comes next: the batch is not being made.
    pub(in crate::ui) fn without_next(&mut self) {
        self.next = None;
    }

    /// Returns what comes next, and what the clock says.
    pub(in crate::ui) fn next(&self) -> Option<(&NextTasks, DateTime)> {
        self.next.as_ref().and_then(|(now, next)| Some((next.as_ref()?, *now)))
    }
}
