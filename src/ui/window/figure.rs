//! What the window does about one figure: its card, aiming, pins.

use crate::analysis::{Goal, Solved};
use crate::session::Session;
use crate::ui::state::card::{CardView, Told};
use crate::ui::window::shell::Window;

impl Window {
    /// Opens the card of a figure, or closes it.
    pub(super) fn open_card(&mut self, figure: Option<&'static str>) {
        self.view.card = figure.map(CardView::of);
    }

    /// Brings a figure to what is asked for, and says on its card what came of it.
    pub(super) fn aim(&mut self, ctx: &egui::Context, goal: &Goal, choice: &str) {
        let units = self.view.units;
        let mut told = Told::Not(String::new());
        self.step(ctx, |session: &mut Session| {
            told = match session.aim(goal, choice) {
                Ok(solved @ Solved::Reached(_)) => Told::Reached(solved.in_words(goal, units)),
                Ok(solved @ Solved::NotReachable { .. }) => Told::Not(solved.in_words(goal, units)),
                Err(error) => Told::Not(format!("{error}.")),
            };
            Ok(())
        });
        if let Some(card) = &mut self.view.card {
            card.told = Some(told);
        }
    }

    /// Pins a choice, or takes its pin out.
    pub(super) fn turn_pin(&mut self, key: &str) {
        if let Err(error) = self.session.turn_pin(key) {
            self.tell(format!("{error}."));
        }
    }
}
