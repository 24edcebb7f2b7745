//! `vatsketch why`: what a figure is calculated from.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FigureOptions, FormOptions};
use super::text::{with_notice, write_json, write_notice};
use crate::analysis::why;
use crate::batch::batch;
use crate::figure::every_key;
use crate::report::{WhyWords, why_words};
use crate::units::Units;
use serde_json::{Map, Value, json};
use std::io::Write;

pub(super) fn run(
    options: &DesignOptions,
    figure: &FigureOptions,
    form: &FormOptions,
    data: &mut dyn Write,
) -> Result<Ending, CliError> {
    let key = figure.key.as_str();
    let batch = batch(&open::design(options)?)?;
    let words = why_words(
        &why(&batch, key).map_err(|error| CliError::Arguments(error.to_string()))?,
        if form.json { Units::METRIC } else { form.shown.units },
    );
    if form.json {
        write_json(with_notice(as_value(key, &words), &batch), data)?;
    } else {
        write(&words, data)?;
        write_notice(&batch, form.shown.units, data)?;
    }
    Ok(Ending::Done)
}

fn write(words: &WhyWords, data: &mut dyn Write) -> std::io::Result<()> {
    writeln!(data, "{}\n  {}\n  law: {}\n  source: {}", words.figure, words.spread, words.law, words.source)?;
    let mut list = |heading: &str, rows: Vec<String>| -> std::io::Result<()> {
        if rows.is_empty() {
            return Ok(());
        }
        writeln!(data, "{heading}")?;
        rows.iter().try_for_each(|row| writeln!(data, "  {row}"))
    };
    let keyed =
        |rows: &[(&str, &str, String)]| rows.iter().map(|(key, label, value)| format!("{label}: {value} ({key})")).collect();
    list("Choices that go into it", keyed(&words.inputs))?;
    list("Figures that go into it", keyed(&words.rests_on))?;
    list("Choices of earlier stages", keyed(&words.further_inputs))?;
    list("Constants and formulae", words.records.iter().map(|row| format!("{}: {}; {}", row.name, row.value, row.source)).collect())
}

fn as_value(key: &str, words: &WhyWords) -> Value {
    // By label, as scripts know them, and as rows that a script finds by their keys whatever they are called.
    let pairs = |rows: &[(&'static str, &'static str, String)]| {
        rows.iter().map(|(_, label, value)| ((*label).to_owned(), json!(value))).collect::<Map<_, _>>()
    };
    let choices = |rows: &[(&'static str, &'static str, String)]| {
        rows.iter().map(|(key, label, value)| json!({ "key": key, "label": label, "value": value })).collect::<Vec<_>>()
    };
    json!({
        "figure": key, "words": words.figure, "spread": words.spread, "law": words.law, "source": words.source,
        "inputs": pairs(&words.inputs), "choices": choices(&words.inputs), "further_choices": choices(&words.further_inputs),
        "rests_on": words.rests_on.iter().flat_map(|(key, label, value)| {
            // Once under each of its keys, so that a script finds it by an old one.
            every_key(key).map(move |key| json!({ "figure": key, "label": label, "value": value }))
        }).collect::<Vec<_>>(),
        "further_inputs": pairs(&words.further_inputs),
        "records": words.records.iter().map(|row| json!({ "name": row.name, "value": row.value, "source": row.source })).collect::<Vec<_>>(),
    })
}
