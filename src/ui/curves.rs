//! The curves: warming and drying loss always in sight, below them that of the chosen station.

use super::ask::Ask;
use super::cross_section::cross_section_ui;
use super::number_text::trimmed;
use super::theme::{BODY, CAPTION, Palette, bold, plain};
use super::view::{Room, View, station_curve};
use crate::batch::Batch;
use crate::design::Stage;
use crate::figure::{Event, Figure, FigureKey, Role, Series, figure, table};
use egui::{Align, Layout, Pos2, RichText, ScrollArea, Ui, WidgetInfo, pos2, vec2};
use egui_plot::{FilledArea, GridMark, Line, LineStyle, Plot, PlotPoints, PlotResponse, VLine};

/// Rows of the table of a curve.
const TABLE_ROWS: usize = 12;
/// Height of a plot in one column.
const COLUMN_HEIGHT: f32 = 200.0;
/// Least height of a plot that can still be read.
const LEAST_HEIGHT: f32 = 92.0;

/// Least height of the chosen station's curve, beside which the cut through a cheese may stand.
const CUT_HEIGHT: f32 = 208.0;
/// Width from which on curve and cut stand side by side.
const SIDE_BY_SIDE: f32 = 520.0;
/// Height of a curve's heading with the gap below the curve.
const HEADING: f32 = 44.0;

/// Draws the curves and returns what is asked for.
pub(super) fn curves_ui(ui: &mut Ui, view: &View, batch: &Batch, before: Option<&Batch>, room: Room) -> Vec<Ask> {
    let mut asks = Vec::new();
    // A cheese can be cut from the salting on; the heights are the same at every station, so that nothing jumps.
    let with_cut = view.station >= Stage::Salting;
    let left = ui.available_height() - 3.0 * HEADING;
    let (each, last) = if room == Room::Own {
        let last = (left / 3.0).max(CUT_HEIGHT);
        ((0.5 * (left - last)).max(LEAST_HEIGHT), last)
    } else {
        (COLUMN_HEIGHT, COLUMN_HEIGHT.max(CUT_HEIGHT))
    };
    room.scrolled(ui, "curves", |ui| {
        for key in [FigureKey::Warming, FigureKey::DryingLoss] {
            asks.extend(curve_ui(ui, view, key, (batch, before), each));
        }
        let key = station_curve(view.station);
        let wide = ui.available_width();
        if !with_cut {
            asks.extend(curve_ui(ui, view, key, (batch, before), last));
        } else if wide < SIDE_BY_SIDE {
            asks.extend(curve_ui(ui, view, key, (batch, before), last));
            asks.extend(cross_section_ui(ui, view.cut, batch, last));
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
                part(0.56, &mut |ui| asks.extend(curve_ui(ui, view, key, (batch, before), last)));
                part(0.44, &mut |ui| asks.extend(cross_section_ui(ui, view.cut, batch, last + HEADING - 8.0)));
            });
        }
    });
    asks
}

/// Draws one curve with its heading.
fn curve_ui(ui: &mut Ui, view: &View, key: FigureKey, (batch, before): (&Batch, Option<&Batch>), height: f32) -> Vec<Ask> {
    let drawn = view.units.figure(figure(batch, key));
    let ghost = before.map(|before| view.units.figure(figure(before, key)));
    let asks = heading_ui(ui, view, key, &drawn);
    if view.table == Some(key) {
        table_ui(ui, &drawn, height);
    } else if let Some(why) = &drawn.empty_because {
        empty_ui(ui, why, height);
    } else {
        plot_ui(ui, &drawn, ghost.as_ref(), height);
    }
    ui.add_space(4.0);
    asks
}

fn heading_ui(ui: &mut Ui, view: &View, key: FigureKey, drawn: &Figure) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let mut asks = Vec::new();
    ui.horizontal(|ui| {
        ui.set_height(28.0);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let shown = view.table == Some(key);
            let button =
                egui::Button::new(RichText::new(if shown { "Curve" } else { "Table" }).size(CAPTION)).min_size(vec2(0.0, 24.0));
            let response = ui.add(button);
            let does = if shown { "show the curve" } else { "show as a table" };
            response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, format!("{}: {does}", key.title())));
            if response.clicked() {
                asks.push(Ask::Table(key));
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                ui.label(RichText::new(drawn.title).font(bold(BODY)));
                let unit =
                    if drawn.y.unit.is_empty() { drawn.y.label.to_owned() } else { format!("{}, {}", drawn.y.label, drawn.y.unit) };
                let names: Vec<&str> = drawn.bands.iter().map(|band| band.name).collect();
                let band = if names.is_empty() { String::new() } else { format!("; shaded {}", names.join(", darker ")) };
                ui.add(egui::Label::new(RichText::new(format!("{unit}{band}")).size(CAPTION).color(palette.soft)).truncate());
            });
        });
    });
    asks
}

