//! Does what the page of the log asks for about the kitchen.

use crate::design::KnownKitchen;
use crate::file::{kitchen_to_text, read_kitchen, write_safely};
use crate::record::BatchRecord;
use crate::session::{Command, KitchenJob};
use crate::ui::state::ask::LogAsk;
use crate::ui::window::files::Purpose;
use crate::ui::window::shell::Window;
use egui::Context;
use std::collections::BTreeSet;
use std::path::Path;

impl Window {
    /// Has kitchens learned by this job: for tests and pictures, which need no more than a few draws.
    pub fn learn_with(&mut self, job: KitchenJob) {
        self.background.kitchen = Some(job);
    }

    /// Does what is asked about the kitchen; an error is told.
    pub(super) fn about_kitchen(&mut self, ctx: &Context, ask: &LogAsk) {
        match ask {
            LogAsk::LearnFrom(number) => {
                let mut from: BTreeSet<u32> = self.learned_from().iter().map(|record| record.number).collect();
                if !from.remove(number) {
                    from.insert(*number);
                }
                self.view.log.learned_from = Some(from);
            }
            LogAsk::Learn => {
                let records = self.learned_from();
                let wake = ctx.clone();
                let job = self.background.kitchen.get_or_insert_with(|| KitchenJob::new(Box::new(move || wake.request_repaint())));
                job.order(&records, self.session.design());
            }
            LogAsk::StopLearning => {
                if let Some(job) = &self.background.kitchen {
                    job.give_up();
                }
            }
            LogAsk::UseLearned => {
                if let Some(known) = self.learned_kitchen() {
                    self.use_kitchen(ctx, known);
                }
            }
            LogAsk::SaveKitchen => self.ask_path(ctx, Purpose::SaveKitchen),
            _ => self.ask_path(ctx, Purpose::OpenKitchen),
        }
    }

    /// Returns the batches that a kitchen is to be learned from.
    fn learned_from(&mut self) -> Vec<BatchRecord> {
        let book = self.log.book(self.session.path());
        let chosen = self.view.log.learned_from.as_ref();
        book.map_or_else(Vec::new, |book| book.learned_from(chosen).into_iter().cloned().collect())
    }

    /// Returns the kitchen that was learned, under the name that it is to have.
    fn learned_kitchen(&self) -> Option<KnownKitchen> {
        self.background.found_kitchen()?.known(self.view.log.kitchen.trim())
    }

    fn use_kitchen(&mut self, ctx: &Context, known: KnownKitchen) {
        self.do_command(ctx, Command::UseKitchen(Some(Box::new(known))));
    }

    /// Writes the kitchen that was learned into a file.
    pub(super) fn save_kitchen(&mut self, path: &Path) {
        let Some(known) = self.learned_kitchen() else { return };
        match write_safely(path, kitchen_to_text(&known).as_bytes(), true) {
            Ok(()) => self.session.last_change = format!("Kitchen saved as {}", path.display()),
            Err(error) => self.tell(format!("The kitchen was not saved: {error}.")),
        }
    }

    /// Reads a kitchen from a file, and calculates the open design for it.
    pub(super) fn open_kitchen(&mut self, ctx: &Context, path: &Path) {
        match read_kitchen(path) {
            Ok(known) => {
                // What was wrong with another file is settled.
                self.notice = None;
                self.use_kitchen(ctx, known);
            }
            Err(error) => self.tell(format!("The kitchen cannot be used: {error}.")),
        }
    }
}
