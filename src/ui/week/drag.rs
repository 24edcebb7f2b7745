//! The start of the week while it is dragged.

use egui::Pos2;
use jiff::civil::{Date, DateTime};

/// The start on its way.
#[derive(Clone, Copy)]
pub(in crate::ui) struct StartDrag {
    /// Where it began to move.
    pub(in crate::ui) from: DateTime,
    /// Where the pointer was then.
    pub(in crate::ui) pressed: Pos2,
    /// The first day of the picture then; it stays in sight, so that nothing jumps away below the pointer.
    pub(in crate::ui) first: Date,
}
