//! What changed between two batches that were made: the choices, and what was written down.

use super::compare::{DifferingChoice, differing_choices};
use crate::design::Unit;
use crate::record::{BatchRecord, Beside, CLOCK_SPREAD, Entry, EntryKind, EntryValue, Holds};

/// What was written down of one kind in two batches.
#[derive(Clone, Debug, PartialEq)]
pub struct ChangedEntry {
    /// The kind.
    pub kind: EntryKind,
    /// It in the first batch.
    pub a: Option<Recorded>,
    /// It in the second batch.
    pub b: Option<Recorded>,
    /// Whether they differ by more than they are read to, or one has it and the other has not.
    pub differs: bool,
}

/// What a batch has of one kind.
#[derive(Clone, Debug, PartialEq)]
pub enum Recorded {
    /// The last number, in the unit of the kind; of what is done at a time the minutes until then.
    Number(f64),
    /// The last words.
    Words(String),
    /// Done, with nothing to count from.
    Done,
}

/// What changed between two batches.
#[derive(Clone, Debug)]
pub struct Changed {
    /// The choices that differ and have an effect in one of the two.
    pub choices: Vec<DifferingChoice>,
    /// What was written down, in the order of the trade.
    pub entries: Vec<ChangedEntry>,
}

impl ChangedEntry {
    /// Returns the unit of its numbers.
    #[must_use]
    pub fn unit(&self) -> Unit {
        if self.kind.row().holds == Holds::Done { Unit::Minute } else { self.kind.row().holds.unit() }
    }

    /// Returns the second less the first, of numbers that both have.
    #[must_use]
    pub fn change(&self) -> Option<f64> {
        match (&self.a, &self.b) {
            (Some(Recorded::Number(a)), Some(Recorded::Number(b))) => Some(b - a),
            _ => None,
        }
    }
}

/// Returns what changed between two batches.
///
/// Of what was measured several times the last counts, and of what was poured off or given bit by bit all of it together.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{analysis::changed, design::Design};
/// let (mut log, at) = (Log::default(), date(2031, 5, 9).at(8, 0, 0, 0));
/// for litres in [5.0, 6.0] {
///     let batch = log.begin("", at, Design::default(), None);
///     log.enter(batch, at, EntryKind::MilkPoured, EntryValue::Number(litres))?;
/// }
/// let changed = changed(log.batch(1)?, log.batch(2)?);
/// assert!(changed.choices.is_empty());
/// assert_eq!(changed.entries[0].change(), Some(1.0));
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn changed(a: &BatchRecord, b: &BatchRecord) -> Changed {
    let entry = |kind: &EntryKind| {
        let (a, b) = (recorded(a, *kind), recorded(b, *kind));
        if a.is_none() && b.is_none() {
            return None;
        }
        let differs = match (&a, &b) {
            (Some(Recorded::Number(one)), Some(Recorded::Number(other))) => (other - one).abs() > reads_to(*kind),
            (a, b) => a != b,
        };
        Some(ChangedEntry { kind: *kind, a, b, differs })
    };
    Changed {
        choices: differing_choices(&a.design, &b.design).into_iter().filter(|choice| choice.in_use).collect(),
        entries: EntryKind::ALL.iter().filter_map(entry).collect(),
    }
}

fn reads_to(kind: EntryKind) -> f64 {
    match kind.row().holds {
        Holds::Number { reads_to, .. } => reads_to,
        Holds::Done => CLOCK_SPREAD.value,
        Holds::Words | Holds::Task | Holds::Photo => 0.0,
    }
}

/// What is given or poured off bit by bit, so that all of it together counts.
const BIT_BY_BIT: [EntryKind; 2] = [EntryKind::TurnSalt, EntryKind::TurnWhey];

fn recorded(batch: &BatchRecord, kind: EntryKind) -> Option<Recorded> {
    let last = batch.latest(kind)?;
    if BIT_BY_BIT.contains(&kind) {
        return Some(Recorded::Number(batch.of_kind(kind).into_iter().filter_map(Entry::amount).sum()));
    }
    Some(match (&last.value, kind.row().beside) {
        (EntryValue::Number(number), _) => Recorded::Number(*number),
        (EntryValue::Words(words), _) => Recorded::Words(words.clone()),
        (_, Beside::Minutes(anchor, _)) => match batch.hours_since(anchor, last.at) {
            Some(hours) => Recorded::Number(60.0 * hours),
            None => Recorded::Done,
        },
        _ => Recorded::Done,
    })
}
