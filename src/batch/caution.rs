//! What the maker must be told, each caution with the choice that causes it.

use super::Batch;

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
    pub source: crate::source::SourceId,
}

/// Returns every caution of a batch, the gravest first.
#[must_use]
pub fn cautions(_batch: &Batch) -> Vec<Caution> {
    Vec::new()
}