fn empty_ui(ui: &mut Ui, why: &str, height: f32) {
    let palette = Palette::of(ui);
    egui::Frame::new().fill(palette.panel).corner_radius(8).inner_margin(16).show(ui, |ui| {
        ui.set_min_size(vec2(ui.available_width(), height - 32.0));
        ui.label(RichText::new(format!("No curve: {why}")).color(palette.text));
    });
}

fn table_ui(ui: &mut Ui, drawn: &Figure, height: f32) {
    let table = table(drawn, TABLE_ROWS);
    ScrollArea::vertical().id_salt((drawn.title, "table")).max_height(height).show(ui, |ui| {
        egui::Grid::new((drawn.title, "grid")).striped(true).spacing(vec2(24.0, 4.0)).show(ui, |ui| {
            for heading in &table.headings {
                ui.label(RichText::new(heading).font(bold(CAPTION)));
            }
            ui.end_row();
            for row in &table.rows {
                for value in row {
                    ui.label(RichText::new(value.map_or_else(|| "–".to_owned(), |value| format!("{value:.1}"))).size(CAPTION));
                }
                ui.end_row();
            }
        });
    });
}

fn plot_ui(ui: &mut Ui, drawn: &Figure, ghost: Option<&Figure>, height: f32) {
    let palette = Palette::of(ui);
    let (x_unit, y_most) = (drawn.x.unit, drawn.y.most - drawn.y.least);
    let decimals = if y_most < 1.5 { 2 } else { 0 };
    let (x_marks, y_marks) = ((ui.available_width() / 90.0) as usize, (height / 32.0) as usize);
    let plot = Plot::new(("curve", drawn.title))
        .height(height)
        // Room for the last mark's unit, which is centred on the end of the axis.
        .width(ui.available_width() - 26.0)
        .allow_scroll(false)
        .allow_drag(false)
        .allow_zoom(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .allow_axis_zoom_drag(false)
        .show_background(false)
        .show_crosshair(false)
        .grid_color(palette.grid)
        .set_margin_fraction(vec2(0.0, 0.0))
        .default_x_bounds(drawn.x.least, drawn.x.most)
        .default_y_bounds(drawn.y.least, drawn.y.most)
        .y_axis_min_width(36.0)
        .grid_spacing(4.0..=12.0)
        .x_grid_spacer(move |input| marks(input.bounds, x_marks))
        .y_grid_spacer(move |input| marks(input.bounds, y_marks))
        .x_axis_formatter(move |mark, range| {
            let last = mark.value + mark.step_size > *range.end() + 1e-9;
            if last { format!("{} {x_unit}", trimmed(mark.value)) } else { trimmed(mark.value) }
        })
        .y_axis_formatter(move |mark, _| format!("{:.*}", decimals, mark.value))
        .label_formatter(|_| None);
    let response = plot.show(ui, |plot| {
        plot.set_plot_bounds_x(drawn.x.least..=drawn.x.most);
        plot.set_plot_bounds_y(drawn.y.least..=drawn.y.most);
        for band in &drawn.bands {
            let column = |of: fn(&[f64; 3]) -> f64| band.points.iter().map(of).collect::<Vec<f64>>();
            let area =
                FilledArea::new(band.name, &column(|[x, _, _]| *x), &column(|[_, low, _]| *low), &column(|[_, _, high]| *high));
            plot.add(area.fill_color(palette.design.gamma_multiply(0.18)).allow_hover(false));
        }
        for event in &drawn.events {
            plot.vline(
                VLine::new(event.name, event.at).color(palette.edge).width(1.0).style(LineStyle::dotted_dense()).allow_hover(false),
            );
        }
        for series in ghost.into_iter().flat_map(|ghost| &ghost.series).filter(|series| series.role == Role::Main) {
            plot.line(line(series, palette.ghost, 2.0).style(LineStyle::dotted_dense()));
        }
        for series in &drawn.series {
            plot.line(match series.role {
                Role::Main => line(series, palette.design, 3.0),
                Role::Companion => line(series, palette.design, 1.5),
                Role::Limit => line(series, palette.soft, 1.5).style(LineStyle::dashed_loose()),
            });
        }
    });
    labels(ui, drawn, &response);
    let words = drawn.in_words.clone();
    response.response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &words));
    if let Some(read) = read_at(drawn, &response) {
        response.response.on_hover_text_at_pointer(read);
    }
}

/// Returns round marks between two bounds, at most so many; all alike, so that none fades.
fn marks((from, to): (f64, f64), most: usize) -> Vec<GridMark> {
    let least_step = (to - from) / most.max(2) as f64;
    let power = 10.0_f64.powf(least_step.log10().floor());
    let step_size =
        [1.0, 2.0, 5.0, 10.0].into_iter().map(|step| step * power).find(|step| *step >= least_step * 0.999).unwrap_or(power);
    let first = (from / step_size).ceil() as i64;
    let last = ((to + 1e-9 * step_size) / step_size).floor() as i64;
    (first..=last).map(|mark| GridMark { value: mark as f64 * step_size, step_size }).collect()
}

