//! What is new in the program.

use crate::ui::help::card::{HelpReply, card_ui};
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken::heading_ui;
use crate::words::changes;
use egui::{Label, ScrollArea};

/// Widest list: longer lines are hard to read.
const WIDTH: f32 = 680.0;

/// Draws the list, the newest first.
pub(in crate::ui) fn changes_ui(ctx: &egui::Context) -> HelpReply {
    card_ui(ctx, "What is new", WIDTH, |ui, room| {
        read_ui(ui, "The changes", ScrollArea::vertical().max_height(room).min_scrolled_height(room), |ui| {
            for change in changes() {
                heading_ui(ui, &change.heading);
                for item in &change.items {
                    ui.horizontal_top(|ui| {
                        ui.label("•");
                        ui.add(Label::new(item).wrap());
                    });
                }
                ui.add_space(12.0);
            }
        });
        None
    })
}
