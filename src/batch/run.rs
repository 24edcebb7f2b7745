//! The calls, in the trade's order.

use super::{Caution, MassBalance, cautions};
use crate::design::{Design, DesignError, Stage};
use crate::process::{
    DrainingOutcome, DryingOutcome, MilkOutcome, SaltingOutcome, StageError, VatOutcome, draining, drying, milk, salting, vat,
};

/// How far a stage came.
#[derive(Clone, Debug, PartialEq)]
pub enum Progress<T> {
    /// Worked out.
    Done(T),
    /// Could not be worked out, and why.
    Failed(StageError),
    /// Waits for an earlier stage that failed.
    NotReached {
        /// The stage that failed.
        waits_for: Stage,
    },
}

impl<T> Progress<T> {
    /// Returns the outcome, if there is one.
    pub const fn done(&self) -> Option<&T> {
        match self {
            Self::Done(outcome) => Some(outcome),
            Self::Failed(_) | Self::NotReached { .. } => None,
        }
    }

    /// Returns the error, if the stage failed.
    pub const fn failed(&self) -> Option<&StageError> {
        match self {
            Self::Failed(error) => Some(error),
            Self::Done(_) | Self::NotReached { .. } => None,
        }
    }
}

/// Everything that follows from a design.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// The design that it follows from.
    pub design: Design,
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
    /// What went in and what came out, as far as the stages came.
    pub balance: MassBalance,
    /// What the maker must be told.
    pub cautions: Vec<Caution>,
}

/// Returns everything that follows from a design. It never fails as a whole: each stage is done, failed or not reached.
///
/// # Errors
/// [`DesignError`] only if the design itself holds a number that is not finite or not in its range.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design};
/// let batch = batch(&Design::default())?;
/// assert!(batch.milk.done().is_some());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn batch(design: &Design) -> Result<Batch, DesignError> {
    design.check()?;
    let milk = begin(milk(&design.milk));
    let vat = after(&milk, Stage::Milk, |milk| vat(&design.vat, design.draining.drip_end_moisture_percent, milk));
    let draining = after(&vat, Stage::Vat, |vat| draining(&design.draining, vat));
    let salting = after(&draining, Stage::Draining, |drained| salting(&design.salting, design.draining.turn_count, drained));
    let drying = after(&salting, Stage::Salting, |salted| drying(&design.drying, salted, design.draining.draining_temperature_c));
    let mut batch = Batch {
        design: design.clone(),
        milk,
        vat,
        draining,
        salting,
        drying,
        balance: MassBalance::default(),
        cautions: Vec::new(),
    };
    batch.balance = MassBalance::of(&batch);
    batch.cautions = cautions(&batch);
    Ok(batch)
}

fn begin<T, E: Into<StageError>>(result: Result<T, E>) -> Progress<T> {
    match result {
        Ok(outcome) => Progress::Done(outcome),
        Err(error) => Progress::Failed(error.into()),
    }
}

fn after<T, U, E: Into<StageError>>(before: &Progress<T>, stage: Stage, next: impl FnOnce(&T) -> Result<U, E>) -> Progress<U> {
    match before {
        Progress::Done(outcome) => begin(next(outcome)),
        Progress::Failed(_) => Progress::NotReached { waits_for: stage },
        Progress::NotReached { waits_for } => Progress::NotReached { waits_for: *waits_for },
    }
}
