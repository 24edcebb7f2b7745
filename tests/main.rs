//! All tests in one program, one folder for each folder of `src`: linking once is much quicker than linking a dozen times.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::float_cmp,
    clippy::unreadable_literal
)]

mod analysis;
mod batch;
mod caution;
mod cli;
mod curve;
mod design;
mod export;
mod figure;
mod file;
mod house;
mod kitchen;
mod law;
mod numeric;
mod plan;
mod process;
mod record;
mod report;
mod session;
mod source;
#[cfg(feature = "gui")]
mod ui;
mod units;
mod words;

/// Returns one of the invented examples.
fn example(name: &str) -> vatsketch::design::Design {
    let named = vatsketch::session::EXAMPLES.iter().find(|example| example.name == name);
    named.unwrap().design().unwrap()
}
