//! `vatsketch inputs` and `vatsketch example`.

use super::ending::{CliError, Ending};
use super::germs::{SETTINGS, TEXTS};
use super::options::FormOptions;
use super::parameters;
use super::souring;
use super::text::write_json;
use crate::design::{DESCRIBED_CHEESE_FIELDS, DESCRIBED_PICKLING_FIELDS, Field, Kind, Value, fields};
use crate::session::Example;
use serde_json::json;
use std::io::Write;

pub(super) fn run(form: &FormOptions, data: &mut dyn Write) -> Result<Ending, CliError> {
    if form.json {
        let inputs: Vec<serde_json::Value> = fields().map(as_json).collect();
        let cheese: Vec<serde_json::Value> = DESCRIBED_CHEESE_FIELDS.iter().map(as_json).collect();
        let pickling: Vec<serde_json::Value> = DESCRIBED_PICKLING_FIELDS.iter().map(as_json).collect();
        let souring = souring_as_json();
        let germs = germs_as_json();
        write_json(
            json!({
                "inputs": inputs, "described_cheese": cheese, "described_pickling": pickling, "described_souring": souring, "germs": germs,
                "parameters": parameters::list_json(),
            }),
            data,
        )?;
        return Ok(Ending::Done);
    }
    let mut stage = None;
    for field in fields() {
        if stage != Some(field.stage) {
            stage = Some(field.stage);
            writeln!(data, "\n{}", field.stage.title())?;
        }
        write_row(field, data)?;
    }
    writeln!(data, "\nA described cheese, for `vatsketch stage salting` and `vatsketch stage drying`")?;
    DESCRIBED_CHEESE_FIELDS.iter().try_for_each(|field| write_row(field, data))?;
    writeln!(data, "  {:<28} hours to report, as in 6,12,24 (drying)", "report_h")?;
    writeln!(data, "\nA described cheese and its vinegar, for `vatsketch stage pickling`")?;
    DESCRIBED_PICKLING_FIELDS.iter().try_for_each(|field| write_row(field, data))?;
    writeln!(data, "  {:<28} hours to report, as in 6,12,24", "report_h")?;
    writeln!(data, "\nA described milk or curd, for `vatsketch stage souring`")?;
    for (key, label, names, default) in souring::choices() {
        writeln!(data, "  {key:<28} {:<44} default {default:<14} {label}", names.join(" | "))?;
    }
    for row in souring::NUMBERS {
        let range = format!("{} to {} {}", row.least, row.most, row.unit);
        let default = row.default.map_or_else(|| "-".to_owned(), |default| default.to_string());
        writeln!(data, "  {:<28} {:<44} default {default:<14} {}", row.key, range.trim_end(), row.label)?;
    }
    writeln!(data, "  {:<28} hours to report, as in 6,12,24", "report_h")?;
    writeln!(data, "\nGerms and the conditions that they meet, for `vatsketch stage germs`")?;
    TEXTS.iter().try_for_each(|(key, written, what)| writeln!(data, "  {key:<28} {written:<44} {what}"))?;
    for setting in SETTINGS {
        let range = format!("{} to {} {}", setting.least, setting.most, setting.unit);
        writeln!(data, "  {:<28} {:<44} default {}: {}", setting.key, range.trim_end(), setting.otherwise, setting.label)?;
    }
    writeln!(
        data,
        "\nUncertain constants, for --parameter of `vatsketch figures` and `vatsketch stage`; a few have another default in other designs"
    )?;
    parameters::write_list(data)?;
    Ok(Ending::Done)
}

fn souring_as_json() -> Vec<serde_json::Value> {
    let choices = souring::choices().map(|(key, label, names, default)| {
        json!({ "key": key, "stage": "souring", "label": label, "unit": "", "default": default, "choices": names })
    });
    let numbers = souring::NUMBERS.map(|row| {
        json!({
            "key": row.key, "stage": "souring", "label": row.label, "unit": row.unit, "default": row.default, "least": row.least,
            "most": row.most,
        })
    });
    choices.into_iter().chain(numbers).collect()
}

/// Returns what may be set for germs alone.
fn germs_as_json() -> Vec<serde_json::Value> {
    let texts = TEXTS.iter().map(|(key, written, what)| json!({ "key": key, "written": written, "label": what }));
    let numbers = SETTINGS.iter().map(|setting| {
        json!({
            "key": setting.key, "label": setting.label, "unit": setting.unit, "least": setting.least, "most": setting.most,
            "default": setting.otherwise,
        })
    });
    texts.chain(numbers).collect()
}

fn write_row<D: Default>(field: &Field<D>, data: &mut dyn Write) -> std::io::Result<()> {
    let range = match field.kind {
        Kind::Number { least, most, .. } => format!("{least} to {most} {}", field.unit.symbol()),
        Kind::Choice(choices) => choices.iter().map(|choice| choice.key).collect::<Vec<_>>().join(" | "),
        Kind::Switch => "yes | no".to_owned(),
    };
    writeln!(data, "  {:<28} {:<44} default {:<14} {}", field.key, range.trim_end(), field.default().to_string(), field.help)
}

fn as_json<D: Default>(field: &Field<D>) -> serde_json::Value {
    let default = match field.default() {
        Value::Number(number) => json!(number),
        Value::Choice(key) => json!(key),
        Value::Switch(on) => json!(on),
    };
    let mut row = json!({ "key": field.key, "stage": field.stage.key(), "label": field.label, "unit": field.unit.symbol(), "default": default });
    if let Some(members) = row.as_object_mut() {
        match field.kind {
            Kind::Number { least, most, whole, .. } => {
                members.insert("least".to_owned(), json!(least));
                members.insert("most".to_owned(), json!(most));
                members.insert("whole".to_owned(), json!(whole));
            }
            Kind::Choice(choices) => {
                members.insert(
                    "choices".to_owned(),
                    choices.iter().map(|choice| json!({ "key": choice.key, "label": choice.label })).collect(),
                );
            }
            Kind::Switch => {
                members.insert("choices".to_owned(), json!(["yes", "no"]));
            }
        }
        members.insert("help".to_owned(), json!(field.help));
    }
    row
}

pub(super) fn example(example: Example, data: &mut dyn Write) -> Result<Ending, CliError> {
    write!(data, "{}", example.text)?;
    Ok(Ending::Done)
}
