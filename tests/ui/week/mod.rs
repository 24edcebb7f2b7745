//! Tests of `src/ui/week`.

mod page;
pub mod pictures;
