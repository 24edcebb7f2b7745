//! One caution, with the control that causes it.

use crate::caution::{Caution, Severity};
use crate::design::field;
use crate::ui::results::lift::{Way, lifts_ui};
use crate::ui::state::ask::Ask;
use crate::ui::widget::severity::{colours, sign};
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::units::Units;
use crate::words::{CautionWords, caution_word, caution_words};
use egui::{RichText, Ui, vec2};

/// Draws one caution; of two designs with whose it is, and what the second says where it says something else.
///
/// `way`: what is known of the ways to lift it; none where that is not offered
pub(in crate::ui) fn caution_ui(
    ui: &mut Ui,
    units: Units,
    caution: &Caution,
    whose: Option<(&str, Option<&str>)>,
    way: Option<Way<'_>>,
) -> Option<Ask> {
    let palette = Palette::of(ui);
    // Red is for what this design can change.
    let severity = if caution.always { Severity::Note } else { caution.severity };
    let (text, fill) = colours(&palette, severity);
    let mut asked = None;
    let card = egui::Frame::new().fill(palette.panel).corner_radius(8).inner_margin(egui::Margin {
        left: 16,
        right: 10,
        top: 10,
        bottom: 10,
    });
    let shown = card.show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal(|ui| {
            egui::Frame::new().fill(fill).corner_radius(12).inner_margin(egui::Margin::symmetric(8, 2)).show(ui, |ui| {
                ui.horizontal(|ui| {
                    sign(ui, severity, text);
                    ui.label(RichText::new(caution_word(caution)).font(bold(CAPTION)).color(text));
                });
            });
            if let Some((whose, _)) = whose {
                ui.label(RichText::new(whose).font(bold(CAPTION)));
            }
        });
        let of_b = whose.and_then(|(_, of_b)| of_b);
        let CautionWords { what, remedy, short } = caution_words(caution, units);
        let what = if of_b.is_some() { format!("A: {what}") } else { what };
        let in_full = |ui: &mut Ui| {
            ui.label(RichText::new(&what).size(CAPTION));
            if let Some(of_b) = of_b {
                ui.label(RichText::new(format!("B: {of_b}")).size(CAPTION));
            }
            ui.label(RichText::new(&remedy).size(CAPTION).color(palette.soft));
        };
        ui.label(RichText::new(short).font(bold(CAPTION)));
        // A serious warning is never folded away.
        if severity == Severity::Stop {
            in_full(ui);
        } else {
            let header = RichText::new("More about this").size(CAPTION).color(palette.link);
            egui::CollapsingHeader::new(header).id_salt((&what, "in full")).show_unindented(ui, in_full);
        }
        // What no choice lifts leads nowhere.
        let cause = caution.caused_by.filter(|_| !caution.always);
        if let Some((key, label)) = cause.and_then(|key| field(key).ok()).map(|field| (field.key, field.label)) {
            let button = egui::Button::new(RichText::new(format!("Go to “{label}”")).size(CAPTION).color(palette.link))
                .fill(palette.background);
            let response = ui.add(button);
            if response.clicked() {
                asked = Some(Ask::ToInput(key));
            }
        }
        if let Some(way) = way.filter(|way| !way.caution.always && way.caution.severity > Severity::Note) {
            let words = if whose.is_some() { "What would lift this in A?" } else { "What would lift this?" };
            asked = lifts_ui(ui, units, words, way).or_else(|| asked.take());
        }
    });
    let bar = egui::Rect::from_min_size(shown.response.rect.min, vec2(6.0, shown.response.rect.height()));
    ui.painter().rect_filled(
        bar,
        egui::CornerRadius { nw: 8, sw: 8, ne: 0, se: 0 },
        if severity == Severity::Note { palette.edge } else { fill },
    );
    asked
}
