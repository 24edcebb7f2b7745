//! What the maker reads.

mod figures;
mod germ_table;
