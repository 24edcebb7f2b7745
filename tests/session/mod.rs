//! Tests of `src/session`.

mod aim;
mod changes;
mod examples;
mod files;
mod keeping;
mod second;
