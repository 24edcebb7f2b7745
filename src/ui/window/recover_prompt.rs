//! The list of unsaved work that was left behind.

use crate::plan::time_words;
use crate::session::{LeftBehind, WallClock};
use crate::ui::window::reply::{Reply, choice, heading};
use egui::Ui;

/// Unsaved work, as it is listed.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::ui) struct Left {
    /// The work.
    pub(in crate::ui) work: LeftBehind,
    /// Its titles and its time.
    words: String,
}

impl Left {
    /// Returns unsaved work as it is listed, by the clock of where the maker is.
    pub(in crate::ui) fn of(work: LeftBehind, clock: &WallClock) -> Self {
        let when = work.written_at(&clock.now().zone).map(|at| format!(", changed last on {}", time_words(at))).unwrap_or_default();
        Self { words: format!("{}{when}", work.titles()), work }
    }
}

/// Draws the list and returns what is to be done with one of them, or that it can wait.
pub(in crate::ui) fn recover_ui(ui: &mut Ui, left: &[Left]) -> Option<Reply> {
    let mut reply = None;
    heading(ui, "Recover unsaved work?");
    ui.label("Vatsketch stopped before these were saved. Discarding cannot be undone; “Not now” keeps them, and they are in the menu File then.");
    for left in left {
        ui.add_space(10.0);
        ui.label(&left.words);
        ui.horizontal(|ui| {
            if choice(ui, "Recover") {
                reply = Some(Reply::Recover(left.work.clone()));
            }
            if choice(ui, "Discard") {
                reply = Some(Reply::Forget(left.work.clone()));
            }
        });
    }
    ui.add_space(10.0);
    if choice(ui, "Not now") {
        reply = Some(Reply::Later);
    }
    reply
}
