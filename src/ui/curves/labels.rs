//! The names in a plot: of each line at its end, of each event at the top, none over another.

use crate::curve::{Event, Role, Series};
use crate::ui::curves::plotted::PlottedCurves;
use crate::ui::widget::theme::{CAPTION, Palette, bold, plain};
use egui::text::{LayoutJob, TextFormat};
use egui::{Color32, Galley, Pos2, Rect, Ui, pos2};
use egui_plot::PlotResponse;
use std::sync::Arc;

/// Ends of the same line of two designs that are nearer to each other have one name, points across and down.
const ONE_NAME: (f32, f32) = (90.0, 10.0);

/// The name of one line, or of the same line of both designs.
struct Name {
    /// The designs that it is of, in their colours; none where there is but one.
    whose: Vec<(&'static str, Color32)>,
    /// What the line is.
    words: &'static str,
    /// Whether it is a limit.
    is_limit: bool,
    /// Where the line ends.
    end: Pos2,
}

/// Writes the name of each line at its end and of each event at the top, where there is room.
pub(in crate::ui) fn labels_ui(ui: &Ui, drawn: &PlottedCurves<'_>, response: &PlotResponse<()>) {
    let frame = *response.transform.frame();
    let taken = lines(ui, frame, names(drawn, response, &Palette::of(ui)));
    let x_of = |at: f64| response.transform.position_from_point(&egui_plot::PlotPoint::new(at, drawn.a.y.most)).x;
    events(ui, frame, &drawn.a.events, &taken, &x_of);
}

/// Returns the names of all lines: the limits first, since they have the fewest places; then from the highest end down, so that names stand
/// in the order of their lines.
fn names(drawn: &PlottedCurves<'_>, response: &PlotResponse<()>, palette: &Palette) -> Vec<Name> {
    let end_of = |series: &Series| {
        let [x, y] = series.points.last().copied()?;
        Some(response.transform.position_from_point(&egui_plot::PlotPoint::new(x, y)))
    };
    let mut names: Vec<Name> = Vec::new();
    let two = drawn.b.is_some();
    for (series, whose) in drawn
        .a
        .series
        .iter()
        .map(|series| (series, ("A", palette.design)))
        .chain(drawn.b.into_iter().flat_map(|b| &b.series).map(|series| (series, ("B", palette.second))))
    {
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
            names.push(Name { whose: vec![whose], words: series.name, is_limit, end });
        }
    }
    for name in &mut names {
        if !two || name.is_limit {
            name.whose.clear();
        }
    }
    names.sort_by(|one, other| other.is_limit.cmp(&one.is_limit).then(one.end.y.total_cmp(&other.end.y)));
    names
}

/// Writes the names of lines; returns the places that they take.
fn lines(ui: &Ui, frame: Rect, names: Vec<Name>) -> Vec<Rect> {
    let palette = Palette::of(ui);
    let painter = ui.painter().with_clip_rect(frame.expand(2.0));
    let mut taken: Vec<Rect> = Vec::new();
    let mut below = f32::NEG_INFINITY;
    for name in names {
        // Where there is no room for the whole name, the letter of the design alone.
        let short = (!name.whose.is_empty()).then_some("");
        let found = std::iter::once(name.words).chain(short).find_map(|words| {
            let galley = ui.painter().layout_job(job(&name.whose, words, palette.text));
            let fits = |place: &Pos2| {
                let rect = Rect::from_min_size(*place, galley.size());
                frame.contains_rect(rect) && taken.iter().all(|other| !other.intersects(rect))
            };
            let place = places(&name, frame, &galley, below).into_iter().find(fits)?;
            Some((place, galley))
        });
        if let Some((place, galley)) = found {
            if !name.is_limit {
                below = place.y + galley.size().y + 1.0;
            }
            let rect = Rect::from_min_size(place, galley.size());
            taken.push(rect);
            if !name.whose.is_empty() || place.x < name.end.x {
                // With two designs there are lines everywhere, and left of its end a name stands on its own line: what runs behind is toned down.
                painter.rect_filled(rect, 3.0, palette.background.gamma_multiply(0.75));
            }
            painter.galley(place, galley, palette.text);
        }
    }
    taken
}

/// Returns the places for a name, the best first: to the right of the end, below the name of the line above it; else just above the end,
/// else just below, else below the name of the line above it. The last is for a limit, which runs across the whole plot: its name may stand
/// anywhere above it.
fn places(name: &Name, frame: Rect, galley: &Galley, below: f32) -> [Pos2; 5] {
    let (size, end) = (galley.size(), name.end);
    let left = (end.x - size.x - 4.0).min(frame.right() - size.x - 4.0);
    let along = if name.is_limit { frame.left() + 0.45 * frame.width() } else { f32::NAN };
    [
        pos2(end.x + 6.0, (end.y - 0.5 * size.y).max(below)),
        pos2(left, end.y - size.y - 3.0),
        pos2(left, end.y + 4.0),
        pos2(left, (end.y + 4.0).max(below)),
        pos2(along, end.y - size.y - 2.0),
    ]
}

fn job(whose: &[(&'static str, Color32)], words: &str, text: Color32) -> LayoutJob {
    let mut job = LayoutJob::default();
    let mut add = |words: &str, font, color| job.append(words, 0.0, TextFormat { font_id: font, color, ..Default::default() });
    for (letter, colour) in whose {
        add(&format!("{letter} "), bold(CAPTION), *colour);
    }
    add(words, plain(CAPTION), text);
    job
}

/// Height of a plot for each row of events, so that a low one keeps its lines free.
const ROW_WANTS: f32 = 36.0;

/// Writes the names of the events, in up to three rows at the top.
fn events(ui: &Ui, frame: Rect, events: &[Event], taken: &[Rect], x_of: &dyn Fn(f64) -> f32) {
    let palette = Palette::of(ui);
    let painter = ui.painter().with_clip_rect(frame.expand(2.0));
    let mut rows = [f32::NEG_INFINITY; 3];
    for Event { name, at } in events {
        let galley: Arc<Galley> = painter.layout_no_wrap((*name).to_owned(), plain(CAPTION), palette.soft);
        let size = galley.size();
        let left = (x_of(*at) + 3.0).min(frame.right() - size.x);
        let free = |(row, end): (usize, &f32)| {
            let rect = Rect::from_min_size(pos2(left, frame.top() + 15.0 * row as f32), size);
            *end < left && taken.iter().all(|other| !other.intersects(rect))
        };
        let most = (frame.height() / ROW_WANTS).max(1.0) as usize;
        if let Some(row) = rows.iter().enumerate().take(most).find(|place| free(*place)).map(|(row, _)| row)
            && let Some(end) = rows.get_mut(row)
        {
            *end = left + size.x + 6.0;
            painter.galley(pos2(left, frame.top() + 15.0 * row as f32), galley, palette.soft);
        }
    }
}
