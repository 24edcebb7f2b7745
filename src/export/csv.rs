//! Tables for a spreadsheet: comma-separated values as RFC 4180 has them, in UTF-8, numbers in full with a decimal point.

use super::ExportError;
use crate::batch::Batch;
use crate::curve::{Curve, every_point};
use crate::design::Stage;
use crate::figure::{Figure, Reading, every_key, figures};
use csv::{Terminator, Writer, WriterBuilder};

/// Headings of the table of figures.
const HEADINGS: [&str; 8] = ["stage", "key", "label", "value", "unit", "likely low", "likely high", "words"];

/// Returns every figure of a batch as a table: stage, key, label, value, unit, likely low, likely high, words.
///
/// The words are what a figure says that is no number, and the kitchen measure of one that is. A stage that was not worked out has one
/// row with the key `status`, which says why. A figure whose key was replaced has a second row with the old key, for sheets that look it up.
///
/// # Errors
/// [`ExportError::Table`].
///
/// # Source
/// RFC 4180: lines end in CR LF, the first names the columns, fields with commas, quotes or line breaks are quoted.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::figures_csv};
/// let bytes = figures_csv(&batch(&Design::default())?)?;
/// assert!(bytes.starts_with(b"stage,key,label,value,unit,likely low,likely high,words\r\n"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn figures_csv(batch: &Batch) -> Result<Vec<u8>, ExportError> {
    let figures = figures(batch);
    let mut table = table();
    table.write_record(HEADINGS).map_err(refused)?;
    for stage in Stage::ALL {
        let ending = batch.ending(stage);
        if let Some(why) = ending.why_not() {
            let words = format!("{}: {why}", ending.status().replace('_', " "));
            table.write_record([stage.key(), "status", "How far it came", "", "", "", "", &words]).map_err(refused)?;
        }
        for figure in figures.iter().filter(|figure| figure.stage == stage) {
            for key in every_key(figure.key) {
                table.write_record(row(figure, key)).map_err(refused)?;
            }
        }
    }
    finished(table)
}

/// Returns the row of a figure under one of its keys.
fn row(figure: &Figure, key: &str) -> [String; 8] {
    let label = if key == figure.key { figure.label.to_owned() } else { format!("{} (old key)", figure.label) };
    let (value, words) = match &figure.reading {
        Reading::Number(value) => (number(*value), figure.kitchen.clone().unwrap_or_default()),
        Reading::Words(_) | Reading::Switch(_) => (String::new(), figure.text()),
    };
    let [low, high] = figure.likely.map_or_else(Default::default, |(low, high)| [number(low), number(high)]);
    let unit = figure.unit.symbol().to_owned();
    [figure.stage.key().to_owned(), key.to_owned(), label, value, unit, low, high, words]
}

/// Heading of the last column of a curve.
const EVENT: &str = "event (what is done or happens here)";

/// Returns every point of a curve as a table: its x axis, then one column a line and two a band, each with its unit in the heading, and last
/// what is done or happens at that place. An event has a row of its own where the curve has no point there.
///
/// # Errors
/// [`ExportError::NoCurve`] where the stage was not worked out; [`ExportError::Table`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::curve_csv, curve::{curve, CurveKey}};
/// let bytes = curve_csv(&curve(&batch(&Design::default())?, CurveKey::Warming))?;
/// assert!(bytes.starts_with(b"\"time from the start, min\",\"milk, "));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn curve_csv(figure: &Curve) -> Result<Vec<u8>, ExportError> {
    refuse_empty(figure)?;
    let points = every_point(figure);
    let mut table = table();
    table.write_record(points.headings.iter().map(String::as_str).chain([EVENT])).map_err(refused)?;
    for (row, mark) in points.rows.into_iter().zip(points.marks) {
        let values = row.into_iter().map(|value| value.map(number).unwrap_or_default());
        table.write_record(values.chain([mark])).map_err(refused)?;
    }
    finished(table)
}

/// Refuses a curve that has nothing to show, with the reason.
pub(super) fn refuse_empty(figure: &Curve) -> Result<(), ExportError> {
    match &figure.empty_because {
        Some(why) => Err(ExportError::NoCurve { title: figure.title, why: why.clone() }),
        None => Ok(()),
    }
}

/// Returns a number so that reading it gives the same number; nothing where there is none.
fn number(value: f64) -> String {
    if value.is_finite() { value.to_string() } else { String::new() }
}

fn table() -> Writer<Vec<u8>> {
    WriterBuilder::new().terminator(Terminator::CRLF).from_writer(Vec::new())
}

fn finished(table: Writer<Vec<u8>>) -> Result<Vec<u8>, ExportError> {
    table.into_inner().map_err(|error| ExportError::Table { why: error.to_string() })
}

#[expect(clippy::needless_pass_by_value, reason = "the shape that map_err takes")]
fn refused(error: csv::Error) -> ExportError {
    ExportError::Table { why: error.to_string() }
}
