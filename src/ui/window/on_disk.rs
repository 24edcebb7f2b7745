//! What the window keeps on the disk: designs, plans, the recovery copy and its own appearance.

use crate::export::{WeekCalendarError, week_calendar};
use crate::file::write_safely;
use crate::session::{LeftBehind, Saved, Session};
use crate::ui::paper::file_name::{file_name, with_ending};
use crate::ui::widget::appearance;
use crate::ui::window::files::{Answer, Purpose};
use crate::ui::window::prompt::Prompt;
use crate::ui::window::shell::Window;
use std::path::{Path, PathBuf};
use std::time::Duration;

impl Window {
    pub(super) fn open(&mut self, path: &Path) {
        let opened = Session::open_file(path);
        if opened.is_ok() {
            self.recent.note(path);
        }
        self.replace(opened);
    }

    pub(super) fn save(&mut self, ctx: &egui::Context) {
        match self.session.path().map(Path::to_owned) {
            Some(path) => self.save_to(ctx, &path),
            None => self.ask_path(ctx, Purpose::Save),
        }
    }

    pub(super) fn save_to(&mut self, ctx: &egui::Context, path: &Path) {
        match self.session.save(path) {
            Ok(saved) => {
                self.recent.note(path);
                self.notice = None;
                self.keep_copies();
                self.session.last_change = format!("Saved as {}.", path.display());
                if let Some(then) = self.after_save.take() {
                    self.unless_second_is_lost(ctx, then);
                }
                self.tell_of(saved);
            }
            Err(error) => {
                self.after_save = None;
                self.tell(error.to_string());
            }
        }
    }

    /// Says, once for each design, that the events of its calendar have new names.
    pub(super) fn tell_of(&mut self, saved: Saved) {
        if let Some(words) = saved.notice() {
            self.tell(words.to_owned());
        }
    }

    pub(super) fn ask_path(&mut self, ctx: &egui::Context, purpose: Purpose) {
        let suggested = self.suggested(purpose);
        if let Some(answer) = self.dialogs.ask(ctx, purpose, suggested) {
            self.answered(ctx, answer);
        }
    }

    pub(super) fn answered(&mut self, ctx: &egui::Context, answer: Answer) {
        match answer {
            Answer::Path(purpose, path) => self.with_path(ctx, purpose, path),
            Answer::Cancelled => self.after_save = None,
            Answer::NoDialog(purpose) => {
                let text = self.suggested(purpose);
                self.prompt = Some(Prompt::Path { purpose, text });
            }
        }
    }

    /// Returns the name that a file is offered; none for one that is to be opened.
    fn suggested(&self, purpose: Purpose) -> String {
        let title = &self.session.design().title;
        match purpose {
            Purpose::Open | Purpose::OpenSecond => String::new(),
            Purpose::Save => file_name(title, ".vat.ron"),
            Purpose::SaveSecond => file_name(self.session.second().map_or("", |second| &second.design().title), ".vat.ron"),
            Purpose::Export => file_name(title, ".pdf"),
            Purpose::Calendar => file_name(title, ".ics"),
            Purpose::ExportBoth => file_name(&format!("{title} side by side"), ".pdf"),
        }
    }

    pub(super) fn with_path(&mut self, ctx: &egui::Context, purpose: Purpose, path: PathBuf) {
        match purpose {
            Purpose::Open => self.open(&path),
            Purpose::OpenSecond => self.open_second(ctx, &path),
            Purpose::SaveSecond => self.save_second_to(ctx, &with_ending(path, ".ron", ".vat.ron")),
            Purpose::Save => self.save_to(ctx, &with_ending(path, ".ron", ".vat.ron")),
            Purpose::Export => self.export(ctx, with_ending(path, ".pdf", ".pdf")),
            Purpose::Calendar => self.export_calendar(&with_ending(path, ".ics", ".ics")),
            Purpose::ExportBoth => self.export_both(ctx, with_ending(path, ".pdf", ".pdf")),
        }
    }

