//! Measurements from a table of times and values, such as a probe exports.

use super::csv_text::{Row, number, rows, says_fahrenheit};
use super::dates::{DateError, DateOrder, is_date_alone, order_of, read};
use super::{BatchRecord, EntryKind, EntryValue, Holds};
use crate::design::Unit;
use crate::units::{Temperatures, Units};
use jiff::civil::DateTime;
use jiff::tz::TimeZone;

/// What is to be read from a table.
#[derive(Clone, Debug)]
pub struct Import<'a> {
    /// What the values are.
    pub kind: EntryKind,
    /// The column of the times, by its heading or its number from 1; the first that holds dates where nothing is said.
    pub time: Option<&'a str>,
    /// The column of the values; the first other one that holds numbers where nothing is said.
    pub value: Option<&'a str>,
    /// In which order day and month stand, where the table does not tell.
    pub order: Option<DateOrder>,
    /// The zone of the kitchen, for times that say how far they are from UTC.
    pub zone: TimeZone,
}

/// One line that was read.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadLine {
    /// The line, from 1.
    pub line: u64,
    /// Its time, by the clock on the wall of the kitchen.
    pub at: DateTime,
    /// Its value, in the unit of the kind.
    pub value: f64,
}

/// One line that was not.
#[derive(Clone, Debug, PartialEq)]
pub struct RefusedLine {
    /// The line, from 1.
    pub line: u64,
    /// Why, in a sentence without its full stop.
    pub why: String,
}

/// What a table gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Imported {
    /// The lines that were read, in the order of the table.
    pub read: Vec<ReadLine>,
    /// The lines that were not.
    pub refused: Vec<RefusedLine>,
    /// How the table was understood, in a sentence.
    pub understood: String,
}

/// Why a table gives nothing at all.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ImportError {
    /// The kind holds no numbers.
    #[error("{label} ({key}) is no number, and only numbers are imported")]
    NoNumber {
        /// In words.
        label: &'static str,
        /// The key.
        key: &'static str,
    },
    /// There is no such column.
    #[error("there is no column `{given}`; the table has {known}")]
    NoColumn {
        /// What was asked for.
        given: String,
        /// The headings.
        known: String,
    },
    /// No line has a date.
    #[error("no column holds dates with a time, such as 2031-05-09 18:30; name the column of the times if there is one")]
    NoTimes,
    /// No other column has numbers.
    #[error("no other column holds numbers; name the column of the values if there is one")]
    NoValues,
}

/// The columns of a table.
struct Columns {
    time: usize,
    /// Whether the hour stands in the column after the day.
    parted: bool,
    value: usize,
    /// The first row with values.
    first: usize,
}

/// Reads a table of times and values.
///
/// Lines before the first that has both are headings or remarks. Columns are parted by semicolons, tabs or commas; a decimal comma is read, a
/// unit behind a number is passed over, and degrees Fahrenheit that are called so become degrees Celsius.
///
/// # Errors
/// [`ImportError`] where the table as a whole cannot be read; a single line that cannot is among [`Imported::refused`].
///
/// # Example
/// ```
/// use vatsketch::record::{import, EntryKind, Import};
/// let wanted = Import { kind: EntryKind::MilkTemperature, time: None, value: None, order: None, zone: jiff::tz::TimeZone::UTC };
/// let imported = import("Time;Probe 1\n09.05.2031 18:30;34,5\n09.05.2031 18:31;off\n", &wanted)?;
/// assert_eq!((imported.read[0].value, imported.refused[0].line), (34.5, 3));
/// # Ok::<(), vatsketch::record::ImportError>(())
/// ```
pub fn import(text: &str, wanted: &Import<'_>) -> Result<Imported, ImportError> {
    let row = wanted.kind.row();
    let Holds::Number { unit, .. } = row.holds else { return Err(ImportError::NoNumber { label: row.label, key: row.key }) };
    let (delimiter, rows) = rows(text);
    let columns = columns(&rows, wanted)?;
    let (before, table) = rows.split_at_checked(columns.first).unwrap_or((&[], &rows));
    let times: Vec<String> = table.iter().map(|row| columns.time_of(row)).collect();
    let order = wanted.order.or_else(|| order_of(times.iter().map(String::as_str)));
    let heading = before.last().map_or("", |row| row.cell(columns.value));
    let fahrenheit = |cell: &str| unit == Unit::Celsius && (says_fahrenheit(heading) || says_fahrenheit(cell));
    let (mut read_lines, mut refused) = (Vec::new(), Vec::new());
    for (row, time) in table.iter().zip(&times) {
        if row.cells.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        let cell = row.cell(columns.value);
        let value = value_of(cell, fahrenheit(cell), wanted.kind);
        match (read(time, order, &wanted.zone), value) {
            (Ok(at), Ok(value)) => read_lines.push(ReadLine { line: row.line, at, value }),
            (Err(why), _) => refused.push(RefusedLine { line: row.line, why: why.to_string() }),
            (_, Err(why)) => refused.push(RefusedLine { line: row.line, why }),
        }
    }
    let name =
        |column: usize| before.last().map_or_else(|| format!("column {}", column + 1), |row| format!("“{}”", row.cell(column)));
    let degrees = if table.first().is_some_and(|row| fahrenheit(row.cell(columns.value))) { ", °F made °C" } else { "" };
    let behind = if columns.parted { " and the column behind it" } else { "" };
    let parts = match delimiter {
        ';' => "semicolons",
        '\t' => "tabs",
        _ => "commas",
    };
    let understood = format!(
        "Times from {}{behind}, values from {}{degrees}; columns separated by {parts}{}.",
        name(columns.time),
        name(columns.value),
        order.map_or_else(String::new, |order| format!("; {}", order.label()))
    );
    Ok(Imported { read: read_lines, refused, understood })
}

