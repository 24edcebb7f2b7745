//! Tests of `src/file`.

mod keeping;
mod reading;
mod saved;
mod wording;
mod writing;
