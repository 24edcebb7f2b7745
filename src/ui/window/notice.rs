//! Messages that must be seen.

use crate::ui::widget::spoken::alert_ui;
use crate::ui::widget::theme::Palette;
use egui::{Button, RichText, Ui};

/// Draws a message that something went wrong; returns whether it is to be closed.
pub(in crate::ui) fn notice_ui(ui: &mut Ui, words: &str) -> bool {
    let palette = Palette::of(ui);
    let (text, fill) = (palette.stop_text, palette.stop_fill);
    egui::Frame::new()
        .fill(fill)
        .inner_margin(10)
        .show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                ui.set_width(ui.available_width());
                alert_ui(ui, RichText::new(words).color(text));
                let button = Button::new(RichText::new("Close message").color(text))
                    .fill(egui::Color32::TRANSPARENT)
                    .stroke(egui::Stroke::new(1.0, text));
                ui.add(button).clicked()
            })
            .inner
        })
        .inner
}
