//! A slider: a rail with a handle: dragged, stepped by keys, moved by a screen reader. It never changes a value by being drawn.

use crate::ui::widget::theme::Palette;
use egui::{CornerRadius, Key, Pos2, Rect, Response, Sense, Stroke, Ui, WidgetInfo, vec2};

/// Height of a slider: also the least height of a target.
const RAIL_HEIGHT: f32 = 24.0;
/// Radius of its handle.
const HANDLE: f32 = 8.0;
/// So far beside the handle a press still holds it.
const NEAR: f32 = 2.0;
/// A pointer that has moved less than this has not moved.
const LEAST_MOVE: f32 = 1.0;

/// The limits of a slider.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Limits {
    pub(in crate::ui) least: f64,
    pub(in crate::ui) most: f64,
    pub(in crate::ui) step: f64,
    pub(in crate::ui) whole: bool,
}

/// What a slider says of itself.
pub(in crate::ui) struct SliderWords<'a> {
    /// Its name.
    pub(in crate::ui) label: &'a str,
    /// Its value with the unit.
    pub(in crate::ui) value: String,
}

/// What is marked on a slider.
#[derive(Clone, Copy, Default)]
pub(in crate::ui) struct SliderMarks {
    /// The default, a notch above it.
    pub(in crate::ui) default: Option<f64>,
    /// Where a caution begins, a hollow triangle below it.
    pub(in crate::ui) caution: Option<f64>,
}

/// What was done to a slider.
pub(in crate::ui) struct Moved {
    /// The value asked for, if any.
    pub(in crate::ui) to: Option<f64>,
    /// Whether a drag begins with this.
    pub(in crate::ui) begins: bool,
    /// Whether it ends.
    pub(in crate::ui) ends: bool,
    /// The slider.
    pub(in crate::ui) response: Response,
}

/// Draws a slider and returns what was done to it.
pub(in crate::ui) fn slider_ui(ui: &mut Ui, limits: Limits, value: f64, marks: SliderMarks, words: &SliderWords<'_>) -> Moved {
    let (rect, mut response) = ui.allocate_exact_size(vec2(ui.available_width(), RAIL_HEIGHT), Sense::click_and_drag());
    let rail = rect.shrink2(vec2(HANDLE, 0.0));
    let handle_x = rail.left() + limits.share(value) * rail.width();
    let pointed = grabbed(ui, &response, handle_x).map(|x| {
        let share = f64::from(((x - rail.left()) / rail.width()).clamp(0.0, 1.0));
        limits.rounded(limits.at(share))
    });
    // Of several at once the last counts, as it would if they came one after the other.
    let to = accesskit(ui, &response, limits, value).or_else(|| keyboard(ui, &response, limits, value)).or(pointed);
    let to = to.map(|to| limits.fit(to));
    // A press begins the step already: beside the handle it moves the handle to the pointer before any drag.
    let begins = response.is_pointer_button_down_on() && ui.input(|input| input.pointer.any_pressed());
    let ends = response.drag_stopped() || response.clicked();
    if to.is_some_and(|to| to.to_bits() != value.to_bits()) {
        response.mark_changed();
    }
    let share = |of: Option<f64>| of.map(|of| limits.share(of));
    paint_rail(ui, rail, &response, limits.share(value), share(marks.default), share(marks.caution));
    response.widget_info(|| WidgetInfo::slider(ui.is_enabled(), value, words.label));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_min_numeric_value(limits.least);
        node.set_max_numeric_value(limits.most);
        node.set_numeric_value_step(limits.step);
        node.set_value(words.value.clone());
        // Some readers of the screen take the number alone from a slider; this tells its unit.
        node.set_description(words.value.clone());
        node.add_action(egui::accesskit::Action::SetValue);
        node.add_action(egui::accesskit::Action::Increment);
        node.add_action(egui::accesskit::Action::Decrement);
    });
    Moved { to, begins, ends, response }
}

/// How a handle is held.
#[derive(Clone, Copy)]
struct Grip {
    /// Where the middle of the handle is to be; a press on the handle alone moves nothing.
    at_x: f32,
    /// Where the pointer was last.
    last_x: f32,
    /// Where it pressed.
    pressed_x: f32,
    /// Whether the pointer has moved since, or pressed beside the handle.
    moves: bool,
}

/// Share of the pointer's way that the handle goes while Shift is held.
const FINER: f32 = 0.1;

/// Returns where the middle of the handle is to be while the pointer holds it; nothing while it is not to move.
fn grabbed(ui: &Ui, response: &Response, handle_x: f32) -> Option<f32> {
    let pointer = response.interact_pointer_pos()?;
    let id = response.id.with("grip");
    let pressed = ui.input(|input| input.pointer.any_pressed());
    let known = ui.data(|data| data.get_temp::<Grip>(id)).filter(|_| !pressed);
    let mut grip = known.unwrap_or_else(|| {
        // Where the button went down, not where a quick hand has come since.
        let pressed_x = ui.input(|input| input.pointer.press_origin()).unwrap_or(pointer).x;
        let on_handle = (pressed_x - handle_x).abs() <= HANDLE + NEAR;
        Grip { at_x: if on_handle { handle_x } else { pressed_x }, last_x: pressed_x, pressed_x, moves: !on_handle }
    });
    let share = if ui.input(|input| input.modifiers.shift) { FINER } else { 1.0 };
    grip.at_x += share * (pointer.x - grip.last_x);
    grip.last_x = pointer.x;
    grip.moves |= (pointer.x - grip.pressed_x).abs() >= LEAST_MOVE;
    ui.data_mut(|data| data.insert_temp(id, grip));
    grip.moves.then_some(grip.at_x)
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

fn paint_rail(ui: &Ui, rail: Rect, response: &Response, share: f32, default: Option<f32>, caution: Option<f32>) {
    let palette = Palette::of(ui);
    let painter = ui.painter();
    let at = |share: f32| Pos2::new(rail.left() + share * rail.width(), rail.center().y);
    let bar = |from: Pos2, to: Pos2| Rect::from_min_max(from - vec2(0.0, 2.0), to + vec2(0.0, 2.0));
    painter.rect_filled(bar(at(0.0), at(1.0)), CornerRadius::same(2), palette.grid);
    painter.rect_filled(bar(at(0.0), at(share)), CornerRadius::same(2), palette.edge);
    // The default is a notch above the rail.
    if let Some(default) = default {
        painter.line_segment([at(default) - vec2(0.0, 9.0), at(default) - vec2(0.0, 4.0)], Stroke::new(2.0, palette.edge));
    }
    // Where a caution begins the rail has a hollow triangle below it.
    if let Some(caution) = caution {
        let tip = at(caution) + vec2(0.0, 4.0);
        let corners = vec![tip, tip + vec2(5.0, 7.0), tip + vec2(-5.0, 7.0)];
        painter.add(egui::Shape::closed_line(corners, Stroke::new(1.5, palette.caution_text)));
    }
    let fill = if response.hovered() || response.dragged() { palette.text } else { palette.link };
    painter.circle_filled(at(share), HANDLE, fill);
    painter.circle_stroke(at(share), HANDLE, Stroke::new(2.0, palette.background));
}
