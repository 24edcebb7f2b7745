//! The bar that says that somebody else changed the file of an open design.

use crate::session::{ChangedFile, Session, Which};
use crate::ui::state::ask::{Ask, OnDisk};
use crate::ui::widget::spoken::alert_ui;
use crate::ui::widget::theme::Palette;
use egui::{Button, Frame, RichText, Stroke, Ui, vec2};

/// Draws the bar of one design and returns what is asked for.
pub(in crate::ui) fn changed_ui(ui: &mut Ui, session: &Session, ChangedFile { which, gone }: ChangedFile) -> Option<Ask> {
    let path = session.one(which)?.path()?;
    let palette = Palette::of(ui);
    let text = palette.caution_text;
    let (whose, path) = (if which == Which::First { "A" } else { "B" }, path.display());
    let words = if gone {
        format!("The file of {whose} cannot be found now: {path}. It may have been moved, or its drive unplugged.")
    } else {
        format!(
            "The file of {whose} has changed since you opened it: {path}. Reload it, save yours under another name, or overwrite it."
        )
    };
    let mut ask = None;
    Frame::new().fill(palette.caution_fill).inner_margin(10).show(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            ui.set_width(ui.available_width());
            alert_ui(ui, RichText::new(words).color(text));
            let ways =
                [("Reload", OnDisk::Reload, !gone), ("Save as…", OnDisk::SaveAs, true), ("Overwrite", OnDisk::Overwrite, true)];
            for (label, how, offered) in ways {
                let button = Button::new(
                    RichText::new(if gone && how == OnDisk::Overwrite { "Save there again" } else { label }).color(text),
                )
                .fill(egui::Color32::TRANSPARENT)
                .stroke(Stroke::new(1.0, text))
                .min_size(vec2(0.0, 28.0));
                if offered {
                    let response = ui.add(button).on_hover_text(help(how));
                    if response.clicked() {
                        ask = Some(Ask::Changed(which, how));
                    }
                }
            }
        });
    });
    ask
}

/// Returns what a way does, and what is kept.
const fn help(how: OnDisk) -> &'static str {
    match how {
        OnDisk::Reload => "Show what is in the file now; Undo brings yours back",
        OnDisk::SaveAs => "Keep both, in two files",
        OnDisk::Overwrite => "Save yours over it; what is there stays in a .bak file",
    }
}
