//! Tests of `src/process`.

mod draining_course;
mod drying;
mod drying_rates;
mod drying_section;
mod drying_souring;
mod drying_stage;
mod germs;
mod germs_likely;
mod given;
mod heat_step;
mod keeping;
mod milk_souring;
mod pickling;
mod refusals;
mod salting;
mod souring;
mod trays;
mod vat;
mod vat_souring;
mod wet_stages;

pub use pickling::{brined_rows, egg_rows};
