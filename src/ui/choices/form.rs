//! The choices of the chosen station.

use crate::design::{BEFORE_BUYING, Design, Field, Stage, fields};
use crate::figure::Figure;
use crate::session::{Command, Which};
use crate::ui::choices::finder::finder_ui;
use crate::ui::choices::marks::FormMarks;
use crate::ui::choices::row::{Shape, other_ui, row_ui};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::focus::focus_first_inside;
use crate::ui::widget::room::Room;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette};
use egui::{Align, Layout, RichText, Role, Stroke, Ui, UiBuilder, WidgetInfo};

/// Choices of a station that are always in sight where it has many, and how many it may have before the others are folded away.
const MAIN: usize = 6;
const FOLDED_FROM: usize = 8;

/// Draws the choices of the chosen station and returns what is asked for.
///
/// * `figures`: what can be searched beside the choices
pub(in crate::ui) fn choices_ui(
    ui: &mut Ui,
    view: &mut View,
    (design, figures): (&Design, &[Figure]),
    marks: FormMarks<'_>,
    room: Room,
) -> Vec<Ask> {
    let mut asks = finder_ui(ui, view, design, figures);
    // Each station keeps its own place in the list.
    let stage = view.station;
    room.scrolled(ui, ("choices", stage.key()), |ui| stage_ui(ui, view, design, (stage, marks), &mut asks));
    asks
}

fn stage_ui(ui: &mut Ui, view: &mut View, design: &Design, (stage, marks): (Stage, FormMarks<'_>), asks: &mut Vec<Ask>) {
    let palette = Palette::of(ui);
    let heading = ui
        .horizontal(|ui| {
            heading_ui(ui, stage.title());
            let changed = fields().any(|field| field.stage == stage && field.get(design) != field.default());
            if changed {
                ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                    let button = egui::Button::new(RichText::new("Reset").size(CAPTION)).frame(false);
                    let response = ui.add(button).on_hover_text("Reset all choices of this stage to their defaults");
                    response
                        .widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{}: reset to defaults", stage.title())));
                    if response.clicked() {
                        asks.push(Ask::Do(Command::ResetStage(stage)));
                    }
                });
            }
        })
        .response;
    let comes_into_sight = view.scroll_to == Some(stage);
    if comes_into_sight {
        heading.scroll_to_me(Some(Align::Min));
        view.scroll_to = None;
    }
    ui.painter().hline(ui.max_rect().x_range(), heading.rect.bottom() + 2.0, Stroke::new(1.0, palette.grid));
    ui.add_space(6.0);
    let rows = ui.scope_builder(UiBuilder::new().accessibility_role(Role::Group).accessibility_label(stage.title()), |ui| {
        rows_ui(ui, view, design, (stage, marks), asks);
    });
    if view.focus_to == Some(stage) {
        // Not before it is in sight, so that the focus does not scroll somewhere else.
        if ui.clip_rect().contains(heading.rect.center()) && !comes_into_sight {
            view.focus_to = None;
            focus_first_inside(ui.ctx(), rows.response.id);
        } else {
            ui.ctx().request_repaint();
        }
    }
}

/// Draws the choices that are folded away until they are wanted; one that was asked for opens them.
fn more_ui(
    ui: &mut Ui,
    view: &mut View,
    design: &Design,
    (stage, more, marks): (Stage, &[&'static Field], FormMarks<'_>),
    asks: &mut Vec<Ask>,
) {
    let changed = more.iter().filter(|field| field.get(design) != field.default()).count();
    let changed = if changed > 0 { format!(", {changed} not at their default") } else { String::new() };
    let words = format!("{} more choices{changed}", more.len());
    let asked_for = view.mark_scrolls && more.iter().any(|field| view.marked == Some(field.key));
    egui::CollapsingHeader::new(RichText::new(words).size(CAPTION).color(Palette::of(ui).link))
        .id_salt((stage.key(), "more choices"))
        .open(asked_for.then_some(true))
        .show_unindented(ui, |ui| {
            for field in more {
                row_ui(ui, view, design, (*field, Shape::Tall), marks, asks);
            }
        });
}

fn rows_ui(ui: &mut Ui, view: &mut View, design: &Design, (stage, marks): (Stage, FormMarks<'_>), asks: &mut Vec<Ask>) {
    let palette = Palette::of(ui);
    let own = |field: &&'static Field| {
        field.stage == stage && (field.used)(design) && !BEFORE_BUYING.iter().any(|(key, _)| *key == field.key)
    };
    let own: Vec<&'static Field> = fields().filter(own).collect();
    let (main, more) = own.split_at(if own.len() > FOLDED_FROM { MAIN } else { own.len() });
    for field in main {
        row_ui(ui, view, design, (*field, Shape::Tall), marks, asks);
    }
    if !more.is_empty() {
        more_ui(ui, view, design, (stage, more, marks), asks);
    }
    // What has an effect in the other design alone has no row of its own.
    for choice in
        marks.differing.iter().filter(|choice| choice.field.stage == stage && choice.in_use && !(choice.field.used)(design))
    {
        egui::Frame::new().inner_margin(egui::Margin::symmetric(6, 4)).show(ui, |ui| {
            let other = if marks.edited == Which::First { "B" } else { "A" };
            ui.label(RichText::new(format!("{}, only in {other}", choice.field.label)).color(palette.soft));
            other_ui(ui, view, (choice, marks.edited), asks);
        });
    }
}
