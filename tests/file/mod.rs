//! Tests of `src/file`.

mod address;
mod frozen;
mod id;
mod keeping;
mod kitchen;
mod log;
mod reading;
mod saved;
mod wording;
mod writing;
