//! The way back to the default.

use crate::design::{Field, Kind};
use crate::ui::widget::theme::Palette;
use egui::{Pos2, Sense, Stroke, Ui, WidgetInfo, vec2};

/// Width of its place.
pub(in crate::ui) const RESET_WIDTH: f32 = 26.0;

/// Draws a small arrow that turns back: the sign of "back to the default".
pub(in crate::ui) fn reset_ui(ui: &mut Ui, field: &Field) -> bool {
    // The slider of a number does the same with the key Delete, so that the Tab key need not stop here.
    let sense = if matches!(field.kind, Kind::Number { .. }) { Sense::CLICK } else { Sense::click() };
    let (rect, response) = ui.allocate_exact_size(vec2(RESET_WIDTH, 26.0), sense);
    let palette = Palette::of(ui);
    let colour = if response.hovered() || response.has_focus() { palette.text } else { palette.link };
    let (centre, radius) = (rect.center(), 6.5_f32);
    let arc: Vec<Pos2> = (0..=20)
        .map(|step| {
            let angle = -2.4 + 4.6 * step as f32 / 20.0;
            centre + radius * vec2(angle.cos(), angle.sin())
        })
        .collect();
    if let Some(first) = arc.first().copied() {
        ui.painter().line_segment([first, first + vec2(0.5, -5.5)], Stroke::new(2.0, colour));
        ui.painter().line_segment([first, first + vec2(5.5, 0.5)], Stroke::new(2.0, colour));
    }
    ui.painter().line(arc, Stroke::new(2.0, colour));
    let words = format!("{}: back to the default, {}", field.label, field.default());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, ui.is_enabled(), &words));
    response.on_hover_text(words.clone()).clicked()
}
