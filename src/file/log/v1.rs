//! Format 1 of the log: what a line may be.

use crate::file::DesignFile;
use crate::record::{BatchRecord, Entry, EntryKind, EntryValue, log_moment, read_log_moment};
use ron::value::RawValue;
use serde::{Deserialize, Serialize};

/// The number of this format.
pub(super) const FORMAT: u32 = 1;

/// One line.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum Line {
    /// The first line.
    #[serde(rename = "log")]
    Log { format: u32 },
    /// A batch is begun. The design is as its own file has it, in whatever format that was.
    #[serde(rename = "batch")]
    Batch {
        number: u32,
        name: String,
        begun: String,
        #[serde(default, skip_serializing_if = "String::is_empty")]
        zone: String,
        design: Box<RawValue>,
    },
    /// Something was written down.
    #[serde(rename = "entry")]
    Entry { number: u32, batch: u32, at: String, kind: String, value: Value, corrects: Option<u32> },
    /// Lines were lost here, and where the file is in which they are broken.
    #[serde(rename = "lost")]
    Lost { batches: Vec<u32>, entries: Vec<u32>, copy: String },
}

/// What was written down.
#[derive(Serialize, Deserialize)]
pub(super) enum Value {
    #[serde(rename = "number")]
    Number(f64),
    #[serde(rename = "done")]
    Done,
    #[serde(rename = "words")]
    Words(String),
    #[serde(rename = "withdrawn")]
    Withdrawn,
}

impl Line {
    /// Returns the line of a batch that is begun.
    pub(super) fn of_batch(batch: &BatchRecord) -> Option<Self> {
        let design = DesignFile { id: batch.design_id, design: batch.design.clone() }.to_line();
        let design = RawValue::from_boxed_ron(design.into_boxed_str()).ok()?;
        let (name, zone) = (batch.name.clone(), batch.zone.clone());
        Some(Self::Batch { number: batch.number, name, begun: log_moment(batch.begun), zone, design })
    }

    /// Returns the line of an entry.
    pub(super) fn of_entry(batch: u32, entry: &Entry) -> Self {
        Self::Entry {
            number: entry.number,
            batch,
            at: log_moment(entry.at),
            kind: entry.kind.key().to_owned(),
            value: match &entry.value {
                EntryValue::Number(number) => Value::Number(*number),
                EntryValue::Done => Value::Done,
                EntryValue::Words(words) => Value::Words(words.clone()),
                EntryValue::Withdrawn => Value::Withdrawn,
            },
            corrects: entry.corrects,
        }
    }

    /// Returns the text of the line, without its check.
    pub(super) fn text(&self) -> String {
        // Plain numbers and words always have a RON form; an empty line would be told as broken.
        ron::to_string(self).unwrap_or_default()
    }
}

/// Returns a batch without entries, or why it cannot be understood.
pub(super) fn batch(number: u32, name: String, (begun, zone): (&str, String), design: &RawValue) -> Result<BatchRecord, String> {
    let begun = read_log_moment(begun).ok_or_else(|| format!("“{begun}” is no time"))?;
    let DesignFile { id, design } = DesignFile::from_text(design.get_ron()).map_err(|error| error.to_string())?;
    Ok(BatchRecord { number, name, begun, zone, design_id: id, design, entries: Vec::new() })
}

/// Returns an entry, or why it cannot be understood.
pub(super) fn entry(number: u32, at: &str, kind: &str, value: Value, corrects: Option<u32>) -> Result<Entry, String> {
    let at = read_log_moment(at).ok_or_else(|| format!("“{at}” is no time"))?;
    let kind = EntryKind::from_key(kind).ok_or_else(|| format!("this program knows no entries called `{kind}`"))?;
    let value = match value {
        Value::Number(number) => EntryValue::Number(number),
        Value::Done => EntryValue::Done,
        Value::Words(words) => EntryValue::Words(words),
        Value::Withdrawn if corrects.is_some() => EntryValue::Withdrawn,
        Value::Withdrawn => return Err("it takes nothing back".to_owned()),
    };
    Ok(Entry { number, at, kind, value: value.checked(kind).map_err(|error| error.to_string())?, corrects })
}
