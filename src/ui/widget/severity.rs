//! The sign of a severity, and its colours.

use crate::caution::Severity;
use crate::ui::widget::theme::Palette;
use egui::{Color32, Painter, Pos2, Sense, Shape, Stroke, Ui, pos2, vec2};

/// Returns the colours of a severity: text, ground.
pub(in crate::ui) fn colours(palette: &Palette, severity: Severity) -> (Color32, Color32) {
    match severity {
        Severity::Stop => (palette.stop_text, palette.stop_fill),
        Severity::Caution => (palette.caution_text, palette.caution_fill),
        Severity::Note => (palette.text, palette.panel),
    }
}

/// Draws the sign of a severity: a filled octagon, a triangle, a ring. The shape tells it without colour.
pub(in crate::ui) fn sign(ui: &mut Ui, severity: Severity, colour: Color32) {
    let (rect, _) = ui.allocate_exact_size(vec2(20.0, 20.0), Sense::hover());
    sign_at(ui.painter(), rect.center(), severity, colour);
}

/// Draws the sign around a point.
pub(in crate::ui) fn sign_at(painter: &Painter, centre: Pos2, severity: Severity, colour: Color32) {
    let ring = |corners: usize, radius: f32, turn: f32| -> Vec<egui::Pos2> {
        (0..corners)
            .map(|corner| {
                let angle = turn + std::f32::consts::TAU * corner as f32 / corners as f32;
                centre + radius * vec2(angle.sin(), -angle.cos())
            })
            .collect()
    };
    match severity {
        Severity::Stop => {
            painter.add(Shape::convex_polygon(ring(8, 9.0, std::f32::consts::PI / 8.0), colour, Stroke::NONE));
        }
        Severity::Caution => {
            painter.add(Shape::closed_line(ring(3, 9.5, 0.0), Stroke::new(2.0, colour)));
            painter.line_segment([pos2(centre.x, centre.y - 4.0), pos2(centre.x, centre.y + 1.5)], Stroke::new(2.0, colour));
        }
        Severity::Note => {
            painter.circle_stroke(centre, 8.0, Stroke::new(2.0, colour));
            painter.line_segment([pos2(centre.x, centre.y - 1.0), pos2(centre.x, centre.y + 4.0)], Stroke::new(2.0, colour));
        }
    }
}
