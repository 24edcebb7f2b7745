//! What is moved in steps: by keys, by a reader of the screen, and what that is told of it.

use crate::ui::widget::limits::Limits;
use egui::{Key, Response, Ui};

/// Returns the value that keys or a reader of the screen ask for.
pub(in crate::ui) fn stepped(ui: &Ui, response: &Response, limits: Limits, value: f64) -> Option<f64> {
    // Of several at once the last counts, as it would if they came one after the other.
    accesskit(ui, response, limits, value).or_else(|| keyboard(ui, response, limits, value))
}

/// Tells a reader of the screen the limits, the steps and the value in words.
pub(in crate::ui) fn tell_steps(ui: &Ui, response: &Response, limits: Limits, words: &str) {
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_min_numeric_value(limits.least);
        node.set_max_numeric_value(limits.most);
        node.set_numeric_value_step(limits.step);
        node.set_value(words);
        // Some readers of the screen take the number alone from a slider; this tells its unit.
        node.set_description(words);
        node.add_action(egui::accesskit::Action::SetValue);
        node.add_action(egui::accesskit::Action::Increment);
        node.add_action(egui::accesskit::Action::Decrement);
    });
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
