//! A small move of a choice, which the next one may go on with.

use super::{Command, Which};

/// The last small move.
#[derive(Clone, Debug)]
pub(super) struct Nudge {
    pub(super) command: Command,
    /// The design that it changed.
    pub(super) which: Which,
    /// When, seconds on the caller's own clock.
    pub(super) at_s: f64,
}
