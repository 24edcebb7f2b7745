//! What really went on from a station, as a line round the run where it was weighed.

use crate::curve::Run;
use crate::design::Stage;
use crate::ui::run::flow::{Flow, THINNEST, TURN};
use crate::ui::widget::theme::Palette;
use egui::{Shape, Stroke, Ui, pos2};

/// Length of a dash, and of the gap after it.
const DASH: f32 = 5.0;
const GAP: f32 = 3.0;

/// Draws as thick as it was weighed what goes on from some stations: above and below the run where it was more, within it where it was less.
pub(super) fn weighed_ui(ui: &Ui, run: &Run, weighed: &[(Stage, f64)], flow: &Flow) {
    let stroke = Stroke::new(2.0, Palette::of(ui).text);
    for (stage, kg) in weighed {
        let Some(place) = run.stations.iter().position(|station| station.stage == *stage) else { continue };
        let left = flow.left + (place as f32 + TURN) * flow.station;
        let right = flow.left + (place as f32 + 1.0) * flow.station;
        let half = 0.5 * (*kg as f32 * flow.per_kg).max(THINNEST);
        for y in [flow.middle - half, flow.middle + half] {
            ui.painter().extend(Shape::dashed_line(&[pos2(left, y), pos2(right, y)], stroke, DASH, GAP));
        }
    }
}
