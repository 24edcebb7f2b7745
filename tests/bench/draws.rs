//! How long the draws of a spread take on one and on two threads.

use super::median_ms;
use criterion::Criterion;
use std::hint::black_box;
use vatsketch::analysis::DRAWS;
use vatsketch::design::Design;
use vatsketch::session::{Work, spread};

/// Measures the spread on one and on two threads; says so in words where both were.
pub fn measured(criterion: &mut Criterion) -> Option<String> {
    let design = Design::default();
    let mut on = |threads: usize| {
        median_ms(criterion, &format!("the spread on {threads} threads"), 10, || {
            let work = Work { draws: DRAWS, threads, goes_on: &|| true };
            black_box(spread(black_box(&design), &work).unwrap());
        })
    };
    let (one, two) = (on(1)?, on(2)?);
    Some(format!(
        "{DRAWS} draws take {one:.0} ms on one thread and {two:.0} ms on two (aim: at most 1000): {:.2} times as fast.",
        one / two
    ))
}
