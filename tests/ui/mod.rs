//! Tests of `src/ui`.
