//! The words of the trade, each with its explanation.

use crate::design::upper_first;
use crate::ui::help::card::{HelpReply, card_ui};
use crate::ui::widget::record::text_ui;
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken::say_changes;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::words::{terms, terms_with};
use egui::{RichText, ScrollArea, TextEdit, vec2};

/// Widest list.
const WIDTH: f32 = 680.0;
/// Height of the box above the list.
const BOX: f32 = 40.0;

/// Draws the list with a box that searches it.
///
/// `sought`: what is typed there
pub(in crate::ui) fn words_ui(ctx: &egui::Context, sought: &mut String) -> HelpReply {
    card_ui(ctx, "Words of the trade", WIDTH, |ui, room| {
        let found = ui.horizontal(|ui| {
            let label = ui.label("Search");
            let edit = TextEdit::singleline(sought).hint_text("A part of a word").desired_width(240.0).margin(vec2(8.0, 4.0));
            let response = ui.add(edit).labelled_by(label.id);
            remember_text(ui, &response, sought);
            let found = terms_with(sought);
            let counted = format!("{} of {} words", found.len(), terms().len());
            say_changes(&ui.label(RichText::new(counted).size(CAPTION).color(Palette::of(ui).soft)));
            found
        });
        let area = ScrollArea::vertical().max_height(room - BOX).min_scrolled_height(room - BOX).auto_shrink(false);
        read_ui(ui, "The words", area, |ui| {
            if found.inner.is_empty() {
                ui.label("No word has these letters: try fewer.");
            }
            for term in found.inner {
                text_ui(ui, "", &upper_first(term.term), term.means);
            }
        });
        None
    })
}
