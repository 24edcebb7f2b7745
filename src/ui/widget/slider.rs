//! A slider: a rail with a handle: dragged, stepped by keys, moved by a screen reader. It never changes a value by being drawn.

use crate::ui::widget::limits::Limits;
use crate::ui::widget::stepped::{stepped, tell_steps};
use crate::ui::widget::theme::Palette;
use egui::{CornerRadius, Pos2, Rect, Response, Sense, Stroke, Ui, WidgetInfo, vec2};

/// Height of a slider: also the least height of a target.
const RAIL_HEIGHT: f32 = 24.0;
/// Radius of its handle.
const HANDLE: f32 = 8.0;
/// So far beside the handle a press still holds it.
const NEAR: f32 = 2.0;
/// A pointer that has moved less than this has not moved.
const LEAST_MOVE: f32 = 1.0;

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
    let to = stepped(ui, &response, limits, value).or(pointed);
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
    tell_steps(ui, &response, limits, &words.value);
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
