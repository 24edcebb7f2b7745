//! How the cheeses are kept as far as the warnings let a plan go.

use crate::batch::Batch;
use crate::caution::{COLD_DAYS, ForbiddenStep, forbidden_steps, soak_days};
use crate::design::{KeepingDesign, KeptIn};

/// The keeping that a plan may plan.
#[derive(Clone, Debug, PartialEq)]
pub struct KeptPlan {
    /// What is planned: the choices of the design, less what is forbidden.
    pub keeping: KeepingDesign,
    /// Whether oil was chosen and is left out.
    pub without_oil: bool,
    /// Whether the days that were chosen are cut short.
    pub fewer_days: bool,
}

/// Returns the keeping as far as no serious warning forbids it: no oil on a cheese that is not sour, and no more days in the cold, the soak counted, than rules allow
/// a moist cheese that is not sour.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::{Design, KeptIn}, plan::kept_plan};
/// let mut design = Design::default();
/// design.keeping.kept_in = KeptIn::Oil;
/// design.pickling.pickling_h = 20.0;
/// let kept = kept_plan(&batch(&design)?);
/// assert!(kept.without_oil && kept.keeping.kept_in == KeptIn::Vinegar);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn kept_plan(batch: &Batch) -> KeptPlan {
    let chosen = &batch.design.keeping;
    let mut keeping = *chosen;
    let (pickled, soak_days) = (batch.design.pickling.pickled, soak_days(&batch.design.pickling));
    for (step, _) in forbidden_steps(batch) {
        match step {
            ForbiddenStep::Oil => keeping.kept_in = if pickled { KeptIn::Vinegar } else { KeptIn::Bare },
            // The days in the vinegar count: where they are too many already, only a meter lets the plan go on.
            ForbiddenStep::LongInTheCold => {
                let left_days = (COLD_DAYS.value - soak_days).max(0.0);
                keeping.keeping_days = keeping.keeping_days.min(left_days);
            }
        }
    }
    let without_oil = keeping.kept_in != chosen.kept_in;
    let fewer_days = keeping.keeping_days < chosen.keeping_days;
    KeptPlan { keeping, without_oil, fewer_days }
}
