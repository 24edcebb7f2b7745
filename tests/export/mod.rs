//! Tests of `src/export`.
