//! A table of numbers in columns, each in one unit, which its heading says.

use crate::design::Unit;
use crate::units::Units;
use std::io::Write;

/// One column, as the calculation has it.
pub(super) struct Column {
    heading: &'static str,
    unit: Unit,
    decimals: usize,
    values: Vec<f64>,
}

impl Column {
    /// Returns a column.
    ///
    /// # Arguments
    /// * `heading`: what it is, without the unit; may be empty where the unit says it
    /// * `decimals`: in the unit of the calculation; other units are rounded to what a kitchen can read
    pub(super) fn new(heading: &'static str, unit: Unit, decimals: usize, values: Vec<f64>) -> Self {
        Self { heading, unit, decimals, values }
    }

    /// Returns the heading with its unit, and below it the values: one unit for all, that of the greatest.
    fn cells(&self, units: Units) -> Vec<String> {
        let greatest = self.values.iter().fold(0.0_f64, |greatest, value| greatest.max(value.abs()));
        let scale = units.scale(self.unit, greatest);
        let heading = match (self.heading, scale.symbol) {
            (heading, "") => heading.to_owned(),
            ("", symbol) => symbol.to_owned(),
            (heading, symbol) => format!("{heading}, {symbol}"),
        };
        std::iter::once(heading).chain(self.values.iter().map(|value| scale.digits(*value, self.decimals))).collect()
    }
}

/// Writes columns side by side, right-aligned, with two spaces between them.
pub(super) fn write_columns(columns: &[Column], units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    let cells: Vec<Vec<String>> = columns.iter().map(|column| column.cells(units)).collect();
    let widths: Vec<usize> = cells.iter().map(|column| column.iter().map(|cell| cell.chars().count()).max().unwrap_or(0)).collect();
    let rows = cells.iter().map(Vec::len).max().unwrap_or(0);
    for row in 0..rows {
        let line: Vec<String> = cells
            .iter()
            .zip(&widths)
            .map(|(column, &width)| format!("{:>width$}", column.get(row).map_or("", String::as_str)))
            .collect();
        writeln!(data, "  {}", line.join("  "))?;
    }
    Ok(())
}
