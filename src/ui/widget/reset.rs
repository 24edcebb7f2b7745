//! The way back to the default.

use crate::design::{Field, Kind};
use crate::ui::widget::theme::Palette;
use egui::{Sense, Stroke, Ui, WidgetInfo, vec2};

/// Width of its place.
pub(in crate::ui) const RESET_WIDTH: f32 = 26.0;

/// Draws a small arrow that goes back to a line: the sign of "back to the default", unlike the arrows of undo and redo.
pub(in crate::ui) fn reset_ui(ui: &mut Ui, field: &Field) -> bool {
    // The slider of a number does the same with the key Delete, so that the Tab key need not stop here.
    let sense = if matches!(field.kind, Kind::Number { .. }) { Sense::CLICK } else { Sense::click() };
    let (rect, response) = ui.allocate_exact_size(vec2(RESET_WIDTH, 26.0), sense);
    let palette = Palette::of(ui);
    let colour = if response.hovered() || response.has_focus() { palette.text } else { palette.link };
    let (stroke, centre, tip) = (Stroke::new(2.0, colour), rect.center(), rect.center() - vec2(4.5, 0.0));
    for (from, to) in [
        (centre + vec2(-7.0, -6.0), centre + vec2(-7.0, 6.0)),
        (tip, centre + vec2(7.0, 0.0)),
        (tip, tip + vec2(4.5, -4.5)),
        (tip, tip + vec2(4.5, 4.5)),
    ] {
        ui.painter().line_segment([from, to], stroke);
    }
    let words = format!("{}: back to the default, {}", field.label, field.default());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, ui.is_enabled(), &words));
    response.on_hover_text(words.clone()).clicked()
}
