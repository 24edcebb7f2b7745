//! What changed between two batches that were made, as rows.

use super::apart::apart_text;
use super::compared_row::kitchen_row;
use super::{Amount, ComparedRow};
use crate::analysis::{ChangedEntry, Recorded, changed};
use crate::record::{BatchRecord, Holds};
use crate::units::Units;

/// What changed between two batches.
#[derive(Clone, Debug, PartialEq)]
pub struct ChangedBatches {
    /// The choices that differ.
    pub choices: Vec<ComparedRow>,
    /// What was written down, of both.
    pub entries: Vec<ComparedRow>,
}

/// Returns what changed between two batches, as it is shown.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::record::{EntryKind, EntryValue, Log};
/// use vatsketch::{design::Design, report::changed_batches, units::Units};
/// let (mut log, at) = (Log::default(), date(2031, 5, 9).at(8, 0, 0, 0));
/// for litres in [5.0, 6.0] {
///     let batch = log.begin("", at, Design::default(), None);
///     log.enter(batch, at, EntryKind::MilkPoured, EntryValue::Number(litres))?;
/// }
/// let changed = changed_batches(log.batch(1)?, log.batch(2)?, Units::METRIC);
/// assert_eq!(changed.entries[0].change, "+1.00\u{a0}L");
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn changed_batches(a: &BatchRecord, b: &BatchRecord, units: Units) -> ChangedBatches {
    let changed = changed(a, b);
    let choice = |choice: &crate::analysis::DifferingChoice| ComparedRow {
        label: choice.field.label.to_owned(),
        a: units.choice_text(choice.field, choice.a),
        b: units.choice_text(choice.field, choice.b),
        change: String::new(),
        lead: true,
        differs: true,
    };
    ChangedBatches {
        choices: kitchen_row(&a.design, &b.design).into_iter().chain(changed.choices.iter().map(choice)).collect(),
        entries: changed.entries.iter().map(|entry| row(entry, units)).collect(),
    }
}

fn row(entry: &ChangedEntry, units: Units) -> ComparedRow {
    let decimals = match entry.kind.row().holds {
        Holds::Number { decimals, .. } => decimals,
        Holds::Done | Holds::Words | Holds::Task | Holds::Photo => 0,
    };
    let amount = |value: f64| Amount::new(value, entry.unit(), decimals).shown_in(units).to_string();
    let text = |of: &Option<Recorded>| match of {
        None => "–".to_owned(),
        Some(Recorded::Number(number)) => amount(*number),
        Some(Recorded::Words(words)) => words.clone(),
        Some(Recorded::Done) => "done".to_owned(),
    };
    let change = match entry.change() {
        None => String::new(),
        Some(_) if !entry.differs => "≈ same".to_owned(),
        Some(change) => {
            let sign = if change > 0.0 { "+" } else { "−" };
            format!("{sign}{}", apart_text(units, entry.unit(), change, change, decimals))
        }
    };
    let label = entry.kind.row().label.to_owned();
    ComparedRow { label, a: text(&entry.a), b: text(&entry.b), change, lead: true, differs: entry.differs }
}
