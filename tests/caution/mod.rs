//! What the maker must be told.

mod cautions;
