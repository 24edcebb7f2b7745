//! Tests of `src/batch`.

mod cautions;
mod inputs;
mod readouts;
mod stages;
