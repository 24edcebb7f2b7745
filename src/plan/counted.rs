//! The tasks while there is no time to begin yet: counted from the first one, each after its usual wait.

use super::tasks;
use crate::batch::Batch;
use crate::design::Stage;

/// A task whose time is counted from the first one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CountedTask {
    /// Its stable key.
    pub key: String,
    /// The stage it belongs to.
    pub stage: Stage,
    /// What is done, verb first.
    pub name: String,
    /// More about it; may be empty.
    pub what: String,
    /// What does not fit, if anything.
    pub note: Option<String>,
    /// Minutes from the first task to this one.
    pub after_min: i64,
    /// How long hands are needed.
    pub hands_min: i64,
}

/// The tasks with counted times.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Counted {
    /// The tasks, in order.
    pub tasks: Vec<CountedTask>,
    /// Minutes from the first task until the cheeses are finished; none if that was not calculated.
    pub finished_min: Option<i64>,
    /// The first stage that could not be calculated; its tasks and all later ones are missing.
    pub ends_before: Option<Stage>,
}

/// Returns the sentence that says where a plan stops for want of a stage.
#[must_use]
pub fn ends_before_words(stage: Stage) -> String {
    format!("The plan ends before “{}”, which could not be calculated.", stage.title())
}

/// Returns the tasks of a batch with the usual wait between them: no hours of a maker, no clock.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, plan::counted};
/// let counted = counted(&batch(&Design::default())?);
/// assert_eq!((counted.tasks[0].key.as_str(), counted.tasks[0].after_min), ("sanitise", 0));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn counted(batch: &Batch) -> Counted {
    let all = tasks(batch);
    let mut at_min = 0;
    let mut counted = Vec::with_capacity(all.all.len());
    for task in &all.all {
        counted.push(CountedTask {
            key: task.key.clone(),
            stage: task.stage,
            name: task.handling.name.clone(),
            what: task.what.clone(),
            note: task.note.clone(),
            after_min: at_min,
            hands_min: task.handling.hands_min,
        });
        at_min += task.handling.then.usual_from_min;
    }
    let last = all.until_finished.checked_sub(1).and_then(|place| counted.get(place));
    let finished_min = last.filter(|_| all.ends_before.is_none()).map(|task| task.after_min + task.hands_min);
    Counted { tasks: counted, finished_min, ends_before: all.ends_before }
}
