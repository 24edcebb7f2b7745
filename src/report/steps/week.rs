//! What only the week knows: cleaning, the jars' rest and their rolling, the last day.

use super::{Facts, Step};
use crate::batch::Batch;
use crate::design::Unit;
use crate::law::growth::TABLE_B_PH;
use crate::law::kitchen::STEAM;
use crate::plan::{KitchenWeek, WeekTask, kept_plan};
use crate::record::EntryKind;
use crate::report::{StepTime, Target};
use crate::units::Units;

/// Returns a step for every task of the week that no other step does.
pub(super) fn more(steps: &[Step], week: &KitchenWeek, batch: &Batch) -> Vec<Step> {
    let done = |task: &&WeekTask| !steps.iter().any(|step| step.times.iter().any(|time| time.task == task.key));
    let mut more: Vec<Step> = Vec::new();
    for task in week.tasks.iter().filter(done) {
        let next = one(task, batch);
        match more.last_mut() {
            // The jars are rolled again and again: one step with many times.
            Some(last) if last.by_date && next.by_date => last.times.extend(next.times),
            Some(_) | None => more.push(next),
        }
    }
    more
}

/// Returns the step of one task.
fn one(task: &WeekTask, batch: &Batch) -> Step {
    let hands = Facts::plain("takes", task.hands_min as f64, Unit::Minute, 0);
    let cold = Facts::plain("at", batch.design.keeping.keeping_temperature_c, Unit::Celsius, 1);
    let kept = Facts::plain("kept for", kept_plan(batch).keeping.keeping_days, Unit::Day, 0);
    let said = match task.key.as_str() {
        "sanitise" => Said {
            name: "Sanitise",
            verb: "Sanitise",
            what: format!(
                "pot, tools and moulds: steam the steel for {:.0}\u{a0}min, sanitise the rest as the label says, and let all cool.",
                STEAM.value
            ),
            target: hands,
            if_off: "Vinegar is not enough. Spores survive.",
            write_down: EntryKind::SanitisedWith,
        },
        "rest" => Said {
            name: "Jars rest",
            verb: "Let",
            what: "the jars rest in the cold.".to_owned(),
            target: cold,
            if_off: "Swollen, gassy or smelly: discard untasted. Toxin may not show.",
            write_down: EntryKind::FridgeTemperature,
        },
        key if key.starts_with("roll_") => Said {
            name: "Roll",
            verb: "Roll",
            what: "the jars, and look for gas.".to_owned(),
            target: Facts::plain("jars", batch.pickling.done().map_or(0.0, |pickling| f64::from(pickling.jars)), Unit::One, 0),
            if_off: "Swollen, gassy or smelly: discard untasted. Toxin may not show.",
            write_down: EntryKind::FridgeTemperature,
        },
        // No day is left to keep them.
        "last_day" if kept.amount.value <= 0.0 => Said {
            name: "Last day",
            verb: "Discard",
            what: "them all, unless the meter showed less than that at the centre and in a blended sample.".to_owned(),
            target: Facts::plain("below pH", TABLE_B_PH.value, Unit::One, 1),
            if_off: "Local rules may be stricter.",
            write_down: EntryKind::CheesesLeft,
        },
        "last_day" => Said {
            name: "Last day",
            verb: "Discard",
            what: "what is left, whatever it looks and smells like.".to_owned(),
            target: kept,
            if_off: "Local rules may be stricter.",
            write_down: EntryKind::CheesesLeft,
        },
        _ => Said {
            name: "Task",
            verb: "Do",
            what: format!("this: {}. {}", task.name, task.what),
            target: hands,
            if_off: "Late: the next tasks move later too.",
            write_down: EntryKind::OtherTask,
        },
    };
    let name = task.key.strip_prefix("roll_").map_or_else(|| said.name.to_owned(), |number| format!("{} {number}", said.name));
    let at_min = task.after_min as f64;
    Step {
        times: vec![StepTime {
            task: task.key.clone(),
            name,
            at_min,
            clock: Some(task.start),
            pass: task.start_pass.name.clone(),
            whole_day: task.is_last_day(),
            units: Units::METRIC,
        }],
        by_date: said.name == "Roll",
        targets: vec![said.target],
        if_off: said.if_off.to_owned(),
        write_down: said.write_down.row().blank.to_owned(),
        record: Some(said.write_down),
        ..Step::once((&task.key, said.name), task.stage, at_min, said.verb, said.what)
    }
}

/// What a step says.
struct Said {
    name: &'static str,
    verb: &'static str,
    what: String,
    target: Target,
    if_off: &'static str,
    write_down: EntryKind,
}
