//! The bar that says that somebody else changed the file of an open design.

use crate::session::{Session, Which};
use crate::ui::state::ask::{Ask, OnDisk};
use crate::ui::widget::spoken::say_at_once;
use crate::ui::widget::theme::Palette;
use egui::{Button, Frame, RichText, Stroke, Ui, vec2};

/// Draws the bar of one design and returns what is asked for.
pub(in crate::ui) fn changed_ui(ui: &mut Ui, session: &Session, which: Which) -> Option<Ask> {
    let path = session.one(which)?.path()?;
    let gone = !path.exists();
    let palette = Palette::of(ui);
    let text = palette.caution_text;
    let what = if gone { "is not there any more" } else { "was changed by another program" };
    let words = format!("{} {what} since you opened it.", path.display());
    let mut ask = None;
    Frame::new().fill(palette.caution_fill).inner_margin(10).show(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            ui.set_width(ui.available_width());
            say_at_once(&ui.label(RichText::new(words).color(text)));
            let ways =
                [("Reload", OnDisk::Reload, !gone), ("Save as…", OnDisk::SaveAs, true), ("Overwrite", OnDisk::Overwrite, true)];
            for (label, how, offered) in ways {
                let button =
                    Button::new(RichText::new(if gone && how == OnDisk::Overwrite { "Save it again" } else { label }).color(text))
                        .fill(egui::Color32::TRANSPARENT)
                        .stroke(Stroke::new(1.0, text))
                        .min_size(vec2(0.0, 28.0));
                if offered {
                    let response = ui.add(button);
                    if response.clicked() {
                        ask = Some(Ask::Changed(which, how));
                    }
                }
            }
        });
    });
    ask
}
