//! The foot: the few figures that are always in sight, and what the last change did.

use super::results::sign;
use super::theme::{BODY, CAPTION, FOOT, Palette, bold, plain};
use crate::batch::{Batch, Severity, hours_in_words, summary};
use egui::{RichText, Role, Ui, WidgetInfo};

/// Width of a sign and the gap after it.
const SIGN_ROOM: f32 = 28.0;

/// Draws the foot.
pub(super) fn foot_ui(ui: &mut Ui, batch: &Batch, last_change: &str) {
    let palette = Palette::of(ui);
    let summary = summary(batch);
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let unknown = || "–".to_owned();
        figure(ui, "cheeses", &summary.cheese_count.map_or_else(unknown, |count| count.to_string()), false);
        figure(ui, "each", &summary.dried_cheese_g.map_or_else(unknown, |grams| format!("{grams:.0} g")), true);
        figure(ui, "ready after", &summary.ready_h.map_or_else(unknown, hours_in_words), true);
        let [stops, cautions, notes] = summary.cautions;
        for (severity, count, colour) in [
            (Severity::Stop, stops, palette.stop_fill),
            (Severity::Caution, cautions, palette.caution_text),
            (Severity::Note, notes, palette.soft),
        ] {
            if count > 0 {
                let plural = if count == 1 { "" } else { "s" };
                let words = format!("{count} {}{plural}", severity.word().to_lowercase());
                // Sign, number and word in one piece: a sign alone at the end of a line says nothing.
                let wide = ui.painter().layout_no_wrap(words.clone(), plain(BODY), palette.text).size().x;
                if ui.available_size_before_wrap().x < SIGN_ROOM + wide {
                    ui.end_row();
                }
                sign(ui, severity, colour);
                ui.add(egui::Label::new(RichText::new(words).size(BODY)).extend());
                ui.add_space(8.0);
            }
        }
    });
    let words = if last_change.is_empty() {
        "A plan from a model, not a measurement. Move a slider to see what follows."
    } else {
        last_change
    };
    let response = ui.add(egui::Label::new(RichText::new(words).size(CAPTION).color(palette.soft)).truncate());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("Last change: {words}")));
}

/// Draws one figure, its name after it or before it.
fn figure(ui: &mut Ui, name: &str, value: &str, name_first: bool) {
    let soft = Palette::of(ui).soft;
    let label = |ui: &mut Ui| ui.label(RichText::new(name).size(BODY).color(soft));
    if name_first {
        label(ui);
    }
    ui.label(RichText::new(value).font(bold(FOOT)));
    if !name_first {
        label(ui);
    }
    ui.add_space(22.0);
}
