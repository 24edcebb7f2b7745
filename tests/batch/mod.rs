//! Tests of `src/batch`.

mod cautions;
mod inputs;
mod properties;
mod readouts;
mod reuse;
mod stages;
