//! The list of the keys.

use crate::ui::help::card::{HelpReply, card_ui};
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::theme::{BODY, bold};
use crate::ui::window::keys::{KEYS, OTHER_KEYS};
use egui::{Grid, RichText, ScrollArea, vec2};

/// Widest list.
const WIDTH: f32 = 620.0;

/// Draws the list of keys.
pub(in crate::ui) fn keys_ui(ctx: &egui::Context) -> HelpReply {
    card_ui(ctx, "Keyboard shortcuts", WIDTH, |ui, room| {
        read_ui(ui, "The keys", ScrollArea::vertical().max_height(room).min_scrolled_height(room), |ui| {
            Grid::new("keys").spacing(vec2(24.0, 6.0)).show(ui, |ui| {
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
        None
    })
}
