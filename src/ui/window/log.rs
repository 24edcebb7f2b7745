//! Does what the page of the log asks for.

use crate::export::batches_csv;
use crate::file::write_safely;
use crate::record::EntryValue;
use crate::report::{batch_lines, short_moment};
use crate::session::{Logbook, LogbookError, ProbeImport};
use crate::ui::state::ask::LogAsk;
use crate::ui::state::log_view::LogPart;
use crate::ui::window::files::Purpose;
use crate::ui::window::shell::Window;
use egui::Context;
use std::path::Path;

impl Window {
    /// Does what is asked about the log; an error is told, and nothing that was typed is lost with it.
    pub(super) fn about_log(&mut self, ctx: &Context, ask: LogAsk) {
        match ask {
            LogAsk::Choose(number) => {
                // A time that was said for one batch means nothing in another, and neither does a text that was begun.
                (self.view.log.at, self.view.log.part, self.view.log.beside) = (None, LogPart::Batch, None);
                self.view.typing.retain(|key, _| !key.starts_with("log "));
                self.log.import = None;
                if let Some(book) = self.log.book(self.session.path()) {
                    book.choose(number);
                }
            }
            LogAsk::At(at) => self.view.log.at = at,
            LogAsk::Part(part) => (self.view.log.part, self.log.import) = (part, None),
            LogAsk::Beside(number) => self.view.log.beside = number,
            LogAsk::ImportFrom => self.ask_path(ctx, Purpose::ProbeTable),
            LogAsk::ImportNothing => self.log.import = None,
            LogAsk::ImportAs(wish) => {
                if let Some((number, mut table)) = self.log.import.take() {
                    if let Some(batch) = self.log.book(self.session.path()).and_then(|book| book.chosen()) {
                        table.read_as(wish, batch);
                    }
                    self.log.import = Some((number, table));
                }
            }
            LogAsk::SaveTable => self.ask_path(ctx, Purpose::BatchTable),
            LogAsk::Example(on) => {
                self.view.log = crate::ui::state::log_view::LogView::default();
                if let Err(why) = self.log.look_at_example(on) {
                    self.tell(why);
                }
            }
            LogAsk::LearnFrom(_)
            | LogAsk::Learn
            | LogAsk::StopLearning
            | LogAsk::UseLearned
            | LogAsk::SaveKitchen
            | LogAsk::OpenKitchen => self.about_kitchen(ctx, &ask),
            LogAsk::Begin(_) | LogAsk::Enter(..) | LogAsk::TakeBack(_) | LogAsk::Import => self.write_down(ask),
        }
    }

    /// Writes into the log in sight what is asked for.
    fn write_down(&mut self, ask: LogAsk) {
        let path = self.session.path().map(Path::to_owned);
        let now = self.clock.now();
        let (design, id, at) = (self.session.design().clone(), self.session.id(), self.view.log.at);
        let table = self.log.import.take_if(|_| ask == LogAsk::Import).map(|(_, table)| table);
        let Some(book) = self.log.book(path.as_deref()) else { return };
        let week = book.chosen().map_or(&design.week, |batch| &batch.design.week);
        let clock = now.for_week(week).at;
        let begins = matches!(ask, LogAsk::Begin(_));
        let done: Result<Done, LogbookError> = match ask {
            LogAsk::Begin(name) => book
                .begin(&name, &now.for_week(&design.week), &design, id)
                .map(|number| Done::Said(format!("Batch {number} begun"))),
            LogAsk::Enter(kind, value) => {
                book.enter(at.unwrap_or(clock), kind, &value).map(|entry| Done::Entry("Written down", entry))
            }
            LogAsk::TakeBack(entry) => book.correct(entry, &EntryValue::Withdrawn).map(|_| Done::Entry("Taken back", entry)),
            _ => table.map_or(Ok(Done::Said(String::new())), |table| written_table(book, &table).map(Done::Said)),
        };
        let is_example = book.is_example();
        let file = path.as_deref().map(Logbook::beside);
        let file = file.as_deref().and_then(Path::file_name).unwrap_or_default().to_string_lossy().into_owned();
        let done = done.map(|done| match done {
            Done::Said(words) => words,
            Done::Entry(what, entry) => format!("{what}: {}", self.said(path.as_deref(), entry)),
        });
        match done {
            Ok(said) if is_example => self.session.last_change = format!("{said}; in the invented log, which is not kept"),
            Ok(said) => self.session.last_change = format!("{said}; saved in {file}"),
            Err(error) => return self.tell(format!("Not written down: {error}.")),
        }
        if begins {
            self.view.log = crate::ui::state::log_view::LogView::default();
        }
    }

    /// Returns what an entry of the batch in sight says, and when that was.
    fn said(&mut self, path: Option<&Path>, number: u32) -> String {
        let batch = self.log.book(path).and_then(|book| book.chosen());
        let found = batch.and_then(|batch| batch.entries.iter().find(|entry| entry.number == number)).cloned();
        found.map_or_else(String::new, |entry| {
            let label = entry.kind.row().label;
            let at = short_moment(entry.at, self.view.units);
            // That something was done is said by its name alone.
            if entry.value == EntryValue::Done {
                return format!("{label} ({at})");
            }
            format!("{label} {} ({at})", self.log.words(&entry, self.view.units))
        })
    }

    /// Looks at the table of a probe for the batch in sight.
    pub(super) fn look_at_table(&mut self, path: &Path) {
        let now = self.clock.now();
        let Some(batch) = self.log.book(self.session.path()).and_then(|book| book.chosen()) else { return };
        let (number, zone) = (batch.number, now.for_week(&batch.design.week).zone);
        match ProbeImport::read(path, batch, zone) {
            Ok(table) => self.log.import = Some((number, table)),
            Err(error) => self.tell(format!("The file cannot be read: {error}.")),
        }
    }

    /// Writes the batches that are shown as a table.
    pub(super) fn save_batches(&mut self, path: &Path) {
        let Some(book) = self.log.book(self.session.path()) else { return };
        let table = batches_csv(&batch_lines(book.batches(), &self.view.log.sought)).map_err(|error| error.to_string());
        let written = table.and_then(|bytes| write_safely(path, &bytes, false).map_err(|error| error.to_string()));
        match written {
            Ok(()) => self.session.last_change = format!("Batches saved as {}", path.display()),
            Err(why) => self.tell(format!("The table was not saved: {why}.")),
        }
    }
}

/// What was done to a log.
enum Done {
    /// What is said of it.
    Said(String),
    /// What happened to an entry.
    Entry(&'static str, u32),
}

/// Writes what a table gives into the batch in sight.
fn written_table(book: &mut Logbook, table: &ProbeImport) -> Result<String, LogbookError> {
    let kind = table.wish().kind;
    let lines = table.found().map(|(imported, _)| imported.read.clone()).unwrap_or_default();
    let count = book.enter_table(kind, &lines)?;
    let values = if count == 1 { "value" } else { "values" };
    Ok(format!("Written down: {count} {values} of {}", kind.row().label))
}
