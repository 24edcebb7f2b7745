//! The log beside the open design: opened when it is asked for, and written at once with every entry.

use crate::design::{Design, DesignId};
use crate::file::{FileError, LogFile};
use crate::kitchen::newest;
use crate::plan::Now;
use crate::record::{Additions, BatchRecord, EntryKind, EntryValue, Log, ReadLine, RecordError};
use jiff::civil::DateTime;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// What the names of designs and of logs end in.
const DESIGN: &str = ".vat.ron";
const LOG: &str = ".log.ron";

/// Why nothing was written down.
#[derive(Debug, thiserror::Error)]
pub enum LogbookError {
    /// The file.
    #[error(transparent)]
    File(#[from] FileError),
    /// What was given.
    #[error(transparent)]
    Record(#[from] RecordError),
}

/// The invented log, built in.
const EXAMPLE: &str = include_str!("../../resources/examples/three-batches.log.ron");

/// The log beside a design, and which of its batches is in sight.
#[derive(Clone, Debug)]
pub struct Logbook {
    path: PathBuf,
    file: LogFile,
    chosen: Option<u32>,
    is_example: bool,
}

impl Logbook {
    /// Returns where the log of a design is kept: beside it, under the same name.
    ///
    /// # Example
    /// ```
    /// use std::path::Path;
    /// use vatsketch::session::Logbook;
    /// assert_eq!(Logbook::beside(Path::new("vats/first.vat.ron")), Path::new("vats/first.log.ron"));
    /// ```
    #[must_use]
    pub fn beside(design: &Path) -> PathBuf {
        let name = design.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let stem = name.strip_suffix(DESIGN).or_else(|| name.strip_suffix(".ron")).unwrap_or(&name);
        design.with_file_name(format!("{stem}{LOG}"))
    }

    /// Opens the log of a design, with its last batch in sight; one that is in no file yet is empty.
    ///
    /// # Errors
    /// [`FileError`] for a file that is there and is no log.
    pub fn open(design: &Path) -> Result<Self, FileError> {
        let path = Self::beside(design);
        let file = if std::fs::symlink_metadata(&path).is_ok() { LogFile::read(&path)? } else { LogFile::default() };
        let chosen = file.log.batches.last().map(|batch| batch.number);
        Ok(Self { path, file, chosen, is_example: false })
    }

    /// Returns the invented log of three batches, to look at: what is written into it is in no file.
    ///
    /// # Errors
    /// [`FileError`], which a test keeps from happening.
    ///
    /// # Example
    /// ```
    /// let book = vatsketch::session::Logbook::example()?;
    /// assert!(book.is_example() && book.batches().len() == 3);
    /// # Ok::<(), vatsketch::file::FileError>(())
    /// ```
    pub fn example() -> Result<Self, FileError> {
        let file = LogFile::from_bytes(EXAMPLE.as_bytes())?;
        let chosen = file.log.batches.last().map(|batch| batch.number);
        Ok(Self { path: PathBuf::new(), file, chosen, is_example: true })
    }

    /// Returns whether it is the invented one, which is in no file.
    #[must_use]
    pub const fn is_example(&self) -> bool {
        self.is_example
    }

    /// Returns its file.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Returns every batch, the oldest first.
    #[must_use]
    pub fn batches(&self) -> &[BatchRecord] {
        &self.file.log.batches
    }

    /// Returns the batches that a kitchen is learned from: those with these numbers, or the newest.
    #[must_use]
    pub fn learned_from(&self, numbers: Option<&BTreeSet<u32>>) -> Vec<&BatchRecord> {
        match numbers {
            Some(chosen) => self.batches().iter().filter(|batch| chosen.contains(&batch.number)).collect(),
            None => newest(self.batches()).iter().collect(),
        }
    }

    /// Returns how much it has: what is added later comes behind that.
    #[must_use]
    pub fn end(&self) -> Additions {
        self.file.log.end()
    }

    /// Returns the batch in sight.
    #[must_use]
    pub fn chosen(&self) -> Option<&BatchRecord> {
        self.file.log.batch(self.chosen?).ok()
    }

    /// Brings a batch into sight.
    pub const fn choose(&mut self, number: u32) {
        self.chosen = Some(number);
    }

    /// Returns what could not be read, a sentence each.
    #[must_use]
    pub fn lost(&self) -> Vec<String> {
        self.file.lost_words()
    }

    /// Begins a batch of a design, as it is now, and brings it into sight.
    ///
    /// # Arguments
    /// * `now`: what time it is in the kitchen, and in which zone
    ///
    /// # Errors
    /// [`LogbookError`]; nothing was written then.
    pub fn begin(&mut self, name: &str, now: &Now, design: &Design, id: Option<DesignId>) -> Result<u32, LogbookError> {
        let zone = now.zone.iana_name().unwrap_or_default();
        let number = self.write(|log| Ok(log.begin_in(zone, name, now.at, design.clone(), id)))?;
        self.chosen = Some(number);
        Ok(number)
    }

    /// Writes an entry into the batch in sight.
    ///
    /// # Errors
    /// [`LogbookError`]; nothing was written then.
    pub fn enter(&mut self, at: DateTime, kind: EntryKind, value: &EntryValue) -> Result<u32, LogbookError> {
        let batch = self.chosen.unwrap_or_default();
        self.write(|log| log.enter(batch, at, kind, value.clone()))
    }

    /// Writes what a table of a probe gives into the batch in sight, all of it or nothing; returns how many entries that are.
    ///
    /// # Errors
    /// [`LogbookError`]; nothing was written then.
    pub fn enter_table(&mut self, kind: EntryKind, lines: &[ReadLine]) -> Result<usize, LogbookError> {
        let batch = self.chosen.unwrap_or_default();
        self.write(|log| {
            for line in lines {
                log.enter(batch, line.at, kind, EntryValue::Number(line.value))?;
            }
            Ok(lines.len())
        })
    }

    /// Writes another value for an entry, or that it is taken back; what stood there before is kept.
    ///
    /// # Errors
    /// [`LogbookError`]; nothing was written then.
    pub fn correct(&mut self, entry: u32, value: &EntryValue) -> Result<u32, LogbookError> {
        self.write(|log| log.correct(entry, None, value.clone()))
    }

    /// Adds to the log and to its file. Where somebody else added to the file in the meantime, it is read again first.
    fn write<T>(&mut self, add: impl Fn(&mut Log) -> Result<T, RecordError>) -> Result<T, LogbookError> {
        let mut file = self.file.clone();
        let added = add(&mut file.log)?;
        if self.is_example {
            self.file = file;
            return Ok(added);
        }
        match file.append(&self.path) {
            Ok(_) => {
                self.file = file;
                Ok(added)
            }
            Err(error) if error.is_changed_log() => {
                let mut file = LogFile::read(&self.path)?;
                let added = add(&mut file.log)?;
                file.append(&self.path)?;
                self.file = file;
                Ok(added)
            }
            Err(error) => Err(error.into()),
        }
    }
}
