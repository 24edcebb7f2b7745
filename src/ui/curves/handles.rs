//! The handles in a chart: a choice that is a place on an axis is dragged there, or moved by keys, as with its slider.

use crate::curve::{Along, Handle};
use crate::design::{Value, field};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::widget::limits::Limits;
use crate::ui::widget::stepped::{stepped, tell_steps};
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::units::Units;
use egui::{Align2, CursorIcon, Id, Pos2, Rect, Response, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};
use egui_plot::{PlotPoint, PlotResponse, PlotTransform};

/// Radius of the knob of a handle.
const KNOB: f32 = 7.0;
/// Size of what can be pressed.
const GRIP: f32 = 24.0;

/// A handle while it is held.
#[derive(Clone, Copy)]
struct Held {
    /// The handle as it was pressed, with the axes of that moment: they may grow under the pointer.
    handle: Handle,
    /// Where the pointer was then.
    pressed: Pos2,
    /// What a point on the screen is worth on its axis.
    per_point: f64,
}

/// A pointer that has moved less than this has not moved.
const LEAST_MOVE: f32 = 1.0;

/// Draws the handles of a chart; returns what is asked for, and whether one is held.
///
/// * `title`: of the chart
pub(in crate::ui) fn handles_ui(
    ui: &mut Ui,
    units: Units,
    title: &str,
    handles: &[Handle],
    plot: &PlotResponse<()>,
) -> (Vec<Ask>, bool) {
    let (mut asks, mut is_held) = (Vec::new(), false);
    for handle in handles {
        let (asked, held) = handle_ui(ui, units, title, handle, plot);
        asks.extend(asked);
        is_held |= held;
    }
    (asks, is_held)
}

fn handle_ui(ui: &mut Ui, units: Units, title: &str, handle: &Handle, plot: &PlotResponse<()>) -> (Vec<Ask>, bool) {
    let (transform, mut asks) = (&plot.transform, Vec::new());
    let Ok(choice) = field(handle.key) else { return (asks, false) };
    let Some(limits) = Limits::of(choice) else { return (asks, false) };
    let (frame, [x, y]) = (*transform.frame(), handle.at);
    let place = transform.position_from_point(&PlotPoint::new(x, y));
    if !frame.expand(1.0).x_range().contains(place.x) {
        return (asks, false);
    }
    let (knob, grip) = match handle.along {
        Along::Time => {
            let knob = pos2(place.x, frame.top() + KNOB + 1.0);
            (knob, Rect::from_x_y_ranges(place.x - 0.5 * GRIP..=place.x + 0.5 * GRIP, frame.y_range()))
        }
        Along::Height => (place, Rect::from_center_size(place, vec2(GRIP, GRIP))),
    };
    let response = ui.interact(grip, Id::unique(("handle", title, handle.key)), Sense::click_and_drag());
    let value = units.choice_text(choice, Value::Number(handle.chosen));
    let words = format!("{}, in the chart", choice.label);
    // A quick hand has left the handle before the press is seen, and then the plot behind it was pressed: what counts is where it was pressed.
    let down = response.is_pointer_button_down_on() || plot.response.is_pointer_button_down_on();
    let pressed = ui.input(|input| input.pointer.press_origin().filter(|_| input.pointer.any_pressed()));
    if let Some(pressed) = pressed.filter(|at| down && grip.contains(*at)) {
        response.request_focus();
        asks.push(Ask::BeginDrag);
        hold(ui, &response, handle, (pressed, transform));
    }
    let is_held = ui.data(|data| data.get_temp::<Held>(response.id)).is_some();
    let set = |to: f64| Command::SetInput { key: handle.key, value: Value::Number(limits.fit(to)) };
    let dragged = dragged(ui, &response, handle.chosen).map(|to| set(limits.rounded(to.clamp(limits.least, limits.most))));
    let by_steps = stepped(ui, &response, limits, handle.chosen).filter(|_| dragged.is_none());
    asks.extend(dragged.map(Ask::Do));
    asks.extend(by_steps.map(|to| Ask::Nudge(set(to))));
    if is_held && !ui.input(|input| input.pointer.primary_down()) {
        ui.data_mut(|data| data.remove::<Held>(response.id));
        asks.push(Ask::EndDrag);
    }
    paint(ui, handle.along, (frame, knob), (&response, is_held), &value);
    response.widget_info(|| WidgetInfo::slider(true, handle.chosen, &words));
    tell_steps(ui, &response, limits, &value);
    let icon = if handle.along == Along::Time { CursorIcon::ResizeHorizontal } else { CursorIcon::ResizeVertical };
    response
        .on_hover_cursor(icon)
        .on_hover_text(format!("{}: {value}. Drag it, or press it and use the arrow keys.", choice.label));
    (asks, is_held)
}

/// Remembers how a handle is held.
fn hold(ui: &Ui, response: &Response, handle: &Handle, (pressed, transform): (Pos2, &PlotTransform)) {
    let per_point = match handle.along {
        Along::Time => transform.dvalue_dpos()[0],
        Along::Height => transform.dvalue_dpos()[1],
    };
    ui.data_mut(|data| data.insert_temp(response.id, Held { handle: *handle, pressed, per_point }));
}

/// Returns what is chosen where the pointer has taken a handle that it holds.
///
/// * `chosen`: what is chosen now
fn dragged(ui: &Ui, response: &Response, chosen: f64) -> Option<f64> {
    let held = ui.data(|data| data.get_temp::<Held>(response.id))?;
    let way = ui.input(|input| input.pointer.latest_pos())? - held.pressed;
    if way.length() < LEAST_MOVE && held.handle.chosen.to_bits() == chosen.to_bits() {
        return None;
    }
    let points = if held.handle.along == Along::Time { way.x } else { way.y };
    Some(held.handle.moved(held.per_point * f64::from(points)))
}

fn paint(ui: &Ui, along: Along, (frame, knob): (Rect, Pos2), (response, is_held): (&Response, bool), value: &str) {
    let palette = Palette::of(ui);
    let taken = response.hovered() || is_held || response.has_focus();
    let colour = if taken { palette.text } else { palette.link };
    let painter = ui.painter();
    match along {
        Along::Time => painter.vline(knob.x, frame.y_range(), Stroke::new(if taken { 2.0 } else { 1.0 }, colour)),
        Along::Height if taken => painter.hline(frame.x_range(), knob.y, Stroke::new(1.0, colour)),
        Along::Height => painter.hline(knob.x - GRIP..=knob.x + GRIP, knob.y, Stroke::new(1.0, colour)),
    };
    painter.circle(knob, KNOB, colour, Stroke::new(2.0, palette.background));
    if is_held {
        let galley = painter.layout_no_wrap(value.to_owned(), bold(CAPTION), palette.text);
        // Left of the knob, where the lines have been already.
        let rect = Align2::RIGHT_CENTER.anchor_size(knob - vec2(KNOB + 5.0, 0.0), galley.size());
        painter.rect_filled(rect.expand(2.0), 3.0, palette.background);
        painter.galley(rect.min, galley, palette.text);
    }
}
