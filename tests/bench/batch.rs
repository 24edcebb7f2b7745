//! How long a batch takes, and how its drying compares with a general-purpose solver of the same equations in the same run.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::print_stdout,
    reason = "a measurement, which prints what it found and ends where it cannot"
)]

mod draws;
mod germs;
mod log;
mod week;

use criterion::{Criterion, SamplingMode};
use ivp::prelude::{FirstOrderSystem, Ivp, Method};
use std::cell::RefCell;
use std::hint::black_box;
use std::time::{Duration, Instant};
use vatsketch::batch::{Batch, batch};
use vatsketch::design::Design;
#[cfg(feature = "paper")]
use vatsketch::export::{Paper, pdf};
use vatsketch::process::{AirNow, AirPlan, Cheese, DiscRun, Fineness, Place, Problem, pickling, problem};
#[cfg(feature = "paper")]
use vatsketch::report::plan;

/// Hours at which the solvers are compared: the skin dries in the first, the middle in the last.
const HOURS: [f64; 6] = [1.0, 3.0, 6.0, 12.0, 24.0, 48.0];
/// Tolerances that the general solver may choose from.
const TOLERANCES: [f64; 6] = [3e-2, 1e-2, 5e-3, 3e-3, 2e-3, 1e-3];
/// The general solver's tolerance where it serves as the truth.
const TRUTH: f64 = 1e-9;
/// Our tolerance where it checks that truth.
const OUR_TIGHTEST: f64 = 1e-6;

/// The drying of one cheese as the general solver sees it.
struct Drying<'a> {
    run: RefCell<DiscRun<'a>>,
    air: AirNow,
}

impl FirstOrderSystem for Drying<'_> {
    fn derivative(&self, _at_s: f64, state: &[f64], rates: &mut [f64]) {
        self.run.borrow_mut().rates(state, &self.air, rates);
    }
}

impl Drying<'_> {
    /// Returns the states at the hours. A temperature of 40 °C may be wrong by as many parts as a water content, as in our own steps.
    fn by(&self, method: Method, tolerance: f64) -> Vec<Vec<f64>> {
        let start = DiscRun::new(self.run.borrow().problem()).state();
        Ivp::first_order(self, 0.0, 3600.0 * HOURS[5], &start)
            .method(method)
            .rtol(tolerance)
            .atol(DiscRun::LITTLE_WATER * tolerance)
            .max_steps(10_000_000)
            .t_eval(HOURS.map(|hour| 3600.0 * hour).to_vec())
            .solve()
            .unwrap()
            .y
    }
}

/// Returns our own states at the hours.
fn ours(problem: &Problem, air: AirNow) -> Vec<Vec<f64>> {
    let mut run = DiscRun::new(problem);
    HOURS
        .iter()
        .map(|hour| {
            run.advance(3600.0 * hour, &|_| air, &mut |_| ()).unwrap();
            run.state()
        })
        .collect()
}

/// Returns the greatest error at any of the hours: root mean square over the volume, relative to a little water + the water of each ring.
fn error(problem: &Problem, states: &[Vec<f64>], truth: &[Vec<f64>]) -> f64 {
    let grid = &problem.grid;
    let volumes: Vec<f64> = grid.ring_area_m2.iter().flat_map(|area| grid.layer_m.iter().map(move |layer| area * layer)).collect();
    let at = |state: &[f64], truth: &[f64]| {
        let waters = volumes.iter().zip(state.iter().zip(truth));
        let square: f64 =
            waters.map(|(volume, (water, truth))| volume * ((water - truth) / (DiscRun::LITTLE_WATER + truth)).powi(2)).sum();
        (square / grid.volume_m3()).sqrt()
    };
    states.iter().zip(truth).map(|(state, truth)| at(state, truth)).fold(0.0, f64::max)
}

/// Measures and returns the median, ms; none where the caller has filtered it out.
fn median_ms(criterion: &mut Criterion, name: &str, samples: usize, mut work: impl FnMut()) -> Option<f64> {
    let mut times_ms = Vec::new();
    let mut group = criterion.benchmark_group("vatsketch");
    group.sample_size(samples).sampling_mode(SamplingMode::Flat);
    group.warm_up_time(Duration::from_millis(500)).measurement_time(Duration::from_secs(3));
    group.bench_function(name, |bencher| {
        bencher.iter_custom(|count| {
            let began = Instant::now();
            (0..count).for_each(|_| work());
            let took = began.elapsed();
            times_ms.push(1e3 * took.as_secs_f64() / count as f64);
            took
        });
    });
    group.finish();
    times_ms.sort_by(f64::total_cmp);
    times_ms.get(times_ms.len() / 2).copied()
}

