//! The curves: warming and drying loss always in sight, below them that of the chosen station.

use crate::batch::Batch;
use crate::curve::{Curve, CurveKey, Spread, curve, in_one_frame, table, table_of_both, with_spread};
use crate::design::Stage;
use crate::ui::curves::cut::cross_section_ui;
use crate::ui::curves::plot::plot_ui;
use crate::ui::curves::plotted::PlottedCurves;
use crate::ui::results::beside::Beside;
use crate::ui::results::milk_against::milk_against_ui;
use crate::ui::state::ask::Ask;
use crate::ui::state::cut::{next_curve, shown_curve};
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::read_ui;
use crate::ui::widget::spoken;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use egui::{Align, Layout, RichText, ScrollArea, Ui, WidgetInfo, vec2};

/// Rows of the table of a curve.
const TABLE_ROWS: usize = 12;
/// Height of a plot in one column.
const COLUMN_HEIGHT: f32 = 200.0;
/// Least height of a plot that can still be read.
const LEAST_HEIGHT: f32 = 92.0;

/// Least height of the chosen station's curve, beside which the cut through a cheese may stand.
const CUT_HEIGHT: f32 = 208.0;
/// The same with two designs, whose runs and figures take more of the height.
const LEAST_OF_TWO: f32 = 86.0;
const CUT_OF_TWO: f32 = 188.0;
/// Width from which on curve and cut stand side by side.
const SIDE_BY_SIDE: f32 = 520.0;
/// Height of a curve's heading with the gap below the curve.
const HEADING: f32 = 44.0;
/// Height of a heading of one line with the gap below it.
const HEADING_LINE: f32 = 34.0;
/// Width of the buttons at the right of a heading.
const BUTTON_ROOM: f32 = 136.0;
/// Width of one more button there.
const ANOTHER_BUTTON: f32 = 64.0;
/// Least height of a plot below a heading of several lines.
const LEAST_PLOT: f32 = 64.0;

/// What the curves are drawn from.
#[derive(Clone, Copy)]
pub(in crate::ui) struct Batches<'a> {
    /// The open design's.
    pub now: &'a Batch,
    /// How far its curves may be wrong, once that is known.
    pub spread: Option<&'a Spread>,
    /// The same before the last change.
    pub before: Option<&'a Batch>,
    /// The second design's, and what is shown of it.
    pub second: Option<(&'a Batch, &'a Beside)>,
}

/// Draws the curves and returns what is asked for.
pub(in crate::ui) fn curves_ui(ui: &mut Ui, view: &View, batches: Batches<'_>, room: Room) -> Vec<Ask> {
    let mut asks = Vec::new();
    let milk = batches.second.map(|(_, beside)| beside).filter(|beside| beside.milk.is_some() && view.station == Stage::Milk);
    // A cheese can be cut from the salting on; the heights are the same at every station, so that nothing jumps.
    let with_cut = view.station >= Stage::Salting;
    let left = ui.available_height() - 3.0 * HEADING;
    let (least_each, least_last) = if batches.second.is_some() { (LEAST_OF_TWO, CUT_OF_TWO) } else { (LEAST_HEIGHT, CUT_HEIGHT) };
    let (each, last) = if room == Room::Own {
        // Whole points, so that rounding makes nothing scroll.
        let last = (left / 3.0).max(least_last).floor();
        ((0.5 * (left - last)).max(least_each).floor(), last)
    } else {
        (COLUMN_HEIGHT, COLUMN_HEIGHT.max(CUT_HEIGHT))
    };
    room.scrolled(ui, "curves", |ui| {
        for key in [CurveKey::Warming, CurveKey::DryingLoss] {
            asks.extend(curve_ui(ui, view, key, batches, each));
        }
        let Some(key) = shown_curve(view.station, view.curve) else { return };
        let wide = ui.available_width();
        if let Some(beside) = milk {
            // The milk has no curve of its own; its place is taken by what tells the two apart.
            asks.extend(milk_against_ui(ui, view.units, beside, last + HEADING - 36.0, room));
        } else if !with_cut {
            asks.extend(curve_ui(ui, view, key, batches, last));
        } else if wide < SIDE_BY_SIDE {
            asks.extend(curve_ui(ui, view, key, batches, last));
            asks.extend(cut_ui(ui, view, batches, last));
        } else {
            ui.horizontal_top(|ui| {
                let mut part = |share: f32, draw: &mut dyn FnMut(&mut Ui)| {
                    ui.allocate_ui(vec2(share * wide - 8.0, last + HEADING), |ui| {
                        ui.vertical(|ui| {
                            ui.set_width(share * wide - 8.0);
                            draw(ui);
                        });
                    });
                };
                part(0.56, &mut |ui| asks.extend(curve_ui(ui, view, key, batches, last)));
                part(0.44, &mut |ui| asks.extend(cut_ui(ui, view, batches, last + HEADING - 8.0)));
            });
        }
    });
    asks
}

/// Draws the cut through a cheese of the open design.
fn cut_ui(ui: &mut Ui, view: &View, batches: Batches<'_>, height: f32) -> Vec<Ask> {
    let whose = if batches.second.is_some() { "A: " } else { "" };
    cross_section_ui(ui, (view.cut, view.units), batches.now, whose, height)
}

