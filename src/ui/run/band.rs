//! The run: a run as thick as the matter that flows, milk at the left; what joins and what leaves is at its stations.

use crate::curve::{Run, Side, SideStream, Station};
use crate::design::{Stage, Unit};
use crate::ui::state::ask::Ask;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold, plain, text_at};
use crate::units::Units;
use egui::{Align2, Color32, CornerRadius, FontId, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

/// Height of the titles.
const TITLES: f32 = 28.0;
/// Thickness below which nothing would be seen.
const THINNEST: f32 = 3.0;

/// One run in the picture.
pub(in crate::ui) struct Lane<'a> {
    /// What comes before its words where there are two: "A".
    pub name: Option<&'static str>,
    /// What it is made of.
    pub run: &'a Run,
    /// Its colour.
    pub colour: Color32,
}

/// Where things lie in one run.
#[derive(Clone, Copy)]
struct Measures {
    /// Height of the whole.
    high: f32,
    /// From the top of its words to the top of its heaviest part.
    words: f32,
    /// Thickness of that.
    thickest: f32,
    /// From the line of what joins and leaves to the bottom.
    streams: f32,
}

/// Returns where things lie in each of so many runs.
const fn measures(lanes: usize) -> Measures {
    if lanes < 2 {
        Measures { high: 84.0, words: 22.0, thickest: 40.0, streams: 24.0 }
    } else {
        Measures { high: 60.0, words: 20.0, thickest: 18.0, streams: 22.0 }
    }
}

/// Returns the height of the whole picture with so many runs.
pub(in crate::ui) fn height(lanes: usize) -> f32 {
    TITLES + measures(lanes).high * lanes as f32
}

/// Draws the runs above each other, with one scale of mass, and returns the station that is asked for.
pub(in crate::ui) fn run_ui(ui: &mut Ui, units: Units, lanes: &[Lane<'_>], chosen: Stage) -> Option<Ask> {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), height(lanes.len())), Sense::hover());
    let measures = measures(lanes.len());
    let count = lanes.first().map_or(1, |lane| lane.run.stations.len().max(1));
    let width = rect.width() / count as f32;
    let heaviest = lanes.iter().map(|lane| lane.run.heaviest_kg()).fold(f64::MIN_POSITIVE, f64::max);
    let thickness = |station: &Station| station.goes_on_kg.map(|kg| ((kg / heaviest) as f32 * measures.thickest).max(THINNEST));
    let mut asked = None;
    for (row, lane) in lanes.iter().enumerate() {
        let top = rect.top() + TITLES + row as f32 * measures.high;
        let middle = top + measures.words + 0.5 * measures.thickest;
        let thick: Vec<Option<f32>> = lane.run.stations.iter().map(thickness).collect();
        paint_band(ui, pos2(rect.left(), middle), width, &thick, lane.colour);
        for (place, station) in lane.run.stations.iter().enumerate() {
            let left = rect.left() + place as f32 * width;
            // The title belongs to the button of the first run.
            let from = if row == 0 { rect.top() } else { top };
            let own = Rect::from_min_max(pos2(left, from), pos2(left + width, top + measures.high));
            if station_ui(ui, units, own, station, lane, measures) {
                asked = Some(Ask::Station(station.stage));
            }
            if row == 0 {
                let whole = Rect::from_min_size(pos2(left, rect.top()), vec2(width, rect.height()));
                title_ui(ui, whole, station.stage, station.stage == chosen);
            }
        }
    }
    asked
}

/// Steps in which the run turns from one thickness to the next.
const TURN_STEPS: u32 = 16;

/// Paints the run: level at each station, smooth between. One mesh, so that no seams show.
fn paint_band(ui: &Ui, start: Pos2, width: f32, thickness: &[Option<f32>], colour: Color32) {
    let colour = colour.gamma_multiply(0.32);
    let middle = start.y;
    let mut mesh = egui::Mesh::default();
    let mut before = thickness.first().copied().flatten().unwrap_or(THINNEST);
    for (place, now) in thickness.iter().enumerate() {
        // A stage that was not calculated ends the run.
        let Some(now) = *now else { break };
        let left = start.x + place as f32 * width;
        for step in 0..=TURN_STEPS {
            let share = step as f32 / TURN_STEPS as f32;
            // The change happens in the first third of a station's room; the rest is level.
            edge(
                &mut mesh,
                left + 0.34 * width * share,
                middle,
                before + (now - before) * share * share * (3.0 - 2.0 * share),
                colour,
            );
        }
        edge(&mut mesh, left + width, middle, now, colour);
        before = now;
    }
    ui.painter().add(Shape::mesh(mesh));
}

/// Adds one cut through the run, joined to the cut before it.
fn edge(mesh: &mut egui::Mesh, x: f32, middle: f32, thick: f32, colour: Color32) {
    let next = u32::try_from(mesh.vertices.len()).unwrap_or(0);
    mesh.colored_vertex(pos2(x, middle - 0.5 * thick), colour);
    mesh.colored_vertex(pos2(x, middle + 0.5 * thick), colour);
    if next >= 2 {
        mesh.add_triangle(next - 2, next - 1, next);
        mesh.add_triangle(next - 1, next, next + 1);
    }
}

/// Writes the title of a station and marks it where it is the chosen one.
fn title_ui(ui: &Ui, rect: Rect, stage: Stage, chosen: bool) {
    let palette = Palette::of(ui);
    if chosen {
        ui.painter().rect_stroke(rect.shrink(3.0), CornerRadius::same(8), Stroke::new(2.0, palette.link), egui::StrokeKind::Inside);
    }
    let title = stage.short_title();
    let font = if fits(ui, title, &bold(BODY), rect.width() - 20.0) { bold(BODY) } else { bold(CAPTION) };
    ui.painter().text(pos2(rect.left() + 14.0, rect.top() + 8.0), Align2::LEFT_TOP, title, font, palette.text);
}

/// Draws one station of one run as a button; returns whether it was chosen.
fn station_ui(ui: &mut Ui, units: Units, rect: Rect, station: &Station, lane: &Lane<'_>, measures: Measures) -> bool {
    let palette = Palette::of(ui);
    let id = ui.make_persistent_id(("station", station.stage.key(), lane.name));
    let response = ui.interact(rect.shrink(2.0), id, Sense::click());
    let words = lane.name.map_or_else(|| in_words(station, units), |name| format!("{name}: {}", in_words(station, units)));
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &words));
    if response.hovered() {
        ui.painter().rect_stroke(rect.shrink(3.0), CornerRadius::same(8), Stroke::new(1.0, palette.edge), egui::StrokeKind::Inside);
    }
    let mut left = rect.left() + 14.0;
    let top = rect.bottom() - measures.high;
    if let Some(name) = lane.name {
        left = ui.painter().text(pos2(left, top), Align2::LEFT_TOP, name, bold(CAPTION), lane.colour).right() + 6.0;
    }
    // Where there is no room for the whole, the shorter words: the rest is in the station's name.
    let [whole, short] = station.goes_on_kg.map_or_else(
        || ["not calculated".to_owned(), "no result".to_owned()],
        |kg| [format!("{}, {:.0} % water", mass(kg, units), station.moisture_percent.unwrap_or(0.0)), mass(kg, units)],
    );
    let line = if fits(ui, &whole, &plain(CAPTION), rect.right() - 6.0 - left) { whole } else { short };
    text_at(ui, pos2(left, top), Align2::LEFT_TOP, &line, CAPTION, palette.soft);
    streams(ui, units, rect.with_min_y(rect.bottom() - measures.streams), station, lane.colour);
    response.on_hover_text(words).clicked()
}

