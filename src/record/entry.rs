//! One thing that was written down.

use super::{EntryKind, Holds, RecordError};
use jiff::civil::DateTime;

/// Letters of the maker's own words that one entry keeps.
pub const MOST_WORDS: usize = 20_000;

/// Letters of the key of a task.
const MOST_TASK: usize = 60;

/// What was written down.
#[derive(Clone, Debug, PartialEq)]
pub enum EntryValue {
    /// A number, in the unit of its kind.
    Number(f64),
    /// Done at its time.
    Done,
    /// Words, the key of a task, or the path of a picture.
    Words(String),
    /// Of a correction: what it corrects never was so, and nothing takes its place.
    Withdrawn,
}

/// One entry.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// Its number in the log.
    pub number: u32,
    /// When it was so, by the clock on the wall of the kitchen.
    pub at: DateTime,
    /// What it is.
    pub kind: EntryKind,
    /// What was written down.
    pub value: EntryValue,
    /// The entry in whose place it stands; that one is kept.
    pub corrects: Option<u32>,
}

impl Entry {
    /// Returns its number, if it is one.
    #[must_use]
    pub const fn amount(&self) -> Option<f64> {
        match self.value {
            EntryValue::Number(number) => Some(number),
            EntryValue::Done | EntryValue::Words(_) | EntryValue::Withdrawn => None,
        }
    }
}

impl EntryValue {
    /// Reads a value of a kind as the command line writes it: a number with a point or a comma, words, or nothing for what is only done.
    ///
    /// # Errors
    /// [`RecordError`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::record::{EntryKind, EntryValue};
    /// assert_eq!(EntryValue::read(EntryKind::MilkTemperature, "34,5"), Ok(EntryValue::Number(34.5)));
    /// assert!(EntryValue::read(EntryKind::MilkTemperature, "345").is_err());
    /// ```
    pub fn read(kind: EntryKind, text: &str) -> Result<Self, RecordError> {
        let given = text.trim();
        let value = match kind.row().holds {
            Holds::Number { .. } => Self::Number(given.replace(',', ".").parse().map_err(|_| wrong_sort(kind, given.to_owned()))?),
            Holds::Done if given.is_empty() => Self::Done,
            Holds::Done => return Err(wrong_sort(kind, given.to_owned())),
            Holds::Words | Holds::Task | Holds::Photo => Self::Words(given.to_owned()),
        };
        value.checked(kind)
    }

    /// Returns the value if its kind may hold it.
    ///
    /// # Errors
    /// [`RecordError`].
    pub fn checked(self, kind: EntryKind) -> Result<Self, RecordError> {
        let row = kind.row();
        let (label, key) = (row.label, row.key);
        match (&self, row.holds) {
            (Self::Number(given), Holds::Number { unit, least, most, .. }) => {
                let within = least <= *given && *given <= most;
                if within {
                    return Ok(self);
                }
                Err(RecordError::OutOfRange { label, key, given: *given, least, most, unit: unit.symbol() })
            }
            (Self::Done, Holds::Done) | (Self::Withdrawn, _) => Ok(self),
            (Self::Words(words), Holds::Task) if is_task(words) => Ok(self),
            (Self::Words(words), Holds::Words | Holds::Photo) if !words.is_empty() => {
                let letters = words.chars().count();
                if letters > MOST_WORDS {
                    return Err(RecordError::TooLong { label, letters, most: MOST_WORDS });
                }
                Ok(self)
            }
            (Self::Number(number), _) => Err(wrong_sort(kind, number.to_string())),
            (Self::Words(words), _) => Err(wrong_sort(kind, words.clone())),
            (Self::Done, _) => Err(wrong_sort(kind, String::new())),
        }
    }
}

/// Returns whether a text can be the key of a task; whether the plan has that task, only the plan knows.
fn is_task(words: &str) -> bool {
    (1..=MOST_TASK).contains(&words.len()) && words.bytes().all(|letter| matches!(letter, b'a'..=b'z' | b'0'..=b'9' | b'_'))
}

fn wrong_sort(kind: EntryKind, given: String) -> RecordError {
    let row = kind.row();
    let wanted = match row.holds {
        Holds::Number { .. } => "a number",
        Holds::Done => "nothing but its time",
        Holds::Words => "words",
        Holds::Task => "the name of a task, such as turn_3",
        Holds::Photo => "the path of a picture",
    };
    RecordError::WrongSort { label: row.label, key: row.key, wanted, given }
}
