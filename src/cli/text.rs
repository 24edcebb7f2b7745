//! Figures as aligned lines of text, JSON over several lines, what every command says of cautions and failures.

use super::ending::Ending;
use crate::batch::Batch;
use crate::caution::{Severity, cautions};
use crate::design::Stage;
use crate::export::printable;
use crate::figure::Figure;
use serde_json::Value;
use std::io::Write;

/// Writes figures as aligned lines.
pub(super) fn write_figures(figures: &[Figure], data: &mut dyn Write) -> std::io::Result<()> {
    let width = figures.iter().map(|figure| figure.label.chars().count()).max().unwrap_or(0);
    for figure in figures {
        let pad = " ".repeat(width - figure.label.chars().count());
        let likely = figure.likely_text().map(|likely| format!("  (likely {likely})")).unwrap_or_default();
        let kitchen = figure.kitchen.as_ref().map(|kitchen| format!("  about {kitchen}")).unwrap_or_default();
        writeln!(data, "  {}{pad}  {}{likely}{kitchen}", figure.label, figure.text())?;
    }
    Ok(())
}

/// Writes a JSON value over several lines.
pub(super) fn write_json(value: &Value, data: &mut dyn Write) -> Result<(), super::ending::CliError> {
    writeln!(data, "{}", serde_json::to_string_pretty(value)?)?;
    Ok(())
}

/// Says which stages failed and why, and returns how the command ends.
///
/// # Arguments
/// * `whose`: said first, such as "A: "; may be empty
pub(super) fn write_failures(batch: &Batch, whose: &str, words: &mut dyn Write) -> std::io::Result<Ending> {
    for stage in Stage::ALL {
        if let Some(error) = batch.ending(stage).failed() {
            writeln!(words, "vatsketch: {whose}{}: {error}", stage.key())?;
        }
    }
    Ok(if batch.first_missing().is_none() { Ending::Done } else { Ending::StageFailed })
}

/// Writes the title of a design, how many cautions there are, and every one that says stop.
pub(super) fn write_head(batch: &Batch, data: &mut dyn Write) -> std::io::Result<()> {
    if !batch.design.title.is_empty() {
        writeln!(data, "{}", printable(&batch.design.title))?;
    }
    let all = cautions(batch);
    let counted = |severity: Severity, one: &str, more: &str| {
        let count = all.iter().filter(|caution| caution.severity == severity).count();
        format!("{count} {}", if count == 1 { one } else { more })
    };
    writeln!(
        data,
        "{}, {}, {}: `vatsketch figures` shows them all, with what would lessen them.",
        counted(Severity::Stop, "stop", "stops"),
        counted(Severity::Caution, "caution", "cautions"),
        counted(Severity::Note, "note", "notes")
    )?;
    for stop in all.iter().filter(|caution| caution.severity == Severity::Stop) {
        writeln!(data, "  {}: {}", stop.severity.word(), stop.what)?;
    }
    Ok(())
}
