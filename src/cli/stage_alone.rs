//! What `vatsketch stage` can calculate alone: a stage of the batch, or souring by itself.

use crate::design::Stage;

/// What is calculated alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StageAlone {
    /// A stage of the batch.
    Stage(Stage),
    /// Souring of a described milk or curd.
    Souring,
}

impl StageAlone {
    /// Returns everything that can be calculated alone: name, explanation and what it is.
    pub(super) fn all() -> impl Iterator<Item = (&'static str, &'static str, Self)> {
        let others = [("souring", "Souring of milk or curd", Self::Souring)];
        Stage::ALL.map(|stage| (stage.key(), stage.title(), Self::Stage(stage))).into_iter().chain(others)
    }
}
