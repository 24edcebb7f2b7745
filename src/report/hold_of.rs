//! What must be checked in a task of the week.

use super::{Step, StepTime};

/// Returns what must be checked in a task of the week before it goes on, as a line; nothing where nothing must.
///
/// A hold at the end of one task belongs to the task that waits for it, as the thermometer's to the rennet.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, report::{hold_of, plan}};
/// let steps = plan(&batch(&Design::default())?).steps;
/// assert!(hold_of("rennet", &steps).unwrap().starts_with("Hold: Is the milk at 34.5"));
/// assert!(hold_of("warm", &steps).is_none() && hold_of("ladle", &steps).is_none());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn hold_of(task: &str, steps: &[Step]) -> Option<String> {
    let within = |step: &Step| step.times.iter().any(|time| time.task == task);
    let same = |one: &Step, other: &Step| {
        let tasks = |time: &StepTime| other.times.iter().any(|also| also.task == time.task);
        one.times.iter().any(tasks)
    };
    steps.iter().enumerate().find_map(|(at, step)| {
        let hold = step.hold.as_ref()?;
        let waiting = steps.get(at + 1).filter(|next| !same(step, next)).unwrap_or(step);
        within(waiting).then(|| format!("Hold: {}", hold.words(&step.if_off)))
    })
}
