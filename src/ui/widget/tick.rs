//! A box that is ticked or not, with its label.

use crate::ui::widget::theme::Palette;
use egui::{RichText, Stroke, Ui};

/// Draws the box and its label; returns whether it was ticked or unticked just now.
pub(in crate::ui) fn tick_ui(ui: &mut Ui, ticked: bool, label: &str) -> bool {
    let palette = Palette::of(ui);
    ui.scope(|ui| {
        let widgets = &mut ui.visuals_mut().widgets;
        for (look, edge) in [(&mut widgets.inactive, 1.0), (&mut widgets.hovered, 2.0), (&mut widgets.active, 2.0)] {
            // The fill of other controls is that of the handle of a scroll bar, on which a tick cannot be seen.
            look.bg_fill = palette.background;
            look.bg_stroke = Stroke::new(edge, palette.text);
            look.fg_stroke = Stroke::new(2.0, palette.link);
        }
        let mut now = ticked;
        ui.checkbox(&mut now, RichText::new(label).color(palette.text)).changed()
    })
    .inner
}