    pub(super) fn export(&mut self, ctx: &egui::Context, path: PathBuf) {
        match self.paper_jobs.save(ctx, self.session.batch(), self.clock.now(), self.view.paper, path) {
            Ok(()) => "Saving the plan as PDF…".clone_into(&mut self.session.last_change),
            Err(words) => self.tell(words),
        }
    }

    pub(super) fn print(&mut self, ctx: &egui::Context) {
        if let Err(words) = self.paper_jobs.print(ctx, self.session.batch(), self.clock.now(), self.view.paper) {
            self.tell(words);
        }
    }

    /// Writes the week for a calendar; it is a small text, so the window does it at once.
    fn export_calendar(&mut self, path: &Path) {
        let batch = self.session.batch();
        let now = self.clock.now().for_week(&batch.design.week);
        let made = week_calendar(batch, self.session.id(), &now).map_err(|error| match error {
            WeekCalendarError::NoTime => format!("{error}; choose one on the page Plan"),
            WeekCalendarError::Week(_) | WeekCalendarError::Export(_) => error.to_string(),
        });
        match made.and_then(|bytes| write_safely(path, &bytes, false).map_err(|error| error.to_string())) {
            Ok(()) => {
                self.session.last_change =
                    format!("Calendar saved as {}. Importing it again moves the events that are already there.", path.display());
            }
            Err(why) => self.tell(format!("The calendar cannot be saved: {why}.")),
        }
    }

    fn export_both(&mut self, ctx: &egui::Context, path: PathBuf) {
        let Some(second) = self.session.second() else { return };
        match self.paper_jobs.save_both(ctx, (self.session.batch(), second.batch()), self.view.paper, path) {
            Ok(()) => "Saving the two designs as PDF…".clone_into(&mut self.session.last_change),
            Err(words) => self.tell(words),
        }
    }

    pub(super) fn keep_recovery(&mut self, ctx: &egui::Context) {
        let now_s = ctx.input(|input| input.time);
        let Some(recovery) = &mut self.recovery else { return };
        let (first, second) = self.session.unsaved();
        match recovery.write_if_due(first, second, now_s) {
            Ok(()) => {
                if let Some(wait_s) = recovery.due_in_s(now_s) {
                    ctx.request_repaint_after(Duration::from_secs_f64(wait_s + 0.05));
                }
            }
            Err(error) => self.tell(format!("No recovery copy can be kept: {error}")),
        }
    }

    /// Notes that a design changed, so that its recovery copy becomes due.
    pub(super) fn note_change(&mut self, ctx: &egui::Context) {
        if let Some(recovery) = &mut self.recovery {
            recovery.changed(ctx.input(|input| input.time));
        }
    }

    /// Keeps the copies of what is not saved at once, and removes that of what was just saved.
    pub(super) fn keep_copies(&mut self) {
        let Some(recovery) = &mut self.recovery else { return };
        let (first, second) = self.session.unsaved();
        if let Err(error) = recovery.keep(first, second) {
            self.tell(format!("No recovery copy can be kept: {error}"));
        }
    }

    /// Keeps what is not saved while the program breaks down; what an earlier breakdown left and nobody has answered for yet stays.
    pub(super) fn keep_in_a_fault(&mut self) {
        let unanswered = matches!(self.prompt, Some(Prompt::Recover(_)));
        if !unanswered && self.is_unsaved() {
            self.keep_copies();
        }
    }

    /// Opens what was left behind.
    pub(super) fn recover(&mut self, ctx: &egui::Context, left: LeftBehind) {
        if let Some(first) = left.first {
            self.replace(Session::recovered(first).map_err(Into::into));
        }
        if let Some(second) = left.second {
            self.with_second(ctx, |session| session.second_recovered(second));
        }
    }

    /// Puts the kept appearance on once, and keeps it whenever it changes.
    pub(super) fn keep_appearance(&mut self, ctx: &egui::Context) {
        let Some((kept, put_on)) = &mut self.appearance else { return };
        if *put_on {
            kept.keep(appearance::now(ctx, self.view.units));
        } else {
            self.view.units = appearance::apply(ctx, kept.appearance());
            *put_on = true;
        }
    }
}
