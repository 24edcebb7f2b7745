//! Tests of `src/process`.

mod drying;
mod refusals;
mod vat;
mod drying_stage;
mod trays;
mod wet_stages;
