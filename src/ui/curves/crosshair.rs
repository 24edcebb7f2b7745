//! Reading a chart: a line at the pointer with what every curve is there, and the hour of the cut beside it, which a press sets.

use crate::curve::{Band, Curve, CutHours, Role, Series};
use crate::ui::curves::plotted::PlottedCurves;
use crate::ui::state::ask::Ask;
use crate::ui::state::cut::CutView;
use crate::ui::widget::matter::MatterColours;
use crate::ui::widget::theme::Palette;
use egui::{Shape, Stroke, Ui, pos2, vec2};
use egui_plot::{PlotPoint, PlotResponse};

/// Radius of the dot that shows where a line is read.
const DOT: f32 = 3.5;
/// Size of the mark of the cut's hour on the axis.
const MARK: f32 = 6.0;

/// Draws the line at the pointer with its dots; returns what is read there.
pub(in crate::ui) fn crosshair_ui(ui: &Ui, drawn: &PlottedCurves<'_>, response: &PlotResponse<()>) -> Option<String> {
    let pointer = response.response.hover_pos()?;
    let frame = *response.transform.frame();
    let x = response.transform.value_from_position(pointer).x.clamp(drawn.a.x.least, drawn.a.x.most);
    let (palette, colours) = (Palette::of(ui), MatterColours::of(ui));
    let painter = ui.painter().with_clip_rect(frame.expand(DOT));
    painter.vline(pointer.x, frame.y_range(), Stroke::new(1.0, palette.soft));
    for series in all_lines(drawn).map(|(_, series)| series) {
        if let Some(y) = at(series, x) {
            let place = response.transform.position_from_point(&PlotPoint::new(x, y));
            painter.circle(place, DOT, colours.line(series.tone, palette.soft), Stroke::new(1.0, palette.background));
        }
    }
    read(drawn, x)
}

/// Returns what the lines read at a place of the x axis, and how wide the band is there.
fn read(drawn: &PlottedCurves<'_>, x: f64) -> Option<String> {
    let frame = drawn.a;
    let decimals = if frame.y.most <= 1.5 { 2 } else { 1 };
    let unit = frame.y.unit;
    let mut lines: Vec<String> = all_lines(drawn)
        .filter_map(|(whose, series)| {
            let words = format!("{whose}{}: {:.decimals$} {unit}", series.name, at(series, x)?);
            Some(words.trim_end().to_owned())
        })
        .collect();
    lines.extend(frame.bands.iter().filter_map(|band| {
        let (low, high) = band_at(band, x)?;
        let words = format!("{}: {low:.decimals$}–{high:.decimals$} {unit}", band.name);
        Some(words.trim_end().to_owned())
    }));
    (!lines.is_empty()).then(|| format!("{:.1} {}\n{}", x, frame.x.unit, lines.join("\n")))
}

/// Returns the lines of both designs that are no limits, with whose they are.
fn all_lines<'a>(drawn: &PlottedCurves<'a>) -> impl Iterator<Item = (&'static str, &'a Series)> {
    let names = if drawn.b.is_some() { ["A ", "B "] } else { ["", ""] };
    let curves: [Option<&'a Curve>; 2] = [Some(drawn.a), drawn.b];
    let of_both = curves.into_iter().zip(names).filter_map(|(curve, whose)| Some((curve?, whose)));
    let lines = of_both.flat_map(|(curve, whose)| curve.series.iter().map(move |series| (whose, series)));
    lines.filter(|(_, series)| series.role != Role::Limit)
}

/// Returns a line's value, straight between its points; none beside it.
fn at(series: &Series, x: f64) -> Option<f64> {
    let after = series.points.partition_point(|[at, _]| *at < x);
    let [next_x, next] = *series.points.get(after)?;
    let Some([before_x, before]) = after.checked_sub(1).and_then(|index| series.points.get(index)).copied() else {
        return (next_x <= x).then_some(next);
    };
    Some(between((before_x, next_x), (before, next), x))
}

/// Returns the ends of a band; none beside it.
fn band_at(band: &Band, x: f64) -> Option<(f64, f64)> {
    let after = band.points.partition_point(|[at, ..]| *at < x);
    let [next_x, next_low, next_high] = *band.points.get(after)?;
    let [before_x, before_low, before_high] = *band.points.get(after.checked_sub(1)?)?;
    let part = |before: f64, next: f64| between((before_x, next_x), (before, next), x);
    Some((part(before_low, next_low), part(before_high, next_high)))
}

fn between((from, to): (f64, f64), (before, next): (f64, f64), x: f64) -> f64 {
    let share = if to > from { (x - from) / (to - from) } else { 1.0 };
    before + share * (next - before)
}

/// Marks the hour of the cut on the axis, and returns the hour that a press in the chart asks for.
///
/// * `share`: the moment of the cut, of the hours that it knows
pub(in crate::ui) fn cut_hour_ui(
    ui: &Ui,
    hours: CutHours,
    (cut, share): (CutView, f64),
    response: &PlotResponse<()>,
) -> Option<Ask> {
    if cut.key != hours.key || hours.to <= hours.from {
        return None;
    }
    let (palette, frame) = (Palette::of(ui), *response.transform.frame());
    let x = response.transform.position_from_point_x(hours.from + share * (hours.to - hours.from));
    let foot = pos2(x, frame.bottom());
    ui.painter().with_clip_rect(frame).line_segment([foot, pos2(x, frame.top())], Stroke::new(1.0, palette.edge));
    let corners = vec![foot - vec2(0.0, MARK), foot + vec2(MARK, 1.0), foot + vec2(-MARK, 1.0)];
    ui.painter().add(Shape::convex_polygon(corners, palette.text, Stroke::NONE));
    let pressed = response.response.interact_pointer_pos()?;
    let at = response.transform.value_from_position(pressed).x;
    let share = ((at - hours.from) / (hours.to - hours.from)).clamp(0.0, 1.0);
    Some(Ask::Cut(CutView { share: Some(share), runs: false, ..cut }))
}
