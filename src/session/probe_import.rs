//! The table of a probe that is looked at before it is written into a batch.

use crate::file::{FileError, read_table};
use crate::record::{BatchRecord, DateOrder, EntryKind, Import, ImportError, Imported, import};
use jiff::tz::TimeZone;
use std::path::{Path, PathBuf};

/// How the table is to be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProbeWish {
    /// What its values are.
    pub kind: EntryKind,
    /// The column of the times, by its heading or its number from 1; found by itself where nothing is said.
    pub time: String,
    /// The column of the values, likewise.
    pub value: String,
    /// In which order day and month stand, where the table does not tell.
    pub order: Option<DateOrder>,
}

/// A table, and what it would give.
#[derive(Clone, Debug)]
pub struct ProbeImport {
    path: PathBuf,
    text: String,
    zone: TimeZone,
    wish: ProbeWish,
    found: Result<(Imported, usize), ImportError>,
}

impl ProbeImport {
    /// Reads a table for a batch: as temperatures of the milk at first, which most probes are for.
    ///
    /// # Arguments
    /// * `zone`: of the kitchen, for times that say how far they are from UTC
    ///
    /// # Errors
    /// [`FileError`] for a file that cannot be read; what it holds is judged by [`ProbeImport::found`].
    pub fn read(path: &Path, batch: &BatchRecord, zone: TimeZone) -> Result<Self, FileError> {
        let text = read_table(path)?;
        let wish = ProbeWish { kind: EntryKind::MilkTemperature, time: String::new(), value: String::new(), order: None };
        let found = found(&text, &wish, batch, &zone);
        Ok(Self { path: path.to_owned(), text, zone, wish, found })
    }

    /// Returns the file.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Returns how it is read.
    #[must_use]
    pub const fn wish(&self) -> &ProbeWish {
        &self.wish
    }

    /// Returns what it gives that the batch does not have yet, and how many lines the batch has already; or why it gives nothing at all.
    ///
    /// # Errors
    /// [`ImportError`].
    pub fn found(&self) -> Result<(&Imported, usize), &ImportError> {
        self.found.as_ref().map(|(imported, known)| (imported, *known))
    }

    /// Reads it in another way.
    pub fn read_as(&mut self, wish: ProbeWish, batch: &BatchRecord) {
        self.found = found(&self.text, &wish, batch, &self.zone);
        self.wish = wish;
    }
}

fn found(text: &str, wish: &ProbeWish, batch: &BatchRecord, zone: &TimeZone) -> Result<(Imported, usize), ImportError> {
    let given = |column: &'_ str| -> Option<String> { Some(column.trim().to_owned()).filter(|column| !column.is_empty()) };
    let (time, value) = (given(&wish.time), given(&wish.value));
    let asked = Import { kind: wish.kind, time: time.as_deref(), value: value.as_deref(), order: wish.order, zone: zone.clone() };
    let mut imported = import(text, &asked)?;
    let known = imported.leave_out_known(wish.kind, batch);
    Ok((imported, known))
}
