//! How a part of a page is laid out.

use crate::ui::widget::scroll::scroll_ui;

/// How a part is laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::ui) enum Room {
    /// It has a room of its own and scrolls by itself.
    Own,
    /// It stands in one column with the others, which scrolls as a whole.
    Column,
}

impl Room {
    /// Draws something that scrolls by itself, or plainly in the column.
    pub(in crate::ui) fn scrolled(
        self,
        ui: &mut egui::Ui,
        id: impl std::hash::Hash + std::fmt::Debug,
        draw: impl FnOnce(&mut egui::Ui),
    ) {
        match self {
            Self::Own => scroll_ui(ui, id, draw),
            Self::Column => draw(ui),
        }
    }
}
