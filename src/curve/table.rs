//! Every curve as a table, for a reader who cannot see it.

use super::{Curve, Series};

/// A figure as rows of numbers.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// Heading of each column, with its unit.
    pub headings: Vec<String>,
    /// Rows: x first, then one value a series where it has a point there.
    pub rows: Vec<Vec<Option<f64>>>,
    /// What is done or happens at each row; nothing at most of them. Only [`every_point`] fills it.
    pub marks: Vec<String>,
}

/// Returns the table of a figure, with at most about `rows` rows evenly spread over the x axis.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::{curve, table, CurveKey}};
/// let table = table(&curve(&batch(&Design::default())?, CurveKey::Warming), 12);
/// assert!(table.rows.len() <= 13 && table.headings[0].contains("min"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn table(figure: &Curve, rows: usize) -> Table {
    spread_evenly(figure, &[("", figure)], rows)
}

/// Returns the table of a curve of two designs: the columns of A, then those of B, as many rows.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::{curve, table_of_both, CurveKey}};
/// let loss = curve(&batch(&Design::default())?, CurveKey::DryingLoss);
/// let both = table_of_both(&loss, &loss, 12);
/// assert_eq!(both.headings[1..], ["A: middle tray, %", "B: middle tray, %"]);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn table_of_both(a: &Curve, b: &Curve, rows: usize) -> Table {
    let framed = if a.series.is_empty() { b } else { a };
    spread_evenly(framed, &[("A: ", a), ("B: ", b)], rows)
}

fn spread_evenly(framed: &Curve, figures: &[(&str, &Curve)], rows: usize) -> Table {
    let all: Vec<(&str, &Series)> =
        figures.iter().flat_map(|(whose, figure)| figure.series.iter().map(move |series| (*whose, series))).collect();
    let mut headings = vec![with_unit(framed.x.label, framed.x.unit)];
    headings.extend(all.iter().map(|(whose, series)| format!("{whose}{}", with_unit(series.name, framed.y.unit))));
    let last = all.iter().filter_map(|(_, series)| series.points.last()).map(|[x, _]| *x).fold(0.0, f64::max);
    let steps = rows.max(1);
    let row = |x: f64| std::iter::once(Some(x)).chain(all.iter().map(|(_, series)| value_at(&series.points, x))).collect();
    let rows = if all.is_empty() { Vec::new() } else { (0..=steps).map(|step| row(last * step as f64 / steps as f64)).collect() };
    Table { headings, rows, marks: Vec::new() }
}

/// Returns the table of a figure with a row for every point of every line and band and for every event, bands as a column of lows and one of highs.
///
/// Where a line has no point of its own the value stands straight between its neighbours, as it is drawn; outside of its ends there is
/// none. A line that jumps has two rows at one x.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::{every_point, curve, CurveKey}};
/// let loss = curve(&batch(&Design::default())?, CurveKey::DryingLoss);
/// assert!(every_point(&loss).rows.len() >= loss.series[0].points.len());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn every_point(figure: &Curve) -> Table {
    let mut headings = vec![with_unit(figure.x.label, figure.x.unit)];
    let mut columns: Vec<Vec<[f64; 2]>> = Vec::new();
    for series in &figure.series {
        headings.push(with_unit(series.name, figure.y.unit));
        columns.push(series.points.clone());
    }
    for band in &figure.bands {
        headings.push(with_unit(&format!("{}: low", band.name), figure.y.unit));
        columns.push(band.points.iter().map(|[x, low, _]| [*x, *low]).collect());
        headings.push(with_unit(&format!("{}: high", band.name), figure.y.unit));
        columns.push(band.points.iter().map(|[x, _, high]| [*x, *high]).collect());
    }
    let events = figure.events.iter().map(|event| event.at);
    let mut all_x: Vec<f64> = columns.iter().flatten().map(|[x, _]| *x).chain(events).filter(|x| x.is_finite()).collect();
    all_x.sort_by(f64::total_cmp);
    all_x.dedup_by(|next, x| same(*next, *x));
    // Of several rows at one x the first has the mark.
    let marks_at = |x| std::iter::once(mark(figure, x)).chain(std::iter::repeat(String::new()));
    let (rows, marks) = all_x.into_iter().flat_map(|x| rows_at(&columns, x).into_iter().zip(marks_at(x))).unzip();
    Table { headings, rows, marks }
}

/// Returns the names of all events at one x.
fn mark(figure: &Curve, x: f64) -> String {
    let here = figure.events.iter().filter(|event| same(event.at, x));
    here.map(|event| event.name).collect::<Vec<_>>().join("; ")
}

/// Returns the rows at one x: one, or as many as the line that jumps there has points.
fn rows_at(columns: &[Vec<[f64; 2]>], x: f64) -> Vec<Vec<Option<f64>>> {
    let own: Vec<Vec<f64>> =
        columns.iter().map(|points| points.iter().filter(|[at, _]| same(*at, x)).map(|[_, y]| *y).collect()).collect();
    // Where only an event stands every line is between its points.
    let times = own.iter().map(Vec::len).max().unwrap_or(0).max(1);
    let value = |time: usize, (own, points): (&Vec<f64>, &Vec<[f64; 2]>)| {
        own.get(time).or_else(|| own.last()).copied().or_else(|| value_at(points, x))
    };
    (0..times).map(|time| std::iter::once(Some(x)).chain(own.iter().zip(columns).map(|pair| value(time, pair))).collect()).collect()
}

/// Whether two places on the x axis are the same number.
fn same(one: f64, other: f64) -> bool {
    one.to_bits() == other.to_bits()
}

fn with_unit(label: &str, unit: &str) -> String {
    if unit.is_empty() { label.to_owned() } else { format!("{label}, {unit}") }
}

/// Returns the value at x, straight between points; none outside them.
pub(super) fn value_at(points: &[[f64; 2]], x: f64) -> Option<f64> {
    let after = points.partition_point(|point| point.first().is_some_and(|at| *at < x));
    let [x1, y1] = *points.get(after).or_else(|| points.last().filter(|[last, _]| (x - last).abs() < 1e-9))?;
    let Some([x0, y0]) = after.checked_sub(1).and_then(|before| points.get(before)).copied() else {
        // Before the first point there is nothing, but for a hair of rounding.
        return ((x1 - x).abs() < 1e-9).then_some(y1);
    };
    Some(if x1 > x0 { y0 + (x - x0) / (x1 - x0) * (y1 - y0) } else { y1 })
}
