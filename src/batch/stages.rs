//! The stages of a batch, and how each ended.

use super::{MassBalance, Progress};
use crate::design::{Design, Stage};
use crate::process::{
    DrainingOutcome, DryingOutcome, GermsOutcome, Given, KeepingOutcome, MilkOutcome, PicklingOutcome, SaltingOutcome,
    StageBalance, VatOutcome,
};
use std::sync::Arc;

/// Everything that follows from a design.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// The design that it follows from.
    pub design: Design,
    /// What it was calculated under.
    pub given: Given,
    /// Milk, cream, calcium and rennet.
    pub milk: Progress<MilkOutcome>,
    /// Warming, setting and cutting.
    pub vat: Progress<VatOutcome>,
    /// Draining.
    pub draining: Progress<DrainingOutcome>,
    /// Salting.
    pub salting: Progress<SaltingOutcome>,
    /// Drying.
    pub drying: Progress<DryingOutcome>,
    /// Souring in vinegar.
    pub pickling: Progress<PicklingOutcome>,
    /// The jar and its keeping.
    pub keeping: Progress<KeepingOutcome>,
    /// How far germs could grow, as far as the stages came; none without a vat, and none where only the first stages were asked for.
    pub germs: Option<GermsOutcome>,
    /// What went in and what came out, as far as the stages came.
    pub balance: MassBalance,
    /// In a known kitchen, the same design with each constant as near to its record as the log allows ([`Given::guarded`]): what can hurt is judged by
    /// the worse of the two. Shared, since a batch is copied often.
    pub guarded: Option<Arc<Batch>>,
}

impl Batch {
    /// Returns how a stage ended, with what went into it and what came out.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::{batch, Progress}, design::{Design, Stage}};
    /// let mut design = Design::default();
    /// design.draining.mould_count = 1;
    /// let batch = batch(&design)?;
    /// assert_eq!(batch.ending(Stage::Vat).status(), "done");
    /// assert!(batch.ending(Stage::Draining).why_not().is_some_and(|why| why.contains("does not fit")));
    /// assert_eq!(batch.ending(Stage::Drying), Progress::NotReached { waits_for: Stage::Draining });
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn ending(&self, stage: Stage) -> Progress<&StageBalance> {
        match stage {
            Stage::Milk => self.milk.part(|outcome| &outcome.balance),
            Stage::Vat => self.vat.part(|outcome| &outcome.balance),
            Stage::Draining => self.draining.part(|outcome| &outcome.balance),
            Stage::Salting => self.salting.part(|outcome| &outcome.balance),
            Stage::Drying => self.drying.part(|outcome| &outcome.balance),
            Stage::Pickling => self.pickling.part(|outcome| &outcome.balance),
            Stage::Keeping => self.keeping.part(|outcome| &outcome.balance),
        }
    }

    /// Returns the first stage that could not be calculated, if there is one.
    #[must_use]
    pub fn first_missing(&self) -> Option<Stage> {
        Stage::ALL.into_iter().find(|stage| self.ending(*stage).done().is_none())
    }
}
