//! Tests of `src/process`.

mod drying;
