//! What an entry of the log says.

use super::Amount;
use crate::record::{BatchRecord, Entry, EntryValue, Holds};
use crate::units::Units;

/// Returns what an entry says: an amount with its unit, words, or that something was done.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::{record::{Entry, EntryKind, EntryValue}, report::entry_words, units::Units};
/// let at = date(2031, 5, 9).at(8, 0, 0, 0);
/// let entry = Entry { number: 1, at, kind: EntryKind::MilkPoured, value: EntryValue::Number(4.0), corrects: None };
/// assert_eq!(entry_words(&entry, Units::METRIC), "4.00\u{a0}L");
/// ```
#[must_use]
pub fn entry_words(entry: &Entry, units: Units) -> String {
    match (&entry.value, entry.kind.row().holds) {
        (EntryValue::Number(number), Holds::Number { unit, decimals, .. }) => {
            Amount::new(*number, unit, decimals).shown_in(units).to_string()
        }
        (EntryValue::Number(number), _) => number.to_string(),
        (EntryValue::Done, _) => entry.kind.done_word().to_owned(),
        (EntryValue::Words(key), Holds::Task) => key.replace('_', " "),
        (EntryValue::Words(words), _) => words.clone(),
        (EntryValue::Withdrawn, _) => "taken back".to_owned(),
    }
}

/// Returns what stood there before an entry corrected it, in brackets; empty where nothing was corrected.
#[must_use]
pub fn earlier_words(batch: &BatchRecord, entry: &Entry, units: Units) -> String {
    let earlier: Vec<String> = batch.earlier(entry).iter().map(|entry| entry_words(entry, units)).collect();
    if earlier.is_empty() { String::new() } else { format!("  (before: {})", earlier.join(", ")) }
}
