//! A batch against its plan, in words: every measurement with what the plan says, and what was off and when.

use super::apart::apart_text;
use super::{Amount, duration, short_moment};
use crate::analysis;
use crate::batch::Batch;
use crate::curve::{MeasuredLine, MeasuredOn, MeasuredPoint, Spread, measured};
use crate::design::{Unit, lower_first};
use crate::record::{BatchRecord, EntryKind, Holds};
use crate::units::Units;
use jiff::civil::DateTime;

/// Minutes from which a time is told in hours.
const LONG_MIN: f64 = 120.0;

/// What a comparison does not say.
pub const NO_CHECK: &str =
    "This is no check of the cheese: where the plan says “at least” or “less than”, keep to that number exactly.";

/// One measurement beside the plan.
#[derive(Clone, Debug, PartialEq)]
pub struct AgainstRow {
    /// The entry.
    pub entry: u32,
    /// What was measured.
    pub kind: EntryKind,
    /// When.
    pub at: DateTime,
    /// What was measured, in `unit`.
    pub measured: f64,
    /// What the plan says; none where it says nothing at that hour.
    pub planned: Option<f64>,
    /// Between what the plan likely lies there.
    pub likely: Option<(f64, f64)>,
    /// The unit of these.
    pub unit: Unit,
    /// Decimals of these.
    pub decimals: usize,
    /// Whether it is off by more than it is read to, and beyond what is likely.
    pub off: bool,
    /// The units that it is shown in.
    pub units: Units,
}

/// A batch against its plan.
#[derive(Clone, Debug, PartialEq)]
pub struct AgainstPlan {
    /// Every measurement that has something beside it, by time.
    pub rows: Vec<AgainstRow>,
    /// What was measured and cannot be laid beside the plan, a sentence each.
    pub not_compared: Vec<String>,
}

impl AgainstRow {
    /// Returns when it was, with its day.
    #[must_use]
    pub fn when(&self) -> String {
        short_moment(self.at, self.units)
    }

    /// Returns an amount of this row as it is shown.
    #[must_use]
    pub fn amount(&self, value: f64) -> String {
        // Nobody counts three hours in minutes.
        if self.unit == Unit::Minute && value >= LONG_MIN {
            return duration(value, self.units);
        }
        Amount::new(value, self.unit, self.decimals).shown_in(self.units).to_string()
    }

    /// Returns what the plan says, with its likely range in brackets; a dash where it says nothing.
    #[must_use]
    pub fn plan(&self) -> String {
        let Some(planned) = self.planned else { return "–".to_owned() };
        let bare = |value: f64| format!("{value:.*}", self.decimals);
        let likely = self.likely.map(|(least, most)| {
            let range = self.units.range(self.unit, (least, most), self.decimals);
            format!(" ({})", range.unwrap_or_else(|| format!("{}–{}", bare(least), bare(most))))
        });
        format!("{}{}", self.amount(planned), likely.unwrap_or_default())
    }

    /// Returns how far it is from the plan: `1.5 °C below`, or empty where there is nothing beside it.
    #[must_use]
    pub fn apart(&self) -> String {
        let Some(apart) = self.planned.map(|planned| self.measured - planned) else { return String::new() };
        let shown = if self.unit == Unit::Minute && apart.abs() >= LONG_MIN {
            duration(apart.abs(), self.units)
        } else {
            apart_text(self.units, self.unit, self.measured, apart, self.decimals)
        };
        if !shown.contains(|digit: char| digit.is_ascii_digit() && digit != '0') {
            return "as planned".to_owned();
        }
        let (over, under) = if self.kind.row().holds == Holds::Done { ("later", "earlier") } else { ("above", "below") };
        format!("{shown} {}", if apart > 0.0 { over } else { under })
    }

    /// Returns it as a sentence: what was off, by how much and when.
    #[must_use]
    pub fn in_words(&self) -> String {
        let label = self.kind.row().label;
        let what = if self.kind.row().holds == Holds::Done {
            format!("{label}, after {}", self.amount(self.measured))
        } else {
            format!("{label} {}", self.amount(self.measured))
        };
        format!("{}: {what}; plan {}: {}.", self.when(), self.plan(), self.apart())
    }
}

/// Returns a batch against its plan.
///
/// # Arguments
/// * `batch`: of the design in the record
/// * `spread`: of the same design, for the likely ranges
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{batch::batch, design::Design, report::against_plan, units::Units};
/// let (mut log, day) = (Log::default(), date(2031, 5, 9));
/// log.begin("", day.at(8, 0, 0, 0), Design::default(), None);
/// log.enter(1, day.at(8, 0, 0, 0), EntryKind::MilkPoured, EntryValue::Number(4.0))?;
/// let against = against_plan(&batch(&Design::default()).unwrap(), log.batch(1)?, None, Units::METRIC);
/// assert!(against.off().next().unwrap().in_words().contains("below"));
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn against_plan(batch: &Batch, record: &BatchRecord, spread: Option<&Spread>, units: Units) -> AgainstPlan {
    let lines = measured(batch, record, spread);
    // A weight is told as it was read; the loss that the window draws is the same once more.
    let lines: Vec<&MeasuredLine> = lines.iter().filter(|line| !is_loss(line)).collect();
    let of_lines = lines.iter().flat_map(|line| line.points.iter().map(|point| row_of_line(line, point, units)));
    let of_figures = analysis::against(batch, record).into_iter().map(|beside| AgainstRow {
        entry: beside.entry.number,
        kind: beside.entry.kind,
        at: beside.entry.at,
        measured: beside.measured,
        planned: Some(beside.planned),
        likely: beside.likely,
        unit: beside.unit,
        decimals: beside.decimals,
        off: beside.is_off(),
        units,
    });
    let mut rows: Vec<AgainstRow> = of_lines.chain(of_figures).collect();
    rows.sort_by_key(|row| (row.at, row.entry));
    let not_compared = lines.iter().filter_map(|line| {
        let why = line.none_because.as_ref()?;
        Some(format!("{}: {}.", line.kind.row().label, lower_first(why)))
    });
    AgainstPlan { rows, not_compared: not_compared.collect() }
}

impl AgainstPlan {
    /// Returns what was off, by time.
    pub fn off(&self) -> impl Iterator<Item = &AgainstRow> {
        self.rows.iter().filter(|row| row.off)
    }
}

fn is_loss(line: &MeasuredLine) -> bool {
    line.kind == EntryKind::CheeseWeight && line.on != MeasuredOn::Weight
}

fn row_of_line(line: &MeasuredLine, point: &MeasuredPoint, units: Units) -> AgainstRow {
    let (unit, decimals) = match line.kind.row().holds {
        Holds::Number { unit, decimals, .. } => (unit, decimals),
        Holds::Done | Holds::Words | Holds::Task | Holds::Photo => (Unit::One, 0),
    };
    AgainstRow {
        entry: point.entry,
        kind: line.kind,
        at: point.at,
        measured: point.measured,
        planned: point.planned,
        likely: point.likely,
        unit,
        decimals,
        off: line.is_off(point),
        units,
    }
}
