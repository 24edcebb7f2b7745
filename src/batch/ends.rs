//! How each stage of a batch ended, whatever its outcome's type.

use super::{Batch, Progress};
use crate::design::Stage;

/// How one stage ended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StageEnd {
    /// The stage.
    pub stage: Stage,
    /// `done`, `failed` or `not_reached`.
    pub status: &'static str,
    /// Why it is not done.
    pub error: Option<String>,
}

impl StageEnd {
    fn of<T>(stage: Stage, progress: &Progress<T>) -> Self {
        match progress {
            Progress::Done(_) => Self { stage, status: "done", error: None },
            Progress::Failed(error) => Self { stage, status: "failed", error: Some(error.to_string()) },
            Progress::NotReached { waits_for } => {
                Self { stage, status: "not_reached", error: Some(format!("waits for {}", waits_for.key())) }
            }
        }
    }

    /// Returns whether the stage was worked out.
    #[must_use]
    pub const fn is_done(&self) -> bool {
        self.error.is_none()
    }
}

/// Returns how each stage ended, in the trade's order.
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, stage_ends, StageEnd}, design::Design};
/// assert!(stage_ends(&batch(&Design::default())?).iter().all(StageEnd::is_done));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn stage_ends(batch: &Batch) -> Vec<StageEnd> {
    Stage::ALL
        .into_iter()
        .map(|stage| match stage {
            Stage::Milk => StageEnd::of(stage, &batch.milk),
            Stage::Vat => StageEnd::of(stage, &batch.vat),
            Stage::Draining => StageEnd::of(stage, &batch.draining),
            Stage::Salting => StageEnd::of(stage, &batch.salting),
            Stage::Drying => StageEnd::of(stage, &batch.drying),
            Stage::Pickling => StageEnd::of(stage, &batch.pickling),
            Stage::Keeping => StageEnd::of(stage, &batch.keeping),
        })
        .collect()
}
