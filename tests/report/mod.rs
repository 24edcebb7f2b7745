//! Tests of `src/report`.
