//! A number: a slider to drag and a box to type into. Neither changes the value by being drawn.

use crate::caution::caution_begins;
use crate::design::{DesignError, Field, Kind, Value};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::limits::Limits;
use crate::ui::widget::number_text::{read_number, trimmed};
use crate::ui::widget::slider::{SliderMarks, SliderWords, slider_ui};
use crate::ui::widget::tip::tip;
use crate::ui::widget::typed_box::{Said, TypedBox, typed_ui};
use crate::units::Units;
use egui::{Key, Ui};

/// Width of a box.
pub(in crate::ui) const BOX_WIDTH: f32 = 100.0;

/// Draws the slider of a number and returns what is asked for.
pub(in crate::ui) fn number_slider_ui(ui: &mut Ui, units: Units, field: &'static Field, value: f64, default: f64) -> Vec<Ask> {
    let Some(limits) = Limits::of(field) else { return Vec::new() };
    let marks = SliderMarks { default: Some(default), caution: caution_begins(field.key) };
    let words = SliderWords { label: field.label, value: units.choice_text(field, Value::Number(value)) };
    let moved = slider_ui(ui, limits, value, marks, &words);
    let by_hand = moved.response.is_pointer_button_down_on() || moved.ends;
    let set = moved.to.map(|to| Command::SetInput { key: field.key, value: Value::Number(to) });
    let set = set.map(if by_hand { Ask::Do } else { Ask::Nudge });
    let begins = moved.begins.then_some(Ask::BeginDrag);
    let ends = moved.ends.then_some(Ask::EndDrag);
    let pressed = |key: Key| moved.response.has_focus() && ui.input(|input| input.modifiers.is_none() && input.key_pressed(key));
    let pins = pressed(Key::P).then_some(Ask::Pin(field.key));
    let resets = pressed(Key::Delete).then_some(Ask::Do(Command::SetInput { key: field.key, value: field.default() }));
    moved.response.on_hover_text(tip(field.label, &units.told(field.help)));
    begins.into_iter().chain(set).chain(ends).chain(pins).chain(resets).collect()
}

/// Returns why a number is refused; one that is out of range with limits as they are shown, which may be typed.
fn refused(units: Units, field: &Field, given: f64, error: &DesignError) -> String {
    let Kind::Number { least, most, .. } = field.kind else { return error.to_string() };
    let within = least <= given && given <= most;
    if within || !given.is_finite() {
        return error.to_string();
    }
    let scale = units.scale_of(field);
    // Rounded inwards, so that what is said is allowed.
    let (from, to) = ((100.0 * scale.shown(least) - 1e-6).ceil(), (100.0 * scale.shown(most) + 1e-6).floor());
    let (from, to, given) = (trimmed(0.01 * from), trimmed(0.01 * to), trimmed(scale.shown(given)));
    let unit = if scale.symbol.is_empty() { String::new() } else { format!(" {}", scale.symbol) };
    format!("{} must be from {from} to {to}{unit}, but {given} was given", field.label)
}

/// Draws the box of a number and returns what is asked for, and what is said below it.
pub(in crate::ui) fn box_ui(
    ui: &mut Ui,
    view: &mut View,
    field: &'static Field,
    value: f64,
    (label, width): (egui::Id, f32),
) -> (Vec<Ask>, Option<Said>) {
    let units = view.units;
    let this = TypedBox { key: field.key, shown: units.choice_text(field, Value::Number(value)), width, number: true };
    let typed = typed_ui(ui, &mut view.typing, &this, |text| {
        let understood = read_number(text, field.unit, units).map_err(|misread| misread.to_string())?;
        let value = if understood.bare { units.scale_of(field).kept(understood.value) } else { understood.value };
        field
            .check(Value::Number(value))
            .map_err(|error| refused(units, field, value, &error))
            .map(|value| (value, understood.said))
    });
    typed.response.labelled_by(label);
    let asks = typed.value.map(|value| Ask::Do(Command::SetInput { key: field.key, value }));
    (asks.into_iter().collect(), typed.said)
}
