//! A number: a rail to drag and a box to type into. Neither changes the value by being drawn.

use crate::caution::caution_begins;
use crate::design::{Field, Kind, Value};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::number_text::{read_number, trimmed};
use crate::ui::widget::rail::{Limits, Marks, RailWords, rail_ui};
use crate::ui::widget::theme::{Palette, plain};
use crate::ui::widget::typed_box::{Said, TypedBox, typed_ui};
use egui::{Align2, CornerRadius, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2};

/// Width of a box.
pub(in crate::ui) const BOX_WIDTH: f32 = 116.0;

/// Draws the rail of a number and returns what is asked for.
pub(in crate::ui) fn number_rail_ui(ui: &mut Ui, field: &'static Field, value: f64, default: f64) -> Vec<Ask> {
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

/// Draws a small arrow that turns back: the sign of "back to the default".
pub(in crate::ui) fn reset_ui(ui: &mut Ui, field: &Field) -> bool {
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
pub(in crate::ui) fn text_at(ui: &Ui, at: Pos2, align: Align2, words: &str, size: f32, colour: egui::Color32) -> Rect {
    ui.painter().text(at, align, words, plain(size), colour)
}
