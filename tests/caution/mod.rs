//! What the maker must be told.

pub(crate) mod cautions;
mod forbids;
mod hours;
mod soured;
mod thresholds;
