//! Every caution of a batch, stage by stage.

use super::caution::Caution;
use super::{drying, keeping, milk, pickling, salting, stopped, time, vat};
use crate::batch::Batch;
use crate::process::Runs;

/// Returns every caution of a batch, the gravest first; those of one severity in the order of the stages.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::Severity, design::Design};
/// let batch = batch(&Design::default())?;
/// assert_eq!(cautions(&batch)[0].severity, Severity::Stop);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn cautions(batch: &Batch) -> Vec<Caution> {
    // Cautions look at the likely ranges, which a batch without the runs beside has not.
    if batch.given.runs == Runs::MiddleOnly {
        return Vec::new();
    }
    let mut all = Vec::new();
    stopped::cautions(batch, &mut all);
    time::cautions(batch, &mut all);
    milk::cautions(batch, &mut all);
    vat::cautions(batch, &mut all);
    salting::cautions(batch, &mut all);
    drying::cautions(batch, &mut all);
    pickling::cautions(batch, &mut all);
    keeping::cautions(batch, &mut all);
    // The sort is stable, so the order of the stages stays within a severity.
    all.sort_by_key(|caution| std::cmp::Reverse(caution.severity));
    all
}