/// Draws one curve with its heading.
fn curve_ui(ui: &mut Ui, view: &View, key: CurveKey, batches: Batches<'_>, height: f32) -> Vec<Ask> {
    let shown = |batch: &Batch| curve(batch, key).shown_in(view.units);
    let now = match batches.spread {
        Some(spread) => with_spread(key, curve(batches.now, key), spread).shown_in(view.units),
        None => shown(batches.now),
    };
    let ghost = batches.before.map(shown);
    let (a, b) = match batches.second {
        Some((second, _)) => {
            let (a, b) = in_one_frame(now, shown(second));
            (a, Some(b))
        }
        None => (now, None),
    };
    let top = ui.cursor().top();
    let asks = heading_ui(ui, view, key, (&a, b.as_ref()));
    // What a heading of two lines takes, the plot gives, so that the whole stays as high as it is.
    let height = (height - (ui.cursor().top() - top - HEADING_LINE).max(0.0)).max(LEAST_PLOT);
    let nothing = b.as_ref().is_none_or(|b| b.empty_because.is_some());
    if view.table == Some(key) {
        table_ui(ui, &a, b.as_ref(), height);
    } else if let (Some(why), true) = (&a.empty_because, nothing) {
        empty_ui(ui, why, height);
    } else {
        plot_ui(ui, &PlottedCurves { a: &a, ghost: ghost.as_ref(), b: b.as_ref() }, height);
    }
    ui.add_space(4.0);
    asks
}

fn heading_ui(ui: &mut Ui, view: &View, key: CurveKey, (drawn, second): (&Curve, Option<&Curve>)) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    let next = next_curve(view.station, key);
    ui.horizontal_top(|ui| {
        let words_room = ui.available_width() - BUTTON_ROOM - if next.is_some() { ANOTHER_BUTTON } else { 0.0 };
        ui.allocate_ui(vec2(words_room, 28.0), |ui| {
            ui.set_width(words_room);
            ui.horizontal_wrapped(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                ui.label(RichText::new(drawn.title).font(bold(BODY)));
                ui.label(RichText::new(said_of(drawn, second)).size(CAPTION).color(palette.soft));
            });
        });
        ui.with_layout(Layout::right_to_left(Align::Min), |ui| {
            let shown = view.table == Some(key);
            let button =
                egui::Button::new(RichText::new(if shown { "Curve" } else { "Table" }).size(CAPTION)).min_size(vec2(0.0, 24.0));
            let response = ui.add(button);
            let does = if shown { "show the curve" } else { "show as a table" };
            response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, format!("{}: {does}", key.title())));
            if response.clicked() {
                asks.push(Ask::Table(key));
            }
            let has_paper = cfg!(feature = "paper") && drawn.empty_because.is_none();
            let copy = egui::Button::new(RichText::new("Copy").size(CAPTION)).min_size(vec2(0.0, 24.0));
            let response = ui.add_enabled(has_paper, copy).on_hover_text("Copy the curve as a picture");
            response
                .widget_info(|| WidgetInfo::labeled(egui::Role::Button, has_paper, format!("{}: copy as a picture", key.title())));
            if response.clicked() {
                asks.push(Ask::CopyCurve(key));
            }
            if let Some(next) = next {
                let button = egui::Button::new(RichText::new("Next").size(CAPTION)).min_size(vec2(0.0, 24.0));
                let response = ui.add(button).on_hover_text(format!("Show “{}” here", next.title()));
                let words = format!("{}: show “{}” instead", key.title(), next.title());
                response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &words));
                if response.clicked() {
                    asks.push(Ask::StationCurve(next));
                }
            }
        });
    });
    asks
}

/// Returns what is shown next to a heading: why a design has no curve, the unit, what the bands mean.
fn said_of(drawn: &Curve, second: Option<&Curve>) -> String {
    let empty = |name: &str, figure: &Curve| figure.empty_because.as_ref().map(|why| format!("no {name}: {why}; "));
    let missing = second.map(|b| empty("A", drawn).or_else(|| empty("B", b)).unwrap_or_default()).unwrap_or_default();
    let unit = if drawn.y.unit.is_empty() { drawn.y.label.to_owned() } else { format!("{}, {}", drawn.y.label, drawn.y.unit) };
    let names: Vec<&str> = drawn.bands.iter().map(|band| band.name).collect();
    let band = if names.is_empty() { String::new() } else { format!("; shaded {}", names.join(", darker ")) };
    format!("{missing}{unit}{band}")
}

fn empty_ui(ui: &mut Ui, why: &str, height: f32) {
    let palette = Palette::of(ui);
    egui::Frame::new().fill(palette.panel).corner_radius(8).inner_margin(16).show(ui, |ui| {
        ui.set_min_size(vec2(ui.available_width(), height - 32.0));
        ui.label(RichText::new(format!("No curve: {why}")).color(palette.text));
    });
}

fn table_ui(ui: &mut Ui, drawn: &Curve, second: Option<&Curve>, height: f32) {
    let table = second.map_or_else(|| table(drawn, TABLE_ROWS), |second| table_of_both(drawn, second, TABLE_ROWS));
    read_ui(ui, &format!("{}, as a table", drawn.title), ScrollArea::both().max_height(height), |ui| {
        let words = |value: &Option<f64>| value.map_or_else(|| "–".to_owned(), |value| format!("{value:.1}"));
        let rows: Vec<Vec<String>> = table.rows.iter().map(|row| row.iter().map(words).collect()).collect();
        spoken::table_ui(ui, drawn.title, &table.headings, &rows);
    });
}
