//! A figure made ready to draw: ticks at round numbers, points thinned, everything inside its axes.

use crate::curve::{Axis, Curve, Role, in_one_frame};
use crate::words::FROM_A_MODEL;
use serde::Serialize;

/// Most points of a line on paper: one each third of a millimetre of a chart is more than a printer shows.
const MOST_POINTS: usize = 400;

/// A figure as the template draws it.
#[derive(Debug, Serialize)]
pub(super) struct Chart {
    title: &'static str,
    x: ChartAxis,
    y: ChartAxis,
    lines: Vec<Line>,
    bands: Vec<Run>,
    events: Vec<Mark>,
    empty_because: Option<String>,
    in_words: String,
    notice: &'static str,
}

#[derive(Debug, Serialize)]
struct ChartAxis {
    name: String,
    least: f64,
    most: f64,
    ticks: Vec<Tick>,
}

#[derive(Debug, Serialize)]
struct Tick {
    at: f64,
    text: String,
}

#[derive(Clone, Debug, Serialize)]
struct Line {
    name: String,
    dash: &'static str,
    points: Vec<[f64; 2]>,
}

#[derive(Debug, Serialize)]
struct Run {
    name: &'static str,
    points: Vec<[f64; 2]>,
}

#[derive(Debug, Serialize)]
struct Mark {
    name: &'static str,
    at: f64,
}

impl Chart {
    /// Returns one curve of two designs in one frame: A solid, B dashed; limits once, bands and events left out, so that the two can be read.
    pub(super) fn of_both(a: &Curve, b: &Curve) -> Self {
        let (a, b) = in_one_frame(a.clone(), b.clone());
        let (one, other) = (Self::of(&a), Self::of(&b));
        let named = |whose: &str, dash: &'static str, lines: Vec<Line>| {
            let drawn = lines.into_iter().filter(|line| line.dash == self::dash(Role::Main));
            drawn.map(|line| Line { name: format!("{whose} {}", line.name), dash, points: line.points }).collect::<Vec<_>>()
        };
        let said = |name: &str, figure: &Curve| {
            figure
                .empty_because
                .as_ref()
                .map_or_else(|| format!("{name}: {}", figure.in_words), |why| format!("{name}: no curve: {why}"))
        };
        let in_words = format!("{} {}", said("A", &a), said("B", &b));
        let limit = |line: &&Line| line.dash == self::dash(Role::Limit);
        let (of_a, of_b): (Vec<&Line>, Vec<&Line>) =
            (one.lines.iter().filter(limit).collect(), other.lines.iter().filter(limit).collect());
        // A limit that both have is drawn once, one that only B has all the same.
        let only_b = of_b.into_iter().filter(|line| of_a.iter().all(|known| known.name != line.name));
        let limits: Vec<Line> = of_a.iter().copied().chain(only_b).cloned().collect();
        let lines = named("A", "solid", one.lines).into_iter().chain(named("B", "dashed", other.lines)).chain(limits).collect();
        Self {
            title: one.title,
            x: one.x,
            y: one.y,
            lines,
            bands: Vec::new(),
            events: Vec::new(),
            empty_because: None,
            in_words,
            notice: FROM_A_MODEL,
        }
    }

    pub(super) fn of(figure: &Curve) -> Self {
        let (x, y) = (ChartAxis::of(&figure.x), ChartAxis::of(&figure.y));
        let inside = |[at, value]: [f64; 2]| {
            let finite = at.is_finite() && value.is_finite();
            (finite && x.holds(at)).then(|| [at, value.clamp(y.least, y.most)])
        };
        let line = |points: &[[f64; 2]]| thinned(points).into_iter().filter_map(inside).collect::<Vec<_>>();
        let lines = figure
            .series
            .iter()
            .map(|series| Line { name: series.name.to_owned(), dash: dash(series.role), points: line(&series.points) })
            .filter(|series| series.points.len() > 1)
            .collect();
        let bands = figure
            .bands
            .iter()
            .map(|band| {
                let low: Vec<[f64; 2]> = band.points.iter().map(|[at, low, _]| [*at, *low]).collect();
                let high: Vec<[f64; 2]> = band.points.iter().map(|[at, _, high]| [*at, *high]).collect();
                // Along the lower edge and back along the upper one.
                Run { name: band.name, points: line(&low).into_iter().chain(line(&high).into_iter().rev()).collect() }
            })
            .filter(|band| band.points.len() > 2)
            .collect();
        let events = figure.events.iter().filter(|event| x.holds(event.at));
        Self {
            title: figure.title,
            lines,
            bands,
            events: events.map(|event| Mark { name: event.name, at: event.at }).collect(),
            empty_because: figure.empty_because.clone(),
            in_words: figure.in_words.clone(),
            notice: FROM_A_MODEL,
            x,
            y,
        }
    }
}

impl ChartAxis {
    fn of(axis: &Axis) -> Self {
        let usable = axis.least.is_finite() && axis.most.is_finite() && axis.least < axis.most;
        let (least, most) = if usable { (axis.least, axis.most) } else { (0.0, 1.0) };
        let name = if axis.unit.is_empty() { axis.label.to_owned() } else { format!("{} ({})", axis.label, axis.unit) };
        Self { name, least, most, ticks: ticks(least, most) }
    }

    fn holds(&self, at: f64) -> bool {
        self.least <= at && at <= self.most
    }
}

const fn dash(role: Role) -> &'static str {
    match role {
        Role::Main => "solid",
        Role::Companion => "dashed",
        Role::Limit => "dotted",
    }
}

/// Returns every n-th point and the last, so that at most [`MOST_POINTS`] and one are left.
fn thinned<const N: usize>(points: &[[f64; N]]) -> Vec<[f64; N]> {
    let every = points.len().div_ceil(MOST_POINTS).max(1);
    let mut kept: Vec<[f64; N]> = points.iter().step_by(every).copied().collect();
    if points.len() % every != 1 && every > 1 {
        kept.extend(points.last());
    }
    kept
}

/// Returns four to nine ticks at multiples of 1, 2 or 5 times a power of ten.
fn ticks(least: f64, most: f64) -> Vec<Tick> {
    let wanted = (most - least) / 8.0;
    let decade = 10_f64.powf(wanted.log10().floor());
    let step = [1.0, 2.0, 5.0, 10.0].into_iter().map(|times| times * decade).find(|step| *step >= wanted * 0.999).unwrap_or(wanted);
    let decimals = (-step.log10().floor()).max(0.0) as usize;
    // A hair of tolerance keeps the tick that stands exactly on the end of the axis.
    let (first, last) = ((least / step - 1e-9).ceil() as i64, (most / step + 1e-9).floor() as i64);
    (first..=last)
        .map(|count| {
            let at = count as f64 * step;
            Tick { at: at.clamp(least, most), text: format!("{at:.decimals$}") }
        })
        .collect()
}
