//! Entries as text and as JSON.

use crate::design::Unit;
use crate::record::{Entry, EntryValue};
use serde_json::{Value, json};

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
        "corrects": entry.corrects, "taken_back": entry.value == EntryValue::Withdrawn,
    })
}

/// Returns a time as ISO 8601 has it.
pub(super) fn iso(at: jiff::civil::DateTime) -> String {
    at.to_string()
}
