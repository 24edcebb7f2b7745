//! What was written down against the plan, where the plan has one number for it: figures, choices, and minutes until something is done.

use super::moved::number;
use crate::batch::Batch;
use crate::design::{Unit, Value, field};
use crate::figure::{Figure, figures};
use crate::record::{BatchRecord, Beside, CLOCK_SPREAD, Entry, Holds};

/// One entry beside the number of the plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Against {
    /// The entry.
    pub entry: Entry,
    /// What it comes to, in `unit`: the number, or the minutes until it was done.
    pub measured: f64,
    /// What the plan says.
    pub planned: f64,
    /// Between what the plan likely lies, where it says so.
    pub likely: Option<(f64, f64)>,
    /// The unit of these.
    pub unit: Unit,
    /// Decimals of these.
    pub decimals: usize,
    /// How near it is read.
    pub reads_to: f64,
}

impl Against {
    /// Returns what was measured less what was planned.
    #[must_use]
    pub fn residual(&self) -> f64 {
        self.measured - self.planned
    }

    /// Returns whether it is off: apart by more than it is read to, and beyond what is likely by as much.
    #[must_use]
    pub fn is_off(&self) -> bool {
        differs(self.measured, self.planned, self.likely, self.reads_to)
    }
}

/// Returns whether a measurement differs from the plan: apart by more than it is read to, and beyond what is likely by as much.
///
/// # Arguments
/// * `reads_to`: how near it is read, in the unit of the others
///
/// # Example
/// ```
/// use vatsketch::analysis::differs;
/// assert!(differs(33.0, 34.0, None, 0.5) && !differs(33.0, 34.0, Some((32.0, 36.0)), 0.5));
/// ```
#[must_use]
pub fn differs(measured: f64, planned: f64, likely: Option<(f64, f64)>, reads_to: f64) -> bool {
    let beyond = likely.is_none_or(|(least, most)| measured < least - reads_to || measured > most + reads_to);
    beyond && (measured - planned).abs() > reads_to
}

/// Returns what was written down of a batch beside the numbers of its plan, by time; what is laid beside a curve is not among it
/// ([`crate::curve::measured`]), nor what the plan says nothing of.
///
/// # Arguments
/// * `batch`: of the design in the record
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{analysis::against, batch::batch, design::Design};
/// let (mut log, at) = (Log::default(), date(2031, 5, 9).at(8, 0, 0, 0));
/// log.begin("", at, Design::default(), None);
/// log.enter(1, at, EntryKind::MilkPoured, EntryValue::Number(5.5))?;
/// let beside = against(&batch(&Design::default()).unwrap(), log.batch(1)?);
/// assert!((beside[0].residual() - (5.5 - Design::default().milk.milk_l)).abs() < 1e-9);
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn against(batch: &Batch, record: &BatchRecord) -> Vec<Against> {
    let figures = figures(batch);
    let figure = |key: &str| figures.iter().find(|figure| figure.key == key);
    let beside = |entry: &Entry| {
        let row = entry.kind.row();
        let (unit, decimals, reads_to) = match row.holds {
            Holds::Number { unit, decimals, reads_to, .. } => (unit, decimals, reads_to),
            Holds::Done | Holds::Words | Holds::Task | Holds::Photo => (Unit::Minute, 0, CLOCK_SPREAD.value),
        };
        let (measured, (planned, likely)) = match row.beside {
            Beside::Figure(key) => (entry.amount()?, planned(figure(key)?)?),
            Beside::Minutes(anchor, key) => (60.0 * record.hours_since(anchor, entry.at)?, planned(figure(key)?)?),
            Beside::Choice(key) => {
                let field = field(key).ok().filter(|field| (field.used)(&batch.design))?;
                let Value::Number(planned) = field.get(&batch.design) else { return None };
                (entry.amount()?, (planned, None))
            }
            Beside::Line(_) | Beside::Nothing => return None,
        };
        Some(Against { entry: entry.clone(), measured, planned, likely, unit, decimals, reads_to })
    };
    record.standing().into_iter().filter_map(beside).collect()
}

/// Returns a figure's number, and between what it likely lies.
fn planned(figure: &Figure) -> Option<(f64, Option<(f64, f64)>)> {
    Some((number(figure)?, figure.likely))
}
