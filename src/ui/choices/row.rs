//! One choice: its name, its control, the way back to the default, and what the second design has instead.

use crate::analysis::DifferingChoice;
use crate::design::{Choice, Design, Field, Kind, Value};
use crate::session::{Command, Which};
use crate::ui::choices::marks::FormMarks;
use crate::ui::choices::number_field::{BOX_WIDTH, box_ui, number_slider_ui};
use crate::ui::results::beside::value_text;
use crate::ui::state::ask::{Ask, SecondAsk};
use crate::ui::state::view::View;
use crate::ui::widget::focus::focus_first_inside;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::pin::{PIN_WIDTH, pin_ui};
use crate::ui::widget::reset::{RESET_WIDTH, reset_ui};
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::ui::widget::tip::tip;
use crate::ui::widget::typed_box::said_ui;
use egui::{Align, CornerRadius, Layout, RichText, Role, Sense, Stroke, Ui, WidgetInfo, vec2};

/// Room for the name of a choice in one line, the width of its box, and the height of the line.
const FLAT_LABEL: f32 = 78.0;
const FLAT_BOX: f32 = 72.0;
const ROW: f32 = 26.0;

/// How a number is drawn.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Shape {
    /// Its slider below its name and box.
    Tall,
    /// All in one line, with a short name.
    Flat(&'static str),
}

/// Draws one choice, marked where it was asked for, with what the second design has instead.
pub(super) fn row_ui(
    ui: &mut Ui,
    view: &mut View,
    design: &Design,
    (field, shape): (&'static Field, Shape),
    marks: FormMarks<'_>,
    asks: &mut Vec<Ask>,
) {
    let other = marks.differing.iter().find(|choice| choice.field.key == field.key);
    let pinned = marks.pins.contains(field.key);
    let palette = Palette::of(ui);
    let marked = view.marked == Some(field.key);
    let fill = if marked { palette.changed } else { egui::Color32::TRANSPARENT };
    let margin = if matches!(shape, Shape::Flat(_)) { egui::Margin::symmetric(4, 0) } else { egui::Margin::symmetric(6, 4) };
    let frame = egui::Frame::new().fill(fill).corner_radius(6).inner_margin(margin);
    let shown = frame.show(ui, |ui| {
        ui.set_width(ui.available_width());
        match (field.kind, shape) {
            (Kind::Number { .. }, Shape::Flat(short)) => flat_row(ui, view, design, (field, short, pinned), asks),
            (Kind::Number { .. }, Shape::Tall) => number_row(ui, view, design, (field, pinned), asks),
            (Kind::Choice(choices), _) => choice_row(ui, design, field, choices, asks),
            (Kind::Switch, _) => switch_row(ui, design, field, asks),
        }
        if let Some(other) = other {
            other_ui(ui, view, (other, marks.edited), asks);
        }
        ui.unique_id()
    });
    if other.is_some() {
        let rect = shown.response.rect;
        let colour = if marks.edited == Which::First { palette.second } else { palette.design };
        ui.painter().vline(rect.left() + 1.0, rect.y_range(), Stroke::new(3.0, colour));
    }
    if marked && view.mark_scrolls {
        shown.response.scroll_to_me(Some(Align::Center));
        (view.mark_scrolls, view.mark_focuses) = (false, true);
        ui.ctx().request_repaint();
    } else if marked && view.mark_focuses && ui.clip_rect().contains(shown.response.rect.center()) {
        focus_first_inside(ui.ctx(), shown.inner);
        view.mark_focuses = false;
    }
}

fn number_row(ui: &mut Ui, view: &mut View, design: &Design, (field, pinned): (&'static Field, bool), asks: &mut Vec<Ask>) {
    let (Value::Number(value), Value::Number(default)) = (field.get(design), field.default()) else { return };
    let mut said = None;
    let right = ui.max_rect().right();
    ui.horizontal(|ui| {
        let room = ui.available_width() - BOX_WIDTH - 68.0;
        let label = label_ui(ui, field, room);
        // Drawn from the left, for a reader of the screen reads them as they are drawn.
        let differs = value.to_bits() != default.to_bits();
        let gap = ui.spacing().item_spacing.x;
        let taken = BOX_WIDTH + gap + PIN_WIDTH + if differs { gap + RESET_WIDTH } else { 0.0 };
        ui.add_space((right - taken - ui.cursor().left()).max(0.0));
        if differs && reset_ui(ui, field) {
            asks.push(Ask::Do(Command::SetInput { key: field.key, value: field.default() }));
        }
        if pin_ui(ui, field, pinned) {
            asks.push(Ask::Pin(field.key));
        }
        let (asked, words) = box_ui(ui, view, field, value, (label, BOX_WIDTH));
        asks.extend(asked);
        said = words;
    });
    asks.extend(number_slider_ui(ui, view.units, field, value, default));
    if let Some(said) = said {
        said_ui(ui, &said);
    }
}

/// Draws a number in one line: name, slider, reset, pin, box.
fn flat_row(
    ui: &mut Ui,
    view: &mut View,
    design: &Design,
    (field, short, pinned): (&'static Field, &str, bool),
    asks: &mut Vec<Ask>,
) {
    let (Value::Number(value), Value::Number(default)) = (field.get(design), field.default()) else { return };
    let mut said = None;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 2.0;
        let label = ui.add(egui::Label::new(short).extend());
        label.widget_info(|| WidgetInfo::labeled(Role::Label, true, field.label));
        let label = label.on_hover_text(tip(field.label, field.help)).id;
        ui.add_space((ui.max_rect().left() + FLAT_LABEL - ui.cursor().left()).max(0.0));
        let gap = ui.spacing().item_spacing.x;
        // The place of the arrow is kept, so that the rail keeps its length while the handle is dragged over the default.
        let rail = ui.available_width() - FLAT_BOX - PIN_WIDTH - RESET_WIDTH - 3.0 * gap;
        ui.allocate_ui(vec2(rail, ROW), |ui| asks.extend(number_slider_ui(ui, view.units, field, value, default)));
        if value.to_bits() == default.to_bits() {
            ui.add_space(RESET_WIDTH);
        } else if reset_ui(ui, field) {
            asks.push(Ask::Do(Command::SetInput { key: field.key, value: field.default() }));
        }
        if pin_ui(ui, field, pinned) {
            asks.push(Ask::Pin(field.key));
        }
        let (asked, words) = box_ui(ui, view, field, value, (label, FLAT_BOX));
        asks.extend(asked);
        said = words;
    });
    if let Some(said) = said {
        said_ui(ui, &said);
    }
}

/// Draws what the other design has instead, and the ways to make the two alike.
pub(super) fn other_ui(ui: &mut Ui, view: &View, (choice, edited): (&DifferingChoice, Which), asks: &mut Vec<Ask>) {
    let palette = Palette::of(ui);
    let (a, b) = (value_text(view.units, choice, choice.a), value_text(view.units, choice, choice.b));
    let key = choice.field.key;
    let (shown, ways) = match edited {
        Which::First => (
            format!("B: {b}"),
            [
                ("Use B's", format!("use B's, {b}"), SecondAsk::Take(key)),
                ("Copy to B", format!("copy A's to B, {a}"), SecondAsk::Give(key)),
            ],
        ),
        Which::Second => (
            format!("A: {a}"),
            [
                ("Use A's", format!("use A's, {a}"), SecondAsk::Give(key)),
                ("Copy to A", format!("copy B's to A, {b}"), SecondAsk::Take(key)),
            ],
        ),
    };
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(6.0, 4.0);
        ui.label(RichText::new(shown).font(bold(CAPTION)).color(palette.text));
        for (words, does, ask) in ways {
            let response = ui.add(egui::Button::new(RichText::new(words).size(CAPTION)).min_size(vec2(0.0, 24.0)));
            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{}: {does}", choice.field.label)));
            if response.clicked() {
                asks.push(Ask::Second(ask));
            }
        }
    });
}

