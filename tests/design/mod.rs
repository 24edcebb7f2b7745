//! Tests of `src/design`.

pub mod any;
mod reading;
mod rows;
mod wording;
