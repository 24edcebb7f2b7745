//! Every curve as a table, for a reader who cannot see it.

use super::Figure;

/// A figure as rows of numbers.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// Heading of each column, with its unit.
    pub headings: Vec<String>,
    /// Rows: x first, then one value a series where it has a point there.
    pub rows: Vec<Vec<Option<f64>>>,
}

/// Returns the table of a figure, with at most about `rows` rows evenly spread over the x axis.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, figure::{figure, table, FigureKey}};
/// let table = table(&figure(&batch(&Design::default())?, FigureKey::Warming), 12);
/// assert!(table.rows.len() <= 13 && table.headings[0].contains("min"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn table(figure: &Figure, rows: usize) -> Table {
    let with_unit = |label: &str, unit: &str| if unit.is_empty() { label.to_owned() } else { format!("{label}, {unit}") };
    let mut headings = vec![with_unit(figure.x.label, figure.x.unit)];
    headings.extend(figure.series.iter().map(|series| with_unit(series.name, figure.y.unit)));
    let last = figure.series.iter().filter_map(|series| series.points.last()).map(|[x, _]| *x).fold(0.0, f64::max);
    let steps = rows.max(1);
    let rows = if figure.series.is_empty() {
        Vec::new()
    } else {
        (0..=steps).map(|step| row(figure, last * step as f64 / steps as f64)).collect()
    };
    Table { headings, rows }
}

fn row(figure: &Figure, x: f64) -> Vec<Option<f64>> {
    std::iter::once(Some(x)).chain(figure.series.iter().map(|series| value_at(&series.points, x))).collect()
}

/// Returns the value at x, straight between points; none outside them.
fn value_at(points: &[[f64; 2]], x: f64) -> Option<f64> {
    let after = points.partition_point(|point| point.first().is_some_and(|at| *at < x));
    let [x1, y1] = *points.get(after).or_else(|| points.last().filter(|[last, _]| (x - last).abs() < 1e-9))?;
    let Some([x0, y0]) = after.checked_sub(1).and_then(|before| points.get(before)).copied() else {
        // Before the first point there is nothing, but for a hair of rounding.
        return ((x1 - x).abs() < 1e-9).then_some(y1);
    };
    Some(if x1 > x0 { y0 + (x - x0) / (x1 - x0) * (y1 - y0) } else { y1 })
}
