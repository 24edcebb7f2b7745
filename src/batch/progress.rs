//! How far a stage came.

use crate::design::Stage;
use crate::process::StageError;

/// How far a stage came.
#[derive(Clone, Debug, PartialEq)]
pub enum Progress<T> {
    /// Worked out.
    Done(T),
    /// Could not be calculated, and why.
    Failed(StageError),
    /// Waits for an earlier stage that failed.
    NotReached {
        /// The stage that failed.
        waits_for: Stage,
    },
}

impl<T> Progress<T> {
    /// Returns the outcome, if there is one.
    pub const fn done(&self) -> Option<&T> {
        match self {
            Self::Done(outcome) => Some(outcome),
            Self::Failed(_) | Self::NotReached { .. } => None,
        }
    }

    /// Returns the error, if the stage failed.
    pub const fn failed(&self) -> Option<&StageError> {
        match self {
            Self::Failed(error) => Some(error),
            Self::Done(_) | Self::NotReached { .. } => None,
        }
    }

    /// Returns how it ended as a word for other programs: `done`, `failed` or `not_reached`.
    #[must_use]
    pub const fn status(&self) -> &'static str {
        match self {
            Self::Done(_) => "done",
            Self::Failed(_) => "failed",
            Self::NotReached { .. } => "not_reached",
        }
    }

    /// Returns why there is no outcome, in the words of window, paper and command line; none if there is one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::Progress, design::Stage};
    /// let waiting = Progress::<()>::NotReached { waits_for: Stage::Vat };
    /// assert_eq!(waiting.why_not().as_deref(), Some("waits for “Vat”"));
    /// ```
    #[must_use]
    pub fn why_not(&self) -> Option<String> {
        match self {
            Self::Done(_) => None,
            Self::Failed(error) => Some(error.to_string()),
            Self::NotReached { waits_for } => Some(format!("waits for “{}”", waits_for.title())),
        }
    }

    /// Returns a part of the outcome, if there is one; a stage without an outcome stays as it is.
    pub(super) fn part<'a, U>(&'a self, part: impl FnOnce(&'a T) -> U) -> Progress<U> {
        match self {
            Self::Done(outcome) => Progress::Done(part(outcome)),
            Self::Failed(error) => Progress::Failed(error.clone()),
            Self::NotReached { waits_for } => Progress::NotReached { waits_for: *waits_for },
        }
    }

    /// Returns something else in place of the outcome, if there is one; a stage without an outcome stays as it is.
    pub(super) fn and<U>(&self, other: Option<U>) -> Progress<U> {
        match (self.part(|_| ()), other) {
            (Progress::Done(()), Some(other)) => Progress::Done(other),
            (Progress::Failed(error), _) => Progress::Failed(error),
            (Progress::NotReached { waits_for }, _) => Progress::NotReached { waits_for },
            // A stage that is done has all before it done.
            (Progress::Done(()), None) => Progress::NotReached { waits_for: Stage::Milk },
        }
    }
}
