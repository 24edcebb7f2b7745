//! Tests of `src/design`.
