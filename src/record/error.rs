//! Why something cannot be written down.

/// Why an entry is refused; nothing was changed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RecordError {
    /// The value is of another sort.
    #[error("{label} ({key}) holds {wanted}, and `{given}` is none")]
    WrongSort {
        /// In words.
        label: &'static str,
        /// The key.
        key: &'static str,
        /// What is wanted.
        wanted: &'static str,
        /// What was given.
        given: String,
    },
    /// The number cannot be right.
    #[error("{label} ({key}): {given} {unit} is not between {least} and {most} {unit}; look at the decimal point and at the unit")]
    OutOfRange {
        /// In words.
        label: &'static str,
        /// The key.
        key: &'static str,
        /// What was given.
        given: f64,
        /// Least that is believed.
        least: f64,
        /// Greatest that is believed.
        most: f64,
        /// Its unit.
        unit: &'static str,
    },
    /// The words are too long.
    #[error("{label}: {letters} letters, and at most {most} are kept; shorten it")]
    TooLong {
        /// In words.
        label: &'static str,
        /// Its length.
        letters: usize,
        /// The cap.
        most: usize,
    },
    /// There is no such batch.
    #[error("there is no batch {number} in this log; {}", batches(*.known))]
    NoBatch {
        /// What was asked for.
        number: u32,
        /// How many there are.
        known: usize,
    },
    /// There is no such entry.
    #[error("there is no entry {number} in this log; list the entries to see their numbers")]
    NoEntry {
        /// What was asked for.
        number: u32,
    },
    /// The entry was corrected or taken back already.
    #[error("entry {number} was {} by entry {by}; correct that one", if *.withdrawn { "taken back" } else { "corrected" })]
    Corrected {
        /// What was asked for.
        number: u32,
        /// What corrected it.
        by: u32,
        /// Whether it was taken back.
        withdrawn: bool,
    },
    /// Only a correction takes back.
    #[error("only an entry that is there can be taken back")]
    NothingToWithdraw,
}

fn batches(known: usize) -> String {
    match known {
        0 => "it has none yet".to_owned(),
        1 => "it has one".to_owned(),
        _ => format!("it has {known}"),
    }
}
