//! A small picture of a cheese, to scale.

use crate::session::{CheeseSize, ExampleCard};
use crate::ui::widget::matter::MatterColours;
use crate::ui::widget::theme::Palette;
use egui::{Pos2, Rect, Shape, Stroke, StrokeKind, Ui, vec2};

/// Height of a picture, and most of it that a cheese takes.
pub(in crate::ui) const HIGH: f32 = 58.0;
const MARGIN: f32 = 4.0;

/// Returns the scale at which the cheeses of all examples fit into pictures so wide, points for each mm.
pub(in crate::ui) fn scale<'a>(cards: impl Iterator<Item = &'a ExampleCard>, width: f32) -> f32 {
    let (mut widest, mut highest) = (1.0_f64, 1.0_f64);
    for size in cards.flat_map(|card| card.drained.into_iter().chain(card.dried)) {
        (widest, highest) = (widest.max(size.diameter_mm), highest.max(size.thickness_mm));
    }
    ((width - 2.0 * MARGIN) / widest as f32).min((HIGH - 2.0 * MARGIN) / highest as f32)
}

/// Paints a cheese from the side: dashed as it leaves its mould, filled as it is dried, in layers of what it is made of.
pub(in crate::ui) fn picture(ui: &Ui, place: Rect, card: &ExampleCard, per_mm: f32) {
    let (palette, colours) = (Palette::of(ui), MatterColours::of(ui));
    let ground = place.left_bottom() + vec2(MARGIN, -MARGIN);
    if let Some(dried) = card.dried {
        let cheese = standing(ground, dried, per_mm);
        let whole_kg: f64 = card.layers.iter().map(|layer| layer.mass_kg).sum();
        let mut bottom = cheese.bottom();
        for layer in card.layers.iter().rev().filter(|_| whole_kg > 0.0) {
            let top = bottom - cheese.height() * (layer.mass_kg / whole_kg) as f32;
            let band = Rect::from_x_y_ranges(cheese.x_range(), top..=bottom);
            ui.painter().rect_filled(band, 0.0, colours.layer(layer.substance));
            bottom = top;
        }
        ui.painter().rect_stroke(cheese, 2.0, Stroke::new(1.0, palette.soft), StrokeKind::Inside);
    }
    if let Some(drained) = card.drained {
        let outline = standing(ground, drained, per_mm);
        let corners =
            [outline.left_bottom(), outline.left_top(), outline.right_top(), outline.right_bottom(), outline.left_bottom()];
        ui.painter().add(Shape::Vec(Shape::dashed_line(&corners, Stroke::new(1.0, palette.edge), 4.0, 3.0)));
    }
}

/// Returns where a cheese stands.
fn standing(ground: Pos2, size: CheeseSize, per_mm: f32) -> Rect {
    let (wide, high) = (per_mm * size.diameter_mm as f32, per_mm * size.thickness_mm as f32);
    Rect::from_min_size(ground - vec2(0.0, high), vec2(wide, high))
}
