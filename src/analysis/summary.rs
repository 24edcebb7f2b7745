//! The few figures that are always in sight.

use crate::batch::Batch;
use crate::caution::{PlanEnd, Severity, cautions, plan_end};

/// What the foot of the window says of a batch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Summary {
    /// Cheeses, if the batch came that far.
    pub cheese_count: Option<u32>,
    /// Mass of a dried cheese.
    pub dried_cheese_g: Option<f64>,
    /// How and when the plan ends, if the batch came that far.
    pub end: Option<PlanEnd>,
    /// Serious warnings, cautions and notes, without what is true of every cheese like this.
    pub cautions: [usize; 3],
}

/// Returns the few figures that are always in sight.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::summary, design::Design};
/// let summary = summary(&batch(&Design::default())?);
/// assert_eq!(summary.cheese_count, Some(12));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn summary(batch: &Batch) -> Summary {
    let own: Vec<_> = cautions(batch).into_iter().filter(|caution| !caution.always).collect();
    let count = |severity| own.iter().filter(|caution| caution.severity == severity).count();
    Summary {
        cheese_count: batch.draining.done().map(|drained| drained.cheese_count),
        dried_cheese_g: batch.drying.done().map(|dried| dried.end.cheese_g),
        end: plan_end(batch),
        cautions: [count(Severity::Stop), count(Severity::Caution), count(Severity::Note)],
    }
}
