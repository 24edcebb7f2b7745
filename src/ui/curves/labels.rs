//! The names in a plot: of each line beside its end, of each event above the plot, none over another and none on a line.

use crate::curve::{Event, Role, Series};
use crate::ui::curves::plotted::PlottedCurves;
use crate::ui::widget::matter::MatterColours;
use crate::ui::widget::theme::{CAPTION, Palette, bold, plain};
use egui::text::{LayoutJob, TextFormat};
use egui::{Color32, Galley, Pos2, Rect, Ui, pos2};
use egui_plot::PlotResponse;
use std::sync::Arc;

/// Ends of the same line of two designs that are nearer to each other have one name, points across and down.
const ONE_NAME: (f32, f32) = (90.0, 10.0);
/// Gap between the end of a line and its name.
const GAP: f32 = 6.0;
/// Room beside a plot in any case, for half of the last number below the axis.
const LEAST_GUTTER: f32 = 26.0;
/// Share of the width that names beside a plot may take.
const MOST_GUTTER: f32 = 0.3;
/// Height of a row of events above a plot.
const ROW: f32 = 16.0;
/// Height of a plot that keeps its events nameless: they would take too much of it.
const LOW: f32 = 150.0;
/// Events that may need a second row.
const ONE_ROW: usize = 3;
/// Steps up and down in which a place is looked for beside the end of a line.
const NUDGE: f32 = 4.0;
const NUDGES: [f32; 21] =
    [0.0, 1.0, -1.0, 2.0, -2.0, 3.0, -3.0, 4.0, -4.0, 5.0, -5.0, 6.0, -6.0, 7.0, -7.0, 8.0, -8.0, 9.0, -9.0, 10.0, -10.0];
/// Name of the line before the last change.
const BEFORE: &str = "before";

/// The name of one line, or of the same line of both designs.
struct Name {
    /// The designs that it is of; none where there is but one.
    whose: Vec<&'static str>,
    /// What the line is.
    words: &'static str,
    /// In the colour of the line.
    colour: Color32,
    /// Whether it is a limit.
    is_limit: bool,
    /// Where the line ends.
    end: Pos2,
}

/// Returns the room that the names of the lines take to the right of a plot.
pub(in crate::ui) fn gutter(ui: &Ui, drawn: &PlottedCurves<'_>) -> f32 {
    let letters = if drawn.b.is_some() { "A B " } else { "" };
    let width = |words: &str| ui.painter().layout_no_wrap(format!("{letters}{words}"), bold(CAPTION), Color32::WHITE).size().x;
    let names = std::iter::once(drawn.a).chain(drawn.b).flat_map(|curve| &curve.series).map(|series| series.name);
    let widest = names.chain(drawn.ghost.map(|_| BEFORE)).map(width).fold(0.0, f32::max);
    (widest + GAP + 2.0).min(MOST_GUTTER * ui.available_width()).max(LEAST_GUTTER)
}

/// Returns the room that the names of the events take above a plot.
pub(in crate::ui) fn strip(drawn: &PlottedCurves<'_>, height: f32) -> f32 {
    match drawn.a.events.len() {
        0 => 0.0,
        _ if height < LOW => 0.0,
        few if few <= ONE_ROW => ROW,
        _ => 2.0 * ROW,
    }
}

/// Writes the name of each line at its end and of each event above, where there is room.
///
/// * `above`: room above the plot for events
pub(in crate::ui) fn labels_ui(ui: &Ui, drawn: &PlottedCurves<'_>, response: &PlotResponse<()>, above: f32) {
    let frame = *response.transform.frame();
    // The frame with what is kept beside it for the names.
    let room = Rect::from_min_max(frame.min, pos2(ui.max_rect().right(), frame.bottom() + 4.0));
    lines(ui, (frame, room), names(ui, drawn, response));
    let x_of = |at: f64| response.transform.position_from_point(&egui_plot::PlotPoint::new(at, drawn.a.y.most)).x;
    let strip = Rect::from_min_max(pos2(frame.left(), frame.top() - above), pos2(ui.max_rect().right(), frame.top()));
    events(ui, strip, &drawn.a.events, &x_of);
}

