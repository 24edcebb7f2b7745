//! A number: a rail to drag and a box to type into. Neither changes the value by being drawn.

use super::ask::Ask;
use super::number_text::{read_number, trimmed};
use super::theme::{CAPTION, Palette, plain};
use super::view::{Typing, View};
use crate::batch::caution_begins;
use crate::design::{Field, Kind, Value};
use crate::session::Command;
use egui::{Align2, CornerRadius, Key, Pos2, Rect, Response, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2};

/// Height of a rail: also the least height of a target.
const RAIL_HEIGHT: f32 = 24.0;
/// Radius of its handle.
const HANDLE: f32 = 8.0;
/// Width of a box.
pub(super) const BOX_WIDTH: f32 = 116.0;

/// The limits of a number's rail.
#[derive(Clone, Copy)]
struct Limits {
    least: f64,
    most: f64,
    step: f64,
    whole: bool,
}

/// Draws the rail of a number and returns what is asked for.
pub(super) fn rail_ui(ui: &mut Ui, field: &'static Field, value: f64, default: f64) -> Vec<Ask> {
    let Kind::Number { least, most, step, whole } = field.kind else { return Vec::new() };
    let limits = Limits { least, most, step, whole };
    let (rect, mut response) = ui.allocate_exact_size(vec2(ui.available_width(), RAIL_HEIGHT), Sense::click_and_drag());
    let rail = rect.shrink2(vec2(HANDLE, 0.0));
    let mut asks = Vec::new();
    let mut set = |value: f64| asks.push(Ask::Do(Command::SetInput { key: field.key, value: Value::Number(limits.fit(value)) }));
    if let Some(pointer) = response.interact_pointer_pos() {
        let share = f64::from(((pointer.x - rail.left()) / rail.width()).clamp(0.0, 1.0));
        set(limits.rounded(limits.at(share)));
    }
    if let Some(stepped) = keyboard(ui, &response, limits, value) {
        set(stepped);
    }
    if let Some(asked) = accesskit(ui, &response, limits, value) {
        set(asked);
    }
    // A press begins the step already: it moves the handle to the pointer before any drag.
    let pressed = response.is_pointer_button_down_on() && ui.input(|input| input.pointer.any_pressed());
    let dragged = (pressed, response.drag_stopped() || response.clicked());
    if asks
        .iter()
        .any(|ask| !matches!(ask, Ask::Do(Command::SetInput { value: Value::Number(to), .. }) if to.to_bits() == value.to_bits()))
    {
        response.mark_changed();
    }
    if dragged.0 {
        asks.insert(0, Ask::BeginDrag);
    }
    if dragged.1 {
        asks.push(Ask::EndDrag);
    }
    let caution = caution_begins(field.key).map(|from| limits.share(from));
    paint_rail(ui, rail, &response, limits.share(value), limits.share(default), caution);
    response.widget_info(|| WidgetInfo::slider(ui.is_enabled(), value, field.label));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_min_numeric_value(least);
        node.set_max_numeric_value(most);
        node.set_numeric_value_step(step);
        node.set_value(format!("{} {}", trimmed(value), field.unit.symbol()));
        node.add_action(egui::accesskit::Action::SetValue);
        node.add_action(egui::accesskit::Action::Increment);
        node.add_action(egui::accesskit::Action::Decrement);
    });
    response.on_hover_text(field.help);
    asks
}

/// How values lie along a rail.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Scale {
    Even,
    Roots,
    Ratios,
}

impl Limits {
    /// How values lie along the rail: in equal ratios where the range spans more than a factor of fifty, by the square root where such a
    /// range begins at zero, evenly otherwise.
    fn scale(self) -> Scale {
        if self.least > 0.0 && self.most / self.least > 50.0 {
            Scale::Ratios
        } else if self.least.abs() < f64::EPSILON && self.most / self.step > 300.0 {
            Scale::Roots
        } else {
            Scale::Even
        }
    }

    fn share(self, value: f64) -> f32 {
        let even = (value - self.least) / (self.most - self.least);
        let share = match self.scale() {
            Scale::Even => even,
            Scale::Roots => even.max(0.0).sqrt(),
            Scale::Ratios => (value / self.least).ln() / (self.most / self.least).ln(),
        };
        share.clamp(0.0, 1.0) as f32
    }

