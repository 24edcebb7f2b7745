//! What of a log could not be read, in words.

/// Why a line could not be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyLost {
    /// The last line ends too early: the program or the computer stopped while it was written.
    CutShort,
    /// Its check does not fit: something changed it.
    Broken,
    /// Its check fits, but what it says is not understood.
    NotUnderstood(String),
    /// It belongs to a batch whose own line is lost.
    NoBatch(u32),
    /// Batches and entries of these numbers are nowhere.
    Missing {
        /// The batches.
        batches: Vec<u32>,
        /// The entries.
        entries: Vec<u32>,
    },
}

/// A line that could not be read, or lines that are not there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LostLine {
    /// Which, from 1; of what is missing the last line of the file.
    pub line: usize,
    /// Why.
    pub why: WhyLost,
    /// What can still be seen of it.
    pub seen: String,
}

impl LostLine {
    /// Returns whether the file has to begin again without it; what is only not understood stays in its place.
    #[must_use]
    pub const fn is_gone(&self) -> bool {
        !matches!(self.why, WhyLost::NotUnderstood(_))
    }

    /// Returns the batch that it belongs to, whose own line is lost.
    pub(super) const fn orphan_of(&self) -> Option<u32> {
        match self.why {
            WhyLost::NoBatch(batch) => Some(batch),
            _ => None,
        }
    }

    /// Returns it in a sentence.
    ///
    /// # Example
    /// ```
    /// use vatsketch::file::{LostLine, WhyLost};
    /// let lost = LostLine { line: 7, why: WhyLost::CutShort, seen: "entry(number:6,ba".to_owned() };
    /// assert_eq!(lost.in_words(), "Line 7 of the log was cut short, probably because the computer stopped. If you remember it, write it down again. What can still be read: entry(number:6,ba");
    /// ```
    #[must_use]
    pub fn in_words(&self) -> String {
        let line = self.line;
        let said = match &self.why {
            WhyLost::CutShort => format!(
                "Line {line} of the log was cut short, probably because the computer stopped. If you remember it, write it down again."
            ),
            WhyLost::Broken => format!(
                "Line {line} of the log was damaged and cannot be read; all others are there. If you remember it, write it down again."
            ),
            WhyLost::NotUnderstood(why) => format!("Line {line} of the log cannot be understood and stays as it is: {why}."),
            WhyLost::NoBatch(batch) => format!("Line {line} of the log belongs to batch {batch}, whose own line is lost."),
            WhyLost::Missing { batches, entries } => {
                let list = |what: &str, numbers: &[u32]| {
                    let numbers: Vec<String> = numbers.iter().map(u32::to_string).collect();
                    (!numbers.is_empty()).then(|| format!("{what} {}", numbers.join(", ")))
                };
                let lists: Vec<String> = [list("batch", batches), list("entry", entries)].into_iter().flatten().collect();
                format!("These are missing from the log: {}. A copy of the file may still have them.", lists.join("; "))
            }
        };
        if self.seen.is_empty() { said } else { format!("{said} What can still be read: {}", self.seen) }
    }
}
