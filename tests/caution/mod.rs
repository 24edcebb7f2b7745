//! What the maker must be told.

pub(crate) mod cautions;
mod soured;
