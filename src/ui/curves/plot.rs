//! One curve as a plot, each line in the colour of what it is of; of two designs laid over each other, A solid and B dashed.

use crate::curve::{Curve, Role, Series};
use crate::ui::curves::crosshair::{crosshair_ui, cut_hour_ui};
use crate::ui::curves::handles::handles_ui;
use crate::ui::curves::labels::{gutter, labels_ui, strip};
use crate::ui::curves::plotted::PlottedCurves;
use crate::ui::state::ask::Ask;
use crate::ui::state::cut::CutView;
use crate::ui::widget::matter::MatterColours;
use crate::ui::widget::number_text::trimmed;
use crate::ui::widget::theme::{CAPTION, Palette, plain};
use crate::units::Units;
use egui::{Color32, Sense, Ui, WidgetInfo, vec2};
use egui_plot::{AxisHints, FilledArea, GridMark, Line, LineStyle, Plot, PlotPoints, PlotResponse, Points, VLine};

/// Opacity of a band, and of the second design's.
const BAND: (f32, f32) = (0.18, 0.12);

/// Radius of a dot that was measured.
const DOT: f32 = 5.0;

/// Height of a tick, as a share of the plot.
const TICK: f64 = 0.1;

/// Height of the plot for each number beside its axis, and the least; width for each below it, and the least.
const MARK_WANTS: f32 = 30.0;
const MARK_TAKES: f32 = 17.0;
const X_MARK_WANTS: f32 = 70.0;
const X_MARK_TAKES: f32 = 50.0;
/// Width that the numbers beside the other axis take.
const X_AXIS_GIVES: f32 = 40.0;

/// Fewest numbers beside an axis.
const LEAST_MARKS: usize = 3;

/// Draws the plot, with the names of its lines to the right of it and those of its events above.
///
/// * `cut`: the cut that stands beside it, and its moment; none beside a small curve, in which nothing is taken hold of either
///
/// Returns what is asked for.
pub(in crate::ui) fn plot_ui(
    ui: &mut Ui,
    units: Units,
    drawn: &PlottedCurves<'_>,
    cut: Option<(CutView, f64)>,
    height: f32,
) -> Vec<Ask> {
    let (palette, colours) = (Palette::of(ui), MatterColours::of(ui));
    let frame = drawn.a;
    let x_unit = frame.x.unit;
    // The names stand beside the plot and above it, so that no line strikes them.
    let (beside, above) = (gutter(ui, drawn), strip(drawn, height));
    ui.add_space(above);
    let height = height - above;
    let wide = ui.available_width() - beside - X_AXIS_GIVES;
    let x_marks = ((wide / X_MARK_WANTS) as usize, (wide / X_MARK_TAKES) as usize);
    let y_marks = ((height / MARK_WANTS) as usize, (height / MARK_TAKES) as usize);
    let plot = Plot::new(("curve", frame.title))
        .height(height)
        .width(ui.available_width() - beside)
        // No stop of the Tab key: the hour of the cut has its rail, and a picture is read without being pressed.
        .sense(if cut.is_some() { Sense::CLICK | Sense::DRAG } else { Sense::hover() })
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
        .default_x_bounds(frame.x.least, frame.x.most)
        .default_y_bounds(frame.y.least, frame.y.most)
        .custom_x_axes(vec![ticks(AxisHints::new_x(), X_MARK_TAKES)])
        .custom_y_axes(vec![ticks(AxisHints::new_y(), MARK_TAKES)])
        .y_axis_min_width(36.0)
        .grid_spacing(4.0..=12.0)
        .x_grid_spacer(move |input| marks(input.bounds, x_marks))
        .y_grid_spacer(move |input| marks(input.bounds, y_marks))
        .x_axis_formatter(move |mark, range| {
            let last = mark.value + mark.step_size > *range.end() + 1e-9;
            if last { format!("{} {x_unit}", trimmed(mark.value)) } else { trimmed(mark.value) }
        })
        .y_axis_formatter(move |mark, _| format!("{:.*}", decimals(mark.step_size), mark.value))
        .label_formatter(|_| None);
    let response = plot.show(ui, |plot| {
        plot.set_plot_bounds_x(frame.x.least..=frame.x.most);
        plot.set_plot_bounds_y(frame.y.least..=frame.y.most);
        for (figure, opacity) in std::iter::once((drawn.a, BAND.0)).chain(drawn.b.map(|b| (b, BAND.1))) {
            let main = figure.series.iter().find(|series| series.role == Role::Main);
            let colour = main.map_or(palette.soft, |series| colours.line(series.tone, palette.soft));
            bands(plot, figure, colour.gamma_multiply(opacity));
        }
        for event in &drawn.a.events {
            let line = VLine::new(event.name, event.at).color(palette.edge).width(1.0);
            plot.vline(line.style(LineStyle::dotted_dense()).allow_hover(false));
        }
        // The second design's moments as ticks on the axis, so that they run through no name.
        let tick = frame.y.least + TICK * (frame.y.most - frame.y.least);
        for event in drawn.b.into_iter().flat_map(|b| &b.events) {
            let ends = PlotPoints::from(vec![[event.at, frame.y.least], [event.at, tick]]);
            plot.line(Line::new(event.name, ends).color(palette.second).width(2.0).allow_hover(false));
        }
        for series in drawn.ghost.into_iter().flat_map(|ghost| &ghost.series).filter(|series| series.role == Role::Main) {
            plot.line(line(series, palette.ghost, 1.25));
        }
        for series in &drawn.a.series {
            plot.line(stroke(series, &colours, &palette));
        }
        dots(plot, drawn.a, &colours, &palette);
        let known = |series: &Series| series.role == Role::Limit && drawn.a.series.iter().any(|other| other.name == series.name);
        for series in drawn.b.into_iter().flat_map(|b| &b.series).filter(|series| !known(series)) {
            let line = stroke(series, &colours, &palette);
            plot.line(if series.role == Role::Limit { line } else { line.style(LineStyle::Dashed { length: 7.0 }) });
        }
    });
    labels_ui(ui, drawn, &response, above);
    let words = drawn.in_words();
    response.response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &words));
    let asks = cut.map_or_else(Vec::new, |cut| held_ui(ui, units, drawn, cut, &response));
    if let Some(read) = crosshair_ui(ui, drawn, &response) {
        response.response.on_hover_text_at_pointer(read);
    }
    asks
}

