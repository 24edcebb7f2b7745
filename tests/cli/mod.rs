//! Tests of `src/cli`.

mod streams;
