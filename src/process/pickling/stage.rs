//! The vinegar stage of a batch.

use super::PicklingError;
use crate::design::PicklingDesign;
use crate::law::Matter;
use crate::process::{DryingOutcome, StageBalance};

/// What the vinegar stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PicklingOutcome {
    /// All cheeses after the soak.
    pub cheese: Matter,
    /// Cheeses.
    pub cheese_count: u32,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Returns the cheeses as they come out of the vinegar.
///
/// # Errors
/// [`PicklingError`].
pub fn pickling(_design: &PicklingDesign, dried: &DryingOutcome) -> Result<PicklingOutcome, PicklingError> {
    let cheese = dried.cheese;
    let balance = StageBalance { came: cheese, goes_on: cheese, ..StageBalance::default() };
    Ok(PicklingOutcome { cheese, cheese_count: dried.cheese_count, balance })
}