    fn at(self, share: f64) -> f64 {
        match self.scale() {
            Scale::Even => self.least + share * (self.most - self.least),
            Scale::Roots => self.most * share * share,
            Scale::Ratios => self.least * (self.most / self.least).powf(share),
        }
    }

    /// Rounds a dragged value to the step; a typed one is never rounded.
    fn rounded(self, value: f64) -> f64 {
        let steps = (value / self.step).round();
        // Written so that 0.1 × 42 is 4.2 and not 4.200000000000001.
        let per_unit = (1.0 / self.step).round();
        if (per_unit * self.step - 1.0).abs() < 1e-9 { steps / per_unit } else { steps * self.step }
    }

    fn fit(self, value: f64) -> f64 {
        let within = value.clamp(self.least, self.most);
        if self.whole { within.round() } else { within }
    }
}

/// Returns the value after a key: arrows a step, pages ten steps, Home and End the ends.
fn keyboard(ui: &Ui, response: &Response, limits: Limits, value: f64) -> Option<f64> {
    if !response.has_focus() {
        return None;
    }
    ui.memory_mut(|memory| {
        let arrows = egui::EventFilter { horizontal_arrows: true, vertical_arrows: true, ..Default::default() };
        memory.set_focus_lock_filter(response.id, arrows);
    });
    ui.input(|input| {
        let pressed = |key: Key| f64::from(u32::try_from(input.num_presses(key)).unwrap_or(0));
        let steps = pressed(Key::ArrowRight) + pressed(Key::ArrowUp) - pressed(Key::ArrowLeft) - pressed(Key::ArrowDown)
            + 10.0 * (pressed(Key::PageUp) - pressed(Key::PageDown));
        if input.key_pressed(Key::Home) {
            Some(limits.least)
        } else if input.key_pressed(Key::End) {
            Some(limits.most)
        } else {
            (steps != 0.0).then(|| limits.rounded(value + steps * limits.step))
        }
    })
}

/// Returns the value that a screen reader or a test asks for.
fn accesskit(ui: &Ui, response: &Response, limits: Limits, value: f64) -> Option<f64> {
    use egui::accesskit::{Action, ActionData};
    ui.input(|input| {
        let steps = input.num_accesskit_action_requests(response.id, Action::Increment) as f64
            - input.num_accesskit_action_requests(response.id, Action::Decrement) as f64;
        let set = input.accesskit_action_requests(response.id, Action::SetValue).filter_map(|request| match request.data {
            Some(ActionData::NumericValue(asked)) => Some(asked),
            _ => None,
        });
        set.last().or_else(|| (steps != 0.0).then(|| limits.rounded(value + steps * limits.step)))
    })
}

fn paint_rail(ui: &Ui, rail: Rect, response: &Response, share: f32, default: f32, caution: Option<f32>) {
    let palette = Palette::of(ui);
    let painter = ui.painter();
    let at = |share: f32| Pos2::new(rail.left() + share * rail.width(), rail.center().y);
    let bar = |from: Pos2, to: Pos2| Rect::from_min_max(from - vec2(0.0, 2.0), to + vec2(0.0, 2.0));
    painter.rect_filled(bar(at(0.0), at(1.0)), CornerRadius::same(2), palette.grid);
    painter.rect_filled(bar(at(0.0), at(share)), CornerRadius::same(2), palette.edge);
    // The default is a notch above the rail.
    painter.line_segment([at(default) - vec2(0.0, 9.0), at(default) - vec2(0.0, 4.0)], Stroke::new(2.0, palette.edge));
    // Where a caution begins the rail has a hollow triangle below it.
    if let Some(caution) = caution {
        let tip = at(caution) + vec2(0.0, 4.0);
        let corners = vec![tip, tip + vec2(5.0, 7.0), tip + vec2(-5.0, 7.0)];
        painter.add(egui::Shape::closed_line(corners, Stroke::new(1.5, palette.caution_text)));
    }
    let fill = if response.hovered() || response.dragged() { palette.text } else { palette.link };
    painter.circle_filled(at(share), HANDLE, fill);
    painter.circle_stroke(at(share), HANDLE, Stroke::new(2.0, palette.background));
    if response.has_focus() {
        painter.circle_stroke(at(share), HANDLE + 3.0, Stroke::new(2.0, palette.link));
    }
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
