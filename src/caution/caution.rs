//! One caution: how loudly, what causes it, what is the matter, what would lessen it.

use crate::source::SourceId;

/// How loudly a caution is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Good to know.
    Note,
    /// Something may go wrong.
    Caution,
    /// Somebody may be hurt, or the batch will be lost.
    Stop,
}

impl Severity {
    /// Returns the word that stands before the caution.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Note => "Note",
            Self::Caution => "Caution",
            Self::Stop => "Stop",
        }
    }
}

/// One caution.
#[derive(Clone, Debug, PartialEq)]
pub struct Caution {
    /// A name that never changes, for tests and JSON.
    pub key: &'static str,
    /// How loudly it is said.
    pub severity: Severity,
    /// The input that causes it, if it is one.
    pub caused_by: Option<&'static str>,
    /// What is the matter, in one sentence.
    pub what: String,
    /// What would lessen it, in one sentence.
    pub remedy: String,
    /// Where that stands.
    pub source: SourceId,
}

impl Caution {
    pub(super) fn new(
        key: &'static str,
        severity: Severity,
        caused_by: Option<&'static str>,
        source: SourceId,
        what: impl Into<String>,
        remedy: impl Into<String>,
    ) -> Self {
        Self { key, severity, caused_by, what: what.into(), remedy: remedy.into(), source }
    }
}
