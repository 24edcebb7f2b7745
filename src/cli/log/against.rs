//! `log against` and `log changed`: a batch beside its plan, and beside another batch.

use super::open;
use super::shown::iso;
use super::table::write_table;
use crate::analysis::{DRAWS, Recorded, changed as changes_between};
use crate::batch::batch;
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::side_by_side::write_columns;
use crate::cli::text::{with_notice, write_failures, write_json, write_notice};
use crate::design::Value;
use crate::export::printable;
use crate::report::{AgainstPlan, AgainstRow, NO_CHECK, against_plan, changed_batches};
use crate::session::{Work, cores, spread};
use serde_json::json;
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
    let record = open::batch(&log, number)?;
    let planned = batch(&record.design)?;
    let spread = spread(&record.design, &Work { draws: DRAWS, threads: cores(), goes_on: &|| true })?;
    let units = form.shown.units;
    let against = against_plan(&planned, record, spread.as_ref(), units);
    if form.json {
        let rows: Vec<_> = against.rows.iter().map(row_json).collect();
        let json = json!({ "batch": record.number, "name": record.name, "rows": rows, "not_compared": against.not_compared });
        write_json(with_notice(json, &planned), data)?;
    } else {
        writeln!(data, "{}: {}", printable(&record.title()), printable(&record.design.title))?;
        write_text(&against, data)?;
        write_notice(&planned, units, data)?;
    }
    let ended = write_failures(&planned, "", units, words)?;
    Ok(if ended == Ending::Done { open::ending(&log) } else { ended })
}

fn row_json(row: &AgainstRow) -> serde_json::Value {
    json!({
        "entry": row.entry, "at": iso(row.at), "kind": row.kind.key(), "measured": row.measured, "planned": row.planned,
        "likely": row.likely.map(|(least, most)| json!([least, most])), "apart": row.planned.map(|planned| row.measured - planned),
        "unit": row.unit.symbol(), "off": row.off,
    })
}

fn write_text(against: &AgainstPlan, data: &mut dyn Write) -> Result<(), CliError> {
    let cells = |row: &AgainstRow| [row.when(), row.kind.row().label.to_owned(), row.amount(row.measured), row.plan(), row.apart()];
    let rows: Vec<[String; 5]> = against.rows.iter().map(cells).collect();
    if rows.is_empty() {
        writeln!(data, "nothing was written down that the plan has a number for")?;
    } else {
        write_table(["when", "what", "measured", "plan (likely)", "difference"], &rows, data)?;
    }
    writeln!(data, "\nWhat differed from the plan")?;
    let mut any = false;
    for row in against.off() {
        any = true;
        writeln!(data, "  {}", printable(&row.in_words()).replace('\u{a0}', " "))?;
    }
    if !any {
        writeln!(data, "  no measurement differs by more than the instruments and the model may. {NO_CHECK}")?;
    }
    against.not_compared.iter().try_for_each(|why| writeln!(data, "  {why}"))?;
    Ok(())
}

pub(super) fn changed(
    file: &Path,
    numbers: (Option<u32>, Option<u32>),
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let log = open::read(file, words)?;
    let (a, b) = match (numbers, &log.log.batches[..]) {
        ((Some(a), Some(b)), _) => (log.log.batch(a)?, log.log.batch(b)?),
        (_, [.., a, b]) => (a, b),
        _ => return Err(CliError::Arguments("this log has fewer than two batches; there is nothing to compare yet".to_owned())),
    };
    if form.json {
        let changed = changes_between(a, b);
        let value = |value: Value| match value {
            Value::Number(number) => json!(number),
            Value::Choice(key) => json!(key),
            Value::Switch(on) => json!(on),
        };
        let recorded = |of: &Option<Recorded>| match of {
            None => json!(null),
            Some(Recorded::Number(number)) => json!(number),
            Some(Recorded::Words(words)) => json!(words),
            Some(Recorded::Done) => json!("done"),
        };
        let choices = changed.choices.iter().map(
            |choice| json!({ "key": choice.field.key, "label": choice.field.label, "a": value(choice.a), "b": value(choice.b) }),
        );
        let entries = changed.entries.iter().map(|entry| {
            json!({
                "kind": entry.kind.key(), "unit": entry.unit().symbol(), "a": recorded(&entry.a), "b": recorded(&entry.b),
                "b_less_a": entry.change(), "differs": entry.differs,
            })
        });
        let json = json!({
            "a": a.number, "b": b.number, "choices": choices.collect::<Vec<_>>(), "entries": entries.collect::<Vec<_>>(),
        });
        write_json(json, data)?;
        return Ok(open::ending(&log));
    }
    let changed = changed_batches(a, b, form.shown.units);
    writeln!(data, "A: {}\nB: {}", printable(&a.title()), printable(&b.title()))?;
    for (heading, rows, last) in [("Choices that differ", &changed.choices, ""), ("Written down", &changed.entries, "B − A")] {
        writeln!(data, "\n{heading}")?;
        if rows.is_empty() {
            writeln!(data, "  none")?;
        } else {
            write_columns(["", "A", "B", last], rows, data)?;
        }
    }
    Ok(open::ending(&log))
}
