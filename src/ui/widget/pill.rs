//! One choice of several, as a rounded button.

use crate::ui::widget::focus::focus_ring;
use crate::ui::widget::theme::{CAPTION, Palette};
use egui::{CornerRadius, RichText, Role, Stroke, Ui, WidgetInfo, vec2};

/// Draws one choice as a rounded button, filled where it is chosen.
pub(in crate::ui) fn pill_ui(ui: &mut Ui, label: &str, name: &str, help: &str, chosen: bool) -> bool {
    let palette = Palette::of(ui);
    let (text, fill) = if chosen { (palette.background, palette.link) } else { (palette.text, palette.background) };
    let button = egui::Button::new(RichText::new(label).size(CAPTION).color(text))
        .fill(fill)
        .corner_radius(CornerRadius::same(13))
        .stroke(Stroke::new(1.0, if chosen { palette.link } else { palette.edge }))
        .min_size(vec2(0.0, 26.0));
    let response = ui.add(button).on_hover_text(help);
    response.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, chosen, name));
    focus_ring(ui, &response);
    response.clicked() && !chosen
}
