//! Tests of `src/file`.

mod keeping;
mod wording;
