//! Tests of `src/numeric`.
