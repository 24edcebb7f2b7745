//! The heading of a curve: its name, what is drawn, and its buttons.

use crate::curve::{Curve, CurveKey};
use crate::ui::state::ask::Ask;
use crate::ui::state::cut::next_curve;
use crate::ui::state::view::View;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use egui::{Align, Layout, RichText, Ui, WidgetInfo, vec2};

/// Width of the buttons at the right of a heading.
const BUTTON_ROOM: f32 = 106.0;
/// Width of one more button there.
const ANOTHER_BUTTON: f32 = 50.0;
/// Width from which on a heading has all its words beside the buttons.
const ONE_LINE: f32 = 440.0;

/// Draws the heading of a curve with its buttons; returns what is asked for.
///
/// * `small`: whether only the unit is written next to the name; the rest is said where the pointer rests, and by the curve itself
pub(in crate::ui) fn heading_ui(
    ui: &mut Ui,
    view: &View,
    (key, small): (CurveKey, bool),
    (drawn, second): (&Curve, Option<&Curve>),
) -> Vec<Ask> {
    let soft = Palette::of(ui).soft;
    let mut asks = Vec::new();
    let short = format!("{}{}", missing_of(drawn, second), unit_of(drawn));
    let said = format!("{short}{}", bands_of(drawn));
    let next = if small { None } else { next_curve(view.station, key) };
    // Where there is little room the words have lines of their own, over the whole width.
    let narrow = ui.available_width() < ONE_LINE;
    let words = |words: &str| RichText::new(words).size(CAPTION).color(soft);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.horizontal_top(|ui| {
            let words_room = ui.available_width() - BUTTON_ROOM - if next.is_some() { ANOTHER_BUTTON } else { 0.0 };
            ui.allocate_ui(vec2(words_room, 26.0), |ui| {
                ui.set_width(words_room);
                ui.horizontal_wrapped(|ui| {
                    ui.spacing_mut().item_spacing.y = 0.0;
                    ui.label(RichText::new(drawn.title).font(bold(BODY)));
                    if !narrow {
                        ui.label(words(&said));
                    }
                });
            });
            ui.with_layout(Layout::right_to_left(Align::Min), |ui| asks.extend(buttons_ui(ui, view, key, drawn, next)));
        });
        if narrow {
            ui.label(words(if small { &short } else { &said })).on_hover_text(&said);
        }
    });
    asks
}

fn buttons_ui(ui: &mut Ui, view: &View, key: CurveKey, drawn: &Curve, next: Option<CurveKey>) -> Vec<Ask> {
    let mut asks = Vec::new();
    ui.spacing_mut().button_padding.x = 6.0;
    ui.spacing_mut().item_spacing.x = 4.0;
    let button = |words: &str| egui::Button::new(RichText::new(words).size(CAPTION)).min_size(vec2(0.0, 24.0));
    let shown = view.table == Some(key);
    let response = ui.add(button(if shown { "Curve" } else { "Table" }));
    let does = if shown { "show the curve" } else { "show as a table" };
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, format!("{}: {does}", key.title())));
    if response.clicked() {
        asks.push(Ask::Table(key));
    }
    let has_paper = cfg!(feature = "paper") && drawn.empty_because.is_none();
    let response = ui.add_enabled(has_paper, button("Copy")).on_hover_text("Copy the curve as a picture");
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, has_paper, format!("{}: copy as a picture", key.title())));
    if response.clicked() {
        asks.push(Ask::CopyCurve(key));
    }
    if let Some(next) = next {
        let response = ui.add(button("Next")).on_hover_text(format!("Show “{}” here", next.title()));
        let words = format!("{}: show “{}” instead", key.title(), next.title());
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &words));
        if response.clicked() {
            asks.push(Ask::StationCurve(next));
        }
    }
    asks
}

/// Returns why a design has no curve, of two of which one has none.
fn missing_of(drawn: &Curve, second: Option<&Curve>) -> String {
    let empty = |name: &str, figure: &Curve| figure.empty_because.as_ref().map(|why| format!("no {name}: {why}; "));
    second.map(|b| empty("A", drawn).or_else(|| empty("B", b)).unwrap_or_default()).unwrap_or_default()
}

/// Returns what the bands mean.
fn bands_of(drawn: &Curve) -> String {
    let names: Vec<&str> = drawn.bands.iter().map(|band| band.name).collect();
    let shaded = if names.is_empty() { String::new() } else { format!("; shaded {}", names.join(", darker ")) };
    if drawn.dots.is_empty() { shaded } else { format!("{shaded}; dots: measured") }
}

/// Returns what the curve shows, with its unit.
fn unit_of(drawn: &Curve) -> String {
    if drawn.y.unit.is_empty() { drawn.y.label.to_owned() } else { format!("{}, {}", drawn.y.label, drawn.y.unit) }
}
