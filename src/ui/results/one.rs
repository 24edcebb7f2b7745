//! Results by stage, and the cautions with the control that causes each.

use crate::batch::Batch;
use crate::caution::{Caution, Severity, cautions};
use crate::curve::{Run, Station};
use crate::design::{Stage, field};
use crate::figure::{Figure, Reading, Weight, figures};
use crate::ui::choices::form::focus_ring;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::{Room, View};
use crate::ui::widget::theme::{BODY, CAPTION, FIGURE, Palette, TITLE, bold};
use crate::ui::widget::units::Units;
use egui::{Align, Color32, Layout, RichText, Role, Sense, Shape, Stroke, TextWrapMode, Ui, WidgetInfo, pos2, vec2};

/// Share of the height that the results take, above the cautions.
const RESULTS_SHARE: f32 = 0.58;

/// Draws results above and cautions below, each with a scroll of its own; returns what is asked for.
pub(in crate::ui) fn results_ui(ui: &mut Ui, view: &View, batch: &Batch, run: &Run, room: Room) -> Vec<Ask> {
    let height = if room == Room::Own { ui.available_height() * RESULTS_SHARE } else { 0.0 };
    let mut asks = Vec::new();
    let figures = figures(batch);
    ui.allocate_ui(vec2(ui.available_width(), height), |ui| {
        room.scrolled(ui, ("results", view.station.key()), |ui| {
            // The chosen station first, the others in their order.
            let others = Stage::ALL.into_iter().filter(|stage| *stage != view.station);
            for stage in std::iter::once(view.station).chain(others) {
                asks.extend(stage_ui(ui, view.units, stage, &figures, run.stations.iter().find(|station| station.stage == stage)));
            }
        });
    });
    ui.painter().hline(ui.max_rect().x_range(), ui.cursor().top(), Stroke::new(1.0, Palette::of(ui).grid));
    ui.add_space(8.0);
    ui.label(RichText::new("Cautions").font(bold(TITLE)));
    room.scrolled(ui, "cautions", |ui| {
        for caution in &cautions(batch) {
            asks.extend(caution_ui(ui, caution, None));
            ui.add_space(6.0);
        }
    });
    asks
}

fn stage_ui(ui: &mut Ui, units: Units, stage: Stage, figures: &[Figure], station: Option<&Station>) -> Vec<Ask> {
    let mut asks = Vec::new();
    let palette = Palette::of(ui);
    ui.label(RichText::new(stage.title()).font(bold(TITLE)));
    if let Some(why) = station.and_then(|station| station.stopped_because.as_ref()) {
        egui::Frame::new().fill(palette.stop_fill).corner_radius(6).inner_margin(8).show(ui, |ui| {
            ui.label(RichText::new(format!("Not worked out: {why}")).color(palette.stop_text));
        });
    }
    let own: Vec<&Figure> = figures.iter().filter(|figure| figure.stage == stage).collect();
    let lead: Vec<&Figure> = own.iter().copied().filter(|figure| figure.weight == Weight::Lead).collect();
    let room = ui.available_width();
    for pair in lead.chunks(2) {
        ui.horizontal_top(|ui| {
            for figure in pair {
                ui.allocate_ui(vec2(room * 0.5 - 6.0, 0.0), |ui| {
                    ui.vertical(|ui| {
                        ui.set_width(room * 0.5 - 6.0);
                        asks.extend(lead_ui(ui, units, figure));
                    });
                });
            }
        });
    }
    let details: Vec<&Figure> = own.into_iter().filter(|figure| figure.weight == Weight::Detail).collect();
    if !details.is_empty() {
        egui::CollapsingHeader::new(RichText::new(format!("All of {}", stage.title().to_lowercase())).size(CAPTION))
            .id_salt((stage.key(), "details"))
            .show(ui, |ui| {
                for figure in details {
                    asks.extend(detail_ui(ui, units, figure));
                }
            });
    }
    ui.add_space(10.0);
    asks
}

fn lead_ui(ui: &mut Ui, units: Units, figure: &Figure) -> Option<Ask> {
    let palette = Palette::of(ui);
    ui.spacing_mut().item_spacing.y = 0.0;
    let whole = format!("{}: {}", figure.label, units.figure_text(figure));
    let asked = name_ui(ui, figure, TextWrapMode::Wrap);
    // Words, such as why a pH is never reached, take less room than a number.
    let size = if matches!(figure.reading, Reading::Words(_)) { BODY } else { FIGURE };
    let response = ui.label(RichText::new(units.figure_text(figure)).font(bold(size)));
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &whole));
    response.on_hover_text(figure.law);
    let mut below: Vec<String> = figure.likely_text().map(|likely| format!("likely {likely}")).into_iter().collect();
    below.extend(figure.kitchen.as_ref().map(|kitchen| format!("about {kitchen}")));
    if !below.is_empty() {
        ui.label(RichText::new(below.join(", ")).size(CAPTION).color(palette.soft));
    }
    ui.add_space(8.0);
    asked
}

