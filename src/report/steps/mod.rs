//! The steps, in the trade's order: verb first, target, how long, and what to do if it is off.

mod draining;
mod drying;
mod keeping;
mod milk;
mod pickling;
mod vat;
mod week;

use super::facts::Facts;
use super::{StepTime, Target};
use crate::batch::{Batch, dried_min, soaked_min};
use crate::caution::Caution;
use crate::design::Stage;
use crate::plan::KitchenWeek;

/// One step.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The stage it belongs to.
    pub stage: Stage,
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// The first word: what is done.
    pub verb: &'static str,
    /// The rest of the sentence.
    pub what: String,
    /// What is to be reached.
    pub targets: Vec<Target>,
    /// How long it takes.
    pub lasts: Option<Target>,
    /// When it is done, once or more often.
    pub times: Vec<StepTime>,
    /// Whether each of its times has a day of its own, weeks apart, and is named with it.
    pub by_date: bool,
    /// What to do if it is off.
    pub if_off: String,
    /// What is written into the blank, with its unit.
    pub write_down: &'static str,
    /// The inputs that govern it; a caution that one of them causes stands before it.
    pub governed_by: &'static [&'static str],
    /// The cautions that belong before it.
    pub cautions: Vec<Caution>,
}

impl Step {
    /// Returns a step that is done once, as a task of the week.
    ///
    /// # Arguments
    /// * `task`, `name`: the key of the task, and the step's name in the log
    fn once((task, name): (&str, &str), stage: Stage, at_min: f64, verb: &'static str, what: impl Into<String>) -> Self {
        let time = StepTime::counted(task, name, at_min);
        Self {
            stage,
            at_min,
            verb,
            what: what.into(),
            targets: Vec::new(),
            lasts: None,
            times: vec![time],
            by_date: false,
            if_off: String::new(),
            write_down: "",
            governed_by: &[],
            cautions: Vec::new(),
        }
    }
}

/// Returns the steps of every stage that was worked out.
pub(super) fn steps(batch: &Batch, facts: &Facts) -> Vec<Step> {
    let design = &batch.design;
    let mut steps = Vec::new();
    let Some(milk) = batch.milk.done() else { return steps };
    steps.push(milk::measure(&design.milk, milk, facts));
    let Some(vat) = batch.vat.done() else { return steps };
    steps.extend(vat::until_rennet(design, milk, vat, facts));
    steps.extend(vat::from_rennet(design, milk, vat, facts));
    let Some(draining) = batch.draining.done() else { return steps };
    steps.push(draining::ladle(&design.draining, vat, draining));
    steps.extend(draining::turns(batch, vat, draining, facts));
    steps.push(draining::unmould(vat, draining, facts));
    let Some(drying) = batch.drying.done() else { return steps };
    let start_min = vat.to_ladle_min + 60.0 * draining.draining_h;
    if let Some(salting) = batch.salting.done() {
        steps.extend(draining::pepper(&design.salting, salting, start_min, facts));
    }
    steps.extend(drying::drying(&design.drying, drying, start_min, facts));
    let (Some(pickling), Some(dried_min)) = (batch.pickling.done(), dried_min(batch)) else { return steps };
    steps.extend(pickling::pickling(&design.pickling, pickling, dried_min, facts));
    let (Some(keeping), Some(soaked_min)) = (batch.keeping.done(), soaked_min(batch)) else { return steps };
    steps.push(keeping::keep(design, keeping, soaked_min, facts));
    steps
}

/// Returns the steps of a week, each with its times on the wall clock: what lies behind the maker is left out, and what only the week knows
/// (cleaning, the jars' rest and rolling, the last day) is put in its place.
pub(super) fn of_week(mut steps: Vec<Step>, week: &KitchenWeek, batch: &Batch) -> Vec<Step> {
    for step in &mut steps {
        step.times.retain_mut(|time| {
            time.clock = week.tasks.iter().find(|task| task.key == time.task).map(|task| task.start);
            time.clock.is_some()
        });
    }
    week.stretches.iter().for_each(|stretch| drying::stretched(&mut steps, stretch, batch));
    let more = week::more(&steps, week, batch);
    steps.extend(more);
    steps.retain(|step| !step.times.is_empty());
    // What is done at the same time keeps its order.
    steps.sort_by_key(|step| step.times.first().and_then(|time| time.clock));
    steps
}
