//! Tests of `src/source`.
