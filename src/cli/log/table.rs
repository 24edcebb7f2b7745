//! Rows of text as aligned columns.

use crate::export::printable;
use std::io::Write;

/// Writes rows under headings, each column but the last as wide as its widest cell.
pub(super) fn write_table<const N: usize>(headings: [&str; N], rows: &[[String; N]], data: &mut dyn Write) -> std::io::Result<()> {
    let head = headings.map(str::to_owned);
    let all = || std::iter::once(&head).chain(rows);
    let widths: Vec<usize> =
        (0..N).map(|column| all().filter_map(|row| row.get(column)).map(|cell| cell.chars().count()).max().unwrap_or(0)).collect();
    for row in all() {
        let cells = row.iter().zip(&widths).map(|(cell, width)| format!("{cell:<width$}"));
        let line = cells.collect::<Vec<_>>().join("  ");
        writeln!(data, "  {}", printable(line.trim_end()).replace('\u{a0}', " "))?;
    }
    Ok(())
}
