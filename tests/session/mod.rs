//! Tests of `src/session`.

mod changes;
mod examples;
mod files;
mod keeping;
mod second;
