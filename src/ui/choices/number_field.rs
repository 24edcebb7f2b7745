//! A number: a slider to drag and a box to type into. Neither changes the value by being drawn.

use crate::caution::caution_begins;
use crate::design::{Field, Kind, Value};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::number_text::{read_number, trimmed};
use crate::ui::widget::slider::{Limits, SliderMarks, SliderWords, slider_ui};
use crate::ui::widget::tip::tip;
use crate::ui::widget::typed_box::{Said, TypedBox, typed_ui};
use egui::{Key, Ui};

/// Width of a box.
pub(in crate::ui) const BOX_WIDTH: f32 = 116.0;

/// Draws the slider of a number and returns what is asked for.
pub(in crate::ui) fn number_slider_ui(ui: &mut Ui, field: &'static Field, value: f64, default: f64) -> Vec<Ask> {
    let Kind::Number { least, most, step, whole } = field.kind else { return Vec::new() };
    let marks = SliderMarks { default: Some(default), caution: caution_begins(field.key) };
    let words = SliderWords { label: field.label, value: format!("{} {}", trimmed(value), field.unit.symbol()) };
    let moved = slider_ui(ui, Limits { least, most, step, whole }, value, marks, &words);
    let by_hand = moved.response.is_pointer_button_down_on() || moved.ends;
    let set = moved.to.map(|to| Command::SetInput { key: field.key, value: Value::Number(to) });
    let set = set.map(if by_hand { Ask::Do } else { Ask::Nudge });
    let begins = moved.begins.then_some(Ask::BeginDrag);
    let ends = moved.ends.then_some(Ask::EndDrag);
    let pressed = |key: Key| moved.response.has_focus() && ui.input(|input| input.modifiers.is_none() && input.key_pressed(key));
    let pins = pressed(Key::P).then_some(Ask::Pin(field.key));
    let resets = pressed(Key::Delete).then_some(Ask::Do(Command::SetInput { key: field.key, value: field.default() }));
    moved.response.on_hover_text(tip(field.label, field.help));
    begins.into_iter().chain(set).chain(ends).chain(pins).chain(resets).collect()
}

/// Draws the box of a number and returns what is asked for, and what is said below it.
pub(in crate::ui) fn box_ui(
    ui: &mut Ui,
    view: &mut View,
    field: &'static Field,
    value: f64,
    label: egui::Id,
) -> (Vec<Ask>, Option<Said>) {
    let units = view.units;
    let this = TypedBox { key: field.key, shown: units.input_text(field.unit, value), width: BOX_WIDTH, number: true };
    let typed = typed_ui(ui, &mut view.typing, &this, |text| {
        let understood = read_number(text, field.unit).map_err(|misread| misread.to_string())?;
        let value = if understood.bare { units.typed(field.unit, understood.value) } else { understood.value };
        field.check(Value::Number(value)).map_err(|error| error.to_string()).map(|value| (value, understood.said))
    });
    typed.response.labelled_by(label);
    let asks = typed.value.map(|value| Ask::Do(Command::SetInput { key: field.key, value }));
    (asks.into_iter().collect(), typed.said)
}
