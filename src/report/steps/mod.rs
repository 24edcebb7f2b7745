//! The steps, in the trade's order: verb first, target, how long, and what to do if it is off.

mod draining;
mod drying;
mod heat_step;
mod keeping;
mod measured;
mod milk;
mod pickling;
mod setting;
mod souring;
mod step;
mod vat;
mod week;

pub use step::Step;

use super::facts::Facts;
use crate::batch::{Batch, dried_min, soaked_min};
use crate::plan::{KitchenWeek, kept_plan};

/// Returns the steps of every stage that was calculated.
pub(super) fn steps(batch: &Batch, facts: &Facts) -> Vec<Step> {
    let design = &batch.design;
    let mut steps = Vec::new();
    let Some(milk) = batch.milk.done() else { return steps };
    steps.push(milk::measure(&design.milk, milk, facts));
    let vat = batch.vat.done();
    steps.extend(vat.into_iter().flat_map(|vat| heat_step::heat_step(design, milk, vat, facts)));
    steps.extend(souring::acid(&design.milk, milk, vat, facts));
    let Some(vat) = vat else { return steps };
    steps.extend(vat::until_rennet(design, milk, vat, facts));
    steps.extend(souring::lactone(&design.milk, milk, vat, facts));
    steps.extend(setting::from_rennet(design, milk, vat, facts));
    let Some(draining) = batch.draining.done() else { return steps };
    steps.push(draining::ladle(&design.draining, vat, draining));
    steps.extend(draining::turns(batch, vat, draining, facts));
    steps.push(draining::unmould(vat, draining, batch.salting.done(), facts));
    steps = souring::with_meter(steps, batch, facts);
    steps.extend(souring::unmoulded(batch, vat, draining, facts));
    let Some(drying) = batch.drying.done() else { return steps };
    let start_min = vat.to_ladle_min + 60.0 * draining.draining_h;
    if let Some(salting) = batch.salting.done() {
        steps.extend(draining::pepper(design, salting, start_min, facts));
    }
    let pepper_each_g = batch.salting.done().map_or(0.0, |salting| salting.pepper_each_g);
    steps.extend(drying::drying(&design.drying, (drying, pepper_each_g), start_min, facts));
    let (Some(pickling), Some(dried_min)) = (batch.pickling.done(), dried_min(batch)) else { return steps };
    steps.extend(pickling::pickling(&design.pickling, pickling, dried_min, facts));
    let (Some(keeping), Some(soaked_min)) = (batch.keeping.done(), soaked_min(batch)) else { return steps };
    steps.push(keeping::keep(design, &kept_plan(batch), keeping, soaked_min, facts));
    steps
}

/// Returns the steps of a week, each with its times on the wall clock: what lies behind the maker is left out, and what only the week knows
/// (cleaning, the jars' rest and rolling, the last day) is put in its place.
pub(super) fn of_week(mut steps: Vec<Step>, week: &KitchenWeek, batch: &Batch) -> Vec<Step> {
    for step in &mut steps {
        step.times.retain_mut(|time| {
            let task = week.tasks.iter().find(|task| task.key == time.task);
            time.clock = task.map(|task| task.start);
            time.pass = task.and_then(|task| task.start_pass.name.clone());
            time.clock.is_some()
        });
    }
    week.stretches.iter().for_each(|stretch| drying::stretched(&mut steps, stretch, batch));
    let more = week::more(&steps, week, batch);
    steps.extend(more);
    steps.retain(|step| !step.times.is_empty());
    // By the minutes that pass, because the wall clock may repeat an hour; what is done at the same time keeps its order.
    let passed = |step: &Step| {
        let first = step.times.first()?;
        week.tasks.iter().find(|task| task.key == first.task).map(|task| task.after_min)
    };
    steps.sort_by_key(passed);
    steps
}
