//! Tests of `src/batch`.