/// Draws the words next to a control, wrapped in their room; returns the id that names the control.
fn label_ui(ui: &mut Ui, field: &Field, room: f32) -> egui::Id {
    ui.scope(|ui| {
        ui.set_max_width(room);
        ui.add(egui::Label::new(field.label).wrap()).on_hover_text(tip(field.label, field.help)).id
    })
    .inner
}

fn choice_row(ui: &mut Ui, design: &Design, field: &'static Field, choices: &'static [Choice], asks: &mut Vec<Ask>) {
    let Value::Choice(chosen) = field.get(design) else { return };
    ui.horizontal(|ui| {
        label_ui(ui, field, ui.available_width() - 34.0);
        if field.get(design) != field.default() {
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                if reset_ui(ui, field) {
                    asks.push(Ask::Do(Command::SetInput { key: field.key, value: field.default() }));
                }
            });
        }
    });
    pills_ui(ui, field.label, |ui| {
        for choice in choices {
            let name = format!("{}: {}", field.label, choice.label);
            let is = choice.key == chosen;
            if pill_ui(ui, choice.label, &name, field.help, (is, is)) {
                asks.push(Ask::Do(Command::SetInput { key: field.key, value: Value::Choice(choice.key) }));
            }
        }
    });
}

fn switch_row(ui: &mut Ui, design: &Design, field: &'static Field, asks: &mut Vec<Ask>) {
    let Value::Switch(on) = field.get(design) else { return };
    let palette = Palette::of(ui);
    ui.horizontal(|ui| {
        label_ui(ui, field, ui.available_width() - 60.0);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let (rect, response) = ui.allocate_exact_size(vec2(46.0, 26.0), Sense::click());
            let painter = ui.painter();
            painter.rect_filled(rect.shrink(1.0), CornerRadius::same(12), if on { palette.link } else { palette.edge });
            let x = if on { rect.right() - 13.0 } else { rect.left() + 13.0 };
            painter.circle_filled(egui::pos2(x, rect.center().y), 9.0, palette.background);
            response.widget_info(|| WidgetInfo::selected(Role::CheckBox, true, on, field.label));
            if response.on_hover_text(field.help).clicked() {
                asks.push(Ask::Do(Command::SetInput { key: field.key, value: Value::Switch(!on) }));
            }
        });
    });
}
