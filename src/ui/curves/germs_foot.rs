//! What stands under germs wherever they are shown: how fast they could grow now at centre and rim, and what potential growth leaves out.

use crate::batch::Batch;
use crate::curve::{CurveKey, Section, SectionKey};
use crate::ui::curves::cut::drawn_cut;
use crate::ui::state::view::View;
use crate::ui::widget::theme::{CAPTION, Palette, plain};
use crate::words::POTENTIAL_GROWTH;
use egui::{Label, RichText, Ui};

/// Gap above and below.
const GAP: f32 = 6.0;

/// Returns what stands under the curve and the cut of a station; nothing where neither shows germs.
pub(in crate::ui) fn said_of_germs(view: &View, (batch, two): (&Batch, bool), shown: CurveKey, with_cut: bool) -> Vec<String> {
    let in_cut = with_cut && view.cut.key == SectionKey::Germs;
    if !in_cut && shown != CurveKey::Germs {
        return Vec::new();
    }
    let whose = if two { "A: " } else { "" };
    let cut = if in_cut { drawn_cut(batch, view.cut) } else { None };
    let now = cut
        .iter()
        .flat_map(|cut: &Section| &cut.growth)
        .flat_map(|growth| growth.lines().into_iter().map(|line| format!("{whose}{line}")).collect::<Vec<_>>());
    now.chain(std::iter::once(POTENTIAL_GROWTH.to_owned())).collect()
}

/// Returns the height that some lines take.
pub(in crate::ui) fn said_height(ui: &Ui, lines: &[String]) -> f32 {
    let width = ui.available_width();
    let gap = if lines.is_empty() { 0.0 } else { 2.0 * GAP };
    let colour = Palette::of(ui).text;
    lines.iter().map(|line| ui.painter().layout(line.clone(), plain(CAPTION), colour, width).size().y).sum::<f32>() + gap
}

/// Draws the lines.
pub(in crate::ui) fn germs_foot_ui(ui: &mut Ui, lines: &[String]) {
    let palette = Palette::of(ui);
    ui.spacing_mut().item_spacing.y = 0.0;
    for line in lines {
        let colour = if line == POTENTIAL_GROWTH { palette.soft } else { palette.text };
        ui.add(Label::new(RichText::new(line).size(CAPTION).color(colour)).wrap());
    }
}
