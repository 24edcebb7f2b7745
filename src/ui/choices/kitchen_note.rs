//! That a design is calculated for a known kitchen, above its choices.

use crate::design::Design;
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::words::kitchen_line;
use egui::{Label, RichText, Ui};

/// What leaves the kitchen, and what it does.
pub(in crate::ui) const STOP_USING: &str = "Stop using your kitchen";
pub(in crate::ui) const STOP_USING_HELP: &str = "Recalculates the design as in any kitchen. You can undo it.";

/// Draws it, with the way out; nothing where no kitchen is known.
pub(in crate::ui) fn kitchen_note_ui(ui: &mut Ui, design: &Design) -> Option<Ask> {
    let line = kitchen_line(design)?;
    ui.add(Label::new(RichText::new(line).size(CAPTION).color(Palette::of(ui).soft)).wrap());
    let stop = ui.button(STOP_USING).on_hover_text(STOP_USING_HELP);
    ui.add_space(6.0);
    stop.clicked().then_some(Ask::Do(Command::UseKitchen(None)))
}
