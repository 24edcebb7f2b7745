//! What the maker must be told.

mod by_stage;
pub(crate) mod cautions;
mod forbids;
mod hours;
mod soured;
mod thresholds;