/// Returns the quickest method and tolerance that err no more than is allowed, and their error.
fn quickest(drying: &Drying<'_>, methods: &[Method], truth: &[Vec<f64>], allowed: f64) -> Option<(Method, f64, f64)> {
    let ways = methods.iter().flat_map(|&method| TOLERANCES.iter().map(move |&tolerance| (method, tolerance)));
    let tried = ways.map(|(method, tolerance)| {
        let began = Instant::now();
        let states = drying.by(method, tolerance);
        let took = began.elapsed();
        (took, (method, tolerance, error(drying.run.borrow().problem(), &states, truth)))
    });
    tried.filter(|(_, (.., error))| *error <= allowed).min_by_key(|(took, _)| *took).map(|(_, way)| way)
}

/// Measures the plan on paper; none in a program without it.
#[cfg(feature = "paper")]
fn paper(criterion: &mut Criterion, batch: &Batch) -> Option<f64> {
    let mut plan = plan(batch);
    let mut count = 0;
    median_ms(criterion, "the plan as PDF", 10, || {
        // Another title each time, so that the typesetter cannot give back a page that it remembers.
        count += 1;
        plan.title = format!("Plan {count}");
        black_box(pdf(black_box(&plan), &Paper::A4.into()).unwrap());
    })
}

/// Measures nothing: this program has no paper.
#[cfg(not(feature = "paper"))]
const fn paper(_criterion: &mut Criterion, _batch: &Batch) -> Option<f64> {
    None
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args();
    // Two designs in turn, so that nothing could be kept from one to the next.
    let mut design = Design::default();
    let amounts_l = [design.milk.milk_l, 1.1 * design.milk.milk_l];
    let mut turn = 0;
    let whole = median_ms(&mut criterion, "the whole batch", 30, || {
        turn = 1 - turn;
        design.milk.milk_l = amounts_l[turn];
        black_box(batch(black_box(&design)).unwrap());
    });

    let soured = germs::measured(&mut criterion);

    let design = Design::default();
    let batch = batch(&design).unwrap();
    let salted = batch.salting.done().unwrap();
    let cheese = Cheese {
        matter: salted.cheese * (1.0 / f64::from(salted.cheese_count)),
        diameter_mm: salted.diameter_mm,
        thickness_mm: salted.thickness_mm,
        temperature_c: design.draining.draining_temperature_c,
        coat_s_m: salted.coat_s_m,
        ..Cheese::default()
    };
    let shown = problem(&cheese, 0.01 * design.drying.underside_open_percent, Fineness::SHOWN).unwrap();
    let (air, _) = AirPlan::of(&design.drying, Place::MIDDLE, 0.001 * cheese.diameter_mm).at(0.0);
    let alone = median_ms(&mut criterion, "one cheese, 48 h", 30, || {
        black_box(ours(black_box(&shown), air));
    });

    let dried = batch.drying.done().unwrap();
    let vinegar = median_ms(&mut criterion, "the vinegar stage", 30, || {
        black_box(pickling(black_box(&design.pickling), dried).unwrap());
    });

    let paper = paper(&mut criterion, &batch);

    let drying = Drying { run: RefCell::new(DiscRun::new(&shown)), air };
    let truth = drying.by(Method::DOPRI5, TRUTH);
    let tight = Problem { tolerance: OUR_TIGHTEST, ..shown.clone() };
    let our_error = error(&shown, &ours(&shown, air), &truth);
    let mut lines = vec![
        format!("{} unknowns; errors are of the water, against Dormand and Prince's method at {TRUTH:e}.", truth[0].len()),
        format!("Ours: error {our_error:.1e}; tightened to {OUR_TIGHTEST:e}: {:.1e}.", error(&shown, &ours(&tight, air), &truth)),
    ];
    let kinds: [(&str, &[Method]); 2] =
        [("explicit", &[Method::RK23, Method::DOPRI5, Method::DOP853]), ("implicit where stiff", &[Method::LSODA])];
    for (name, methods) in kinds {
        let Some((method, tolerance, their_error)) = quickest(&drying, methods, &truth, our_error) else {
            lines.push(format!("General solver, {name}: no tolerance tried errs as little as ours."));
            continue;
        };
        let theirs = median_ms(&mut criterion, &format!("the same, general solver, {name}"), 10, || {
            black_box(drying.by(method, black_box(tolerance)));
        });
        if let (Some(theirs), Some(alone)) = (theirs, alone) {
            lines.push(format!(
                "General solver, {name} ({method:?} at {tolerance:e}): error {their_error:.1e}, {theirs:.0} ms: {:.0} times as long as ours (aim: at least 20).",
                theirs / alone
            ));
        }
    }
    lines.extend(paper.map(|paper| format!("The plan as PDF takes {paper:.0} ms (aim: at most 500).")));
    if let (Some(whole), Some(alone)) = (whole, alone) {
        lines.push(format!("One cheese for 48 h takes {alone:.2} ms; the whole batch {whole:.2} ms (aim: at most 8)."));
    }
    if let Some(vinegar) = vinegar {
        lines.push(format!("The vinegar stage takes {vinegar:.2} ms (aim: at most 3)."));
    }
    lines.extend(soured);
    lines.extend(log::measured(&mut criterion));
    lines.extend(week::measured(&mut criterion));
    lines.extend(draws::measured(&mut criterion));
    println!("{}", lines.join("\n"));
}
