//! What is filled at a station, to scale: pot and bath, mould, tray, jar.

use crate::curve::{Content, Seen, Vessel};
use crate::design::Unit;
use crate::ui::widget::matter::MatterColours;
use crate::ui::widget::theme::{CAPTION, Palette, plain};
use crate::units::Units;
use egui::{Align2, Label, Pos2, Rect, RichText, Role, Sense, Stroke, StrokeKind, Ui, WidgetInfo, pos2, vec2};

/// Least height at which a vessel is drawn, and the greatest.
pub(super) const LEAST: f32 = 84.0;
const MOST: f32 = 300.0;
/// Room beside it for its height, and below it for its width.
const BESIDE: f32 = 56.0;
const BELOW: f32 = 20.0;

/// Draws a vessel with its caption in so much height.
pub(super) fn vessel_ui(ui: &mut Ui, units: Units, vessel: &Vessel, height: f32) {
    let (palette, colours) = (Palette::of(ui), MatterColours::of(ui));
    let top_mm = vessel.pieces.iter().map(|piece| piece.bottom_mm + piece.height_mm).fold(vessel.height_mm, f64::max);
    let high = height.min(MOST) - BELOW;
    let per_mm = (high / top_mm as f32).min((ui.available_width() - BESIDE) / vessel.width_mm as f32);
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), per_mm * top_mm as f32 + BELOW), Sense::hover());
    // In the middle of its place, with the height beside it.
    let left = rect.center().x - 0.5 * (per_mm * vessel.width_mm as f32 + BESIDE);
    let corner = pos2(left.max(rect.left() + 1.0), rect.bottom() - BELOW);
    let at = |x_mm: f64, y_mm: f64| corner + per_mm * vec2(x_mm as f32, -y_mm as f32);
    for piece in &vessel.pieces {
        let place = Rect::from_two_pos(
            at(piece.left_mm, piece.bottom_mm),
            at(piece.left_mm + piece.width_mm, piece.bottom_mm + piece.height_mm),
        );
        let (fill, edge) = match piece.content {
            Content::Milk => (colours.water, palette.soft),
            Content::Bath => (colours.water.gamma_multiply(0.35), palette.grid),
            Content::Curd => (colours.water.gamma_multiply(0.55), palette.grid),
            Content::Cheese => (colours.curd, palette.soft),
            Content::Vinegar => (colours.vinegar.gamma_multiply(0.55), palette.grid),
        };
        let stroke = Stroke::new(1.0, edge);
        match vessel.seen {
            Seen::Side => ui.painter().rect(place, 2.0, fill, stroke, StrokeKind::Inside),
            Seen::Above => ui.painter().circle(place.center(), 0.5 * place.width(), fill, stroke),
        };
    }
    let wall = Stroke::new(2.0, palette.soft);
    let (left, right) = (at(0.0, vessel.height_mm), at(vessel.width_mm, vessel.height_mm));
    let mut walls = vec![left, at(0.0, 0.0), at(vessel.width_mm, 0.0), right];
    // Seen from above it has a wall all round.
    walls.extend((vessel.seen == Seen::Above).then_some(left));
    ui.painter().line(walls, wall);
    let name = |place: Pos2, anchor: Align2, mm: f64| {
        let words = units.text(Unit::Millimetre, mm, 0).unwrap_or_else(|| format!("{mm:.0} mm"));
        ui.painter().text(place, anchor, words, plain(CAPTION), palette.soft);
    };
    name(pos2(right.x + 6.0, 0.5 * (right.y + corner.y)), Align2::LEFT_CENTER, vessel.height_mm);
    name(pos2(0.5 * (left.x + right.x), corner.y + 2.0), Align2::CENTER_TOP, vessel.width_mm);
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, format!("To scale: {}", vessel.caption)));
    ui.add(Label::new(RichText::new(units.told(&vessel.caption)).size(CAPTION).color(palette.soft)).wrap());
}
