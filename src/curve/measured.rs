//! What was measured, on the curves of the plan: the dots, what the plan says there, and how far apart they are.

use super::table::value_at;
use super::{Curve, CurveKey, LineSpread, Role, Spread, curve, drying_weight};
use crate::analysis::differs;
use crate::batch::Batch;
use crate::record::{BatchRecord, Beside, CLOCK_SPREAD, EntryKind, Holds, Line};
use jiff::civil::DateTime;

/// On what the dots lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MeasuredOn {
    /// A curve of the batch.
    Curve(CurveKey),
    /// The weight of a cheese while it dries ([`drying_weight`]).
    Weight,
}

/// One dot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredPoint {
    /// The entry that it comes from.
    pub entry: u32,
    /// When it was measured.
    pub at: DateTime,
    /// Where it lies on the axis of its curve, in the unit of that axis.
    pub x: f64,
    /// What was measured, in the unit of the curve.
    pub measured: f64,
    /// What the plan says there; none before and behind its line.
    pub planned: Option<f64>,
    /// Between what the plan likely lies there; none where no band is known.
    pub likely: Option<(f64, f64)>,
    /// How far the line of the plan bends there within the minutes by which what is done by hand may be off, in the unit of the curve: near a step
    /// a reading says little of how far it is from the plan.
    pub bends: f64,
}

impl MeasuredPoint {
    /// Returns what was measured less what was planned.
    #[must_use]
    pub fn residual(&self) -> Option<f64> {
        Some(self.measured - self.planned?)
    }
}

/// The dots of one line.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredLine {
    /// What was measured.
    pub kind: EntryKind,
    /// On what they lie.
    pub on: MeasuredOn,
    /// The line that they are laid beside.
    pub line: &'static str,
    /// How near they are read, in the unit of the curve.
    pub reads_to: f64,
    /// The dots, by time.
    pub points: Vec<MeasuredPoint>,
    /// Why there are none, though something was measured: the moment from which hours count was not written down, or the plan has no such line.
    pub none_because: Option<String>,
}

impl MeasuredLine {
    /// Returns whether one of its dots differs from the plan ([`differs`]); what has to be reached differs by any shortfall.
    #[must_use]
    pub fn is_off(&self, point: &MeasuredPoint) -> bool {
        point.planned.is_some_and(|planned| {
            let falls_short = self.kind.has_to_be_reached() && point.measured < planned;
            falls_short || differs(point.measured, planned, point.likely, self.reads_to)
        })
    }
}

/// Returns what was measured of a batch, on the curves of its plan, in the order of the trade; only what something was written down of.
///
/// Hours count from what the maker wrote down, not from the plan: a vat that began late is laid beside its own curve.
///
/// # Arguments
/// * `batch`: of the design in the record
/// * `spread`: of the same design, for the bands; without it only the curves' own bands are known
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{batch::batch, curve::measured, design::Design};
/// let (mut log, day) = (Log::default(), date(2031, 5, 9));
/// log.begin("", day.at(8, 0, 0, 0), Design::default(), None);
/// log.enter(1, day.at(8, 0, 0, 0), EntryKind::WarmingBegan, EntryValue::Done)?;
/// log.enter(1, day.at(8, 20, 0, 0), EntryKind::MilkTemperature, EntryValue::Number(21.0))?;
/// let lines = measured(&batch(&Design::default()).unwrap(), log.batch(1)?, None);
/// assert_eq!((lines[0].line, lines[0].points[0].x), ("milk", 20.0));
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn measured(batch: &Batch, record: &BatchRecord, spread: Option<&Spread>) -> Vec<MeasuredLine> {
    let lines = EntryKind::ALL.iter().filter_map(|kind| match kind.row().beside {
        Beside::Line(line) if !record.of_kind(*kind).is_empty() => Some((*kind, line)),
        _ => None,
    });
    lines
        .flat_map(|(kind, line)| {
            let beside = Planned::of(batch, line, spread);
            let own = beside.laid(kind, line, record);
            let loss = (line == Line::CheeseWeight).then(|| as_loss(batch, &own, spread)).flatten();
            std::iter::once(own).chain(loss)
        })
        .collect()
}

/// A line of the plan, with its band.
struct Planned {
    on: MeasuredOn,
    name: &'static str,
    points: Vec<[f64; 2]>,
    band: Vec<[f64; 3]>,
    /// Units of its axis in an hour.
    in_an_hour: f64,
    empty_because: Option<String>,
}

impl Planned {
    fn of(batch: &Batch, line: Line, spread: Option<&Spread>) -> Self {
        let (on, name) = match line {
            Line::Milk => (MeasuredOn::Curve(CurveKey::Warming), Some("milk")),
            // What is outside the pot has a name of its own for each way of heating.
            Line::Bath => (MeasuredOn::Curve(CurveKey::Warming), None),
            Line::Whey => (MeasuredOn::Curve(CurveKey::WheyDrip), Some("whey so far")),
            Line::CheeseWeight => (MeasuredOn::Weight, None),
            Line::CurdPh => (MeasuredOn::Curve(CurveKey::CurdSouring), Some("pH")),
            Line::CentrePh => (MeasuredOn::Curve(CurveKey::Souring), Some("centre")),
            Line::BlendedPh => (MeasuredOn::Curve(CurveKey::Souring), Some("blended")),
        };
        let drawn = match on {
            MeasuredOn::Curve(key) => Some(curve(batch, key)),
            MeasuredOn::Weight => drying_weight(batch),
        };
        Self::in_curve(on, name, drawn, spread)
    }

