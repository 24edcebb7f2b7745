//! Tests of `src/file`.
