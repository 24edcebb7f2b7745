//! Tests of `src/session`.
