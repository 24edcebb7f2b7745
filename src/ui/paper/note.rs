//! The note that is printed under the title of the plan.

use crate::file::MOST_NOTE;
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::text_undo::remember_text;
use egui::{Key, TextEdit, Ui, vec2};

/// Draws the box of the note and returns what is asked for.
pub(in crate::ui) fn note_ui(ui: &mut Ui, view: &mut View, note: &str) -> Option<Ask> {
    let mut text = view.note.clone().unwrap_or_else(|| note.to_owned());
    let label = ui.label("Note, printed under the title");
    let edit = TextEdit::multiline(&mut text)
        .hint_text("What this vat is for, whose milk, what to watch")
        .char_limit(MOST_NOTE)
        .desired_rows(2)
        .desired_width(ui.available_width().min(860.0))
        .margin(vec2(8.0, 4.0));
    let response = ui.add(edit).labelled_by(label.id);
    remember_text(ui, &response, &text);
    if response.changed() {
        view.note = Some(text);
    }
    if !response.lost_focus() {
        return None;
    }
    let typed = view.note.take()?;
    let given_up = ui.input(|input| input.key_pressed(Key::Escape));
    (typed != note && !given_up).then_some(Ask::Do(Command::SetNote(typed)))
}
