//! The run as matter: layers as thick as what they weigh, vinegar round the cheeses, what leaves falling out of it and what joins rising into it.

use crate::curve::{Run, Side, Station};
use crate::ui::widget::matter::MatterColours;
use crate::ui::widget::theme::Palette;
use egui::{Color32, Mesh, Pos2, Rect, Shape, Stroke, Ui, pos2};

/// Thickness below which nothing would be seen.
pub(super) const THINNEST: f32 = 3.0;
/// Thickness below which what joins or leaves has its arrow alone.
const LEAST_STREAM: f32 = 3.0;
/// Steps in which the run turns from one thickness to the next.
const STEPS: u32 = 16;
/// Share of a station's room in which it does; the rest is level.
pub(super) const TURN: f32 = 0.34;
/// Gap between the cheeses and the vinegar round them.
const GAP: f32 = 1.5;
/// How far what leaves drifts on while it falls, and the width that it keeps at most.
const DRIFT: f32 = 14.0;
const WIDEST_FALL: f32 = 54.0;

/// Where a run lies, and how thick it is.
#[derive(Clone, Copy)]
pub(super) struct Flow {
    /// Where the first station begins.
    pub left: f32,
    /// The middle of the run.
    pub middle: f32,
    /// Width of a station.
    pub station: f32,
    /// Thickness of a kilogram.
    pub per_kg: f32,
    /// The line down to which things fall, and from which they rise.
    pub floor: f32,
}

/// The run at one place: thickness of each layer, and of the vinegar on each side.
#[derive(Clone, Copy, Default)]
struct Cross {
    layers: [f32; 4],
    around: f32,
}

impl Cross {
    fn of(station: &Station, per_kg: f32) -> Self {
        let true_size = station.layers.map(|layer| layer.mass_kg.max(0.0) as f32 * per_kg);
        let whole: f32 = true_size.iter().sum();
        // So thin that nothing would be seen, the run is drawn thicker as a whole.
        let times = if whole > 0.0 { (THINNEST / whole).max(1.0) } else { 0.0 };
        Self { layers: true_size.map(|layer| layer * times), around: 0.5 * station.around_kg as f32 * per_kg }
    }

    fn thick(&self) -> f32 {
        self.layers.iter().sum()
    }

    /// Returns what lies a share of the way to another.
    fn towards(&self, other: &Self, share: f32) -> Self {
        let between = |one: f32, other: f32| one + (other - one) * share;
        let mut layers = self.layers;
        for (layer, to) in layers.iter_mut().zip(other.layers) {
            *layer = between(*layer, to);
        }
        Self { layers, around: between(self.around, other.around) }
    }
}

/// Paints the run of one design.
pub(super) fn flow_ui(ui: &Ui, run: &Run, flow: &Flow) {
    let colours = MatterColours::of(ui);
    let mut before = run.stations.first().map(|station| Cross::of(station, flow.per_kg)).unwrap_or_default();
    for (place, station) in run.stations.iter().enumerate() {
        // A stage that was not calculated ends the run.
        if station.goes_on_kg.is_none() {
            break;
        }
        let now = Cross::of(station, flow.per_kg);
        let left = flow.left + place as f32 * flow.station;
        streams_ui(ui, station, flow, left, (&before, &now));
        let crosses: Vec<(f32, Cross)> = (0..=STEPS)
            .map(|step| step as f32 / STEPS as f32)
            .map(|share| (left + TURN * flow.station * share, before.towards(&now, share * share * (3.0 - 2.0 * share))))
            .chain(std::iter::once((left + flow.station, now)))
            .collect();
        cheese_ui(ui, station, flow.middle, &crosses, &colours);
        if now.around > 0.0 {
            let x = if before.around > 0.0 { left } else { left + TURN * flow.station };
            around_ui(ui, (x, left + flow.station), flow.middle, &now, colours.vinegar);
        }
        before = now;
    }
}

/// Paints the layers between cuts through the run, and the lines that bound it.
fn cheese_ui(ui: &Ui, station: &Station, middle: f32, crosses: &[(f32, Cross)], colours: &MatterColours) {
    let edge = Stroke::new(1.0, Palette::of(ui).edge);
    for (place, layer) in station.layers.iter().enumerate() {
        let between = crosses.iter().map(|(x, cross)| {
            let above: f32 = cross.layers.iter().take(place).sum();
            let top = middle - 0.5 * cross.thick() + above;
            (*x, top, top + cross.layers.get(place).copied().unwrap_or(0.0))
        });
        ui.painter().add(Shape::mesh(ribbon(between, colours.layer(layer.substance))));
    }
    for side in [-0.5, 0.5] {
        let line: Vec<Pos2> = crosses.iter().map(|(x, cross)| pos2(*x, middle + side * cross.thick())).collect();
        ui.painter().add(Shape::line(line, edge));
    }
}

/// Paints the vinegar above and below the cheeses.
fn around_ui(ui: &Ui, (from, to): (f32, f32), middle: f32, cross: &Cross, colour: Color32) {
    let half = 0.5 * cross.thick() + GAP;
    for (top, bottom) in [(middle - half - cross.around, middle - half), (middle + half, middle + half + cross.around)] {
        ui.painter().rect_filled(Rect::from_min_max(pos2(from, top), pos2(to, bottom)), 0.0, colour);
    }
}

/// Paints what falls out of the run at a station, and what rises into it, as thick as it weighs.
fn streams_ui(ui: &Ui, station: &Station, flow: &Flow, left: f32, (before, now): (&Cross, &Cross)) {
    let colours = MatterColours::of(ui);
    let turn = left + TURN * flow.station;
    let (high, low) = (flow.middle + 0.5 * now.thick(), flow.middle + 0.5 * before.thick());
    for stream in &station.streams {
        let thick = stream.mass_kg as f32 * flow.per_kg;
        // The vinegar that leaves the balance is that which lies round the cheeses.
        let stays = station.around_kg > 0.0 && stream.side == Side::Leaves;
        if thick < LEAST_STREAM || stays {
            continue;
        }
        let wide = thick.min(WIDEST_FALL);
        let corners = match stream.side {
            Side::Leaves => {
                [pos2(left, low), pos2(turn, high), pos2(turn + DRIFT, flow.floor), pos2(turn + DRIFT - wide, flow.floor)]
            }
            Side::Joins => {
                let reach = high + now.around;
                [pos2(left, flow.floor), pos2(left + wide, flow.floor), pos2(turn, reach), pos2(turn - 0.5 * wide, reach)]
            }
        };
        ui.painter().add(Shape::mesh(quadrilateral(corners, colours.stream(stream.like))));
    }
}

/// Returns the strip between two lines.
fn ribbon(between: impl Iterator<Item = (f32, f32, f32)>, colour: Color32) -> Mesh {
    let mut mesh = Mesh::default();
    for (x, top, bottom) in between {
        let next = u32::try_from(mesh.vertices.len()).unwrap_or(0);
        mesh.colored_vertex(pos2(x, top), colour);
        mesh.colored_vertex(pos2(x, bottom), colour);
        if next >= 2 {
            mesh.add_triangle(next - 2, next - 1, next);
            mesh.add_triangle(next - 1, next, next + 1);
        }
    }
    mesh
}

fn quadrilateral(corners: [Pos2; 4], colour: Color32) -> Mesh {
    let mut mesh = Mesh::default();
    for corner in corners {
        mesh.colored_vertex(corner, colour);
    }
    mesh.add_triangle(0, 1, 2);
    mesh.add_triangle(0, 2, 3);
    mesh
}