/// Draws the name of a figure; chosen, it opens the card of the figure.
///
/// # Arguments
/// * `wrapped`: a main figure has room for a second line, a row of the list has not
fn name_ui(ui: &mut Ui, figure: &Figure, wrapped: TextWrapMode) -> Option<Ask> {
    let palette = Palette::of(ui);
    let name = RichText::new(figure.label).size(CAPTION).color(palette.soft);
    let response = ui
        .add(egui::Label::new(name).wrap_mode(wrapped).sense(Sense::click()))
        .on_hover_text(format!("{}\nSelect it to see why, what matters, and how to bring it elsewhere.", figure.law));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{}: why", figure.label)));
    if response.hovered() {
        ui.painter().hline(response.rect.x_range(), response.rect.bottom() - 1.0, Stroke::new(1.0, palette.link));
    }
    focus_ring(ui, &response);
    response.clicked().then_some(Ask::Figure(Some(figure.key)))
}

/// Draws one figure of the list: its name at the left, its value at the right, on one line.
fn detail_ui(ui: &mut Ui, units: Units, figure: &Figure) -> Option<Ask> {
    let mut asked = None;
    ui.spacing_mut().interact_size.y = 20.0;
    ui.horizontal(|ui| {
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            ui.add(egui::Label::new(RichText::new(units.figure_text(figure)).font(bold(CAPTION))).extend());
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                asked = name_ui(ui, figure, TextWrapMode::Truncate);
            });
        });
    });
    asked
}

/// Returns the colours of a severity: text, ground.
fn colours(palette: &Palette, severity: Severity) -> (Color32, Color32) {
    match severity {
        Severity::Stop => (palette.stop_text, palette.stop_fill),
        Severity::Caution => (palette.caution_text, palette.caution_fill),
        Severity::Note => (palette.text, palette.panel),
    }
}

/// Draws the sign of a severity: a filled octagon, a triangle, a ring. The shape tells it without colour.
pub(in crate::ui) fn sign(ui: &mut Ui, severity: Severity, colour: Color32) {
    let (rect, _) = ui.allocate_exact_size(vec2(20.0, 20.0), Sense::hover());
    let centre = rect.center();
    let ring = |corners: usize, radius: f32, turn: f32| -> Vec<egui::Pos2> {
        (0..corners)
            .map(|corner| {
                let angle = turn + std::f32::consts::TAU * corner as f32 / corners as f32;
                centre + radius * vec2(angle.sin(), -angle.cos())
            })
            .collect()
    };
    let painter = ui.painter();
    match severity {
        Severity::Stop => {
            painter.add(Shape::convex_polygon(ring(8, 9.0, std::f32::consts::PI / 8.0), colour, Stroke::NONE));
        }
        Severity::Caution => {
            painter.add(Shape::closed_line(ring(3, 9.5, 0.0), Stroke::new(2.0, colour)));
            painter.line_segment([pos2(centre.x, centre.y - 4.0), pos2(centre.x, centre.y + 1.5)], Stroke::new(2.0, colour));
        }
        Severity::Note => {
            painter.circle_stroke(centre, 8.0, Stroke::new(2.0, colour));
            painter.line_segment([pos2(centre.x, centre.y - 1.0), pos2(centre.x, centre.y + 4.0)], Stroke::new(2.0, colour));
        }
    }
}

/// Draws one caution; of two designs with whose it is, and what the second says where it says something else.
pub(in crate::ui) fn caution_ui(ui: &mut Ui, caution: &Caution, whose: Option<(&str, Option<&str>)>) -> Option<Ask> {
    let palette = Palette::of(ui);
    let (text, fill) = colours(&palette, caution.severity);
    let mut asked = None;
    let card = egui::Frame::new().fill(palette.panel).corner_radius(8).inner_margin(egui::Margin {
        left: 16,
        right: 10,
        top: 10,
        bottom: 10,
    });
    let shown = card.show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal(|ui| {
            egui::Frame::new().fill(fill).corner_radius(12).inner_margin(egui::Margin::symmetric(8, 2)).show(ui, |ui| {
                ui.horizontal(|ui| {
                    sign(ui, caution.severity, text);
                    ui.label(RichText::new(caution.severity.word()).font(bold(CAPTION)).color(text));
                });
            });
            if let Some((whose, _)) = whose {
                ui.label(RichText::new(whose).font(bold(CAPTION)));
            }
        });
        let of_b = whose.and_then(|(_, of_b)| of_b);
        let what = if of_b.is_some() { format!("A: {}", caution.what) } else { caution.what.clone() };
        ui.label(RichText::new(what).size(CAPTION));
        if let Some(of_b) = of_b {
            ui.label(RichText::new(format!("B: {of_b}")).size(CAPTION));
        }
        ui.label(RichText::new(&caution.remedy).size(CAPTION).color(palette.soft));
        if let Some((key, label)) = caution.caused_by.and_then(|key| field(key).ok()).map(|field| (field.key, field.label)) {
            let button = egui::Button::new(RichText::new(format!("Go to “{label}”")).size(CAPTION).color(palette.link))
                .fill(palette.background);
            let response = ui.add(button);
            focus_ring(ui, &response);
            if response.clicked() {
                asked = Some(Ask::ToInput(key));
            }
        }
    });
    let bar = egui::Rect::from_min_size(shown.response.rect.min, vec2(6.0, shown.response.rect.height()));
    ui.painter().rect_filled(
        bar,
        egui::CornerRadius { nw: 8, sw: 8, ne: 0, se: 0 },
        if caution.severity == Severity::Note { palette.edge } else { fill },
    );
    asked
}
