//! Tests of `src/batch`.

mod cautions;
mod compare;
mod compare_cautions;
mod compare_milk;
mod given;
mod inputs;
mod matters;
mod mending;
mod properties;
mod readouts;
mod reuse;
mod solve;
mod spread;
mod stages;
mod why;
