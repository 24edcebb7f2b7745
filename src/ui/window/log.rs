//! Does what the page of the log asks for.

use crate::record::EntryValue;
use crate::report::{entry_words, short_moment};
use crate::session::{Logbook, LogbookError};
use crate::ui::state::ask::LogAsk;
use crate::ui::window::shell::Window;
use crate::units::Units;

impl Window {
    /// Does what is asked about the log; an error is told, and what was typed is told with it.
    pub(super) fn about_log(&mut self, ask: LogAsk) {
        let Some(path) = self.session.path().map(std::path::Path::to_owned) else { return };
        let now = self.clock.now();
        let (design, id, log_at) = (self.session.design().clone(), self.session.id(), self.view.log_at);
        let Some(book) = self.log.book(&path) else { return };
        let week = book.chosen().map_or(&design.week, |batch| &batch.design.week);
        let clock = now.for_week(week).at;
        let at = log_at.unwrap_or(clock);
        let done: Result<String, LogbookError> = match ask {
            LogAsk::Begin => {
                self.view.log_at = None;
                book.begin("", clock, &design, id).map(|number| format!("Batch {number} begun"))
            }
            LogAsk::Choose(number) => {
                // A time that was said for one batch means nothing in another.
                self.view.log_at = None;
                book.choose(number);
                return;
            }
            LogAsk::At(at) => {
                self.view.log_at = at;
                return;
            }
            LogAsk::Enter(kind, value) => {
                book.enter(at, kind, &value).map(|entry| format!("Written down: {}", said(book, entry, self.view.units)))
            }
            LogAsk::TakeBack(entry) => {
                let words = format!("Taken back: {}", said(book, entry, self.view.units));
                book.correct(entry, &EntryValue::Withdrawn).map(|_| words)
            }
        };
        let file = Logbook::beside(&path);
        let file = file.file_name().unwrap_or_default().to_string_lossy().into_owned();
        match done {
            Ok(said) => self.session.last_change = format!("{said}; saved in {file}"),
            Err(error) => self.tell(format!("Not written down: {error}.")),
        }
    }
}

/// Returns what an entry of the batch in sight says, and when that was.
fn said(book: &Logbook, number: u32, units: Units) -> String {
    let entry = book.chosen().and_then(|batch| batch.entries.iter().find(|entry| entry.number == number));
    entry.map_or_else(String::new, |entry| {
        format!("{} {} ({})", entry.kind.row().label, entry_words(entry, units), short_moment(entry.at, units))
    })
}
