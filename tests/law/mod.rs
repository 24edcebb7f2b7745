//! Tests of `src/law`.
