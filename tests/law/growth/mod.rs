//! Tests of `src/law/growth`.

mod limits;
mod organisms;
mod tables;
