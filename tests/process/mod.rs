//! Tests of `src/process`.

mod drying;
mod wet_stages;