/// Draws what can be taken hold of in a plot; returns what is asked for.
fn held_ui(ui: &mut Ui, units: Units, drawn: &PlottedCurves<'_>, cut: (CutView, f64), response: &PlotResponse<()>) -> Vec<Ask> {
    let mut asks = Vec::new();
    let hour = drawn.a.cut.and_then(|hours| cut_hour_ui(ui, hours, cut, response));
    let (moved, is_held) = handles_ui(ui, units, drawn.a.title, drawn.handles(), response);
    asks.extend(moved.into_iter().map(|ask| ask.of(drawn.edited)));
    asks.extend(hour.filter(|_| !is_held));
    asks.extend(response.response.double_clicked().then_some(Ask::CurveAlone));
    asks
}

/// Returns an axis whose small numbers are all written where they have their room, and none paler than the others.
fn ticks(axis: AxisHints<'_>, takes: f32) -> AxisHints<'_> {
    axis.label_spacing(takes - 7.0..=takes - 6.0).tick_label_font(plain(CAPTION))
}

/// Draws what was measured, each in the colour of its line with a rim that parts it from that.
fn dots(plot: &mut egui_plot::PlotUi<'_>, figure: &Curve, colours: &MatterColours, palette: &Palette) {
    for dot in &figure.dots {
        let line = figure.series.iter().find(|series| series.name == dot.line);
        let colour = line.map_or(palette.text, |series| colours.line(series.tone, palette.soft));
        for (colour, radius) in [(palette.background, DOT + 2.0), (colour, DOT)] {
            plot.points(Points::new("measured", vec![dot.at]).color(colour).radius(radius).allow_hover(false));
        }
    }
}

/// Fills the bands of a curve.
fn bands(plot: &mut egui_plot::PlotUi<'_>, figure: &Curve, fill: Color32) {
    for band in &figure.bands {
        let column = |of: fn(&[f64; 3]) -> f64| band.points.iter().map(of).collect::<Vec<f64>>();
        let area = FilledArea::new(band.name, &column(|[x, _, _]| *x), &column(|[_, low, _]| *low), &column(|[_, _, high]| *high));
        plot.add(area.fill_color(fill).allow_hover(false));
    }
}

/// Returns round marks between two bounds, about so many; fewer than three say little of an axis, and then the next smaller step is taken where
/// there is room for its marks.
fn marks((from, to): (f64, f64), (wanted, most): (usize, usize)) -> Vec<GridMark> {
    let least_step = (to - from) / wanted.max(2) as f64;
    let power = 10.0_f64.powf(least_step.log10().floor());
    let steps = [0.5, 1.0, 2.0, 5.0, 10.0].map(|step| step * power);
    let wide = steps.iter().position(|step| *step >= least_step * 0.999).unwrap_or(0);
    let with = |place: usize| steps.get(place).map_or_else(Vec::new, |step| marks_at((from, to), *step));
    let (few, finer) = (with(wide), with(wide.saturating_sub(1)));
    if few.len() < LEAST_MARKS && finer.len() <= most + 1 { finer } else { few }
}

/// Returns the marks at the multiples of a step.
fn marks_at((from, to): (f64, f64), step_size: f64) -> Vec<GridMark> {
    let first = (from / step_size).ceil() as i64;
    let last = ((to + 1e-9 * step_size) / step_size).floor() as i64;
    (first..=last).map(|mark| GridMark { value: mark as f64 * step_size, step_size }).collect()
}

/// Returns the decimals that tell marks apart that are a step from each other.
fn decimals(step: f64) -> usize {
    (-step.log10()).ceil().clamp(0.0, 3.0) as usize
}

/// Returns a line as its role needs it.
fn stroke<'a>(series: &'a Series, colours: &MatterColours, palette: &Palette) -> Line<'a> {
    let colour = colours.line(series.tone, palette.soft);
    match series.role {
        Role::Main => line(series, colour, 3.0),
        Role::Companion => line(series, colour, 2.0),
        Role::Limit => line(series, palette.soft, 1.5).style(LineStyle::dashed_loose()),
    }
}

fn line(series: &Series, colour: Color32, width: f32) -> Line<'_> {
    // As a band, which the plot would make of points close together, a line is the thinner the steeper it is.
    Line::new(series.name, PlotPoints::from(series.points.clone())).color(colour).width(width).allow_hover(false).allow_band(false)
}
