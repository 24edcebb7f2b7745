//! Two hundred invented kitchens, every other one of which does not follow our model: how often the ranges that are learned hold what is so, how much
//! narrower they are than before, and how much nearer the next batch comes. A number after `cargo bench --bench kitchens --` is how many.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::print_stdout,
    missing_docs,
    dead_code,
    reason = "a measurement, which prints what it found and ends where it cannot"
)]

#[path = "../kitchen/careful.rs"]
mod careful;
#[path = "../kitchen/study.rs"]
mod study;

use careful::Differs;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use study::{Studied, kitchens, summary};

fn main() {
    let count = std::env::args().skip(1).find_map(|word| word.parse().ok()).unwrap_or(200);
    let (kitchens, next, done) = (kitchens(count), AtomicUsize::new(0), Mutex::new(Vec::new()));
    let one_after_the_other = || {
        while let Some(kitchen) = kitchens.get(next.fetch_add(1, Ordering::Relaxed)) {
            let studied = study::study(kitchen);
            done.lock().unwrap().push((kitchen.seed, studied));
        }
    };
    std::thread::scope(|scope| {
        scope.spawn(one_after_the_other);
        one_after_the_other();
    });
    let mut done = done.into_inner().unwrap();
    done.sort_by_key(|(seed, _)| *seed);
    let all: Vec<&Studied> = done.iter().map(|(_, studied)| studied).collect();
    say("all kitchens", &all);
    for differs in [Differs::Not, Differs::Diffusivity, Differs::BathLoss, Differs::TwoDrips, Differs::Drift] {
        let of: Vec<&Studied> = all.iter().copied().filter(|one| one.differs == differs).collect();
        say(&format!("{differs:?}"), &of);
    }
    let mut keys: Vec<&str> = all.iter().flat_map(|one| one.told.iter().map(|told| told.0)).collect();
    keys.sort_unstable();
    keys.dedup();
    for key in keys {
        let of: Vec<Studied> = all
            .iter()
            .map(|one| Studied { told: one.told.iter().filter(|told| told.0 == key).copied().collect(), ..(*one).clone() })
            .collect();
        let (share, count, width) = summary(&of.iter().collect::<Vec<_>>());
        println!(
            "  {key:24} told in {count:4}; {:3.0} % hold what is so; {:3.0} % as wide as before",
            100.0 * share,
            100.0 * width
        );
    }
}

fn say(of: &str, studied: &[&Studied]) {
    if studied.is_empty() {
        return;
    }
    let (share, count, width) = summary(studied);
    let median = |of: &dyn Fn(&Studied) -> f64| {
        let mut all: Vec<f64> = studied.iter().map(|one| of(one)).collect();
        all.sort_by(f64::total_cmp);
        all[all.len() / 2]
    };
    let nearer = studied.iter().filter(|one| one.held_out.1 < one.held_out.0).count();
    println!(
        "{of:14} {:4} kitchens (off by {:.2}, now {:.2}): {:.1} % of {count} ranges hold what is so; at the median {:.0} % as wide as before; held-out batch off by {:.2}, now {:.2} (nearer in {nearer})",
        studied.len(),
        median(&|one| one.learned_from.0),
        median(&|one| one.learned_from.1),
        100.0 * share,
        100.0 * width,
        median(&|one| one.held_out.0),
        median(&|one| one.held_out.1),
    );
}
