//! The handle of the start: dragged, moved by keys or by a reader of the screen.

use crate::design::{WeekDesign, Wish};
use crate::plan::{GRID_MIN, KitchenWeek, Now, WALL_DAY_MIN, moved_start, time_words};
use crate::ui::state::ask::Ask;
use crate::ui::week::drag::StartDrag;
use crate::ui::week::track::Track;
use crate::ui::week::wish::wished;
use crate::ui::widget::theme::{CAPTION, Palette, bold, plain};
use crate::units::Units;
use egui::accesskit::Action;
use egui::{Align2, CornerRadius, Id, Key, Pos2, Rect, Response, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};
use jiff::civil::DateTime;

/// Room above the first strip.
pub(in crate::ui) const HANDLE_ROOM: f32 = 28.0;
/// Radius of the knob.
const KNOB: f32 = 8.0;
/// A way down by so much is a day.
const DAY_DOWN: f32 = 56.0;

/// Draws the handle and returns what is asked for.
///
/// # Arguments
/// * `top`: above the first block, at the top of its row
pub(in crate::ui) fn start_ui(
    ui: &mut Ui,
    units: Units,
    drag: &mut Option<StartDrag>,
    design: &WeekDesign,
    (week, now): (&KitchenWeek, &Now),
    track: Track,
    top: Pos2,
) -> Vec<Ask> {
    let Some(task) = week.tasks.first().filter(|task| !task.begun) else { return Vec::new() };
    let start = task.start;
    let grip = Rect::from_center_size(pos2(top.x, top.y + 0.5 * HANDLE_ROOM), vec2(28.0, HANDLE_ROOM));
    let response = ui.interact(grip, Id::unique("start of the week"), Sense::click_and_drag());
    let mut asks = Vec::new();
    if response.drag_started() {
        response.request_focus();
        let pressed = ui.input(|input| input.pointer.press_origin()).unwrap_or(grip.center());
        *drag = Some(StartDrag { from: start, pressed, first: start.date() });
        asks.push(Ask::BeginDrag);
    }
    if response.clicked() {
        response.request_focus();
    }
    if ui.input(|input| input.key_pressed(Key::Escape)) && drag.take().is_some() {
        asks.push(Ask::GiveUpDrag);
    }
    let dragged = drag.zip(response.interact_pointer_pos()).and_then(|(drag, pointer)| {
        let way = pointer - drag.pressed;
        moved_start(drag.from, track.minutes(way.x) + WALL_DAY_MIN * (way.y / DAY_DOWN).round() as i64)
    });
    let stepped = stepped(ui, &response, start).filter(|_| dragged.is_none());
    asks.extend(dragged.filter(|to| *to != start).map(|to| wished(design, Wish::StartAt(to))));
    asks.extend(stepped.filter(|to| *to != start).map(|to| match wished(design, Wish::StartAt(to)) {
        Ask::Do(command) => Ask::Nudge(command),
        ask => ask,
    }));
    if response.drag_stopped() && drag.take().is_some() {
        asks.push(Ask::EndDrag);
    }
    let words = units.told(&time_words(start));
    paint(ui, &response, grip, &words);
    speak(ui, &response, start, now, &words);
    asks
}

/// Returns the start after keys or after what a reader of the screen asks: sideways a quarter of an hour, up and down a day, by pages a week.
fn stepped(ui: &Ui, response: &Response, start: DateTime) -> Option<DateTime> {
    let focused = response.has_focus();
    if focused {
        ui.memory_mut(|memory| {
            let arrows = egui::EventFilter { horizontal_arrows: true, vertical_arrows: true, escape: true, ..Default::default() };
            memory.set_focus_lock_filter(response.id, arrows);
        });
    }
    let minutes = ui.input(|input| {
        let pressed = |key: Key| if focused { i64::try_from(input.num_presses(key)).unwrap_or(0) } else { 0 };
        let asked = |action: Action| i64::try_from(input.num_accesskit_action_requests(response.id, action)).unwrap_or(0);
        let quarters = pressed(Key::ArrowRight) - pressed(Key::ArrowLeft) + asked(Action::Increment) - asked(Action::Decrement);
        let days = pressed(Key::ArrowDown) - pressed(Key::ArrowUp) + 7 * (pressed(Key::PageDown) - pressed(Key::PageUp));
        GRID_MIN * quarters + WALL_DAY_MIN * days
    });
    (minutes != 0).then(|| moved_start(start, minutes)).flatten()
}

fn paint(ui: &Ui, response: &Response, grip: Rect, start: &str) {
    let palette = Palette::of(ui);
    let centre = grip.center();
    let colour = if response.hovered() || response.dragged() { palette.text } else { palette.link };
    ui.painter().line_segment([centre, pos2(centre.x, grip.bottom() + 4.0)], Stroke::new(2.0, colour));
    ui.painter().circle_filled(centre, KNOB, colour);
    ui.painter().circle_stroke(centre, KNOB, Stroke::new(2.0, palette.background));
    let words = format!("begin {start}");
    let galley = ui.painter().layout_no_wrap(words, bold(CAPTION), palette.text);
    let hint = ui.painter().layout_no_wrap("drag, or arrow keys".to_owned(), plain(CAPTION), palette.soft);
    let width = galley.size().x + 10.0 + hint.size().x;
    // Near the end of the day there is no room at its right.
    let fits = centre.x + KNOB + 8.0 + width < ui.max_rect().right();
    let left = if fits { centre.x + KNOB + 8.0 } else { centre.x - KNOB - 8.0 - width };
    let place = |size: egui::Vec2, x: f32| Align2::LEFT_CENTER.anchor_size(pos2(x, centre.y), size);
    let ground = Rect::from_min_size(pos2(left - 3.0, grip.top() + 4.0), vec2(width + 6.0, grip.height() - 8.0));
    ui.painter().rect_filled(ground, CornerRadius::same(4), palette.background);
    let (first, second) = (place(galley.size(), left), place(hint.size(), left + galley.size().x + 10.0));
    ui.painter().galley(first.min, galley, palette.text);
    ui.painter().galley(second.min, hint, palette.soft);
}

fn speak(ui: &Ui, response: &Response, start: DateTime, now: &Now, words: &str) {
    let minutes = now.at.until(start).ok().and_then(|span| span.total(jiff::Unit::Minute).ok()).unwrap_or(0.0);
    response.widget_info(|| WidgetInfo::slider(ui.is_enabled(), minutes, "Start of the week"));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_value(words);
        node.set_numeric_value_step(GRID_MIN as f64);
        node.add_action(Action::Increment);
        node.add_action(Action::Decrement);
    });
}
