//! The title of the design: in the bar at the top, or above all where that has no room for it.

use crate::file::MOST_TITLE;
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{BODY, bold};
use egui::{Key, TextEdit, Ui, vec2};

/// Width of a window from which on its bar has room for a title that can be read.
pub(in crate::ui) const TITLE_IN_BAR: f32 = 780.0;

/// Draws the title above all where the bar has no room for it; returns what is asked for.
pub(in crate::ui) fn title_row_ui(ui: &mut Ui, view: &mut View, title: &str) -> Option<Ask> {
    if ui.ctx().content_rect().width() >= TITLE_IN_BAR {
        return None;
    }
    let width = ui.available_width() - 16.0;
    title_box_ui(ui, view, title, width)
}

/// Draws the box of the title; returns what is asked for.
pub(in crate::ui) fn title_box_ui(ui: &mut Ui, view: &mut View, title: &str, width: f32) -> Option<Ask> {
    let mut text = view.title.clone().unwrap_or_else(|| title.to_owned());
    let edit = TextEdit::singleline(&mut text)
        .hint_text("Untitled design")
        .char_limit(MOST_TITLE)
        .font(bold(BODY))
        .desired_width(width)
        .margin(vec2(8.0, 4.0));
    let response = ui.add(edit);
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_label("Title of the design"));
    remember_text(ui, &response, &text);
    if response.changed() {
        view.title = Some(text.clone());
    }
    if !response.lost_focus() || ui.input(|input| input.key_pressed(Key::Escape)) {
        if response.lost_focus() {
            view.title = None;
        }
        return None;
    }
    view.title.take().filter(|typed| typed != title).map(|typed| Ask::Do(Command::SetTitle(typed)))
}
