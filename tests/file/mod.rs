//! Tests of `src/file`.

mod address;
mod frozen;
mod id;
mod keeping;
mod killed;
mod kitchen;
mod log;
mod mangled;
mod reading;
mod saved;
mod wording;
mod writing;
