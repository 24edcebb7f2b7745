//! `vatsketch compare`: two designs side by side.

use super::destination::Destination;
use super::ending::{CliError, Ending};
use super::open;
use super::options::{OutputOptions, PaperChoice};
use super::side_by_side::write_columns;
use super::text::{write_failures, write_json, write_missing_letters};
use crate::analysis::{
    Alike, ComparedCaution, Difference, Likeness, alike_from, compare, compare_cautions, differing_choices, standardisation,
};
use crate::batch::{Batch, batch};
use crate::caution::Severity;
use crate::design::{Design, Field, MilkKind, Stage, Value};
use crate::export::{Format, Paper, comparison_pdf, json_figure, printable};
use crate::figure::{Figure, every_key};
use crate::plan::Shopping;
use crate::report::{Comparison, both_costs, comparison, cost_note};
use crate::units::Units;
use crate::words::{FROM_A_MODEL, caution_line, caution_words, said_of_b};
use serde_json::{Map, json};
use std::io::Write;
use std::path::Path;

/// The second design: from a file, or the first from another milk.
pub(super) struct Second<'a> {
    /// The file, if one is named.
    pub file: Option<&'a Path>,
    /// The milk, if one is named.
    pub milk: Option<MilkKind>,
    /// What stays the same then.
    pub alike: Alike,
}

/// How the comparison is to come out.
pub(super) struct Wanted<'a> {
    /// Where to; standard output if nothing is given.
    pub output: &'a OutputOptions,
    /// As JSON, where nothing else is given.
    pub json: bool,
    /// The paper of the pages.
    pub paper: PaperChoice,
}

pub(super) fn run(
    first: &Path,
    second: &Second<'_>,
    wanted: &Wanted<'_>,
    units: Units,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let to = Destination::of(wanted.output, |format| matches!(format, Format::Pdf | Format::Text | Format::Json))?;
    if wanted.json && to.is_some() {
        return Err(CliError::Arguments("--json prints to standard output; for a file leave it out and add --as json".to_owned()));
    }
    let a = open::file(first)?.design;
    let b = other(&a, first, second)?;
    let (a, b) = (batch(&a)?, batch(&b)?);
    let format = to.map_or(if wanted.json { Format::Json } else { Format::Text }, |to| to.format);
    let mut bytes = Vec::new();
    match format {
        Format::Json => write_json(to_json(&a, &b), &mut bytes)?,
        Format::Pdf => bytes = comparison_pdf(&comparison(&a, &b, units), Paper::from(wanted.paper))?,
        Format::Text | Format::Html | Format::Calendar | Format::Csv | Format::Svg | Format::Png => {
            write_text(&comparison(&a, &b, units), &mut bytes)?;
        }
    }
    match to {
        Some(to) => to.write(&bytes, data, words)?,
        None => data.write_all(&bytes)?,
    }
    if format == Format::Pdf {
        write_missing_letters(&[&a.design, &b.design], words)?;
    }
    let ended = [write_failures(&a, "A: ", units, words)?, write_failures(&b, "B: ", units, words)?];
    Ok(if ended == [Ending::Done; 2] { Ending::Done } else { Ending::StageFailed })
}

fn other(a: &Design, first: &Path, second: &Second<'_>) -> Result<Design, CliError> {
    match (second.file, second.milk) {
        (Some(file), _) if file.as_os_str() == "-" && first.as_os_str() == "-" => {
            Err(CliError::Arguments("only one of the two designs can come from standard input".to_owned()))
        }
        (Some(file), _) => open::file(file).map(|file| file.design),
        (None, Some(kind)) => Ok(alike_from(&batch(a)?, kind, second.alike)?),
        (None, None) => {
            Err(CliError::Arguments("name a second design, or another milk with --milk, as in --milk sheep".to_owned()))
        }
    }
}

