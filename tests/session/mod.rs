//! Tests of `src/session`.

mod aim;
mod changes;
mod examples;
mod files;
mod jobs;
mod keeping;
mod second;
mod week;
