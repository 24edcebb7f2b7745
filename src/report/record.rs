//! Records of constants and formulae in words: name, value with its range, and how far to trust it.

use crate::source::{AnyCorrelation, Constant, SourceId, SourceRow};
use crate::words::number_words;

/// One record in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RecordRow {
    /// What it is.
    pub name: &'static str,
    /// Its value with unit and range, or its formula with coefficients and where it holds.
    pub value: String,
    /// How far to trust it, and where it comes from.
    pub source: String,
}

/// Returns the row of a constant.
///
/// # Arguments
/// * `rows`: the ledger
///
/// # Example
/// ```
/// use vatsketch::{law::yields::CASEIN_KEPT, report::constant_row, source::ledger};
/// let row = constant_row(&CASEIN_KEPT, ledger()?);
/// assert!(row.value.starts_with("0.") && row.value.contains('–'));
/// # Ok::<(), &vatsketch::source::LedgerError>(())
/// ```
#[must_use]
pub fn constant_row(record: &Constant, rows: &[SourceRow]) -> RecordRow {
    let (least, most) = record.range;
    // A bare number is recorded with the unit 1.
    let unit = if record.unit == "1" { "" } else { record.unit };
    let range = if least.to_bits() == most.to_bits() {
        String::new()
    } else {
        format!("  ({}–{})", number_words(least), number_words(most))
    };
    RecordRow {
        name: record.name,
        value: format!("{} {unit}{range}", number_words(record.value)),
        source: sourced(rows, record.source, record.locator, record.standing.words()),
    }
}

/// Returns the row of a formula.
///
/// # Arguments
/// * `rows`: the ledger
#[must_use]
pub fn correlation_row(record: &AnyCorrelation, rows: &[SourceRow]) -> RecordRow {
    let coefficients: Vec<String> = record.coefficients.iter().map(|value| number_words(*value)).collect();
    let (least, most) = record.valid;
    let (unit, valid) = (record.unit, record.valid_in);
    let value = format!(
        "{}: {} ({unit}); valid {} to {} {valid}",
        record.form,
        coefficients.join(", "),
        number_words(least),
        number_words(most)
    );
    RecordRow { name: record.name, value, source: sourced(rows, record.source, record.locator, record.standing.words()) }
}

/// Returns the title of a source.
#[must_use]
pub fn source_title(rows: &[SourceRow], id: SourceId) -> String {
    rows.iter().find(|row| row.id == id).map_or_else(String::new, |row| row.title.clone())
}

fn sourced(rows: &[SourceRow], id: SourceId, locator: &str, standing: &str) -> String {
    let place = if locator.is_empty() { String::new() } else { format!("; {locator}") };
    format!("{standing}: {}{place}", source_title(rows, id))
}
