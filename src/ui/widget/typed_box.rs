//! A box to type into. The text counts when the box is left; Escape gives it up, and a refused text stays with its reason.

use crate::ui::widget::spoken::alert_ui;
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::ui::widget::typing::Typing;
use egui::{Id, Key, Response, Ui, vec2};
use std::collections::BTreeMap;

/// A box and what it shows.
pub(in crate::ui) struct TypedBox<'a> {
    /// Its stable key.
    pub(in crate::ui) key: &'a str,
    /// What it shows while nobody types.
    pub(in crate::ui) shown: String,
    /// Its width.
    pub(in crate::ui) width: f32,
    /// Whether it holds a number, which stands at the right.
    pub(in crate::ui) number: bool,
}

/// What came of a box.
pub(in crate::ui) struct Typed<T> {
    /// The box.
    pub(in crate::ui) response: Response,
    /// What was typed, once it counts.
    pub(in crate::ui) value: Option<T>,
    /// What is said of the text so far.
    pub(in crate::ui) said: Option<Said>,
}

/// What is said below a box.
pub(in crate::ui) enum Said {
    /// How a text was understood.
    Understood(String),
    /// Why it was refused.
    Refused(String),
}

impl<T> Typed<T> {
    /// Names the box for a reader of the screen, where no label is shown next to it.
    pub(in crate::ui) fn named(self, ui: &Ui, name: &str) -> Self {
        ui.ctx().accesskit_node_builder(self.response.id, |node| node.set_label(name));
        self
    }
}

/// Draws a box; it never changes a value by being drawn.
///
/// # Arguments
/// * `typing`: the texts of all boxes that were typed into and do not count yet
/// * `read`: reads a text, with how it was understood where that needs saying
pub(in crate::ui) fn typed_ui<T>(
    ui: &mut Ui,
    typing: &mut BTreeMap<String, Typing>,
    this: &TypedBox<'_>,
    read: impl FnOnce(&str) -> Result<(T, Option<String>), String>,
) -> Typed<T> {
    let id = Id::unique(("typed", this.key));
    let focused = ui.memory(|memory| memory.has_focus(id));
    // The value was moved by other means, such as undo: what was typed over the old one is out of date, and so is what nobody has typed over yet.
    let is_old = |typing: &Typing| typing.was != this.shown && (!focused || typing.text == typing.was);
    if typing.get(this.key).is_some_and(is_old) {
        typing.remove(this.key);
    }
    let mut text = typing.get(this.key).map_or_else(|| this.shown.clone(), |typing| typing.text.clone());
    let align = if this.number { egui::Align2::RIGHT_CENTER } else { egui::Align2::LEFT_CENTER };
    let edit = egui::TextEdit::singleline(&mut text).id(id).desired_width(this.width - 16.0).align(align).margin(vec2(8.0, 4.0));
    let response = ui.add_sized(vec2(this.width, 30.0), edit);
    // What is typed takes the place of all, by whatever way the box was reached.
    if remember_text(ui, &response, &text) {
        select_all(ui, id, text.chars().count());
        typing.entry(this.key.to_owned()).or_insert_with(|| Typing { was: this.shown.clone(), text: this.shown.clone() });
    }
    if response.changed() {
        typing.insert(this.key.to_owned(), Typing { was: this.shown.clone(), text: text.clone() });
    }
    let differs = typing.contains_key(this.key) && text != this.shown;
    let escaped = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Escape));
    if escaped || (response.lost_focus() && !differs) {
        typing.remove(this.key);
    }
    if escaped || !differs {
        return Typed { response, value: None, said: None };
    }
    match read(&text) {
        Ok((value, _)) if response.lost_focus() => {
            typing.remove(this.key);
            Typed { response, value: Some(value), said: None }
        }
        Ok((_, said)) => Typed { response, value: None, said: said.map(Said::Understood) },
        Err(why) => {
            // The text was not taken: the box stays in hand, so that it can be corrected, or given up with Escape.
            if response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter)) {
                response.request_focus();
            }
            Typed { response, value: None, said: Some(Said::Refused(why)) }
        }
    }
}

/// Draws what is said below a box.
pub(in crate::ui) fn said_ui(ui: &mut Ui, said: &Said) {
    let palette = Palette::of(ui);
    match said {
        Said::Understood(words) => {
            ui.label(egui::RichText::new(words).size(CAPTION).color(palette.soft));
        }
        Said::Refused(words) => {
            egui::Frame::new().fill(palette.stop_fill).corner_radius(4).inner_margin(6).show(ui, |ui| {
                alert_ui(ui, egui::RichText::new(words).size(CAPTION).color(palette.stop_text));
            });
        }
    }
}

pub(in crate::ui) fn select_all(ui: &Ui, id: Id, letters: usize) {
    use egui::text::{CCursor, CCursorRange};
    if let Some(mut state) = egui::TextEdit::load_state(ui.ctx(), id) {
        state.cursor.set_char_range(Some(CCursorRange::two(CCursor::new(0), CCursor::new(letters))));
        state.store(ui.ctx(), id);
    }
}
