//! What the window keeps beside the designs: recovery copies, and its own appearance.

use crate::session::{LeftBehind, Session};
use crate::ui::widget::appearance;
use crate::ui::window::prompt::Prompt;
use crate::ui::window::shell::Window;
use std::time::Duration;

impl Window {
    pub(super) fn keep_recovery(&mut self, ctx: &egui::Context) {
        let now_s = ctx.input(|input| input.time);
        let Some(recovery) = &mut self.recovery else { return };
        match recovery.write_if_due(self.session.open_designs(), now_s) {
            Ok(()) => {
                if let Some(wait_s) = recovery.due_in_s(now_s) {
                    ctx.request_repaint_after(Duration::from_secs_f64(wait_s + 0.05));
                }
            }
            Err(error) => self.tell(format!("Unsaved changes cannot be kept for recovery: {error}. Save often.")),
        }
    }

    /// Notes that a design changed, so that its recovery copy becomes due.
    pub(super) fn note_change(&mut self, ctx: &egui::Context) {
        if let Some(recovery) = &mut self.recovery {
            recovery.changed(ctx.input(|input| input.time));
        }
    }

    /// Keeps the copies of what is not saved at once, and removes that of what was just saved; returns whether that went well.
    pub(super) fn keep_copies(&mut self) -> bool {
        let Some(recovery) = &mut self.recovery else { return true };
        match recovery.keep(self.session.open_designs()) {
            Ok(()) => true,
            Err(error) => {
                self.tell(format!("Unsaved changes cannot be kept for recovery: {error}. Save often."));
                false
            }
        }
    }

    /// Keeps what is not saved while the program breaks down.
    pub(super) fn keep_in_a_fault(&mut self) {
        if self.is_unsaved() {
            self.keep_copies();
        }
    }

    /// Asks about the unsaved work that was left behind, if there is any.
    pub(super) fn list_left(&mut self) {
        if !self.left.is_empty() {
            self.prompt = Some(Prompt::Recover(self.left.clone()));
        }
    }

    /// Opens unsaved work that was left behind; its old copy goes once this program keeps its own.
    pub(super) fn recover(&mut self, left: LeftBehind) {
        let recovered = Session::recovered(&left);
        let opened = recovered.is_ok();
        self.replace(recovered);
        if opened && self.keep_copies() {
            self.forget(left);
        }
    }

    /// Gives up unsaved work that was left behind.
    pub(super) fn forget(&mut self, left: LeftBehind) {
        self.left.retain(|other| other.work != left);
        left.remove();
        self.list_left();
    }

    /// Puts the kept appearance on once, and keeps it whenever it changes.
    pub(super) fn keep_appearance(&mut self, ctx: &egui::Context) {
        let Some((kept, put_on)) = &mut self.appearance else { return };
        if *put_on {
            kept.keep(appearance::now(ctx, self.view.units));
        } else {
            self.view.units = appearance::apply(ctx, kept.now());
            *put_on = true;
        }
    }
}
