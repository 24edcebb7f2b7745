//! Entries as text and as JSON.

use crate::design::Unit;
use crate::record::{BatchRecord, Entry, EntryValue, Holds};
use crate::report::Amount;
use crate::units::Units;
use serde_json::{Value, json};

/// Returns what an entry says.
pub(super) fn value_text(entry: &Entry, units: Units) -> String {
    match (&entry.value, entry.kind.row().holds) {
        (EntryValue::Number(number), Holds::Number { unit, decimals, .. }) => {
            Amount::new(*number, unit, decimals).shown_in(units).to_string()
        }
        (EntryValue::Number(number), _) => number.to_string(),
        (EntryValue::Done, _) => "done".to_owned(),
        (EntryValue::Words(words), _) => words.clone(),
        (EntryValue::Withdrawn, _) => "taken back".to_owned(),
    }
}

/// Returns what stood there before, in brackets; empty where nothing was corrected.
pub(super) fn earlier_text(batch: &BatchRecord, entry: &Entry, units: Units) -> String {
    let earlier: Vec<String> = batch.earlier(entry).iter().map(|entry| value_text(entry, units)).collect();
    if earlier.is_empty() { String::new() } else { format!("  (before: {})", earlier.join(", ")) }
}

/// Returns an entry in full.
pub(super) fn entry_json(entry: &Entry) -> Value {
    let unit = match entry.kind.row().holds.unit() {
        Unit::One => "",
        unit => unit.symbol(),
    };
    let value = match &entry.value {
        EntryValue::Number(number) => json!(number),
        EntryValue::Words(words) => json!(words),
        EntryValue::Done | EntryValue::Withdrawn => Value::Null,
    };
    json!({
        "entry": entry.number, "at": iso(entry.at), "kind": entry.kind.key(), "value": value, "unit": unit,
        "corrects": entry.corrects, "withdrawn": entry.value == EntryValue::Withdrawn,
    })
}

/// Returns a time as ISO 8601 has it.
pub(super) fn iso(at: jiff::civil::DateTime) -> String {
    at.to_string()
}