    /// Returns a named line of a curve; where no name is given the companion of the main line, or that line itself where it is alone.
    fn in_curve(on: MeasuredOn, name: Option<&str>, drawn: Option<Curve>, spread: Option<&Spread>) -> Self {
        let Some(drawn) = drawn else { return Self::nothing(on, "nothing is dried in this design".to_owned()) };
        let in_an_hour = if drawn.x.unit == "min" { 60.0 } else { 1.0 };
        let companion = |series: &&super::Series| name.is_none() && series.role == Role::Companion;
        let found = drawn
            .series
            .iter()
            .find(|series| Some(series.name) == name || companion(series))
            .or_else(|| drawn.series.first().filter(|_| name.is_none()));
        let Some(series) = found else {
            return Self::nothing(on, drawn.empty_because.unwrap_or_else(|| "this design has no such line".to_owned()));
        };
        let key = match on {
            MeasuredOn::Curve(key) => Some(key),
            MeasuredOn::Weight => None,
        };
        let of_draws = spread.zip(key).and_then(|(spread, key)| {
            let band: Option<&LineSpread> = spread.of_curve(key).find(|band| band.line == series.name);
            band.map(|band| band.points.clone())
        });
        // A curve's own bands are those of its main line.
        let own = drawn.bands.first().filter(|_| series.role == Role::Main).map(|band| band.points.clone());
        Self {
            on,
            name: series.name,
            points: series.points.clone(),
            band: of_draws.filter(|points| !points.is_empty()).or(own).unwrap_or_default(),
            in_an_hour,
            empty_because: None,
        }
    }

    const fn nothing(on: MeasuredOn, why: String) -> Self {
        Self { on, name: "", points: Vec::new(), band: Vec::new(), in_an_hour: 1.0, empty_because: Some(why) }
    }

    /// Returns what the plan says at a place.
    fn at(&self, x: f64) -> (Option<f64>, Option<(f64, f64)>) {
        let edge = |side: usize| -> Option<f64> {
            let points: Vec<[f64; 2]> = self.band.iter().filter_map(|point| Some([point[0], *point.get(side)?])).collect();
            value_at(&points, x)
        };
        (value_at(&self.points, x), edge(1).zip(edge(2)))
    }

    /// Returns how far the line bends about a place: half of what its ends lie off a straight line through the middle.
    fn bends(&self, x: f64) -> f64 {
        let near = CLOCK_SPREAD.value / 60.0 * self.in_an_hour;
        let at = |x: f64| value_at(&self.points, x);
        let (before, now, after) = (at(x - near), at(x), at(x + near));
        before.zip(now).zip(after).map_or(0.0, |((before, now), after)| 0.5 * (before - 2.0 * now + after).abs())
    }

    fn laid(&self, kind: EntryKind, line: Line, record: &BatchRecord) -> MeasuredLine {
        let reads_to = match kind.row().holds {
            Holds::Number { reads_to, .. } => reads_to,
            Holds::Done | Holds::Words | Holds::Task | Holds::Photo => 0.0,
        };
        let mut so_far = 0.0;
        let mut points = Vec::new();
        for entry in record.of_kind(kind) {
            let Some((hours, amount)) = record.hours_since(line.anchor(), entry.at).zip(entry.amount()) else { continue };
            so_far += amount;
            // Each turn pours off what came since the last.
            let measured = if line == Line::Whey { so_far } else { amount };
            let x = self.in_an_hour * hours;
            let (planned, likely) = self.at(x);
            points.push(MeasuredPoint { entry: entry.number, at: entry.at, x, measured, planned, likely, bends: self.bends(x) });
        }
        let no_anchor = || format!("write down first {}: its hours count from there", line.anchor().words());
        let none_because = self.empty_because.clone().or_else(|| points.is_empty().then(no_anchor));
        if self.empty_because.is_some() {
            points.clear();
        }
        MeasuredLine { kind, on: self.on, line: self.name, reads_to, points, none_because }
    }
}

/// Returns weights as the loss that the window draws: of the cheese without its pepper, from the weight that was measured as it went to the air,
/// or from that of the plan where none was.
fn as_loss(batch: &Batch, weights: &MeasuredLine, spread: Option<&Spread>) -> Option<MeasuredLine> {
    let on = MeasuredOn::Curve(CurveKey::DryingLoss);
    let pepper_g = batch.salting.done().map_or(0.0, |salting| salting.pepper_each_g);
    let planned_g = drying_weight(batch)?.series.first()?.points.first()?[1] - pepper_g;
    let at_the_start = weights.points.iter().filter(|point| point.x.abs() <= AT_THE_START_H);
    let first = at_the_start.min_by(|one, other| one.x.abs().total_cmp(&other.x.abs()));
    let from_g = first.map_or(planned_g, |point| point.measured - pepper_g);
    let beside = Planned::in_curve(on, Some("middle tray"), Some(curve(batch, CurveKey::DryingLoss)), spread);
    let points = weights.points.iter().filter(|point| point.x >= 0.0).map(|point| {
        let (planned, likely) = beside.at(point.x);
        let measured = 100.0 * (1.0 - (point.measured - pepper_g) / from_g);
        MeasuredPoint { measured, planned, likely, ..*point }
    });
    Some(MeasuredLine {
        kind: weights.kind,
        on,
        line: beside.name,
        reads_to: 100.0 * weights.reads_to / from_g,
        points: points.collect(),
        none_because: weights.none_because.clone(),
    })
}

/// A weighing within so many hours of going to the air is that of the beginning.
const AT_THE_START_H: f64 = 1.0;
