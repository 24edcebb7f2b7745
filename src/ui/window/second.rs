//! What the window does about the second design.

use crate::session::{Session, SessionError, Which};
use crate::ui::results::beside::Beside;
use crate::ui::results::shown::Shown;
use crate::ui::state::ask::{Ask, SecondAsk};
use crate::ui::window::files::Purpose;
use crate::ui::window::prompt::Prompt;
use crate::ui::window::shell::Window;
use std::path::Path;

impl Window {
    /// Draws what follows from the designs again.
    pub(super) fn refresh(&mut self) {
        self.background.judged = false;
        self.shown = Shown::of(self.session.batch());
        self.beside = Beside::of(&self.session);
    }

    /// Returns whether leaving would lose something that is in no file.
    pub(super) fn is_unsaved(&self) -> bool {
        self.session.is_dirty() || self.second_is_dirty()
    }

    fn second_is_dirty(&self) -> bool {
        self.session.second().is_some_and(crate::session::OpenDesign::is_dirty)
    }

    /// Does what is asked about the second design, unless it would lose one that is not saved: then it asks first.
    pub(super) fn about_second(&mut self, ctx: &egui::Context, ask: SecondAsk) {
        match ask {
            SecondAsk::Copy | SecondAsk::MilkAlike(..) | SecondAsk::Open | SecondAsk::PutAway => {
                self.unless_second_is_lost(ctx, Ask::Second(ask));
            }
            SecondAsk::Milk(kind) => self.prompt = Some(Prompt::Alike(kind)),
            SecondAsk::Save => self.save_second(ctx),
            SecondAsk::SaveAs => self.ask_path(ctx, Purpose::SaveSecond),
            SecondAsk::Export => self.ask_path(ctx, Purpose::ExportBoth),
            SecondAsk::Swap => self.step(ctx, Session::swap_second),
            SecondAsk::Take(key) => self.step(ctx, |session| session.copy_from_second(key)),
            SecondAsk::Give(key) => self.with_second(ctx, |session| session.copy_to_second(key)),
        }
    }

    /// Does what would lose the second design, or asks about it first.
    pub(super) fn unless_second_is_lost(&mut self, ctx: &egui::Context, ask: Ask) {
        if self.second_is_dirty() {
            self.prompt = Some(Prompt::Unsaved { which: Which::Second, then: ask });
        } else {
            self.settled(ctx, ask);
        }
    }

    /// Does what would have lost the second design, now that this is settled.
    pub(super) fn second_settled(&mut self, ctx: &egui::Context, ask: &SecondAsk) {
        match ask {
            SecondAsk::Copy => self.with_second(ctx, Session::second_from_first),
            SecondAsk::MilkAlike(kind, alike) => self.with_second(ctx, |session| session.second_from_milk(*kind, *alike)),
            SecondAsk::Open => self.ask_path(ctx, Purpose::OpenSecond),
            SecondAsk::PutAway => self.with_second(ctx, |session| {
                session.drop_second();
                Ok(())
            }),
            SecondAsk::Milk(_)
            | SecondAsk::Swap
            | SecondAsk::Save
            | SecondAsk::SaveAs
            | SecondAsk::Export
            | SecondAsk::Take(_)
            | SecondAsk::Give(_) => {}
        }
    }

    pub(super) fn open_second(&mut self, ctx: &egui::Context, path: &Path) {
        self.with_second(ctx, |session| session.second_from_file(path));
        if self.session.second().is_some_and(|second| second.path() == Some(path)) {
            self.recent.note(path);
        }
    }

    pub(super) fn save_second(&mut self, ctx: &egui::Context) {
        match self.session.second().and_then(|second| second.path()).map(Path::to_owned) {
            Some(path) => self.save_second_to(ctx, &path),
            None => self.ask_path(ctx, Purpose::SaveSecond),
        }
    }

    pub(super) fn save_second_to(&mut self, ctx: &egui::Context, path: &Path) {
        let saved = self.session.save_second(path);
        self.saved(ctx, Which::Second, saved);
    }

    /// Does something to the second design alone: the first one stays as it is.
    pub(super) fn with_second(&mut self, ctx: &egui::Context, step: impl FnOnce(&mut Session) -> Result<(), SessionError>) {
        if let Err(error) = step(&mut self.session) {
            self.tell(error.to_string());
        }
        self.refresh();
        self.note_change(ctx);
    }
}
