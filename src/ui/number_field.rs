//! A number: a rail to drag and a box to type into. Neither changes the value by being drawn.

use super::ask::Ask;
use super::number_text::{read_number, trimmed};
use super::rail::{Limits, Marks, RailWords, rail_ui};
use super::theme::{CAPTION, Palette, plain};
use super::view::{Typing, View};
use crate::batch::caution_begins;
use crate::design::{Field, Kind, Value};
use crate::session::Command;
use egui::{Align2, CornerRadius, Key, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2};

/// Width of a box.
pub(super) const BOX_WIDTH: f32 = 116.0;

/// Draws the rail of a number and returns what is asked for.
pub(super) fn number_rail_ui(ui: &mut Ui, field: &'static Field, value: f64, default: f64) -> Vec<Ask> {
    let Kind::Number { least, most, step, whole } = field.kind else { return Vec::new() };
    let marks = Marks { default: Some(default), caution: caution_begins(field.key) };
    let words = RailWords { label: field.label, value: format!("{} {}", trimmed(value), field.unit.symbol()) };
    let moved = rail_ui(ui, Limits { least, most, step, whole }, value, marks, &words);
    let set = moved.to.map(|to| Ask::Do(Command::SetInput { key: field.key, value: Value::Number(to) }));
    let begins = moved.begins.then_some(Ask::BeginDrag);
    let ends = moved.ends.then_some(Ask::EndDrag);
    moved.response.on_hover_text(field.help);
    begins.into_iter().chain(set).chain(ends).collect()
}

/// Draws the box of a number and returns what is asked for; a text that is refused says why below it.
pub(super) fn box_ui(ui: &mut Ui, view: &mut View, field: &'static Field, value: f64, label: egui::Id) -> (Vec<Ask>, Option<Said>) {
    let typing = view.typing.as_ref().filter(|typing| typing.key == field.key).map(|typing| typing.text.clone());
    let shown = view.units.input_text(field.unit, value);
    let mut text = typing.clone().unwrap_or_else(|| shown.clone());
    let id = ui.make_persistent_id((field.key, "box"));
    let edit = egui::TextEdit::singleline(&mut text)
        .id(id)
        .desired_width(BOX_WIDTH - 16.0)
        .align(egui::Align2::RIGHT_CENTER)
        .margin(vec2(8.0, 4.0));
    let response = ui.add_sized(vec2(BOX_WIDTH, 30.0), edit).labelled_by(label);
    if response.gained_focus() {
        select_all(ui, id, text.chars().count());
        view.typing = Some(Typing { key: field.key, text: shown.clone() });
    }
    if response.changed() {
        view.typing = Some(Typing { key: field.key, text: text.clone() });
    }
    if response.has_focus() {
        ui.painter().rect_stroke(response.rect, CornerRadius::same(6), Stroke::new(2.0, Palette::of(ui).link), StrokeKind::Outside);
    }
    let units = view.units;
    let read = read_number(&text, field.unit).map_err(|misread| misread.to_string()).and_then(|understood| {
        let value = if understood.bare { units.typed(field.unit, understood.value) } else { understood.value };
        let checked = field.check(Value::Number(value)).map_err(|error| error.to_string());
        checked.map(|value| (value, understood.said))
    });
    let mut asks = Vec::new();
    if response.lost_focus() {
        let escaped = ui.input(|input| input.key_pressed(Key::Escape));
        if let (false, Some(typed), Ok((value, _))) = (escaped, &typing, &read)
            && *typed != shown
        {
            asks.push(Ask::Do(Command::SetInput { key: field.key, value: *value }));
        }
        // A refused text stays in the box with its reason, unless Escape gave it up.
        if escaped || read.is_ok() {
            view.typing = None;
        }
    }
    let said = typing.filter(|typed| *typed != shown).and(match read {
        Ok((_, said)) => said.map(Said::Understood),
        Err(why) => Some(Said::Refused(why)),
    });
    (asks, said)
}

/// What is said below a box.
pub(super) enum Said {
    /// How a text was understood.
    Understood(String),
    /// Why it was refused.
    Refused(String),
}

/// Draws what is said below a box.
pub(super) fn said_ui(ui: &mut Ui, said: &Said) {
    let palette = Palette::of(ui);
    match said {
        Said::Understood(words) => {
            ui.label(egui::RichText::new(words).size(CAPTION).color(palette.soft));
        }
        Said::Refused(words) => {
            egui::Frame::new().fill(palette.stop_fill).corner_radius(4).inner_margin(6).show(ui, |ui| {
                ui.label(egui::RichText::new(words).size(CAPTION).color(palette.stop_text));
            });
        }
    }
}

fn select_all(ui: &Ui, id: egui::Id, letters: usize) {
    use egui::text::{CCursor, CCursorRange};
    if let Some(mut state) = egui::TextEdit::load_state(ui.ctx(), id) {
        state.cursor.set_char_range(Some(CCursorRange::two(CCursor::new(0), CCursor::new(letters))));
        state.store(ui.ctx(), id);
    }
}

/// Draws a small arrow that turns back: the sign of "back to the default".
pub(super) fn reset_ui(ui: &mut Ui, field: &Field) -> bool {
    let (rect, response) = ui.allocate_exact_size(vec2(26.0, 26.0), Sense::click());
    let palette = Palette::of(ui);
    let colour = if response.hovered() || response.has_focus() { palette.text } else { palette.link };
    let (centre, radius) = (rect.center(), 6.5_f32);
    let arc: Vec<Pos2> = (0..=20)
        .map(|step| {
            let angle = -2.4 + 4.6 * step as f32 / 20.0;
            centre + radius * vec2(angle.cos(), angle.sin())
        })
        .collect();
    if let Some(first) = arc.first().copied() {
        ui.painter().line_segment([first, first + vec2(0.5, -5.5)], Stroke::new(2.0, colour));
        ui.painter().line_segment([first, first + vec2(5.5, 0.5)], Stroke::new(2.0, colour));
    }
    ui.painter().line(arc, Stroke::new(2.0, colour));
    if response.has_focus() {
        ui.painter().rect_stroke(rect, CornerRadius::same(4), Stroke::new(2.0, palette.link), StrokeKind::Inside);
    }
    let words = format!("{}: back to the default, {}", field.label, field.default());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, ui.is_enabled(), &words));
    response.on_hover_text(words.clone()).clicked()
}

/// Draws text and returns its width; used where a label must not wrap.
pub(super) fn text_at(ui: &Ui, at: Pos2, align: Align2, words: &str, size: f32, colour: egui::Color32) -> Rect {
    ui.painter().text(at, align, words, plain(size), colour)
}
