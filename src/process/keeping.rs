//! The jar and its keeping.

use super::{PicklingOutcome, StageBalance};
use crate::law::Matter;

/// What the keeping stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KeepingOutcome {
    /// All cheeses.
    pub cheese: Matter,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why nothing can be said about the keeping.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum KeepingError {}

/// Returns what may be said about the keeping of the cheeses.
///
/// # Errors
/// None yet.
pub fn keeping(pickled: &PicklingOutcome) -> Result<KeepingOutcome, KeepingError> {
    let cheese = pickled.cheese;
    Ok(KeepingOutcome { cheese, balance: StageBalance { came: cheese, goes_on: cheese, ..StageBalance::default() } })
}
