//! `vatsketch compare`: two designs side by side.

use super::text::write_json;
use super::{CliError, Ending, open};
use crate::batch::{
    Batch, Difference, DifferingChoice, Likeness, MilkMending, StageEnd, batch, compare, differing_choices, from_milk, mending,
    milks_differ, stage_ends,
};
use crate::design::{Design, Field, MilkKind, Stage, Value};
use crate::export::{json_figures, printable};
use serde_json::{Map, json};
use std::io::Write;
use std::path::Path;

/// The second design: from a file, or the first from another milk.
pub(super) struct Second<'a> {
    /// The file, if one is named.
    pub file: Option<&'a Path>,
    /// The key of the milk, if one is named.
    pub milk: Option<&'a str>,
}

pub(super) fn run(
    first: &Path,
    second: &Second<'_>,
    as_json: bool,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let a = open::design(first, &[])?;
    let b = other(&a, first, second)?;
    let (a, b) = (batch(&a)?, batch(&b)?);
    let choices = differing_choices(&a.design, &b.design);
    let figures = compare(&a, &b);
    let milk = mending(&a, &b).filter(|_| milks_differ(&a, &b));
    if as_json {
        write_json(&to_json(&a, &b, &choices, &figures, milk.as_ref()), data)?;
    } else {
        write_text(&a, &b, &choices, &figures, milk.as_ref(), data)?;
    }
    let mut done = true;
    for (name, batch) in [("A", &a), ("B", &b)] {
        let ends = stage_ends(batch);
        done &= ends.iter().all(StageEnd::is_done);
        for failed in ends.iter().filter(|end| end.status == "failed") {
            writeln!(words, "vatsketch: {name}: {}: {}", failed.stage.key(), failed.error.as_deref().unwrap_or_default())?;
        }
    }
    Ok(if done { Ending::Done } else { Ending::StageFailed })
}

fn other(a: &Design, first: &Path, second: &Second<'_>) -> Result<Design, CliError> {
    match (second.file, second.milk) {
        (Some(file), _) if file.as_os_str() == "-" && first.as_os_str() == "-" => {
            Err(CliError::Arguments("only one of the two designs can come from standard input".to_owned()))
        }
        (Some(file), _) => open::design(file, &[]),
        (None, Some(key)) => {
            let kind = MilkKind::from_key(key).ok_or_else(|| {
                let known: Vec<&str> = MilkKind::CHOICES.iter().map(|choice| choice.key).collect();
                CliError::Arguments(format!("there is no milk called `{key}`; there are {}", known.join(", ")))
            })?;
            Ok(from_milk(a, kind))
        }
        (None, None) => {
            Err(CliError::Arguments("name a second design, or another milk with --milk, as in --milk sheep".to_owned()))
        }
    }
}

fn to_json(
    a: &Batch,
    b: &Batch,
    choices: &[DifferingChoice],
    figures: &[Difference],
    milk: Option<&MilkMending>,
) -> serde_json::Value {
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
        let of_stage =
            figures.iter().filter(|figure| figure.stage == stage).map(|figure| (figure.key.to_owned(), figure_json(figure)));
        stages.insert(stage.key().to_owned(), of_stage.collect::<Map<_, _>>().into());
    }
    json!({
        "a": a.design.title, "b": b.design.title, "choices": choices, "figures": stages,
        "milk": milk.map(MilkMending::in_words).unwrap_or_default(),
    })
}

fn figure_json(figure: &Difference) -> serde_json::Value {
    let reading = |of: Option<&crate::batch::Readout>| json_figures(of).into_iter().next().map_or(json!(null), |(_, value)| value);
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

fn write_text(
    a: &Batch,
    b: &Batch,
    choices: &[DifferingChoice],
    figures: &[Difference],
    milk: Option<&MilkMending>,
    data: &mut dyn Write,
) -> Result<(), CliError> {
    for (name, batch) in [("A", a), ("B", b)] {
        let title = if batch.design.title.is_empty() { "untitled" } else { &batch.design.title };
        writeln!(data, "{name}: {}", printable(title))?;
    }
    writeln!(data, "\nChoices that differ")?;
    let rows: Vec<[String; 4]> = choices
        .iter()
        .map(|choice| {
            let effect = if choice.in_use { "" } else { "(no effect in either)" };
            let words = |value| choice.field.words_with_unit(value);
            [choice.field.label.to_owned(), words(choice.a), words(choice.b), effect.to_owned()]
        })
        .collect();
    if rows.is_empty() {
        writeln!(data, "  none")?;
    } else {
        write_columns(["", "A", "B", ""], &rows, data)?;
    }
    for stage in Stage::ALL {
        let of_stage: Vec<[String; 4]> = figures
            .iter()
            .filter(|figure| figure.stage == stage)
            .map(|figure| [figure.label.to_owned(), figure.a_text(), figure.b_text(), figure.change_text()])
            .collect();
        if !of_stage.is_empty() {
            writeln!(data, "\n{}", stage.title())?;
            write_columns(["", "A", "B", "B − A"], &of_stage, data)?;
        }
    }
    if let Some(milk) = milk {
        writeln!(data, "\nThe milk of A brought to the fat and casein of B")?;
        milk.in_words().iter().try_for_each(|line| writeln!(data, "  {line}"))?;
    }
    writeln!(data, "\n≈ same: less apart than the model can tell. A plan from a model, not a measurement.")?;
    Ok(())
}

/// Cells that are longer stand out of their column.
const WIDEST: usize = 40;

/// Writes rows of four under headings; each column but the last is as wide as its widest, within reason.
fn write_columns(headings: [&str; 4], rows: &[[String; 4]], data: &mut dyn Write) -> std::io::Result<()> {
    let headings = headings.map(str::to_owned);
    let all: Vec<&[String; 4]> = std::iter::once(&headings).chain(rows).collect();
    let width =
        |column: fn(&[String; 4]) -> &String| all.iter().map(|row| column(row).chars().count().min(WIDEST)).max().unwrap_or(0);
    let widths = (width(|row| &row[0]), width(|row| &row[1]), width(|row| &row[2]));
    for [label, a, b, change] in all {
        let line = format!("  {label:<0$}  {a:<1$}  {b:<2$}  {change}", widths.0, widths.1, widths.2);
        writeln!(data, "{}", line.trim_end())?;
    }
    Ok(())
}
