//! How a plan ends: whether the cheeses are sour by then.

use super::pickling::{SourAfter, is_sour_if_slow, souring};
use crate::batch::{Batch, dried_min, soaked_min};

/// How a plan ends. Only cheeses that a slow cheese of theirs is sour by are called finished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PlanEnd {
    /// A slow cheese too is sour to its centre when the soak ends.
    Finished {
        /// Hours from the start of warming.
        at_h: f64,
    },
    /// There is no vinegar that could sour them.
    WithoutVinegar {
        /// Hours from the start of warming to the end of the drying.
        at_h: f64,
    },
    /// The soak ends before a slow cheese is sour.
    NotSour {
        /// Hours from the start of warming to the end of the soak.
        at_h: f64,
        /// When the centre is sour, hours from the start of warming.
        middle: SourAfter,
        /// When it is in a slow cheese.
        slow: SourAfter,
    },
}

impl PlanEnd {
    /// Returns the hours from the start of warming to the end of the plan.
    #[must_use]
    pub const fn at_h(&self) -> f64 {
        match *self {
            Self::Finished { at_h } | Self::WithoutVinegar { at_h } | Self::NotSour { at_h, .. } => at_h,
        }
    }

    /// Returns the name that never changes, for scripts.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Finished { .. } => "finished",
            Self::WithoutVinegar { .. } => "without_vinegar",
            Self::NotSour { .. } => "not_sour",
        }
    }
}

/// Returns how the plan of a batch ends; none where it does not come so far.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::{PlanEnd, plan_end}, design::Design};
/// let mut design = Design::default();
/// design.pickling.pickling_h = 20.0;
/// assert!(matches!(plan_end(&batch(&design)?), Some(PlanEnd::NotSour { .. })));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn plan_end(batch: &Batch) -> Option<PlanEnd> {
    let at_h = soaked_min(batch)? / 60.0;
    let Some(soured) = batch.pickling.done().filter(|soured| soured.pickled) else {
        return Some(PlanEnd::WithoutVinegar { at_h });
    };
    if is_sour_if_slow(batch) {
        return Some(PlanEnd::Finished { at_h });
    }
    let dried_h = dried_min(batch)? / 60.0;
    let from_start = |after: SourAfter| match after {
        SourAfter::Hours(hours) => SourAfter::Hours(dried_h + hours),
        SourAfter::Beyond(hours) => SourAfter::Beyond(dried_h + hours),
        SourAfter::Never => SourAfter::Never,
    };
    let souring = souring(soured);
    Some(PlanEnd::NotSour { at_h, middle: from_start(souring.middle), slow: from_start(souring.slow) })
}
