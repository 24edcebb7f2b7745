//! The pin beside a number: what is pinned, no aim may move.

use crate::design::Field;
use crate::ui::widget::focus::focus_ring;
use crate::ui::widget::theme::Palette;
use egui::{Role, Sense, Stroke, Ui, WidgetInfo, vec2};

/// Draws the pin of a choice, filled where it is in; returns whether it was chosen.
pub(in crate::ui) fn pin_ui(ui: &mut Ui, field: &'static Field, pinned: bool) -> bool {
    let (rect, response) = ui.allocate_exact_size(vec2(24.0, 26.0), Sense::click());
    let palette = Palette::of(ui);
    let colour = if pinned || response.hovered() || response.has_focus() { palette.link } else { palette.edge };
    let head = rect.center() - vec2(0.0, 4.0);
    let tip = rect.center() + vec2(0.0, 8.0);
    ui.painter().line_segment([head, tip], Stroke::new(1.5, colour));
    if pinned {
        ui.painter().circle_filled(head, 5.0, colour);
    } else {
        ui.painter().circle(head, 4.5, palette.background, Stroke::new(1.5, colour));
    }
    let does = if pinned { "pinned; take the pin out" } else { "pin" };
    response.widget_info(|| WidgetInfo::selected(Role::CheckBox, true, pinned, format!("{}: {does}", field.label)));
    focus_ring(ui, &response);
    let help = if pinned {
        "Pinned: no aim at a figure moves it. Select to take the pin out."
    } else {
        "Pin it, so that no aim at a figure moves it."
    };
    response.on_hover_text(help).clicked()
}
