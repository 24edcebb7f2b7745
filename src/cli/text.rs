//! Figures as aligned lines of text, JSON over several lines, what every command says of cautions and failures.

use super::ending::Ending;
use crate::batch::Batch;
use crate::caution::{Caution, Severity, cautions};
use crate::design::{Design, Stage, Unit};
use crate::export::{json_notice, json_signed, json_text, missing_letters_of, printable};
use crate::figure::Figure;
use crate::units::Units;
use crate::words::{FROM_A_MODEL, caution_line, counted};
use serde_json::{Map, Value};
use std::io::Write;

/// Writes figures as aligned lines.
pub(super) fn write_figures(figures: &[Figure], units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    let labels: Vec<String> = figures.iter().map(|figure| figure.label_in(units)).collect();
    let width = labels.iter().map(|label| label.chars().count()).max().unwrap_or(0);
    for (figure, label) in figures.iter().zip(&labels) {
        let likely = figure.likely_words(units).map(|likely| format!("  ({likely})")).unwrap_or_default();
        let kitchen = figure.kitchen_in(units).map(|kitchen| format!("  about {kitchen}")).unwrap_or_default();
        writeln!(data, "  {label:<width$}  {}{likely}{kitchen}", figure.text_in(units))?;
    }
    Ok(())
}

/// Returns an amount with its unit, as it is shown.
///
/// # Arguments
/// * `decimals`: that it has in the unit of the calculation
pub(super) fn amount_text(units: Units, unit: Unit, value: f64, decimals: usize) -> String {
    units.text(unit, value, decimals).unwrap_or_else(|| format!("{value:.decimals$} {}", unit.symbol()))
}

/// Writes labels and what belongs to them as aligned lines.
pub(super) fn write_pairs(pairs: &[(String, String)], data: &mut dyn Write) -> std::io::Result<()> {
    let width = pairs.iter().map(|(label, _)| label.chars().count()).max().unwrap_or(0);
    pairs.iter().try_for_each(|(label, text)| writeln!(data, "  {label:<width$}  {text}"))
}

/// Writes the members of a JSON object over several lines, what wrote it first.
pub(super) fn write_json(value: Value, data: &mut dyn Write) -> Result<(), super::ending::CliError> {
    let members = match value {
        Value::Object(members) => members,
        other => Map::from_iter([("value".to_owned(), other)]),
    };
    write!(data, "{}", json_text(json_signed(members)))?;
    Ok(())
}

/// Says which stages failed and why, and returns how the command ends.
///
/// # Arguments
/// * `whose`: said first, such as "A: "; may be empty
/// * `units`: of what is said
pub(super) fn write_failures(batch: &Batch, whose: &str, units: Units, words: &mut dyn Write) -> std::io::Result<Ending> {
    for stage in Stage::ALL {
        if let Some(error) = batch.ending(stage).failed() {
            writeln!(words, "vatsketch: {whose}{}: {}", stage.key(), units.told(&error.to_string()))?;
        }
    }
    Ok(if batch.first_missing().is_none() { Ending::Done } else { Ending::StageFailed })
}

/// Says which letters of designs the paper cannot show.
pub(super) fn write_missing_letters(designs: &[&Design], words: &mut dyn Write) -> std::io::Result<()> {
    designs.iter().filter_map(|design| missing_letters_of(design)).try_for_each(|said| writeln!(words, "vatsketch: {said}"))
}

/// Writes the title of a design, how many cautions there are, and every serious warning.
pub(super) fn write_head(batch: &Batch, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    if !batch.design.title.is_empty() {
        writeln!(data, "{}", printable(&batch.design.title))?;
    }
    let all = cautions(batch);
    let own = || all.iter().filter(|caution| !caution.always);
    let counts = Severity::ALL.map(|severity| counted(severity, own().filter(|caution| caution.severity == severity).count()));
    writeln!(data, "{}: `vatsketch figures` shows them all.", counts.join(", "))?;
    write_serious(&all, units, data)
}

/// Writes each serious warning in full on a line.
fn write_serious(all: &[Caution], units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    let mut serious = all.iter().filter(|caution| caution.severity == Severity::Stop);
    serious.try_for_each(|caution| writeln!(data, "  {}", caution_line(caution, units)))
}

/// Returns a JSON object with what every output says of itself, and the serious warnings of a batch.
pub(super) fn with_notice(value: Value, batch: &Batch) -> Value {
    match value {
        Value::Object(mut members) => {
            members.extend(json_notice(&cautions(batch)));
            Value::Object(members)
        }
        other => other,
    }
}

/// Writes the serious warnings of a batch, and what every output says of itself.
pub(super) fn write_notice(batch: &Batch, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    writeln!(data)?;
    write_serious(&cautions(batch), units, data)?;
    writeln!(data, "{FROM_A_MODEL}")
}
