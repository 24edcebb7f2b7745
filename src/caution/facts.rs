//! What every kind of caution has: a key, a severity, the choice that causes it, a source.

use crate::source::SourceId;

/// How grave a caution is.
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
    /// Every severity, the gravest first.
    pub const ALL: [Self; 3] = [Self::Stop, Self::Caution, Self::Note];

    /// Returns the name that never changes, for scripts.
    ///
    /// # Example
    /// ```
    /// assert_eq!(vatsketch::caution::Severity::Stop.key(), "stop");
    /// ```
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Caution => "caution",
            Self::Stop => "stop",
        }
    }
}

/// What a kind of caution has besides its numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Facts {
    pub(super) key: &'static str,
    pub(super) severity: Severity,
    pub(super) caused_by: Option<&'static str>,
    pub(super) source: SourceId,
    /// Whether it is true of every cheese like this, so that no choice lifts it.
    pub(super) always: bool,
}

impl Facts {
    /// Returns the facts of a caution that a choice causes.
    pub(super) const fn caused(key: &'static str, severity: Severity, caused_by: &'static str, source: SourceId) -> Self {
        Self { key, severity, caused_by: Some(caused_by), source, always: false }
    }

    /// Returns the same as true of every cheese like this, whatever is chosen.
    pub(super) const fn always(key: &'static str, severity: Severity, caused_by: Option<&'static str>, source: SourceId) -> Self {
        Self { key, severity, caused_by, source, always: true }
    }
}
