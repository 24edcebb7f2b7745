//! Tests of `src/process`.

mod drying;
mod refusals;
mod vat;
mod wet_stages;
