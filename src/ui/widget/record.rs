//! A constant, a formula or a law with its source.

use crate::report::RecordRow;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use egui::{RichText, Ui};

/// Draws one record.
pub(in crate::ui) fn record_ui(ui: &mut Ui, row: &RecordRow) {
    text_ui(ui, row.name, &row.value, &row.source);
}

/// Draws a name, if there is one, with its value, and below it the source.
pub(in crate::ui) fn text_ui(ui: &mut Ui, name: &str, value: &str, source: &str) {
    let palette = Palette::of(ui);
    egui::Frame::new().fill(palette.panel).corner_radius(6).inner_margin(8).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal_wrapped(|ui| {
            if !name.is_empty() {
                ui.label(RichText::new(name).size(BODY));
            }
            ui.label(RichText::new(value).font(bold(BODY)));
        });
        ui.label(RichText::new(source).size(CAPTION).color(palette.soft));
    });
    ui.add_space(4.0);
}
