//! Whose choices are shown and changed, of two designs.

use crate::session::Which;
use crate::ui::state::ask::Ask;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use egui::Ui;

/// Draws the switch between the two designs and returns what is asked for.
pub(in crate::ui) fn whose_ui(ui: &mut Ui, edited: Which) -> Option<Ask> {
    let mut asked = None;
    pills_ui(ui, "Whose choices are shown", |ui| {
        for (which, words, help) in [
            (Which::First, "Choices of A", "Show and change the choices of A"),
            (Which::Second, "Choices of B", "Show and change the choices of B"),
        ] {
            if pill_ui(ui, words, words, help, (which == edited, which == edited)) {
                asked = Some(Ask::Edit(which));
            }
        }
    });
    ui.add_space(4.0);
    asked
}
