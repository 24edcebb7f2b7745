//! What is marked among the choices.

use crate::analysis::DifferingChoice;
use crate::session::Which;
use std::collections::BTreeSet;

/// What is marked in the form.
#[derive(Clone, Copy)]
pub(in crate::ui) struct FormMarks<'a> {
    /// Whose choices are shown, of two designs.
    pub(in crate::ui) edited: Which,
    /// What differs from a second design.
    pub(in crate::ui) differing: &'a [DifferingChoice],
    /// What no aim may move.
    pub(in crate::ui) pins: &'a BTreeSet<&'static str>,
}
