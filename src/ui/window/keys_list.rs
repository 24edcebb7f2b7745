//! The list of the keys.

use crate::ui::widget::theme::{BODY, bold};
use crate::ui::window::keys::{KEYS, OTHER_KEYS};
use crate::ui::window::prompt::{choice, front, heading};
use egui::RichText;

/// Draws the list of keys; returns whether it is to be closed, and its part of the window.
pub(in crate::ui) fn keys_ui(ctx: &egui::Context) -> (bool, egui::Id) {
    let (mut close, mut part) = (false, egui::Id::NULL);
    let modal = egui::Modal::new(egui::Id::unique("keys")).frame(front(ctx)).show(ctx, |ui| {
        part = ui.unique_id();
        ui.set_max_width(620.0);
        heading(ui, "Keyboard shortcuts");
        egui::Grid::new("keys").spacing(egui::vec2(24.0, 6.0)).show(ui, |ui| {
            for (shortcut, words, _) in &KEYS {
                ui.label(RichText::new(ui.ctx().format_shortcut(shortcut)).font(bold(BODY)));
                ui.label(*words);
                ui.end_row();
            }
            for (key, words) in OTHER_KEYS {
                ui.label(RichText::new(key).font(bold(BODY)));
                ui.label(words);
                ui.end_row();
            }
        });
        ui.add_space(8.0);
        close = choice(ui, "Close");
    });
    (close || modal.should_close(), part)
}
