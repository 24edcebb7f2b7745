//! Tests of `src/batch`.

mod given;
mod inputs;
mod properties;
mod reuse;
mod stages;
