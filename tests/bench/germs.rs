//! How long a soured batch takes, and how much of that goes into how far germs could grow.

use super::median_ms;
use criterion::Criterion;
use std::hint::black_box;
use vatsketch::batch::batch;
use vatsketch::process::{GermsWay, Given, germs_given};
use vatsketch::session::EXAMPLES;

/// Measures and returns what to print; nothing where the caller has filtered it out.
pub fn measured(criterion: &mut Criterion) -> Option<String> {
    let mut design = EXAMPLES[0].design().unwrap();
    // Two designs in turn, so that nothing could be kept from one to the next.
    let amounts_l = [design.milk.milk_l, 1.1 * design.milk.milk_l];
    let done = batch(&design).unwrap();
    let mut turn = 0;
    let whole = median_ms(criterion, "a soured batch", 30, || {
        turn = 1 - turn;
        design.milk.milk_l = amounts_l[turn];
        black_box(batch(black_box(&design)).unwrap());
    })?;
    let way = GermsWay {
        vat: done.vat.done().unwrap(),
        drained: done.draining.done(),
        salted: done.salting.done(),
        dried: done.drying.done(),
        pickled: done.pickling.done(),
        pickling: &done.design.pickling,
        keeping: &done.design.keeping,
    };
    let given = Given::default();
    let germs = median_ms(criterion, "how far germs could grow", 30, || {
        black_box(germs_given(black_box(&way), &given));
    })?;
    let share = 100.0 * germs / (whole - germs);
    Some(format!(
        "A soured batch takes {whole:.2} ms (aim: at most 12); germs add {share:.0} % to the rest of it (aim: at most 10)."
    ))
}
