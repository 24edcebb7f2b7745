//! `log across`: all batches beside each other.

use super::open;
use super::shown::iso;
use super::table::write_table;
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::write_json;
use crate::export::batches_csv;
use crate::report::{BATCH_COLUMNS, BatchLine, batch_lines, short_day};
use serde_json::{Map, Value, json};
use std::io::Write;
use std::path::Path;

pub(super) fn run(
    file: &Path,
    (search, as_csv, form): (&str, bool, &FormOptions),
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let log = open::read(file, words)?;
    let lines = batch_lines(&log.log.batches, search);
    if as_csv {
        data.write_all(&batches_csv(&lines)?)?;
    } else if form.json {
        write_json(json!({ "batches": lines.iter().map(to_json).collect::<Vec<_>>() }), data)?;
    } else if lines.is_empty() {
        writeln!(data, "no batch{}", if search.is_empty() { " yet" } else { " has these words" })?;
    } else {
        let cells = |line: &BatchLine| {
            let [milk, clean_break, ph, first, last, lost, centre, blended] = line.texts(form.shown.units);
            [line.title.clone(), short_day(line.begun.date()), milk, clean_break, ph, first, last, lost, centre, blended]
        };
        let rows: Vec<[String; 10]> = lines.iter().map(cells).collect();
        let [milk, clean_break, ph, first, last, lost, centre, blended] = BATCH_COLUMNS.map(|column| column.label);
        let heads = ["", "begun", milk, clean_break, ph, first, last, lost, centre, blended];
        write_table(heads, &rows, data)?;
    }
    Ok(open::ending(&log))
}

fn to_json(line: &BatchLine) -> Value {
    let numbers: Map<String, Value> =
        BATCH_COLUMNS.iter().zip(line.numbers).map(|(column, value)| (column.key.to_owned(), json!(value))).collect();
    json!({
        "batch": line.number, "title": line.title, "begun": iso(line.begun), "design": line.design, "numbers": numbers,
        "words": line.words,
    })
}
