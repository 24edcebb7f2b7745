//! Figures as aligned lines of text, and as JSON.

use crate::batch::{Reading, Readout};
use serde_json::{Map, Value, json};
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

/// Returns figures as members of a JSON object, numbers in full.
pub(super) fn json_figures(figures: &[Readout]) -> Map<String, Value> {
    figures.iter().map(|figure| (figure.key.to_owned(), json_reading(&figure.reading))).collect()
}

fn json_reading(reading: &Reading) -> Value {
    match reading {
        // A number that is not finite has no JSON form and becomes null.
        Reading::Number(number) => json!(number),
        Reading::Words(words) => json!(words),
        Reading::Switch(on) => json!(on),
    }
}

/// Writes a JSON value over several lines.
pub(super) fn write_json(value: &Value, data: &mut dyn Write) -> Result<(), super::CliError> {
    writeln!(data, "{}", serde_json::to_string_pretty(value)?)?;
    Ok(())
}

/// Returns a text that came from a file without control characters, which could give orders to the terminal it is printed on.
pub(super) fn printable(text: &str) -> String {
    text.chars().map(|letter| if letter.is_control() && letter != '\n' { '\u{fffd}' } else { letter }).collect()
}
