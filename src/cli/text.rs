//! Figures as aligned lines of text, and JSON over several lines.

use crate::batch::Readout;
use serde_json::Value;
use std::io::Write;

/// Writes figures as aligned lines.
pub(super) fn write_figures(figures: &[Readout], data: &mut dyn Write) -> std::io::Result<()> {
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
pub(super) fn write_json(value: &Value, data: &mut dyn Write) -> Result<(), super::CliError> {
    writeln!(data, "{}", serde_json::to_string_pretty(value)?)?;
    Ok(())
}
