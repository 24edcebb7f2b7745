//! What the maker must be told.

pub(crate) mod cautions;
mod hours;
mod soured;
