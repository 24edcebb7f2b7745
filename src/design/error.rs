//! What can be wrong with an input, said so that the maker knows what to do.

use super::spelling::{did_you_mean, nearest};

/// A refused input; the design stays as it was.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DesignError {
    /// No input has this key.
    #[error("there is no input called `{key}` (`vatsketch inputs` lists them all){}", did_you_mean(*nearest))]
    UnknownKey {
        /// What was asked for.
        key: String,
        /// The known key that was perhaps meant.
        nearest: Option<&'static str>,
    },
    /// Not a number, or not a finite one.
    #[error("{label} (`{key}`) must be a number from {least} to {most} {unit}, but `{given}` is not a number")]
    NotANumber {
        /// Label of the input.
        label: &'static str,
        /// Key of the input.
        key: &'static str,
        /// What was given.
        given: String,
        /// Least allowed.
        least: f64,
        /// Greatest allowed.
        most: f64,
        /// Unit symbol.
        unit: &'static str,
    },
    /// Outside the range.
    #[error("{label} (`{key}`) must be from {least} to {most} {unit}, but {given} was given")]
    OutOfRange {
        /// Label of the input.
        label: &'static str,
        /// Key of the input.
        key: &'static str,
        /// What was given.
        given: f64,
        /// Least allowed.
        least: f64,
        /// Greatest allowed.
        most: f64,
        /// Unit symbol.
        unit: &'static str,
    },
    /// A number with a fraction for something that is counted.
    #[error("{label} (`{key}`) is counted and must be a whole number, but {given} was given")]
    NotWhole {
        /// Label of the input.
        label: &'static str,
        /// Key of the input.
        key: &'static str,
        /// What was given.
        given: f64,
    },
    /// Not one of the choices.
    #[error("{label} (`{key}`) must be one of {options}, but `{given}` was given{}", did_you_mean(*nearest))]
    NotAChoice {
        /// Label of the input.
        label: &'static str,
        /// Key of the input.
        key: &'static str,
        /// What was given.
        given: String,
        /// The keys of the choices.
        options: String,
        /// The one that was perhaps meant.
        nearest: Option<&'static str>,
    },
    /// Neither yes nor no.
    #[error("{label} (`{key}`) must be yes or no, but `{given}` was given")]
    NotASwitch {
        /// Label of the input.
        label: &'static str,
        /// Key of the input.
        key: &'static str,
        /// What was given.
        given: String,
    },
    /// No id of a design.
    #[error(
        "`{given}` is no id of a design, which looks like 5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3; take the entry `id` out, and the next saving draws a new one"
    )]
    NoId {
        /// What was given.
        given: String,
    },
    /// Something about the maker's week.
    #[error("{what}: {why}")]
    Week {
        /// What it is about.
        what: String,
        /// Why it is refused, and what to do.
        why: String,
    },
    /// Something about the kitchen that the design uses.
    #[error(
        "the kitchen in this design says of `{key}` what cannot be: {why}; take the entry `kitchen` out, or learn it again from the log"
    )]
    Kitchen {
        /// What it is about.
        key: String,
        /// Why it is refused.
        why: String,
    },
    /// Something about the supplies.
    #[error("{what}: {why}")]
    Supply {
        /// What it is about.
        what: String,
        /// Why it is refused, and what to do.
        why: String,
    },
}

impl DesignError {
    /// Returns the error for a key that is none of these, naming the one that was perhaps meant.
    #[must_use]
    pub fn unknown_key(key: &str, known: impl Iterator<Item = &'static str>) -> Self {
        Self::UnknownKey { key: key.to_owned(), nearest: nearest(key, known) }
    }
}
