//! The ring around what has the focus of the keyboard.

use crate::ui::widget::theme::Palette;
use egui::{CornerRadius, Stroke, Ui};

/// Draws the ring around what has the focus of the keyboard.
pub(in crate::ui) fn focus_ring(ui: &Ui, response: &egui::Response) {
    if response.has_focus() {
        let ring = response.rect.expand(2.0);
        ui.painter().rect_stroke(ring, CornerRadius::same(8), Stroke::new(2.0, Palette::of(ui).link), egui::StrokeKind::Outside);
    }
}
