//! Tests of `src/process`.

mod drying;
mod vat;
mod wet_stages;
