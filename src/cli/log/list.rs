//! `log list` and `log fields`: what is in a log, and what can be written into it.

use super::open;
use super::shown::{entry_json, iso};
use super::table::write_table;
use crate::batch::batch;
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::write_json;
use crate::export::printable;
use crate::file::LogFile;
use crate::record::{BatchRecord, EntryKind, Holds};
use crate::report::{LogField, earlier_words, entry_words, log_fields, plan, short_moment};
use crate::units::Units;
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    file: &Path,
    number: Option<u32>,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let log = open::read(file, words)?;
    let units = form.shown.units;
    if let Some(number) = number {
        let batch = log.log.batch(number)?;
        if form.json {
            let mut json = batch_json(batch);
            if let Some(members) = json.as_object_mut() {
                members.insert("entries".to_owned(), batch.entries.iter().map(entry_json).collect());
            }
            write_json(json, data)?;
        } else {
            write_entries(batch, units, data)?;
        }
    } else if form.json {
        let batches: Vec<Value> = log.log.batches.iter().map(batch_json).collect();
        write_json(json!({ "batches": batches, "lost": log.lost_words() }), data)?;
    } else {
        write_batches(&log, units, data)?;
    }
    Ok(open::ending(&log))
}

fn batch_json(batch: &BatchRecord) -> Value {
    json!({
        "batch": batch.number, "name": batch.name, "begun": iso(batch.begun), "design": batch.design.title,
        "design_id": batch.design_id.map(|id| id.to_string()), "entries_that_count": batch.standing().len(),
    })
}

fn write_batches(log: &LogFile, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    if log.log.batches.is_empty() {
        writeln!(data, "no batch yet")?;
        return Ok(());
    }
    let cells = |batch: &BatchRecord| {
        let counted = batch.standing().len().to_string();
        [batch.title(), short_moment(batch.begun, units), batch.design.title.clone(), counted]
    };
    let rows: Vec<[String; 4]> = log.log.batches.iter().map(cells).collect();
    write_table(["", "begun", "design", "entries"], &rows, data)?;
    Ok(())
}

fn write_entries(batch: &BatchRecord, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    writeln!(data, "{}: {}", printable(&batch.title()), printable(&batch.design.title))?;
    let cells = |entry: &&crate::record::Entry| {
        let value = format!("{}{}", entry_words(entry, units), earlier_words(batch, entry, units));
        [entry.number.to_string(), short_moment(entry.at, units), entry.kind.row().label.to_owned(), value]
    };
    let rows: Vec<[String; 4]> = batch.standing().iter().map(cells).collect();
    write_table(["entry", "when", "what", "value"], &rows, data)?;
    Ok(())
}

pub(super) fn fields(
    file: &Path,
    number: Option<u32>,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let log = open::read(file, words)?;
    let record = open::batch(&log, number)?;
    let fields = log_fields(&plan(&batch(&record.design)?));
    let written = |kind: EntryKind| record.of_kind(kind).len();
    if form.json {
        let field = |field: &LogField| {
            let row = field.kind.row();
            json!({
                "kind": row.key, "label": row.label, "unit": row.holds.unit().symbol(), "holds": sort(row.holds), "step": field.step,
                "on_paper": !field.kind.is_off_paper(), "entries": written(field.kind),
            })
        };
        write_json(json!({ "batch": record.number, "fields": fields.iter().map(field).collect::<Vec<_>>() }), data)?;
    } else {
        let cells = |field: &LogField| {
            let step = if field.kind.is_off_paper() { "not on paper" } else { field.step.trim_end_matches(',') };
            let row = field.kind.row();
            [row.key.to_owned(), row.label.to_owned(), sort_words(field.kind, form.shown.units), step.to_owned()]
        };
        let rows: Vec<[String; 4]> = fields.iter().map(cells).collect();
        write_table(["name", "what", "value", "step of the plan"], &rows, data)?;
    }
    Ok(open::ending(&log))
}

const fn sort(holds: Holds) -> &'static str {
    match holds {
        Holds::Number { .. } => "number",
        Holds::Done => "time",
        Holds::Words => "words",
        Holds::Task => "task",
        Holds::Photo => "path",
    }
}

fn sort_words(kind: EntryKind, units: Units) -> String {
    let row = kind.row();
    match row.holds {
        Holds::Number { unit, .. } if unit.symbol().is_empty() => sort(row.holds).to_owned(),
        // What is typed is metric, whatever is shown: the name says so.
        Holds::Number { unit, .. } if units.are_metric() => format!("number, {}", unit.symbol()),
        Holds::Number { unit, .. } => format!("number, {} (typed in it)", unit.symbol()),
        Holds::Done | Holds::Words | Holds::Task | Holds::Photo => sort(row.holds).to_owned(),
    }
}
