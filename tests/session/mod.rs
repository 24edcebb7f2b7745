//! Tests of `src/session`.

mod keeping;
