//! The pin next to a number: what is pinned, no target may move.

use crate::design::Field;
use crate::ui::widget::theme::Palette;
use egui::{Color32, Painter, Pos2, Role, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo, vec2};

/// Width of its place.
pub(in crate::ui) const PIN_WIDTH: f32 = 24.0;

/// How far the pin leans to the right.
const LEAN: f32 = 0.62;
/// Half widths across the pin and distances along it from its middle, of the cap, the waist, the collar and the needle.
const CAP: (f32, f32) = (4.5, -8.0);
const CAP_FOOT: f32 = -5.5;
const WAIST: f32 = 2.4;
const COLLAR: (f32, f32) = (5.5, 1.5);
const WAIST_FOOT: f32 = -1.0;
const NEEDLE: f32 = 9.0;

/// Draws the pin of a choice, filled where it is in; returns whether it was chosen.
pub(in crate::ui) fn pin_ui(ui: &mut Ui, field: &'static Field, pinned: bool) -> bool {
    let (rect, response) = ui.allocate_exact_size(vec2(PIN_WIDTH, 26.0), Sense::CLICK);
    // No stop of the Tab key: on the slider below it the key P does the same.
    let palette = Palette::of(ui);
    let colour = if pinned || response.hovered() || response.has_focus() { palette.link } else { palette.edge };
    paint_pin(ui.painter(), rect.center(), colour, if pinned { colour } else { palette.background });
    let does = if pinned { "pinned; unpin" } else { "pin" };
    response.widget_info(|| WidgetInfo::selected(Role::CheckBox, true, pinned, format!("{}: {does}", field.label)));
    let help = if pinned {
        "Pinned: a target leaves it alone. Select to unpin, or press P on the slider."
    } else {
        "Pin it (or press P on the slider): a target then leaves it alone."
    };
    response.on_hover_text(help).clicked()
}

/// Paints a drawing pin that leans: a cap and a waist, a collar below them, and the needle.
fn paint_pin(painter: &Painter, centre: Pos2, colour: Color32, fill: Color32) {
    let along = Vec2::angled(std::f32::consts::FRAC_PI_2 + LEAN);
    let across = along.rot90();
    let at = |wide: f32, far: f32| centre + wide * across + far * along;
    let stroke = Stroke::new(1.4, colour);
    let plate = |half: f32, from: f32, to: f32| vec![at(-half, from), at(half, from), at(half, to), at(-half, to)];
    painter.line_segment([at(0.0, COLLAR.1), at(0.0, NEEDLE)], stroke);
    painter.add(Shape::convex_polygon(plate(WAIST, CAP_FOOT, COLLAR.1), fill, stroke));
    painter.add(Shape::convex_polygon(plate(CAP.0, CAP.1, CAP_FOOT), fill, stroke));
    let collar = vec![at(-WAIST, WAIST_FOOT), at(WAIST, WAIST_FOOT), at(COLLAR.0, COLLAR.1), at(-COLLAR.0, COLLAR.1)];
    painter.add(Shape::convex_polygon(collar, fill, stroke));
}
