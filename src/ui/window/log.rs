//! Does what the page of the log asks for.

use crate::record::EntryValue;
use crate::session::{Logbook, LogbookError};
use crate::ui::state::ask::LogAsk;
use crate::ui::window::shell::Window;

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
            LogAsk::Begin => book.begin("", clock, &design, id).map(|_| "Began a batch in the log".to_owned()),
            LogAsk::Choose(number) => {
                book.choose(number);
                return;
            }
            LogAsk::At(at) => {
                self.view.log_at = at;
                return;
            }
            LogAsk::Enter(kind, value) => {
                let said = format!("Wrote down: {}", kind.row().label);
                book.enter(at, kind, &value).map(|_| said)
            }
            LogAsk::TakeBack(entry) => book.correct(entry, &EntryValue::Withdrawn).map(|_| "Took an entry back".to_owned()),
        };
        let where_it_is = Logbook::beside(&path);
        match done {
            Ok(said) => self.session.last_change = format!("{said}; saved in {}", where_it_is.display()),
            Err(error) => self.tell(format!("Not written down: {error}.")),
        }
    }
}
