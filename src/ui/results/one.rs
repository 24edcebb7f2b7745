//! The figures of the chosen station, and the cautions with the control that causes each.

use crate::curve::Station;
use crate::design::Stage;
use crate::figure::{Figure, Reading, Weight, is_of_germs};
use crate::ui::results::caution::caution_ui;
use crate::ui::results::lift::{LiftsKnown, Way};
use crate::ui::results::shown::Shown;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::shrunk_ui;
use crate::ui::widget::spoken::{heading_ui, say_changes};
use crate::ui::widget::theme::{BODY, CAPTION, FIGURE, Palette, bold};
use crate::ui::widget::tip::tip;
use crate::units::Units;
use crate::words::{POTENTIAL_GROWTH, TRUE_OF_ALL, counted_words};
use egui::{Align, Layout, Response, RichText, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

/// Share of the height that the figures take at most, above the cautions.
const RESULTS_SHARE: f32 = 0.55;
/// Share of a row that a value may take next to its name.
const VALUE_SHARE: f32 = 0.6;

/// Draws the figures of the chosen station above and the cautions below, each that scrolls by itself; returns what is asked for.
///
/// `lifts`: what is known of the ways to lift the caution that was asked about
pub(in crate::ui) fn results_ui(ui: &mut Ui, view: &mut View, shown: &Shown, lifts: LiftsKnown<'_>, room: Room) -> Vec<Ask> {
    let most = ui.available_height() * RESULTS_SHARE;
    let mut asks = Vec::new();
    let stage = view.station;
    let station = shown.run.stations.iter().find(|station| station.stage == stage);
    let mut figures_ui = |ui: &mut Ui| asks.extend(stage_ui(ui, view.units, stage, &shown.figures, station));
    if room == Room::Own {
        shrunk_ui(ui, ("results", stage.key()), most, figures_ui);
    } else {
        figures_ui(ui);
    }
    ui.painter().hline(ui.max_rect().x_range(), ui.cursor().top(), Stroke::new(1.0, Palette::of(ui).grid));
    ui.add_space(8.0);
    let heading = heading_ui(ui, &counted_words(&shown.cautions));
    say_changes(&heading);
    let to_first = std::mem::take(&mut view.to_cautions);
    let view = &*view;
    room.scrolled(ui, "cautions", |ui| {
        let (always, own): (Vec<_>, Vec<_>) = shown.cautions.iter().partition(|caution| caution.always);
        if to_first {
            ui.scroll_to_cursor(Some(Align::Min));
        }
        for caution in own {
            asks.extend(caution_ui(ui, view.units, caution, None, Some(Way::of(view, caution, lifts))));
            ui.add_space(6.0);
        }
        if !always.is_empty() {
            egui::CollapsingHeader::new(RichText::new(TRUE_OF_ALL).font(bold(CAPTION))).id_salt("always").show_unindented(
                ui,
                |ui| {
                    for caution in always {
                        asks.extend(caution_ui(ui, view.units, caution, None, None));
                        ui.add_space(6.0);
                    }
                },
            );
        }
    });
    asks
}

fn stage_ui(ui: &mut Ui, units: Units, stage: Stage, figures: &[Figure], station: Option<&Station>) -> Vec<Ask> {
    let mut asks = Vec::new();
    let palette = Palette::of(ui);
    heading_ui(ui, stage.title());
    if let Some(why) = station.and_then(|station| station.stopped_because.as_ref()) {
        egui::Frame::new().fill(palette.stop_fill).corner_radius(6).inner_margin(8).show(ui, |ui| {
            ui.label(RichText::new(format!("Not calculated: {}", units.told(why))).color(palette.stop_text));
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
    if own.iter().any(|figure| is_of_germs(figure.key)) {
        potential_ui(ui);
    }
    let details: Vec<&Figure> = own.into_iter().filter(|figure| figure.weight == Weight::Detail).collect();
    if !details.is_empty() {
        let plural = if details.len() == 1 { "" } else { "s" };
        let words = format!("{} more figure{plural}", details.len());
        let header = egui::CollapsingHeader::new(RichText::new(&words).size(CAPTION).color(palette.link));
        let shown = header.id_salt((stage.key(), "details")).show(ui, |ui| {
            for figure in details {
                asks.extend(detail_ui(ui, units, figure));
            }
        });
        // Below the name of its stage the short form will do; by itself it says which stage it is about.
        let whole = format!("{words} about {}", stage.in_a_sentence());
        ui.ctx().accesskit_node_builder(shown.header_response.id, |node| node.set_label(whole));
    }
    ui.add_space(10.0);
    asks
}

/// Says what potential growth is and is not.
pub(in crate::ui) fn potential_ui(ui: &mut Ui) {
    ui.add(egui::Label::new(RichText::new(POTENTIAL_GROWTH).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    ui.add_space(4.0);
}

fn lead_ui(ui: &mut Ui, units: Units, figure: &Figure) -> Option<Ask> {
    let palette = Palette::of(ui);
    ui.spacing_mut().item_spacing.y = 0.0;
    let whole = format!("{}: {}", figure.label_in(units), figure.text_in(units));
    let asked = name_ui(ui, units, figure);
    // Words, such as why a pH is never reached, take less room than a number; so does a number whose unit would come on a line of its own.
    let width = ui.painter().layout_no_wrap(figure.text_in(units), bold(FIGURE), palette.text).size().x;
    let size = if matches!(figure.reading, Reading::Words(_)) || width > ui.available_width() { BODY } else { FIGURE };
    let response = ui.add(egui::Label::new(RichText::new(figure.text_in(units)).font(bold(size))).sense(Sense::CLICK));
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &whole));
    underline(ui, &response);
    let response = response.on_hover_text(tip(&figure.label_in(units), &units.told(figure.law)));
    // The name is the button of the keyboard; the number can be pressed too.
    let asked = asked.or(response.clicked().then_some(Ask::Figure(Some(figure.key))));
    let mut below: Vec<String> = figure.likely_words(units).into_iter().collect();
    below.extend(figure.kitchen_in(units).map(|kitchen| format!("about {kitchen}")));
    if !below.is_empty() {
        ui.label(RichText::new(below.join(", ")).size(CAPTION).color(palette.soft));
    }
    ui.add_space(8.0);
    asked
}

/// Draws the dotted line below what can be pressed; full where the pointer is.
fn underline(ui: &Ui, response: &Response) {
    let palette = Palette::of(ui);
    let (x, y) = (response.rect.x_range(), response.rect.bottom() - 2.0);
    if response.hovered() {
        ui.painter().hline(x, y, Stroke::new(1.5, palette.link));
    } else {
        let ends = [pos2(x.min, y), pos2(x.max, y)];
        ui.painter().extend(egui::Shape::dotted_line(&ends, palette.edge, 4.0, 0.9));
    }
}

/// Draws the name of a figure; chosen, it opens the card of the figure.
fn name_ui(ui: &mut Ui, units: Units, figure: &Figure) -> Option<Ask> {
    let palette = Palette::of(ui);
    let label = figure.label_in(units);
    let name = RichText::new(&label).size(CAPTION).color(palette.soft);
    let response = ui.add(egui::Label::new(name).wrap().sense(Sense::click())).on_hover_text(format!(
        "{}\nSelect it to see why, what changes it most, and how to reach a target.",
        tip(&label, &units.told(figure.law))
    ));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{label}: why")));
    if response.hovered() {
        ui.painter().hline(response.rect.x_range(), response.rect.bottom() - 1.0, Stroke::new(1.0, palette.link));
    }
    response.clicked().then_some(Ask::Figure(Some(figure.key)))
}

/// Draws one figure of the list: its name at the left, on as many lines as it takes, its value at the right.
fn detail_ui(ui: &mut Ui, units: Units, figure: &Figure) -> Option<Ask> {
    let value = figure.text_in(units);
    let width = ui.painter().layout_no_wrap(value.clone(), bold(CAPTION), Palette::of(ui).text).size().x;
    let room = ui.available_width();
    let beside = width <= VALUE_SHARE * room;
    ui.spacing_mut().item_spacing.y = 2.0;
    if !beside {
        // Words, such as why a pH is never reached, have lines of their own.
        let asked = name_ui(ui, units, figure);
        ui.label(RichText::new(value).font(bold(CAPTION)));
        return asked;
    }
    ui.horizontal_top(|ui| {
        let name_room = room - width - 10.0;
        let named = ui.allocate_ui(vec2(name_room, 0.0), |ui| {
            ui.set_width(name_room);
            name_ui(ui, units, figure)
        });
        ui.with_layout(Layout::right_to_left(Align::Min), |ui| {
            ui.add(egui::Label::new(RichText::new(value).font(bold(CAPTION))).extend());
        });
        named.inner
    })
    .inner
}
