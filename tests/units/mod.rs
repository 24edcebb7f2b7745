//! Tests of `src/units`.

mod amounts;
mod measures;
mod reading;
mod told;
