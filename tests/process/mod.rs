//! Tests of `src/process`.

mod drying;
mod drying_rates;
mod drying_section;
mod drying_stage;
mod germs;
mod given;
mod keeping;
mod pickling;
mod refusals;
mod salting;
mod trays;
mod vat;
mod wet_stages;
