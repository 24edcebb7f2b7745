//! The batches of a log as a table for a spreadsheet.

use super::ExportError;
use super::csv::{finished, number, refused, table};
use crate::record::log_moment;
use crate::report::{BATCH_COLUMNS, BatchLine};

/// Returns batches as comma-separated values, one line a batch: number, name, when it was begun, design, the columns of numbers in metric
/// units with their keys as headings, and what the maker said. Nothing stands where nothing was written down.
///
/// # Errors
/// [`ExportError::Table`].
///
/// # Source
/// RFC 4180, as for [`super::figures_csv`].
///
/// # Example
/// ```
/// use vatsketch::{design::Design, export::batches_csv, record::Log, report::batch_lines};
/// let mut log = Log::default();
/// log.begin("garden", jiff::civil::date(2031, 5, 9).at(8, 0, 0, 0), Design::default(), None);
/// let table = String::from_utf8(batches_csv(&batch_lines(&log.batches, ""))?)?;
/// assert!(table.starts_with("batch,name,begun,design,milk_l,"));
/// assert!(table.contains("\r\n1,\"batch 1, garden\",2031-05-09 08:00,"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn batches_csv(lines: &[BatchLine]) -> Result<Vec<u8>, ExportError> {
    let mut table = table();
    let headings = ["batch", "name", "begun", "design"].into_iter().chain(BATCH_COLUMNS.map(|column| column.key)).chain(["words"]);
    table.write_record(headings).map_err(refused)?;
    for line in lines {
        let own = [line.number.to_string(), line.title.clone(), log_moment(line.begun), line.design.clone()];
        let numbers = line.numbers.map(|value| value.map_or_else(String::new, number));
        table.write_record(own.into_iter().chain(numbers).chain([line.words.clone()])).map_err(refused)?;
    }
    finished(table)
}
