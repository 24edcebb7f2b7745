//! The list of the keys.

use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::theme::{BODY, bold};
use crate::ui::window::keys::{KEYS, OTHER_KEYS};
use crate::ui::window::reply::{choice, front, heading};
use egui::RichText;

/// What stands around the list, points: heading, button, edges.
const AROUND: f32 = 170.0;

/// Draws the list of keys; returns whether it is to be closed, and its part of the window.
pub(in crate::ui) fn keys_ui(ctx: &egui::Context) -> (bool, egui::Id) {
    let (mut close, mut part) = (false, egui::Id::NULL);
    let modal = egui::Modal::new(egui::Id::unique("keys")).frame(front(ctx)).show(ctx, |ui| {
        part = ui.unique_id();
        ui.set_max_width(620.0);
        heading(ui, "Keyboard shortcuts");
        let room = ctx.viewport_rect().height() - AROUND;
        read_ui(ui, "The keys", egui::ScrollArea::vertical().max_height(room).min_scrolled_height(room), |ui| {
            egui::Grid::new("keys").spacing(egui::vec2(24.0, 6.0)).show(ui, |ui| {
                // Those with Shift stand first in the list that is looked through, and last in the one that is read.
                let (shifted, others): (Vec<_>, Vec<_>) = KEYS.iter().partition(|(shortcut, ..)| shortcut.modifiers.shift);
                for (shortcut, words, _) in others.into_iter().chain(shifted) {
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
        });
        ui.add_space(8.0);
        close = choice(ui, "Close");
    });
    (close || modal.should_close(), part)
}
