//! Files that come from the desktop: dropped on the window.

use crate::file::path_of_address;
use crate::ui::state::ask::Ask;
use crate::ui::widget::theme::{Palette, TITLE, bold};
use egui::{Align2, Context, Id, LayerId, Order};

/// Returns that a file which was dropped on the window is to be opened: the first, for there is one design in a window.
pub(in crate::ui) fn dropped(ctx: &Context) -> Option<Ask> {
    let path = ctx.input(|input| input.raw.dropped_files.first().map(|file| file.path().to_owned()))?;
    Some(Ask::OpenFile(path_of_address(&path)))
}

/// Says that a file which is held over the window can be dropped.
pub(in crate::ui) fn hovered_ui(ctx: &Context, palette: &Palette) {
    if ctx.input(|input| input.raw.hovered_files.is_empty()) {
        return;
    }
    let painter = ctx.layer_painter(LayerId::new(Order::Foreground, Id::unique("a file is held over the window")));
    let room = ctx.viewport_rect();
    painter.rect_filled(room, 0, palette.background.gamma_multiply(0.85));
    painter.text(room.center(), Align2::CENTER_CENTER, "Drop the file here to open it", bold(TITLE), palette.text);
}
