//! Why something cannot be written down.

/// Why an entry is refused; nothing was changed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RecordError {
    /// The value is of another sort.
    #[error("{label} holds {wanted}, not `{given}`")]
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
    #[error(
        "{label}: {given} cannot be right; it should be between {least} and {most}{}; look at the decimal point and at the unit",
        of_unit(unit)
    )]
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
    #[error("there is no entry to take back; list the entries to see their numbers")]
    NothingToWithdraw,
}

/// Returns a unit with the gap before it; nothing where there is none.
fn of_unit(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" {unit}") }
}

fn batches(known: usize) -> String {
    match known {
        0 => "it has none yet".to_owned(),
        1 => "it has one".to_owned(),
        _ => format!("it has {known}"),
    }
}
