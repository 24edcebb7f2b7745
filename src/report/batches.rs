//! All batches of a log beside each other: what of each tells most, and what its maker said.

use super::Amount;
use crate::design::Unit;
use crate::record::{Anchor, BatchRecord, Entry, EntryKind, EntryValue};
use crate::units::Units;
use jiff::civil::DateTime;

/// One column of numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BatchColumn {
    /// Its key, with the unit.
    pub key: &'static str,
    /// Its heading.
    pub label: &'static str,
    /// Its unit.
    pub unit: Unit,
    /// Decimals that a kitchen reads.
    pub decimals: usize,
}

const fn column(key: &'static str, label: &'static str, unit: Unit, decimals: usize) -> BatchColumn {
    BatchColumn { key, label, unit, decimals }
}

/// How many columns of numbers there are.
const COLUMNS: usize = 8;

/// The columns of numbers, in the order of the trade.
pub const BATCH_COLUMNS: [BatchColumn; COLUMNS] = [
    column("milk_l", "Milk", Unit::Litre, 2),
    column("clean_break_min", "Break after rennet", Unit::Minute, 0),
    column("unmoulded_ph", "pH, unmould", Unit::One, 2),
    column("first_cheese_g", "First weight", Unit::Gram, 0),
    column("last_cheese_g", "Last weight", Unit::Gram, 0),
    column("lost_percent", "Weight lost", Unit::Percent, 0),
    column("centre_ph", "Last pH, centre", Unit::One, 2),
    column("blended_ph", "Last pH, blended", Unit::One, 2),
];

/// One batch as a line.
#[derive(Clone, Debug, PartialEq)]
pub struct BatchLine {
    /// Its number.
    pub number: u32,
    /// What it is called.
    pub title: String,
    /// When it was begun.
    pub begun: DateTime,
    /// The name of its design.
    pub design: String,
    /// Its numbers, one a column; none where nothing was written down.
    pub numbers: [Option<f64>; COLUMNS],
    /// What the maker said last of taste, of texture, or in a note.
    pub words: String,
    /// Weights of one cheese: hours since the cheeses went to the air, g.
    pub weights: Vec<(f64, f64)>,
    /// pH in the centre of a cheese: hours in the vinegar, pH.
    pub centre: Vec<(f64, f64)>,
}

impl BatchLine {
    /// Returns its numbers as they are shown, one a column; an en dash where nothing was written down.
    #[must_use]
    pub fn texts(&self, units: Units) -> [String; COLUMNS] {
        let mut texts: [String; COLUMNS] = std::array::from_fn(|_| "–".to_owned());
        for ((text, number), column) in texts.iter_mut().zip(self.numbers).zip(BATCH_COLUMNS) {
            if let Some(number) = number {
                *text = Amount::new(number, column.unit, column.decimals).shown_in(units).to_string();
            }
        }
        texts
    }
}

/// Returns the batches of which every word of a search is found in name, design, day or the maker's own words, the newest first; all where
/// nothing is searched for.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::{design::Design, record::{EntryKind, EntryValue, Log}, report::batch_lines};
/// let (mut log, day) = (Log::default(), date(2031, 5, 9).at(8, 0, 0, 0));
/// for name in ["garden", "market"] {
///     let batch = log.begin(name, day, Design::default(), None);
///     log.enter(batch, day, EntryKind::MilkPoured, EntryValue::Number(4.0))?;
/// }
/// let found = batch_lines(&log.batches, "Garden 2031");
/// assert_eq!((found.len(), found[0].number, found[0].numbers[0]), (1, 1, Some(4.0)));
/// assert_eq!(batch_lines(&log.batches, "").len(), 2);
/// # Ok::<(), vatsketch::record::RecordError>(())
/// ```
#[must_use]
pub fn batch_lines(batches: &[BatchRecord], search: &str) -> Vec<BatchLine> {
    let sought: Vec<String> = search.split_whitespace().map(str::to_lowercase).collect();
    batches.iter().rev().filter(|batch| is_found(batch, &sought)).map(line).collect()
}

fn is_found(batch: &BatchRecord, sought: &[String]) -> bool {
    if sought.is_empty() {
        return true;
    }
    let words = batch.standing().into_iter().filter_map(|entry| match &entry.value {
        EntryValue::Words(words) => Some(words.to_lowercase()),
        EntryValue::Number(_) | EntryValue::Done | EntryValue::Withdrawn => None,
    });
    let own = [batch.title().to_lowercase(), batch.design.title.to_lowercase(), batch.begun.date().to_string()];
    let all: Vec<String> = own.into_iter().chain(words).collect();
    sought.iter().all(|word| all.iter().any(|text| text.contains(word)))
}

fn line(batch: &BatchRecord) -> BatchLine {
    let last = |kind| batch.latest(kind).and_then(Entry::amount);
    let break_at = batch.of_kind(EntryKind::CleanBreak).first().map(|entry| entry.at);
    let weights = batch.series(EntryKind::CheeseWeight, Anchor::Air);
    let (first_g, last_g) = match &weights[..] {
        // Without the hour at which they went to the air, weights are weights all the same.
        [] => (batch.of_kind(EntryKind::CheeseWeight).first().and_then(|entry| entry.amount()), last(EntryKind::CheeseWeight)),
        [first, .., last] => (Some(first.1), Some(last.1)),
        [only] => (Some(only.1), None),
    };
    let words =
        [EntryKind::Taste, EntryKind::Texture, EntryKind::Note].into_iter().find_map(|kind| match &batch.latest(kind)?.value {
            EntryValue::Words(words) => Some(words.clone()),
            EntryValue::Number(_) | EntryValue::Done | EntryValue::Withdrawn => None,
        });
    BatchLine {
        number: batch.number,
        title: batch.title(),
        begun: batch.begun,
        design: batch.design.title.clone(),
        numbers: [
            last(EntryKind::MilkPoured),
            break_at.and_then(|at| Some(60.0 * batch.hours_since(Anchor::Rennet, at)?)),
            last(EntryKind::UnmouldedPh),
            first_g,
            last_g,
            first_g.zip(last_g).filter(|(first, _)| *first > 0.0).map(|(first, last)| 100.0 * (1.0 - last / first)),
            last(EntryKind::CentrePh),
            last(EntryKind::BlendedPh),
        ],
        words: words.unwrap_or_default(),
        weights,
        centre: batch.series(EntryKind::CentrePh, Anchor::Vinegar),
    }
}
