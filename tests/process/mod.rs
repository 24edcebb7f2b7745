//! Tests of `src/process`.
