//! Rows of two designs side by side, as aligned lines.

use crate::export::printable;
use crate::report::ComparedRow;
use std::io::Write;

/// Cells that are longer stand out of their column.
const WIDEST: usize = 40;

/// Writes rows under headings; each column but the last is as wide as its widest, within reason.
pub(super) fn write_columns(headings: [&str; 4], rows: &[ComparedRow], data: &mut dyn Write) -> std::io::Result<()> {
    let cells = rows.iter().map(|row| [&row.label, &row.a, &row.b, &row.change].map(String::as_str));
    let all: Vec<[&str; 4]> = std::iter::once(headings).chain(cells).collect();
    let width = |column: fn(&[&str; 4]) -> usize| all.iter().map(|row| column(row).min(WIDEST)).max().unwrap_or(0);
    let widths = (width(|row| row[0].chars().count()), width(|row| row[1].chars().count()), width(|row| row[2].chars().count()));
    for [label, a, b, change] in all {
        let line = format!("  {label:<0$}  {a:<1$}  {b:<2$}  {change}", widths.0, widths.1, widths.2);
        writeln!(data, "{}", printable(line.trim_end()).replace('\u{a0}', " "))?;
    }
    Ok(())
}
