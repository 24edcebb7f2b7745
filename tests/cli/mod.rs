//! Tests of `src/cli`.
