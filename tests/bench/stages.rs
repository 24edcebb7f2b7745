//! What each stage of a batch costs by itself, the whole batch from one changed input, and what is asked of batches.
//!
//! Each is measured many times; the least is what the work costs, the median what it cost on this machine while others used it too. A word
//! after `cargo bench --bench stages --` keeps those whose name has it.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::print_stdout,
    reason = "a measurement, which prints what it found and ends where it cannot"
)]

use std::hint::black_box;
use std::time::{Duration, Instant};
use vatsketch::analysis::{drawn_batch, draws, sensitivity, why};
use vatsketch::batch::{Batch, batch, batch_after};
use vatsketch::curve::{CurveKey, curve};
use vatsketch::design::{Design, DryingPlace};
use vatsketch::figure::figures;
use vatsketch::process::{GermsWay, SoFar, draining, drying, germs, keeping, milk, pickling, salting, souring_on_the_way, vat};
use vatsketch::session::EXAMPLES;

/// How long one piece of work is measured, and how often at least.
const MEASURED: Duration = Duration::from_millis(800);
const AT_LEAST: usize = 7;

/// Measures and prints, unless it is filtered out.
fn cost(name: &str, mut work: impl FnMut()) {
    let wanted = std::env::args().skip(1).filter(|word| !word.starts_with('-')).all(|word| name.contains(&word));
    if !wanted {
        return;
    }
    work();
    let (began, mut times_ms) = (Instant::now(), Vec::new());
    while began.elapsed() < MEASURED || times_ms.len() < AT_LEAST {
        let one = Instant::now();
        work();
        times_ms.push(1e3 * one.elapsed().as_secs_f64());
    }
    times_ms.sort_by(f64::total_cmp);
    println!("{name:44} {:9.3} ms at the least, {:9.3} ms as the median", times_ms[0], times_ms[times_ms.len() / 2]);
}

/// Measures every stage of a design by itself, with what came to it.
fn stages(of: &str, batch: &Batch) {
    let design = &batch.design;
    let came = batch.milk.done().unwrap();
    let drip = design.draining.drip_end_moisture_percent;
    let set = batch.vat.done().unwrap();
    let drained = batch.draining.done().unwrap();
    let salted = batch.salting.done().unwrap();
    let dried = batch.drying.done().unwrap();
    let pickled = batch.pickling.done().unwrap();
    cost(&format!("{of}: milk"), || drop(black_box(milk(black_box(&design.milk)))));
    cost(&format!("{of}: vat"), || drop(black_box(vat(black_box(&design.vat), drip, came))));
    cost(&format!("{of}: draining"), || drop(black_box(draining(black_box(&design.draining), set))));
    let moulds_c = design.draining.draining_temperature_c;
    cost(&format!("{of}: salting"), || drop(black_box(salting(black_box(&design.salting), drained, moulds_c))));
    cost(&format!("{of}: drying"), || drop(black_box(drying(black_box(&design.drying), salted, salted.temperature_c))));
    cost(&format!("{of}: vinegar"), || drop(black_box(pickling(black_box(&design.pickling), dried))));
    let way = SoFar { vat: set, drained, dried, pickling_design: &design.pickling, pickled };
    cost(&format!("{of}: keeping"), || drop(black_box(keeping(black_box(&design.keeping), &way))));
    cost(&format!("{of}: souring end to end"), || drop(black_box(souring_on_the_way(set, Some(drained), Some(dried)))));
    let way = GermsWay {
        vat: set,
        drained: Some(drained),
        salted: Some(salted),
        dried: Some(dried),
        pickled: Some(pickled),
        pickling: &design.pickling,
        keeping: &design.keeping,
    };
    cost(&format!("{of}: growth of germs"), || drop(black_box(germs(black_box(&way)))));
    cost(&format!("{of}: the stages copied"), || drop(black_box(black_box(batch).clone())));
}

/// Measures a batch of which one choice was changed, taken after the one before.
fn one_changed(name: &str, design: &Design, change: impl Fn(&mut Design, f64)) {
    let mut designs = [design.clone(), design.clone()];
    change(&mut designs[0], 1.0);
    change(&mut designs[1], 1.02);
    let (mut turn, mut before) = (0, batch(design).unwrap());
    cost(name, || {
        turn = 1 - turn;
        before = black_box(batch_after(black_box(&designs[turn]), Some(&before)).unwrap().0);
    });
}

fn main() {
    let unsoured = Design::default();
    let soured = EXAMPLES[0].design().unwrap();
    let mut open_air = soured.clone();
    open_air.drying.drying_place = DryingPlace::OpenAir;
    open_air.drying.drying_h = 720.0;
    for (of, design) in [("unsoured", &unsoured), ("soured", &soured), ("open air 720 h", &open_air)] {
        stages(of, &batch(design).unwrap());
        one_changed(&format!("{of}: batch, milk changed"), design, |design, times| design.milk.milk_l *= times);
        one_changed(&format!("{of}: batch, drying changed"), design, |design, times| design.drying.air_speed_m_s *= times);
        one_changed(&format!("{of}: batch, vinegar changed"), design, |design, times| design.pickling.acid_g_per_100ml *= times);
    }
    let done = batch(&soured).unwrap();
    let drawn = draws(&soured, 8);
    let mut turn = 0;
    cost("asked: one draw", || {
        turn = (turn + 1) % drawn.len();
        drop(black_box(drawn_batch(&soured, &drawn[turn])));
    });
    cost("asked: all figures", || drop(black_box(figures(black_box(&done)))));
    for key in CurveKey::ALL {
        cost(&format!("asked: curve {}", key.key()), || drop(black_box(curve(black_box(&done), key))));
    }
    cost("asked: sensitivity of the pH at the end", || drop(black_box(sensitivity(black_box(&done), "centre_ph"))));
    cost("asked: why the pH at the end", || drop(black_box(why(black_box(&done), "centre_ph"))));
}
