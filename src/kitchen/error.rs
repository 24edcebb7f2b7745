//! Why nothing can be learned.

use crate::design::DesignError;

/// Why records teach nothing.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LearnError {
    /// No measurement has a plan beside it.
    #[error(
        "nothing in these batches can be compared with the plan; write down temperatures, times, weights or pH, each with the time at which you measured it"
    )]
    NothingMeasured,
    /// A measurement is so far off that nothing can be calculated from it.
    #[error(
        "a number in these batches is so far off that nothing can be calculated from it; look for a slip, such as a missing decimal point, and correct it"
    )]
    NotFinite,
    /// Nobody wants to know any more.
    #[error("stopped: nothing was learned")]
    Stopped,
    /// The design of a record cannot be calculated.
    #[error(transparent)]
    Design(#[from] DesignError),
}