fn line(series: &Series, colour: egui::Color32, width: f32) -> Line<'_> {
    Line::new(series.name, PlotPoints::from(series.points.clone())).color(colour).width(width).allow_hover(false)
}

/// Writes the name of each line at its end and of each event at the top, where there is room.
fn labels(ui: &Ui, drawn: &Figure, response: &PlotResponse<()>) {
    let palette = Palette::of(ui);
    let frame = *response.transform.frame();
    let to_screen = |x: f64, y: f64| response.transform.position_from_point(&egui_plot::PlotPoint::new(x, y));
    let painter = ui.painter().with_clip_rect(frame.expand(2.0));
    let mut taken: Vec<egui::Rect> = Vec::new();
    // The limits first: they have the fewest places. Then the lines from the highest end down, so that their names stand in their order.
    let (limits, mut lines): (Vec<&Series>, Vec<&Series>) = drawn.series.iter().partition(|series| series.role == Role::Limit);
    let end_of = |series: &Series| series.points.last().map_or(0.0, |[_, y]| *y);
    lines.sort_by(|one, other| end_of(other).total_cmp(&end_of(one)));
    let mut below = f32::NEG_INFINITY;
    for series in limits.into_iter().chain(lines) {
        let Some([x, y]) = series.points.last().copied() else { continue };
        let end = to_screen(x, y);
        let galley = painter.layout_no_wrap(series.name.to_owned(), plain(CAPTION), palette.text);
        let size = galley.size();
        // To the right of the end where there is room, below the name of the line above it; else just above the end, else just below.
        // The last place is for a limit, which runs across the whole plot: its name may stand anywhere above it.
        let along = if series.role == Role::Limit { frame.left() + 0.45 * frame.width() } else { f32::NAN };
        let places = [
            pos2(end.x + 6.0, (end.y - 0.5 * size.y).max(below)),
            pos2((end.x - size.x - 4.0).min(frame.right() - size.x - 4.0), end.y - size.y - 3.0),
            pos2((end.x - size.x - 4.0).min(frame.right() - size.x - 4.0), end.y + 4.0),
            pos2(along, end.y - size.y - 2.0),
        ];
        let fits = |place: &Pos2| {
            let rect = egui::Rect::from_min_size(*place, size);
            frame.contains_rect(rect) && taken.iter().all(|other| !other.intersects(rect))
        };
        if let Some(place) = places.into_iter().find(|place| fits(place)) {
            if series.role != Role::Limit {
                below = place.y + size.y + 1.0;
            }
            taken.push(egui::Rect::from_min_size(place, size));
            painter.galley(place, galley, palette.text);
        }
    }
    let mut rows = [f32::NEG_INFINITY; 3];
    for Event { name, at } in &drawn.events {
        let x = to_screen(*at, drawn.y.most).x;
        let galley = painter.layout_no_wrap((*name).to_owned(), plain(CAPTION), palette.soft);
        let size = galley.size();
        let left = (x + 3.0).min(frame.right() - size.x);
        let free = |(row, end): (usize, &f32)| {
            let rect = egui::Rect::from_min_size(pos2(left, frame.top() + 15.0 * row as f32), size);
            *end < left && taken.iter().all(|other| !other.intersects(rect))
        };
        if let Some(row) = rows.iter().enumerate().find(|place| free(*place)).map(|(row, _)| row)
            && let Some(end) = rows.get_mut(row)
        {
            *end = left + size.x + 6.0;
            painter.galley(pos2(left, frame.top() + 15.0 * row as f32), galley, palette.soft);
        }
    }
}

/// Returns what the lines read at the pointer.
fn read_at(drawn: &Figure, response: &PlotResponse<()>) -> Option<String> {
    let pointer = response.response.hover_pos()?;
    let x = response.transform.value_from_position(pointer).x;
    let near = |series: &Series| {
        let after = series.points.partition_point(|point| point.first().is_some_and(|at| *at < x));
        series.points.get(after).map(|[_, y]| *y)
    };
    let lines: Vec<String> = drawn
        .series
        .iter()
        .filter(|series| series.role != Role::Limit)
        .filter_map(|series| {
            Some(format!("{}: {:.*} {}", series.name, if drawn.y.most <= 1.5 { 2 } else { 1 }, near(series)?, drawn.y.unit))
        })
        .collect();
    (!lines.is_empty()).then(|| format!("{:.1} {}\n{}", x.max(0.0), drawn.x.unit, lines.join("\n")))
}
