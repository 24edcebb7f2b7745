//! Tests of `src/batch`.

mod cautions;
mod compare;
mod inputs;
mod matters;
mod mending;
mod properties;
mod readouts;
mod reuse;
mod solve;
mod stages;
mod why;
