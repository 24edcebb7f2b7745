//! When the culture is checked with a meter: with another task where one is near, or as a task of its own.

use crate::batch::{Batch, culture_check};
use crate::plan::hands::METER_MOVES;

/// What the task is called.
pub(super) const MEASURE_PH: &str = "Measure the pH";
/// What is said of it: a culture may fail, and nobody sees that.
pub(super) const IF_NOT_SOUR: &str = "Higher than the plan says: the culture is slow or dead, and germs may grow. Measure again after an hour; the plan says what then.";

/// The task in which the culture is checked.
#[derive(Clone, Debug, PartialEq)]
pub struct MeterTask {
    /// Its key: [`MeterTask::ALONE`], or that of the task it goes with.
    pub task: String,
    /// Minutes from the start of warming.
    pub at_min: f64,
}

impl MeterTask {
    /// The key where nothing else is done then.
    pub const ALONE: &'static str = "meter";

    /// Returns whether nothing else is done then.
    #[must_use]
    pub fn is_alone(&self) -> bool {
        self.task == Self::ALONE
    }
}

/// Returns when the culture is checked; none without a culture. While the milk ripens it is checked in the hour itself; what would fall between
/// ripening and ladling waits for the ladle, and what would fall after the unmoulding is done there.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::{Design, SouredBy}, plan::{meter_task, tasks}};
/// let mut design = Design::default();
/// design.milk.soured_by = SouredBy::Culture;
/// let batch = batch(&design)?;
/// let meter = meter_task(&batch).unwrap();
/// assert!(tasks(&batch).position(&meter.task).is_some());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn meter_task(batch: &Batch) -> Option<MeterTask> {
    let (vat, draining) = (batch.vat.done()?, batch.draining.done()?);
    let check_min = culture_check(batch).map_or(f64::INFINITY, |check| check.at_min);
    batch.milk.done()?.soured.sourness.culture?;
    let moves_min = METER_MOVES.value;
    let ripened_min = vat.to_culture_min + 60.0 * batch.design.milk.ripening_h;
    if check_min + moves_min <= ripened_min {
        return Some(MeterTask { task: MeterTask::ALONE.to_owned(), at_min: check_min });
    }
    let unmould_min = vat.to_ladle_min + 60.0 * draining.draining_h;
    let wanted_min = check_min.clamp(vat.to_ladle_min, unmould_min);
    let turns = draining.turns_h.iter().zip(1..).map(|(hour, turn)| (format!("turn_{turn}"), vat.to_ladle_min + 60.0 * hour));
    let ends = [("ladle".to_owned(), vat.to_ladle_min), ("unmould".to_owned(), unmould_min)];
    let apart = |at_min: f64| (at_min - wanted_min).abs();
    let near = turns.chain(ends).filter(|(_, at_min)| apart(*at_min) <= moves_min).min_by(|a, b| apart(a.1).total_cmp(&apart(b.1)));
    Some(match near {
        Some((task, at_min)) => MeterTask { task, at_min },
        None => MeterTask { task: MeterTask::ALONE.to_owned(), at_min: wanted_min },
    })
}
