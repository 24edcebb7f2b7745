//! The run: as thick as the matter that flows, milk at the left; what joins and what leaves is at its stations.

use crate::caution::Severity;
use crate::curve::{Run, Side, SideStream, Station};
use crate::design::{Stage, Unit};
use crate::ui::run::flow::{Flow, flow_ui};
use crate::ui::run::weighed::weighed_ui;
use crate::ui::state::ask::Ask;
use crate::ui::widget::severity::sign_at;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold, plain, text_at};
use crate::units::Units;
use egui::{Align2, Color32, CornerRadius, FontId, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

/// Height of the titles.
const TITLES: f32 = 28.0;
/// Room of the sign of a warning to the right of a name.
const SIGN: f32 = 25.0;

/// One run in the picture.
pub(in crate::ui) struct Lane<'a> {
    /// What comes before its words where there are two: "A".
    pub name: Option<&'static str>,
    /// What it is made of.
    pub run: &'a Run,
    /// The colour of its letter.
    pub colour: Color32,
    /// The stations of which a choice causes a caution, with the gravest.
    pub worst: &'a [(Stage, Severity)],
    /// What really went on from some stations of the batch in sight of the log, kg.
    pub weighed: &'a [(Stage, f64)],
}

impl Lane<'_> {
    fn worst_at(&self, stage: Stage) -> Option<Severity> {
        self.worst.iter().find(|(at, _)| *at == stage).map(|(_, severity)| *severity)
    }
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
        // Alone, a run has the words of its stations beside their titles.
        Measures { high: 84.0, words: 2.0, thickest: 56.0, streams: 24.0 }
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
    let mut asked = None;
    for (row, lane) in lanes.iter().enumerate() {
        let top = rect.top() + TITLES + row as f32 * measures.high;
        let flow = Flow {
            left: rect.left(),
            middle: top + measures.words + 0.5 * measures.thickest,
            station: width,
            per_kg: measures.thickest / heaviest as f32,
            floor: top + measures.high - measures.streams,
        };
        flow_ui(ui, lane.run, &flow);
        weighed_ui(ui, lane.run, lane.weighed, &flow);
        for (place, station) in lane.run.stations.iter().enumerate() {
            let left = rect.left() + place as f32 * width;
            // The title belongs to the button of the first run.
            let from = if row == 0 { rect.top() } else { top };
            let own = Rect::from_min_max(pos2(left, from), pos2(left + width, top + measures.high));
            if row == 0 {
                let whole = Rect::from_min_size(pos2(left, rect.top()), vec2(width, rect.height()));
                title_ui(ui, whole, station.stage, station.stage == chosen);
            }
            if station_ui(ui, units, own, station, lane, measures) {
                asked = Some(Ask::Station(station.stage));
            }
        }
    }
    asked
}

/// Writes the title of a station and marks it where it is the chosen one.
fn title_ui(ui: &Ui, rect: Rect, stage: Stage, chosen: bool) {
    let palette = Palette::of(ui);
    if chosen {
        ui.painter().rect_stroke(rect.shrink(3.0), CornerRadius::same(8), Stroke::new(2.0, palette.link), egui::StrokeKind::Inside);
    }
    let (title, font) = (stage.short_title(), title_font(ui, stage, rect.width()));
    ui.painter().text(pos2(rect.left() + 14.0, rect.top() + 8.0), Align2::LEFT_TOP, title, font, palette.text);
}

fn title_font(ui: &Ui, stage: Stage, width: f32) -> FontId {
    if fits(ui, stage.short_title(), &bold(BODY), width - 20.0) { bold(BODY) } else { bold(CAPTION) }
}

/// Returns the width of a station's title in a station so wide.
fn title_width(ui: &Ui, stage: Stage, width: f32) -> f32 {
    ui.painter().layout_no_wrap(stage.short_title().to_owned(), title_font(ui, stage, width), Color32::WHITE).size().x
}

/// Draws one station of one run as a button; returns whether it was chosen.
fn station_ui(ui: &mut Ui, units: Units, rect: Rect, station: &Station, lane: &Lane<'_>, measures: Measures) -> bool {
    let palette = Palette::of(ui);
    let id = ui.make_persistent_id(("station", station.stage.key(), lane.name));
    let response = ui.interact(rect.shrink(2.0), id, Sense::click());
    let mut words = lane.name.map_or_else(|| in_words(station, units), |name| format!("{name}: {}", in_words(station, units)));
    if let Some((_, kg)) = lane.weighed.iter().find(|(stage, _)| *stage == station.stage) {
        words = format!("{words}; by the log {}", mass(*kg, units));
    }
    if let Some(severity) = lane.worst_at(station.stage) {
        words = format!("{words}; {}", warned(severity));
    }
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &words));
    if response.hovered() {
        ui.painter().rect_stroke(rect.shrink(3.0), CornerRadius::same(8), Stroke::new(1.0, palette.edge), egui::StrokeKind::Inside);
    }
    let worst = lane.worst_at(station.stage);
    let right = rect.right() - 6.0;
    let mut left = rect.left() + 14.0;
    let mut top = rect.bottom() - measures.high;
    if let Some(name) = lane.name {
        left = ui.painter().text(pos2(left, top), Align2::LEFT_TOP, name, bold(CAPTION), lane.colour).right() + 6.0;
    } else {
        (left, top) = (left + title_width(ui, station.stage, rect.width()) + 8.0, rect.top() + 10.0);
    }
    if let Some(severity) = worst {
        let colour = if severity == Severity::Stop { palette.stop_fill } else { palette.caution_text };
        // Next to the name that it belongs to.
        sign_at(ui.painter(), pos2(left + 9.0, top + 11.0), severity, colour);
        left += SIGN;
    }
    // Where there is no room for the whole, the shorter words: the rest is in the station's name.
    let [whole, short] = station.goes_on_kg.map_or_else(
        || ["not calculated".to_owned(), "no result".to_owned()],
        |kg| [format!("{}, {:.0} % water", mass(kg, units), station.moisture_percent.unwrap_or(0.0)), mass(kg, units)],
    );
    if let Some(line) = [whole, short].into_iter().find(|words| fits(ui, words, &plain(CAPTION), right - left)) {
        text_at(ui, pos2(left, top), Align2::LEFT_TOP, &line, CAPTION, palette.soft);
    }
    streams(ui, units, rect.with_min_y(rect.bottom() - measures.streams), station);
    response.on_hover_text(words).clicked()
}

/// Returns whether words have room in a width.
fn fits(ui: &Ui, words: &str, font: &FontId, width: f32) -> bool {
    ui.painter().layout_no_wrap(words.to_owned(), font.clone(), Color32::WHITE).size().x <= width
}

/// Writes what joins and leaves on one line, as much as there is room for.
fn streams(ui: &Ui, units: Units, rect: Rect, station: &Station) {
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
        arrow(ui, tip, stream.side, palette.soft);
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

/// Returns what a station's sign means.
const fn warned(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => "a choice at this station causes a serious warning",
        Severity::Caution | Severity::Note => "a choice at this station causes a caution",
    }
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
