//! What the maker reads.

mod figures;