/// Returns whether words have room in a width.
fn fits(ui: &Ui, words: &str, font: &FontId, width: f32) -> bool {
    ui.painter().layout_no_wrap(words.to_owned(), font.clone(), Color32::WHITE).size().x <= width
}

/// Writes what joins and leaves on one line, as much as there is room for.
fn streams(ui: &Ui, units: Units, rect: Rect, station: &Station, colour: Color32) {
    let palette = Palette::of(ui);
    let mut left = rect.left() + 14.0;
    // The heaviest first: where room is short, it is the one to name.
    let mut heaviest: Vec<&SideStream> = station.streams.iter().collect();
    heaviest.sort_by(|one, other| other.mass_kg.total_cmp(&one.mass_kg));
    for stream in heaviest {
        let words = short(stream, units);
        let galley = ui.painter().layout_no_wrap(words, plain(CAPTION), palette.text);
        if left + 14.0 + galley.size().x > rect.right() - 6.0 {
            break;
        }
        let tip = pos2(left + 4.0, rect.top() + 10.0);
        arrow(ui, tip, stream.side, colour);
        let width = galley.size().x;
        ui.painter().galley(pos2(left + 13.0, rect.top()), galley, palette.text);
        left += width + 26.0;
    }
}

/// Draws a small arrow: up into the run, or down out of it.
fn arrow(ui: &Ui, centre: Pos2, side: Side, colour: Color32) {
    let up = if side == Side::Joins { 1.0 } else { -1.0 };
    let points = vec![centre - vec2(0.0, 5.0 * up), centre + vec2(4.5, 3.5 * up), centre + vec2(-4.5, 3.5 * up)];
    ui.painter().add(Shape::convex_polygon(points, colour, Stroke::NONE));
}

fn short(stream: &SideStream, units: Units) -> String {
    format!("{} {}", stream.name, mass(stream.mass_kg, units))
}

fn mass(kg: f64, units: Units) -> String {
    // As finely as the picture shows it in grams and kilograms.
    let (unit, value, decimals) = match kg {
        kg if kg < 0.0995 => (Unit::Gram, 1000.0 * kg, 0),
        kg if kg < 9.995 => (Unit::Kilogram, kg, 2),
        kg => (Unit::Kilogram, kg, 1),
    };
    units.text(unit, value, decimals).unwrap_or_else(|| format!("{value:.decimals$} {}", unit.symbol()))
}

/// Returns a station in one sentence.
fn in_words(station: &Station, units: Units) -> String {
    if let Some(why) = &station.stopped_because {
        return format!("{}: not calculated; {}", station.stage.title(), units.told(why));
    }
    let streams = |side, word: &str| {
        let names: Vec<String> =
            station.streams.iter().filter(|stream| stream.side == side).map(|stream| short(stream, units)).collect();
        if names.is_empty() { String::new() } else { format!("; {word} {}", names.join(", ")) }
    };
    format!(
        "{}: {} with {:.0} % water goes on{}{}",
        station.stage.title(),
        mass(station.goes_on_kg.unwrap_or(0.0), units),
        station.moisture_percent.unwrap_or(0.0),
        streams(Side::Joins, "added:"),
        streams(Side::Leaves, "removed:")
    )
}
