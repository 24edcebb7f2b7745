//! How the log is looked at.

use jiff::civil::DateTime;

/// How the log is looked at; nothing of it is kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LogView {
    /// When what is written down was; none: at the time of writing.
    pub at: Option<DateTime>,
    /// What the next batch is to be called.
    pub name: String,
    /// Whether all batches are shown beside each other.
    pub all: bool,
    /// What they are searched for.
    pub sought: String,
    /// The batch that the one in sight is compared with.
    pub beside: Option<u32>,
}
