//! From a batch to its tasks, in the trade's order. Times come from the batch, hands from its volumes and counts.

mod air;
mod heat_step;
mod jar;
mod meter;
mod moulds;
mod task;
mod vat;

pub use heat_step::{LEAST_LEG_MIN, task_after_cooling};
pub use meter::{MeterTask, meter_task};
pub use task::Task;

use super::{Handling, kept_plan};
use crate::batch::Batch;
use crate::design::Stage;

/// All tasks of a vat.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tasks {
    /// The tasks, in order.
    pub all: Vec<Task>,
    /// How many of them until the cheeses are finished; the others look after the jars.
    pub until_finished: usize,
    /// The first stage that could not be calculated; its tasks and all later ones are missing.
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

/// Returns the tasks of a batch, as far as its stages were calculated.
///
/// Sanitise, measure, the heat step of raw milk where it is pasteurised in the vat, warm, culture, calcium, rennet, test, cut, ladle, turns (the salted ones first) and a
/// measured pH where a culture sours, unmould and pepper, dry with a swap of the trays,
/// vinegar, pour off, oil, and the rolling of the jars. Hands come from volumes and counts times judged seconds; times between tasks from the
/// batch: the warming curve, the tests, the turns, the drying and the soak. What a serious warning forbids is left out ([`kept_plan`]).
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
    let (all, meter) = (&mut tasks.all, meter_task(batch));
    let kept = kept_plan(batch);
    if let (Some(milk), Some(vat)) = (batch.milk.done(), batch.vat.done()) {
        all.extend(vat::tasks(&batch.design, milk, vat, meter.as_ref()));
        if let Some(draining) = batch.draining.done() {
            all.extend(moulds::tasks(batch, vat, draining, meter.as_ref()));
        }
        if let Some(drying) = batch.drying.done() {
            all.extend(air::tasks(&batch.design, drying));
        }
        if let Some(pickling) = batch.pickling.done() {
            jar::add_vinegar(all, (&batch.design, &kept), pickling);
        }
    }
    tasks.until_finished = tasks.all.len();
    if let Some(pickling) = batch.pickling.done() {
        tasks.all.extend(jar::rolling(&kept.keeping, pickling.jars));
    }
    tasks
}
