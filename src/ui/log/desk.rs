//! The log while the window is open: read where its page is shown, and kept with what is shown of it.

use crate::curve::MeasuredLine;
use crate::design::Design;
use crate::session::Logbook;
use crate::ui::log::page::{LogFound, log_page_ui};
use crate::ui::log::shown::{LogShown, Look};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use egui::Ui;
use std::path::{Path, PathBuf};

/// The log beside the open design.
#[derive(Clone, Debug, Default)]
pub(in crate::ui) struct LogDesk {
    /// Of which design it was read, and what came of it.
    read: Option<(PathBuf, Result<Logbook, String>)>,
    shown: Option<LogShown>,
}

impl LogDesk {
    /// Reads the log again where its page is shown next: somebody else may have written into it.
    pub(in crate::ui) fn forget(&mut self) {
        self.read = None;
    }

    /// Returns the log of a design, read from its file where that was not done yet; nothing where it cannot be read.
    pub(in crate::ui) fn book(&mut self, design: &Path) -> Option<&mut Logbook> {
        if self.read.as_ref().is_none_or(|(of, _)| of != design) {
            let read = Logbook::open(design).map_err(|error| format!("The log cannot be shown: {error}."));
            self.read = Some((design.to_owned(), read));
        }
        self.read.as_mut().and_then(|(_, book)| book.as_mut().ok())
    }

    /// Calculates what is shown of the batch in sight, where that is another one by now.
    fn follow(&mut self, design: &Path, look: Look<'_>) {
        self.book(design);
        let kept = self.shown.take();
        let book = self.read.as_ref().and_then(|(_, book)| book.as_ref().ok());
        self.shown = book.and_then(Logbook::chosen).map(|record| LogShown::of(record, look, kept));
    }

    /// Returns what was measured of the batch in sight; nothing where the design is in no file or has no log.
    pub(in crate::ui) fn measured(&mut self, design: Option<&Path>, look: Look<'_>) -> &[MeasuredLine] {
        if let Some(design) = design {
            self.follow(design, look);
        }
        self.shown.as_ref().filter(|_| design.is_some()).map_or(&[], |shown| &shown.lines)
    }

    /// Draws the page and returns what is asked for.
    ///
    /// `path`: the file of the open design, if it has one
    pub(in crate::ui) fn page_ui(
        &mut self,
        ui: &mut Ui,
        view: &mut View,
        (path, design): (Option<&Path>, &Design),
        look: Look<'_>,
        room: Room,
    ) -> Vec<Ask> {
        let Some(path) = path else { return log_page_ui(ui, view, &LogFound::NoFile, look.now, room) };
        self.follow(path, look);
        match &self.read {
            Some((_, Ok(book))) => log_page_ui(ui, view, &LogFound::Book(book, self.shown.as_ref(), design), look.now, room),
            Some((_, Err(why))) => log_page_ui(ui, view, &LogFound::Unreadable(why), look.now, room),
            None => Vec::new(),
        }
    }
}
