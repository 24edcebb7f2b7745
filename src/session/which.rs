//! Which of the two designs, and what a change of it is called.

use super::Command;
use crate::design::Design;

/// One of the two designs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// A, the open design.
    First,
    /// B, the one beside it.
    Second,
}

/// Returns what is said of a command, and of which design where it is not the open one.
///
/// * `before`: the design before it
pub(super) fn named(which: Which, command: &Command, before: Option<&Design>) -> String {
    let name = before.map(|before| command.name(before)).unwrap_or_default();
    if which == Which::Second { format!("B: {name}") } else { name }
}