/// Returns the names of all lines: the limits first, since they have the fewest places; then from the highest end down, so that names stand
/// in the order of their lines.
fn names(ui: &Ui, drawn: &PlottedCurves<'_>, response: &PlotResponse<()>) -> Vec<Name> {
    let (palette, colours) = (Palette::of(ui), MatterColours::of(ui));
    let end_of = |series: &Series| {
        let [x, y] = series.points.last().copied()?;
        Some(response.transform.position_from_point(&egui_plot::PlotPoint::new(x, y)))
    };
    let mut names: Vec<Name> = Vec::new();
    let two = drawn.b.is_some();
    let of_a = drawn.a.series.iter().map(|series| ("A", series));
    let of_b = drawn.b.into_iter().flat_map(|b| &b.series).map(|series| ("B", series));
    for (whose, series) in of_a.chain(of_b) {
        let Some(end) = end_of(series) else { continue };
        let is_limit = series.role == Role::Limit;
        let near = |name: &&mut Name| {
            let apart = (name.end - end).abs();
            name.words == series.name && (is_limit || (apart.x < ONE_NAME.0 && apart.y < ONE_NAME.1))
        };
        if let Some(same) = names.iter_mut().find(near) {
            same.whose.push(whose);
            same.end.x = same.end.x.max(end.x);
        } else {
            let colour = colours.line(series.tone, palette.soft);
            names.push(Name { whose: vec![whose], words: series.name, colour, is_limit, end });
        }
    }
    for name in &mut names {
        if !two || name.is_limit {
            name.whose.clear();
        }
    }
    names.sort_by(|one, other| other.is_limit.cmp(&one.is_limit).then(one.end.y.total_cmp(&other.end.y)));
    let before = drawn.ghost.and_then(|ghost| ghost.series.iter().find(|series| series.role == Role::Main)).and_then(end_of);
    // The last to find a place: it is the first that can be done without.
    names.extend(before.map(|end| Name { whose: Vec::new(), words: BEFORE, colour: palette.soft, is_limit: false, end }));
    names
}

/// Writes the names of lines.
fn lines(ui: &Ui, (frame, room): (Rect, Rect), names: Vec<Name>) {
    let palette = Palette::of(ui);
    let painter = ui.painter().with_clip_rect(room.expand(2.0));
    let mut taken: Vec<Rect> = Vec::new();
    for name in names {
        let galley = ui.painter().layout_job(job(&name));
        let fits = |place: &Pos2| {
            let rect = Rect::from_min_size(*place, galley.size());
            room.contains_rect(rect) && taken.iter().all(|other| !other.intersects(rect.shrink(1.0)))
        };
        // A name that has no room is left out: the pointer and the table tell it.
        if let Some(place) = places(&name, room, &galley).into_iter().find(fits) {
            let rect = Rect::from_min_size(place, galley.size());
            taken.push(rect);
            if frame.intersects(rect) {
                // Within the plot a name stands on its own line or on another that runs on: what is behind it is toned down.
                painter.rect_filled(rect, 3.0, palette.background.gamma_multiply(0.85));
            }
            painter.galley(place, galley, palette.text);
        }
    }
}

/// Returns the places for a name, the best first: to the right of the end, level with it or a little above or below; else just above the end, else
/// just below.
fn places(name: &Name, room: Rect, galley: &Galley) -> Vec<Pos2> {
    let (size, end) = (galley.size(), name.end);
    let level = (end.y - 0.5 * size.y).clamp(room.top(), (room.bottom() - size.y).max(room.top()));
    let left = (end.x - size.x - 4.0).min(room.right() - size.x - 4.0);
    let beside = NUDGES.into_iter().map(|steps| pos2(end.x + GAP, level + NUDGE * steps));
    beside.chain([pos2(left, end.y - size.y - 3.0), pos2(left, end.y + 4.0)]).collect()
}

fn job(name: &Name) -> LayoutJob {
    let mut job = LayoutJob::default();
    let font = if name.is_limit { plain(CAPTION) } else { bold(CAPTION) };
    let format = TextFormat { font_id: font, color: name.colour, ..Default::default() };
    for letter in &name.whose {
        job.append(&format!("{letter} "), 0.0, format.clone());
    }
    job.append(name.words, 0.0, format);
    job
}

/// Writes the names of the events in the rows above the plot; one that has no room stays nameless, and stands in the table.
fn events(ui: &Ui, strip: Rect, events: &[Event], x_of: &dyn Fn(f64) -> f32) {
    let palette = Palette::of(ui);
    let mut ends = vec![f32::NEG_INFINITY; (strip.height() / ROW) as usize];
    for Event { name, at } in events {
        let galley: Arc<Galley> = ui.painter().layout_no_wrap((*name).to_owned(), plain(CAPTION), palette.soft);
        let left = (x_of(*at) - 3.0).min(strip.right() - galley.size().x);
        // The lowest row first, next to its line.
        if let Some((row, end)) = ends.iter_mut().enumerate().find(|(_, end)| **end < left) {
            *end = left + galley.size().x + 8.0;
            ui.painter().galley(pos2(left, strip.bottom() - ROW * (row + 1) as f32 - 1.0), galley, palette.soft);
        }
    }
}
