//! From a batch to its tasks, in the trade's order. Times come from the batch, hands from its volumes and counts.

mod air;
mod jar;
mod moulds;
mod vat;

use super::hands::SHIFT_POINTS;
use super::{Gap, Handling, length};
use crate::batch::Batch;
use crate::design::Stage;

/// One task.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Task {
    /// A stable key: the same task of the same vat has it again after every change.
    pub key: String,
    /// The stage it belongs to.
    pub stage: Stage,
    /// What is done, how long hands are needed, and how long it is until the next task.
    pub handling: Handling,
    /// More about it, where that helps.
    pub what: String,
    /// What does not fit, if its hands take longer than the calculation leaves until the next task.
    pub note: Option<String>,
}

impl Task {
    /// Returns a task; where its hands take longer than the gap, the gap grows and a note says so.
    fn new(key: impl Into<String>, stage: Stage, name: impl Into<String>, hands_min: i64, then: Gap) -> Self {
        let name = name.into();
        let note = (hands_min > then.most_min).then(|| {
            let (hands, gap) = (length(hands_min), length(then.most_min));
            format!("“{name}” takes {hands} of work, more than the {gap} until the next step, which follows when you are free.")
        });
        let handling = Handling::new(name, hands_min, then.not_before(hands_min));
        Self { key: key.into(), stage, handling, what: String::new(), note }
    }

    fn saying(self, what: impl Into<String>) -> Self {
        Self { what: what.into(), ..self }
    }
}

/// All tasks of a vat.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tasks {
    /// The tasks, in order.
    pub all: Vec<Task>,
    /// How many of them until the cheeses are finished; the others look after the jars.
    pub until_finished: usize,
    /// The first stage that could not be worked out; its tasks and all later ones are missing.
    pub ends_before: Option<Stage>,
}

impl Tasks {
    /// Returns the handlings alone.
    #[must_use]
    pub fn handlings(&self) -> Vec<Handling> {
        self.all.iter().map(|task| task.handling.clone()).collect()
    }

    /// Returns the place of the task with this key.
    #[must_use]
    pub fn position(&self, key: &str) -> Option<usize> {
        self.all.iter().position(|task| task.key == key)
    }
}

/// What a quarter of an hour outside the usual gap costs.
const fn shift_points() -> i64 {
    SHIFT_POINTS.value as i64
}

/// Returns a gap that is never shorter than usual, free up to so much later, and possible at a price for as long again.
const fn may_wait(usual_min: i64, waits_min: i64) -> Gap {
    Gap {
        least_min: usual_min,
        usual_from_min: usual_min,
        usual_to_min: usual_min + waits_min,
        most_min: usual_min + 2 * waits_min,
        shift_points: shift_points(),
    }
}

/// Returns the tasks of a batch, as far as its stages were worked out.
///
/// Sanitise, measure, warm, calcium, rennet, test, cut, ladle, turns (the salted ones first), unmould and pepper, dry with a swap of the trays,
/// vinegar, pour off, oil, and the rolling of the jars. Hands come from volumes and counts times judged seconds; times between tasks from the
/// batch: the warming curve, the tests, the turns, the drying and the soak.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, plan::tasks};
/// let tasks = tasks(&batch(&Design::default())?);
/// assert_eq!(tasks.all[0].key, "sanitise");
/// assert!(tasks.position("turn_5") < tasks.position("unmould"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn tasks(batch: &Batch) -> Tasks {
    let mut tasks = Tasks { ends_before: batch.first_missing(), ..Tasks::default() };
    let all = &mut tasks.all;
    if let (Some(milk), Some(vat)) = (batch.milk.done(), batch.vat.done()) {
        all.extend(vat::tasks(&batch.design, milk, vat));
        if let Some(draining) = batch.draining.done() {
            all.extend(moulds::tasks(batch, vat, draining));
        }
        if let Some(drying) = batch.drying.done() {
            all.extend(air::tasks(&batch.design, drying));
        }
        if let Some(pickling) = batch.pickling.done() {
            jar::add_vinegar(all, &batch.design, pickling);
        }
    }
    tasks.until_finished = tasks.all.len();
    if let Some(pickling) = batch.pickling.done() {
        tasks.all.extend(jar::rolling(&batch.design.keeping, pickling.jars));
    }
    tasks
}