impl Imported {
    /// Takes out of what was read what a batch has already, so that a table that was read before adds only what is new; returns how many
    /// lines that were.
    pub fn leave_out_known(&mut self, kind: EntryKind, batch: &BatchRecord) -> usize {
        let known: std::collections::BTreeSet<_> =
            batch.of_kind(kind).into_iter().filter_map(|entry| Some((entry.at, entry.amount()?.to_bits()))).collect();
        let before = self.read.len();
        self.read.retain(|line| !known.contains(&(line.at, line.value.to_bits())));
        before - self.read.len()
    }
}

/// Returns the value in a cell, checked.
fn value_of(cell: &str, fahrenheit: bool, kind: EntryKind) -> Result<f64, String> {
    let given = number(cell)
        .ok_or_else(|| if cell.is_empty() { "there is no value".to_owned() } else { format!("“{cell}” is no number") })?;
    let units = Units { temperatures: Temperatures::Fahrenheit, ..Units::METRIC };
    let value = if fahrenheit { units.scale(Unit::Celsius, given).kept(given) } else { given };
    // To the hundredth, which no probe of a kitchen reads.
    let value = if fahrenheit { (100.0 * value).round() / 100.0 } else { value };
    EntryValue::Number(value).checked(kind).map_err(|error| error.to_string())?;
    Ok(value)
}

impl Columns {
    /// Returns the time in a row.
    fn time_of(&self, row: &Row) -> String {
        if self.parted { format!("{} {}", row.cell(self.time), row.cell(self.time + 1)) } else { row.cell(self.time).to_owned() }
    }
}

/// Returns whether a text is written as a date with a time, in whatever order, also one that no calendar has.
fn is_time(text: &str, zone: &TimeZone) -> bool {
    !matches!(read(text, None, zone), Err(DateError::NotUnderstood { .. }))
}

/// Finds the columns: the named ones, or those of the first row that has a time and a number.
fn columns(rows: &[Row], wanted: &Import<'_>) -> Result<Columns, ImportError> {
    let time = wanted.time.map(|name| named(rows, name)).transpose()?;
    let value = wanted.value.map(|name| named(rows, name)).transpose()?;
    let mut any_time = false;
    for (first, row) in rows.iter().enumerate() {
        let alone = |column: usize| is_time(row.cell(column), &wanted.zone);
        let parted = |column: usize| {
            is_date_alone(row.cell(column)) && is_time(&format!("{} {}", row.cell(column), row.cell(column + 1)), &wanted.zone)
        };
        let of = |column: usize| alone(column) || parted(column);
        let Some(time) = time.map_or_else(|| (0..row.cells.len()).find(|at| of(*at)), |at| of(at).then_some(at)) else { continue };
        any_time = true;
        let parted = !alone(time);
        let taken = |column: usize| column == time || (parted && column == time + 1);
        let is_value = |column: &usize| !taken(*column) && number(row.cell(*column)).is_some();
        let found = value.map_or_else(|| (0..row.cells.len()).find(is_value), |at| is_value(&at).then_some(at));
        if let Some(value) = found {
            return Ok(Columns { time, parted, value, first });
        }
    }
    Err(if any_time { ImportError::NoValues } else { ImportError::NoTimes })
}

/// Returns the column with a heading, or with a number.
fn named(rows: &[Row], name: &str) -> Result<usize, ImportError> {
    let same = |cell: &String| cell.trim().to_lowercase() == name.trim().to_lowercase();
    let by_heading = rows.iter().find_map(|row| row.cells.iter().position(same));
    let widest = rows.iter().map(|row| row.cells.len()).max().unwrap_or(0);
    let by_number = name.trim().parse::<usize>().ok().and_then(|number| number.checked_sub(1)).filter(|at| *at < widest);
    by_heading.or(by_number).ok_or_else(|| {
        let heads = rows.iter().find(|row| row.cells.len() == widest).map(|row| row.cells.join(", ")).unwrap_or_default();
        ImportError::NoColumn { given: name.to_owned(), known: heads }
    })
}
