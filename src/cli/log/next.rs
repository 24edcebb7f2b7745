//! `log next`: what is under way in a batch, and what comes next.

use super::open;
use super::shown::iso;
use super::table::write_table;
use super::{EntryOptions, asked};
use crate::batch::{Batch, batch};
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::{with_notice, write_json, write_notice};
use crate::design::{did_you_mean, nearest};
use crate::export::printable;
use crate::plan::tasks;
use crate::record::{EntryKind, EntryValue};
use crate::report::{NextTask, NextTasks, next_tasks};
use jiff::civil::DateTime;
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    file: &Path,
    asked::NextOptions { batch: number, as_of, form }: &asked::NextOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let log = open::read(file, words)?;
    let record = open::batch(&log, *number)?;
    let when = EntryOptions { at: None, as_of: as_of.clone() };
    let now = open::now(&when, &record.design.week)?;
    let made = batch(&record.design)?;
    let next = next_tasks(&made, record, &now, form.shown.units);
    if let Some(trouble) = &next.trouble {
        writeln!(
            words,
            "vatsketch: the time that was asked for can no longer be met, and the plan goes on without it: {}",
            printable(trouble)
        )?;
    }
    if form.json {
        let task = |task: &NextTask| to_json(task);
        let json = json!({
            "batch": record.number, "as_of": iso(now.at), "begun": next.begun.as_ref().map(task),
            "next": next.next.iter().map(task).collect::<Vec<_>>(),
        });
        write_json(with_notice(json, &made), data)?;
    } else {
        writeln!(data, "{}: {}", printable(&record.title()), printable(&record.design.title))?;
        write_text(&next, (now.at, form), data)?;
        write_notice(&made, form.shown.units, data)?;
    }
    Ok(open::ending(&log))
}

fn to_json(task: &NextTask) -> Value {
    let (kind, value) = &task.begins;
    json!({
        "task": task.task, "name": task.name, "what": task.words(), "hold": task.hold, "at": task.time.clock.map(iso), "after_min": task.time.at_min,
        "planned": task.planned.map(iso), "begin_with": kind.key(),
        "begin_with_value": if let EntryValue::Words(words) = value { words } else { "" },
        "write_down": task.records.iter().map(|kind| kind.key()).collect::<Vec<_>>(),
    })
}

fn write_text(next: &NextTasks, (now, form): (DateTime, &FormOptions), data: &mut dyn Write) -> Result<(), CliError> {
    let units = form.shown.units;
    if let Some(task) = &next.begun {
        write_task(&format!("under way since {}", task.since(units)), task, data)?;
    }
    let mut later = next.next.iter();
    if let Some(task) = later.next() {
        write_task(&task.when(now, units), task, data)?;
    } else {
        writeln!(data, "no task of the plan comes after this")?;
    }
    let cells =
        |task: &NextTask| [task.time.words_with_day(), task.task.clone(), task.name.clone(), task.moved(units).unwrap_or_default()];
    let rows: Vec<[String; 4]> = later.map(cells).collect();
    if !rows.is_empty() {
        writeln!(data, "then:")?;
        write_table(["when", "name", "task", ""], &rows, data)?;
    }
    if let Some(stopped) = &next.stopped {
        writeln!(data, "The plan stops here. {}: {}", stopped.stage.title(), printable(&stopped.why))?;
    }
    Ok(())
}

/// Writes one task with its targets.
fn write_task(when: &str, task: &NextTask, data: &mut dyn Write) -> Result<(), CliError> {
    writeln!(data, "{}: {} ({})", printable(when).replace('\u{a0}', " "), printable(&task.name), task.task)?;
    for step in &task.steps {
        writeln!(data, "  {} {}", step.verb, printable(&step.what).replace('\u{a0}', " "))?;
        for target in step.targets.iter().chain(&step.lasts) {
            writeln!(data, "    {}", printable(&target.words()).replace('\u{a0}', " "))?;
        }
        if !step.if_off.is_empty() && step.hold.is_none() {
            writeln!(data, "    If it goes wrong: {}", printable(&step.if_off).replace('\u{a0}', " "))?;
        }
    }
    if let Some(hold) = &task.hold {
        writeln!(data, "  {}", printable(hold).replace('\u{a0}', " "))?;
    }
    let keys: Vec<&str> = task.records.iter().map(|kind| kind.key()).collect();
    if !keys.is_empty() {
        writeln!(data, "    write down: {}", keys.join(", "))?;
    }
    Ok(())
}

/// Checks that a task that is written down is one of the plan's.
///
/// # Errors
/// [`CliError::Arguments`], with the task that was probably meant.
pub(super) fn check_task(planned: &Batch, kind: EntryKind, value: &EntryValue) -> Result<(), CliError> {
    let (EntryKind::TaskBegun, EntryValue::Words(key)) = (kind, value) else { return Ok(()) };
    let tasks = tasks(planned);
    if tasks.position(key).is_some() {
        return Ok(());
    }
    let meant = did_you_mean(nearest(key, tasks.all.iter().map(|task| task.key.as_str())));
    Err(CliError::Arguments(format!(
        "the plan of this batch has no task `{key}`{meant}; `vatsketch log FILE next` lists its tasks"
    )))
}
