//! Tables for a spreadsheet: comma-separated values as RFC 4180 has them, in UTF-8, numbers in full with a decimal point.

use super::ExportError;
use crate::batch::Batch;
use crate::caution::{Caution, Severity, serious_warnings};
use crate::curve::{Curve, CurveKey, every_point};
use crate::design::{Stage, field};
use crate::figure::{Figure, Reading, every_key, figures, is_of_germs};
use crate::units::Units;
use crate::words::{CautionWords, FROM_A_MODEL, POTENTIAL_GROWTH, caution_line, caution_word, caution_words};
use csv::{Terminator, Writer, WriterBuilder};

/// Headings of the table of figures.
const HEADINGS: [&str; 8] = ["stage", "key", "label", "value", "unit", "likely low", "likely high", "words"];

/// Returns every figure of a batch as a table: stage, key, label, value, unit, likely low, likely high, words.
///
/// The words are what a figure says that is no number, and the kitchen measure of one that is. The first row says what these figures are and
/// are not (key `notice`), then comes a row for each serious warning under its key, and one that says what figures of germs are and leave out (key
/// `notice_germs`). A stage that was not calculated has one row with the
/// key `status`, which says why.
/// A figure whose key was replaced has a second row with the old key, for sheets that look it up.
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
    table.write_record(["", "notice", "What these figures are", "", "", "", "", FROM_A_MODEL]).map_err(refused)?;
    for warning in serious_warnings(batch) {
        let stage = warning.caused_by.and_then(|key| field(key).ok()).map_or("", |field| field.stage.key());
        let CautionWords { what, remedy, .. } = caution_words(&warning, Units::METRIC);
        let words = format!("{what} {remedy}");
        table.write_record([stage, warning.key, caution_word(&warning), "", "", "", "", &words]).map_err(refused)?;
    }
    if figures.iter().any(|figure| is_of_germs(figure.key)) {
        table.write_record(["", "notice_germs", "What figures of germs are", "", "", "", "", POTENTIAL_GROWTH]).map_err(refused)?;
    }
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

/// Heading of the very last column.
const NOTICE: &str = "notice (what this is, and the serious warnings)";

/// Returns every point of a curve as a table: its x axis, then one column a line and two a band, each with its unit in the heading, then
/// what is done or happens at that place. An event has a row of its own where the curve has no point there. The last column has in its
/// first rows what the curve is and is not, and the serious warnings of the design.
///
/// # Arguments
/// * `figure`: the curve, as it is shown
/// * `units`: of what is said of the cautions
/// * `cautions`: of the batch that it belongs to; those that are less grave are left out
///
/// # Errors
/// [`ExportError::NoCurve`] where the stage was not calculated; [`ExportError::Table`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::cautions, design::Design, export::curve_csv, curve::{curve, CurveKey}, units::Units};
/// let batch = batch(&Design::default())?;
/// let bytes = curve_csv(&curve(&batch, CurveKey::Warming), &cautions(&batch), Units::METRIC)?;
/// assert!(bytes.starts_with(b"\"time from the start, min\",\"milk, "));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn curve_csv(figure: &Curve, cautions: &[Caution], units: Units) -> Result<Vec<u8>, ExportError> {
    refuse_empty(figure)?;
    let points = every_point(figure);
    let mut table = table();
    table.write_record(points.headings.iter().map(String::as_str).chain([EVENT, NOTICE])).map_err(refused)?;
    let serious = cautions.iter().filter(|caution| caution.severity == Severity::Stop).map(|caution| caution_line(caution, units));
    let of_germs = (figure.title == CurveKey::Germs.title()).then(|| POTENTIAL_GROWTH.to_owned());
    let mut notices = std::iter::once(FROM_A_MODEL.to_owned()).chain(serious).chain(of_germs);
    let columns = points.headings.len();
    for (row, mark) in points.rows.into_iter().zip(points.marks) {
        let values = row.into_iter().map(|value| value.map(number).unwrap_or_default());
        table.write_record(values.chain([mark, notices.next().unwrap_or_default()])).map_err(refused)?;
    }
    // A curve of very few points has rows without numbers for the rest.
    for notice in notices {
        table.write_record(vec![String::new(); columns + 1].into_iter().chain([notice])).map_err(refused)?;
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
pub(super) fn number(value: f64) -> String {
    if value.is_finite() { value.to_string() } else { String::new() }
}

pub(super) fn table() -> Writer<Vec<u8>> {
    WriterBuilder::new().terminator(Terminator::CRLF).from_writer(Vec::new())
}

pub(super) fn finished(table: Writer<Vec<u8>>) -> Result<Vec<u8>, ExportError> {
    table.into_inner().map_err(|error| ExportError::Table { why: error.to_string() })
}

#[expect(clippy::needless_pass_by_value, reason = "the shape that map_err takes")]
pub(super) fn refused(error: csv::Error) -> ExportError {
    ExportError::Table { why: error.to_string() }
}
