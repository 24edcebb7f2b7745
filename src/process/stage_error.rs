//! Why a stage could not be calculated, whichever it is.

use super::{DrainingError, DryingError, KeepingError, MilkError, PicklingError, SaltingError, VatError};

/// Why a stage could not be calculated.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum StageError {
    /// The milk cannot be made.
    #[error(transparent)]
    Milk(#[from] MilkError),
    /// The vat cannot be made.
    #[error(transparent)]
    Vat(#[from] VatError),
    /// The curd cannot be drained.
    #[error(transparent)]
    Draining(#[from] DrainingError),
    /// The cheeses cannot be salted.
    #[error(transparent)]
    Salting(#[from] SaltingError),
    /// The cheeses cannot be dried.
    #[error(transparent)]
    Drying(#[from] DryingError),
    /// The cheeses cannot be soured.
    #[error(transparent)]
    Pickling(#[from] PicklingError),
    /// Nothing can be said about the keeping.
    #[error(transparent)]
    Keeping(#[from] KeepingError),
}
