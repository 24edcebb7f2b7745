//! What the window reads and writes on the disk: designs and plans.

use crate::export::{WeekCalendarError, html, week_calendar};
use crate::file::{is_pipe_or_device, write_safely};
use crate::report::plan_at;
use crate::session::{Saved, Session, SessionError, Which, is_same_file};
use crate::ui::paper::file_name::{file_name, with_ending};
use crate::ui::state::ask::OnDisk;
use crate::ui::window::files::{Answer, Purpose};
use crate::ui::window::prompt::Prompt;
use crate::ui::window::shell::Window;
use std::path::{Path, PathBuf};

/// What is said where a calendar took the place of an earlier one.
const IMPORT_AGAIN: &str =
    " Import it again: most calendars then move the events they have and cancel tasks that the plan no longer has; check yours.";

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
        let saved = self.session.save(path);
        self.saved(ctx, Which::First, saved.map(Some));
    }

    /// Tells what came of saving, and does what waited for it.
    pub(super) fn saved(&mut self, ctx: &egui::Context, which: Which, saved: Result<Option<Saved>, SessionError>) {
        match saved {
            Ok(saved) => {
                let path = self.session.one(which).and_then(|open| open.path()).map(Path::to_owned);
                self.notice = None;
                self.changed = self.session.changed_on_disk();
                if let Some(path) = path {
                    self.recent.note(&path);
                    self.session.last_change = told(which, saved, &path);
                }
                self.keep_copies();
                if let Some(then) = self.after_save.take() {
                    match which {
                        Which::First => self.unless_second_is_lost(ctx, then),
                        Which::Second => self.settled(ctx, then),
                    }
                }
                if let Some(words) = saved.and_then(Saved::notice) {
                    self.tell(words.to_owned());
                }
            }
            // The bar asks what is to be done.
            Err(SessionError::ChangedOnDisk { .. }) => {
                self.after_save = None;
                self.changed = self.session.changed_on_disk();
            }
            Err(error) => {
                self.after_save = None;
                self.tell(error.to_string());
            }
        }
    }

    /// Settles a file that somebody else changed.
    pub(super) fn settle_changed(&mut self, ctx: &egui::Context, which: Which, how: OnDisk) {
        match how {
            OnDisk::Reload => self.step(ctx, |session| session.reload(which)),
            OnDisk::SaveAs => self.ask_path(ctx, if which == Which::First { Purpose::Save } else { Purpose::SaveSecond }),
            OnDisk::Overwrite => {
                let saved = self.session.overwrite(which);
                self.saved(ctx, which, saved);
            }
        }
        self.changed = self.session.changed_on_disk();
    }

    pub(super) fn ask_path(&mut self, ctx: &egui::Context, purpose: Purpose) {
        let suggested = self.suggested(purpose);
        if let Some(answer) = self.dialogs.ask(ctx, purpose, suggested) {
            self.answered(ctx, answer);
        }
    }

    pub(super) fn answered(&mut self, ctx: &egui::Context, answer: Answer) {
        match answer {
            Answer::Path(purpose, path) => self.with_path(ctx, purpose, &path, true),
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
            Purpose::Open | Purpose::OpenSecond | Purpose::ProbeTable | Purpose::OpenKitchen => String::new(),
            Purpose::SaveKitchen => file_name(&self.view.log.kitchen, ".kitchen.ron"),
            Purpose::BatchTable => file_name(&format!("{title} batches"), ".csv"),
            Purpose::Save => file_name(title, ".vat.ron"),
            Purpose::SaveSecond => file_name(self.session.second().map_or("", |second| &second.design().title), ".vat.ron"),
            Purpose::Export => file_name(title, ".pdf"),
            Purpose::Phone => file_name(title, ".html"),
            Purpose::Calendar => file_name(title, ".ics"),
            Purpose::ExportBoth => file_name(&format!("{title} side by side"), ".pdf"),
        }
    }

    /// Uses a path that was chosen or typed, unless a file is there that would be written over: then it asks first.
    ///
    /// A dialog of the desktop asks for itself, but not about the ending that is put after the name here.
    pub(super) fn with_path(&mut self, ctx: &egui::Context, purpose: Purpose, path: &Path, asked: bool) {
        let named = match purpose {
            Purpose::Open | Purpose::OpenSecond | Purpose::ProbeTable | Purpose::OpenKitchen => path.to_owned(),
            Purpose::SaveKitchen => with_ending(path.to_owned(), ".ron", ".kitchen.ron"),
            Purpose::BatchTable => with_ending(path.to_owned(), ".csv", ".csv"),
            Purpose::Save | Purpose::SaveSecond => with_ending(path.to_owned(), ".ron", ".vat.ron"),
            Purpose::Phone => with_ending(path.to_owned(), ".html", ".html"),
            Purpose::Calendar => with_ending(path.to_owned(), ".ics", ".ics"),
            Purpose::Export | Purpose::ExportBoth => with_ending(path.to_owned(), ".pdf", ".pdf"),
        };
        let own = match purpose {
            Purpose::Save => self.session.path(),
            Purpose::SaveSecond => self.session.second().and_then(|second| second.path()),
            _ => None,
        };
        let is_own = own.is_some_and(|own| is_same_file(own, &named));
        if purpose.writes() && is_pipe_or_device(&named) {
            self.tell(format!("{} is not an ordinary file; choose another name.", named.display()));
        } else if purpose.writes() && named.exists() && !is_own && !(asked && named == path) {
            self.prompt = Some(Prompt::Replace { purpose, path: named });
        } else {
            self.use_path(ctx, purpose, named);
        }
    }

    pub(super) fn use_path(&mut self, ctx: &egui::Context, purpose: Purpose, path: PathBuf) {
        match purpose {
            Purpose::Open => self.open(&path),
            Purpose::OpenSecond => self.open_second(ctx, &path),
            Purpose::SaveSecond => self.save_second_to(ctx, &path),
            Purpose::Save => self.save_to(ctx, &path),
            Purpose::Export => self.export(ctx, path),
            Purpose::Phone => self.export_phone(&path),
            Purpose::Calendar => self.export_calendar(&path),
            Purpose::ExportBoth => self.export_both(ctx, path),
            Purpose::ProbeTable => self.look_at_table(&path),
            Purpose::BatchTable => self.save_batches(&path),
            Purpose::SaveKitchen => self.save_kitchen(&path),
            Purpose::OpenKitchen => self.open_kitchen(ctx, &path),
        }
    }

    pub(super) fn export(&mut self, ctx: &egui::Context, path: PathBuf) {
        match self.paper_jobs.save(ctx, self.session.batch(), self.clock.now(), (self.view.sheets(), self.view.units), path) {
            Ok(()) => "Saving the plan as PDF…".clone_into(&mut self.session.last_change),
            Err(words) => self.tell(words),
        }
    }

    pub(super) fn print(&mut self, ctx: &egui::Context) {
        if let Err(words) =
            self.paper_jobs.print(ctx, self.session.batch(), self.clock.now(), (self.view.sheets(), self.view.units))
        {
            self.tell(words);
        }
    }

    /// Writes the plan for a phone; it is a small text, so the window does it at once.
    fn export_phone(&mut self, path: &Path) {
        let page = html(&plan_at(self.session.batch(), &self.clock.now()).shown_in(self.view.units));
        match write_safely(path, page.as_bytes(), false) {
            Ok(()) => {
                self.session.last_change =
                    format!("Plan for a phone saved as {}. Copy it to the phone and open it there.", path.display());
            }
            Err(why) => self.tell(format!("The plan for a phone cannot be saved: {why}.")),
        }
    }

    /// Writes the week for a calendar; it is a small text, so the window does it at once.
    fn export_calendar(&mut self, path: &Path) {
        let batch = self.session.batch();
        let now = self.clock.now().for_week(&batch.design.week);
        // What the last file has and this week has not is cancelled.
        let before = std::fs::read(path).unwrap_or_default();
        let made = week_calendar(batch, self.session.id(), &now, &before, self.view.units).map_err(|error| match error {
            WeekCalendarError::NoTime => format!("{error}; choose one on the page Plan"),
            WeekCalendarError::Week(_) | WeekCalendarError::Export(_) => self.view.units.told(&error.to_string()),
        });
        match made.and_then(|bytes| write_safely(path, &bytes, false).map_err(|error| error.to_string())) {
            Ok(()) => {
                let again = if before.is_empty() { "" } else { IMPORT_AGAIN };
                self.session.last_change = format!("Calendar saved as {}.{again}", path.display());
            }
            Err(why) => self.tell(format!("The calendar cannot be saved: {why}.")),
        }
    }

    fn export_both(&mut self, ctx: &egui::Context, path: PathBuf) {
        let Some(second) = self.session.second() else { return };
        match self.paper_jobs.save_both(ctx, (self.session.batch(), second.batch()), (self.view.paper, self.view.units), path) {
            Ok(()) => "Saving the two designs as PDF…".clone_into(&mut self.session.last_change),
            Err(words) => self.tell(words),
        }
    }
}

/// Returns what is said of a design that was saved.
fn told(which: Which, saved: Option<Saved>, path: &Path) -> String {
    let path = path.display();
    match (which, saved) {
        (Which::First, Some(Saved::Unchanged)) => format!("Nothing to save: {path} holds this design already."),
        (Which::Second, Some(Saved::Unchanged)) => format!("Nothing to save: {path} holds B already."),
        (Which::First, _) => format!("Saved as {path}."),
        (Which::Second, _) => format!("B is saved as {path}."),
    }
}
