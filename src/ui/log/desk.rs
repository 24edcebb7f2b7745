//! The log while the window is open: read where its page is shown, and kept with what is shown of it.

use crate::curve::MeasuredLine;
use crate::design::{Design, Stage};
use crate::record::{Additions, Entry};
use crate::report::{BatchLine, batch_lines, entry_words};
use crate::session::{Logbook, ProbeImport};
use crate::ui::log::kitchen::KitchenKnown;
use crate::ui::log::page::{LogFound, LogParts, log_page_ui};
use crate::ui::log::shown::{LogShown, Look};
use crate::ui::state::ask::Ask;
use crate::ui::state::log_view::LogPart;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::units::Units;
use egui::Ui;
use std::path::{Path, PathBuf};

/// The log beside the open design, or the invented one.
#[derive(Clone, Debug, Default)]
pub(in crate::ui) struct LogDesk {
    /// Of which design it was read, and what came of it.
    read: Option<(PathBuf, Result<Logbook, String>)>,
    /// The invented log, while it is looked at.
    example: Option<Logbook>,
    shown: Option<LogShown>,
    /// All batches that were found, what was searched for, and how much the log had then.
    across: Option<(String, Additions, Vec<BatchLine>)>,
    /// The table of a probe that is looked at, and for which batch.
    pub(in crate::ui) import: Option<(u32, ProbeImport)>,
}

impl LogDesk {
    /// Reads the log again where its page is shown next: somebody else may have written into it.
    pub(in crate::ui) fn forget(&mut self) {
        self.read = None;
        self.across = None;
    }

    /// Looks at the invented log, or leaves it.
    ///
    /// # Errors
    /// Why it cannot be shown, which a test keeps from happening.
    pub(in crate::ui) fn look_at_example(&mut self, on: bool) -> Result<(), String> {
        self.import = None;
        self.across = None;
        self.example = if on { Some(Logbook::example().map_err(|error| error.to_string())?) } else { None };
        Ok(())
    }

    /// Returns the log in sight: the invented one, or that of a design, read from its file where that was not done yet; nothing where there is
    /// none or it cannot be read.
    pub(in crate::ui) fn book(&mut self, design: Option<&Path>) -> Option<&mut Logbook> {
        if self.example.is_some() {
            return self.example.as_mut();
        }
        let design = design?;
        if self.read.as_ref().is_none_or(|(of, _)| of != design) {
            let read = Logbook::open(design).map_err(|error| format!("The log cannot be shown: {error}."));
            self.read = Some((design.to_owned(), read));
            (self.import, self.across) = (None, None);
        }
        self.read.as_mut().and_then(|(_, book)| book.as_mut().ok())
    }

    /// Calculates what is shown of the batch in sight, where that is another one by now.
    fn follow(&mut self, design: Option<&Path>, look: Look<'_>) {
        let kept = self.shown.take();
        let book = self.book(design);
        let shown = book.and_then(|book| book.chosen()).map(|record| LogShown::of(record, look, kept));
        self.shown = shown;
    }

    /// Returns what was measured of the batch in sight, as dots on the curves and at the stations of the run; nothing where the design is in no
    /// file or has no log.
    pub(in crate::ui) fn measured(&mut self, design: Option<&Path>, look: Look<'_>) -> (&[MeasuredLine], &[(Stage, f64)]) {
        // The invented log belongs to no design that is open.
        let example = self.example.take();
        if design.is_some() {
            self.follow(design, look);
        }
        self.example = example;
        self.shown.as_ref().filter(|_| design.is_some()).map_or((&[], &[]), |shown| (&shown.lines, &shown.weighed))
    }

    /// Draws the page and returns what is asked for.
    ///
    /// `path`: the file of the open design, if it has one
    pub(in crate::ui) fn page_ui(
        &mut self,
        ui: &mut Ui,
        view: &mut View,
        (path, design): (Option<&Path>, &Design),
        (look, kitchen): (Look<'_>, KitchenKnown<'_>),
        room: Room,
    ) -> Vec<Ask> {
        self.follow(path, look);
        if view.log.part == LogPart::All {
            self.find(&view.log.sought);
        }
        let unreadable = self.read.as_ref().filter(|_| self.example.is_none() && path.is_some());
        if let Some((_, Err(why))) = unreadable {
            return log_page_ui(ui, view, &LogFound::Unreadable(why), look.now, room);
        }
        let of_design = self.read.as_ref().filter(|_| path.is_some()).and_then(|(_, book)| book.as_ref().ok());
        let Some(book) = self.example.as_ref().or(of_design) else {
            return log_page_ui(ui, view, &LogFound::NoFile(design), look.now, room);
        };
        if let Some(shown) = &mut self.shown {
            if book.is_example() {
                shown.without_next();
            } else {
                shown.follow_clock(look.now);
            }
        }
        let parts = LogParts {
            book,
            design,
            shown: self.shown.as_ref(),
            across: self.across.as_ref().map_or(&[], |(.., lines)| lines),
            import: self
                .import
                .as_ref()
                .filter(|(batch, _)| book.chosen().map(|batch| batch.number) == Some(*batch))
                .map(|(_, table)| table),
            kitchen,
        };
        log_page_ui(ui, view, &LogFound::Book(parts), look.now, room)
    }

    /// Returns what an entry of the batch in sight says.
    pub(in crate::ui) fn words(&self, entry: &Entry, units: Units) -> String {
        self.shown.as_ref().map_or_else(|| entry_words(entry, units), |shown| shown.words(entry))
    }

    /// Finds the batches that have some words, where log or words are other ones by now.
    fn find(&mut self, sought: &str) {
        let of_design = self.read.as_ref().and_then(|(_, book)| book.as_ref().ok());
        let Some(book) = self.example.as_ref().or(of_design) else { return };
        let end = book.end();
        if self.across.as_ref().is_none_or(|(words, at, _)| words != sought || *at != end) {
            self.across = Some((sought.to_owned(), end, batch_lines(book.batches(), sought)));
        }
    }
}