fn to_json(a: &Batch, b: &Batch) -> serde_json::Value {
    let (choices, figures) = (differing_choices(&a.design, &b.design), compare(a, b));
    let milk = standardisation(a, b);
    let value = |value: Value| match value {
        Value::Number(number) => json!(number),
        Value::Choice(key) => json!(key),
        Value::Switch(on) => json!(on),
    };
    let choices: Vec<_> = choices
        .iter()
        .map(|choice| {
            let Field { key, label, unit, .. } = choice.field;
            json!({
                "key": key, "label": label, "unit": unit.symbol(), "a": value(choice.a), "b": value(choice.b), "in_use": choice.in_use,
            })
        })
        .collect();
    let mut stages = Map::new();
    for stage in Stage::ALL {
        let of_stage = figures
            .iter()
            .filter(|figure| figure.stage == stage)
            .flat_map(|figure| every_key(figure.key).map(|key| (key.to_owned(), figure_json(figure))));
        stages.insert(stage.key().to_owned(), of_stage.collect::<Map<_, _>>().into());
    }
    let cautions = compare_cautions(a, b);
    let serious = cautions.iter().filter(|compared| compared.caution.severity == Severity::Stop);
    json!({
        "a": a.design.title, "b": b.design.title, "choices": choices, "figures": stages,
        "milk": milk.map(|milk| milk.in_words(Units::METRIC)).unwrap_or_default(),
        "costs": costs_json(a, b), "cost_note": cost_note(a, b),
        "cautions": cautions.iter().map(caution_json).collect::<Vec<_>>(),
        "notice": FROM_A_MODEL, "serious_warnings": serious.map(caution_json).collect::<Vec<_>>(),
    })
}

/// Returns the costs of both in full; nothing where they cannot be compared.
fn costs_json(a: &Batch, b: &Batch) -> serde_json::Value {
    let Some(costs) = both_costs(a, b) else { return json!(null) };
    let of = |shopping: &Shopping| {
        json!({
            "price": shopping.price, "used_price": shopping.used_price,
            "each_price": shopping.each_price, "kilogram_price": shopping.kilogram_price,
        })
    };
    json!({ "currency": costs.currency, "a": of(&costs.a), "b": of(&costs.b) })
}

fn caution_json(compared: &ComparedCaution) -> serde_json::Value {
    let caution = &compared.caution;
    json!({
        "key": caution.key, "severity": capital(caution.severity), "whose": compared.whose.words(),
        "what": caution_words(caution, Units::METRIC).what, "said_of_b": said_of_b(compared, Units::METRIC),
    })
}

/// Written with a capital from the first version on: a script may compare it.
const fn capital(severity: Severity) -> &'static str {
    match severity {
        Severity::Note => "Note",
        Severity::Caution => "Caution",
        Severity::Stop => "Stop",
    }
}

fn figure_json(figure: &Difference) -> serde_json::Value {
    let reading = |of: Option<&Figure>| of.map(json_figure);
    json!({
        "label": figure.label,
        "unit": figure.a.as_ref().or(figure.b.as_ref()).map_or("", |one| one.unit.symbol()),
        "a": reading(figure.a.as_ref()), "b": reading(figure.b.as_ref()),
        "b_less_a": figure.change, "spread": figure.spread,
        "likeness": match figure.likeness {
            Likeness::Same => "same",
            Likeness::WithinSpread => "within_spread",
            Likeness::Differs => "differs",
        },
    })
}

fn write_text(both: &Comparison, data: &mut dyn Write) -> Result<(), CliError> {
    for (name, title) in ["A", "B"].into_iter().zip(&both.titles) {
        writeln!(data, "{name}: {}", printable(title))?;
    }
    writeln!(data, "\nChoices that differ")?;
    if both.choices.is_empty() {
        writeln!(data, "  none")?;
    } else {
        write_columns(["", "A", "B", ""], &both.choices, data)?;
    }
    for (stage, rows) in &both.stages {
        writeln!(data, "\n{}", stage.title())?;
        write_columns(["", "A", "B", "B − A"], rows, data)?;
    }
    if !both.costs.is_empty() {
        writeln!(data, "\nCosts")?;
        write_columns(["", "A", "B", "B − A"], &both.costs, data)?;
    }
    if let Some(note) = &both.cost_note {
        writeln!(data, "\n{}", printable(note))?;
    }
    if !both.milk.is_empty() {
        writeln!(data, "\nThe milk of A standardised to the fat and casein of B")?;
        both.milk.iter().try_for_each(|line| writeln!(data, "  {line}"))?;
    }
    if !both.serious.is_empty() {
        writeln!(data, "\nSerious warnings of both A and B")?;
        for compared in &both.serious {
            writeln!(data, "  {}", caution_line(&compared.caution, both.units))?;
            if let Some(of_b) = said_of_b(compared, both.units) {
                writeln!(data, "    In B: {of_b}")?;
            }
        }
    }
    for (name, cautions) in ["A", "B"].into_iter().zip(&both.cautions).filter(|(_, cautions)| !cautions.is_empty()) {
        writeln!(data, "\nCautions that only {name} has")?;
        cautions.iter().try_for_each(|caution| writeln!(data, "  {}", caution_line(caution, both.units)))?;
    }
    writeln!(data, "\n≈ same: the difference is less than the model can tell.\n{FROM_A_MODEL}")?;
    Ok(())
}
