//! `log import`: measurements from a table.

use super::EntryOptions;
use super::open;
use super::shown::iso;
use super::table::write_table;
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::write_json;
use crate::export::printable;
use crate::file::read_table;
use crate::record::{DateOrder, EntryKind, EntryValue, Holds, Import, Imported, import, log_moment};
use crate::report::Amount;
use serde_json::json;
use std::io::Write;
use std::path::Path;

/// How a table is to be read.
pub(super) struct Wanted<'a> {
    pub(super) kind: EntryKind,
    pub(super) time: Option<&'a str>,
    pub(super) value: Option<&'a str>,
    pub(super) order: Option<DateOrder>,
}

/// Lines that a preview shows at each end.
const SHOWN: usize = 5;

pub(super) fn run(
    file: &Path,
    (table, wanted): (&Path, &Wanted<'_>),
    batch: Option<u32>,
    (preview, form): (bool, &FormOptions),
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let mut log = open::read(file, words)?;
    let record = open::batch(&log, batch)?;
    let zone = open::now(&EntryOptions::default(), &record.design.week)?.zone;
    let Wanted { kind, time, value, order } = *wanted;
    let refused = |why: String| CliError::InFile { file: table.to_owned(), why };
    let mut imported =
        import(&read_table(table)?, &Import { kind, time, value, order, zone }).map_err(|error| refused(error.to_string()))?;
    let known = imported.leave_out_known(kind, record);
    let number = record.number;
    if form.json {
        write_json(to_json(&imported, known, (number, preview)), data)?;
    } else {
        write_text(&imported, kind, form, data)?;
    }
    for line in &imported.refused {
        writeln!(words, "vatsketch: {}: line {}: {}", printable(&table.display().to_string()), line.line, printable(&line.why))?;
    }
    if !preview {
        for line in &imported.read {
            log.log.enter(number, line.at, kind, EntryValue::Number(line.value))?;
        }
        open::append(&mut log, file, words)?;
    }
    let did = if preview { "would be read" } else { "read" };
    let known = if known > 0 { format!(", {known} were there already") } else { String::new() };
    let wrong = if imported.refused.is_empty() { String::new() } else { format!(", {} could not be read", imported.refused.len()) };
    let lines = if imported.read.len() == 1 { "line" } else { "lines" };
    writeln!(words, "{} {lines} {did} into batch {number}{known}{wrong}", imported.read.len())?;
    Ok(if imported.refused.is_empty() { Ending::Done } else { Ending::FileTrouble })
}

fn write_text(imported: &Imported, kind: EntryKind, form: &FormOptions, data: &mut dyn Write) -> Result<(), CliError> {
    let Holds::Number { unit, decimals, .. } = kind.row().holds else { return Ok(()) };
    writeln!(data, "{}: {}", kind.row().label, printable(&imported.understood))?;
    let count = imported.read.len();
    let shown = |at: usize| count <= 2 * SHOWN || at < SHOWN || at + SHOWN >= count;
    let mut rows = Vec::new();
    for (at, line) in imported.read.iter().enumerate().filter(|(at, _)| shown(*at)) {
        if count > 2 * SHOWN && at + SHOWN == count {
            rows.push(["…".to_owned(), format!("{} more", count - 2 * SHOWN), String::new()]);
        }
        let value = Amount::new(line.value, unit, decimals).shown_in(form.shown.units).to_string();
        rows.push([line.line.to_string(), log_moment(line.at), value]);
    }
    write_table(["line", "when", "value"], &rows, data)?;
    Ok(())
}

fn to_json(imported: &Imported, known: usize, (batch, preview): (u32, bool)) -> serde_json::Value {
    let read = imported.read.iter().map(|line| json!({ "line": line.line, "at": iso(line.at), "value": line.value }));
    let refused = imported.refused.iter().map(|line| json!({ "line": line.line, "why": line.why }));
    json!({
        "batch": batch, "preview": preview, "understood": imported.understood, "there_already": known,
        "read": read.collect::<Vec<_>>(), "refused": refused.collect::<Vec<_>>(),
    })
}
