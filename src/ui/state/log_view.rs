//! How the log is looked at.

use jiff::civil::DateTime;
use std::collections::BTreeSet;

/// What of a log is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LogPart {
    /// The batch in sight.
    #[default]
    Batch,
    /// All batches beside each other.
    All,
    /// What they tell of the kitchen.
    Kitchen,
}

/// How the log is looked at; nothing of it is kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LogView {
    /// When what is written down was; none: at the time of writing.
    pub at: Option<DateTime>,
    /// What the next batch is to be called.
    pub name: String,
    /// What is shown.
    pub part: LogPart,
    /// What they are searched for.
    pub sought: String,
    /// The batch that the one in sight is compared with.
    pub beside: Option<u32>,
    /// The batches of which a kitchen is to be learned; none: the newest.
    pub learned_from: Option<BTreeSet<u32>>,
    /// What the kitchen is to be called.
    pub kitchen: String,
}
