//! All batches of one log, and what may be added to it.

use super::{BatchRecord, Entry, EntryKind, EntryValue, RecordError};
use crate::design::{Design, DesignId};
use jiff::civil::DateTime;

/// The batches of a log, in the order in which they were begun.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Log {
    /// Them.
    pub batches: Vec<BatchRecord>,
    /// The last numbers that were ever given, also where a file has lost what they were given to.
    pub given: Additions,
}

/// How much a log had at one moment, to know later what was added: nothing in it ever changes or goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Additions {
    /// The last batch that was there.
    pub after_batch: u32,
    /// The last entry that was there.
    pub after_entry: u32,
}

impl Log {
    /// Returns where additions to it begin.
    #[must_use]
    pub fn end(&self) -> Additions {
        let entries = self.batches.iter().flat_map(|batch| &batch.entries);
        Additions {
            after_batch: self.batches.iter().map(|batch| batch.number).fold(self.given.after_batch, u32::max),
            after_entry: entries.map(|entry| entry.number).fold(self.given.after_entry, u32::max),
        }
    }

    /// Returns a batch.
    ///
    /// # Errors
    /// [`RecordError::NoBatch`].
    pub fn batch(&self, number: u32) -> Result<&BatchRecord, RecordError> {
        let found = self.batches.iter().find(|batch| batch.number == number);
        found.ok_or(RecordError::NoBatch { number, known: self.batches.len() })
    }

    /// Begins the record of a batch, and returns its number.
    ///
    /// # Arguments
    /// * `begun`: what the clock on the wall says
    /// * `design`: as it is on the day
    pub fn begin(&mut self, name: &str, begun: DateTime, design: Design, design_id: Option<DesignId>) -> u32 {
        self.begin_in("", name, begun, design, design_id)
    }

    /// Does the same as [`Self::begin`] in a time zone, by its name in the IANA list; empty: that of the design.
    pub fn begin_in(&mut self, zone: &str, name: &str, begun: DateTime, design: Design, design_id: Option<DesignId>) -> u32 {
        let number = self.end().after_batch + 1;
        let (name, zone) = (name.to_owned(), zone.to_owned());
        self.batches.push(BatchRecord { number, name, begun, zone, design_id, design, entries: Vec::new() });
        number
    }

    /// Writes something down, and returns the number of the entry.
    ///
    /// # Errors
    /// [`RecordError`]; the log is then as it was.
    pub fn enter(&mut self, batch: u32, at: DateTime, kind: EntryKind, value: EntryValue) -> Result<u32, RecordError> {
        if value == EntryValue::Withdrawn {
            return Err(RecordError::NothingToWithdraw);
        }
        self.push(batch, Entry { number: 0, at, kind, value: value.checked(kind)?, corrects: None })
    }

    /// Corrects an entry, or takes it back, and returns the number of the correction; the entry is kept.
    ///
    /// # Arguments
    /// * `at`: when it really was so; as it was where nothing is given
    ///
    /// # Errors
    /// [`RecordError`]; the log is then as it was.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::Design;
    /// use vatsketch::record::{EntryKind, EntryValue, Log};
    /// let (mut log, at) = (Log::default(), jiff::civil::date(2031, 5, 9).at(8, 0, 0, 0));
    /// log.begin("", at, Design::default(), None);
    /// let slip = log.enter(1, at, EntryKind::MilkTemperature, EntryValue::Number(53.0))?;
    /// log.correct(slip, None, EntryValue::Number(35.0))?;
    /// let standing = log.batch(1)?.latest(EntryKind::MilkTemperature).unwrap();
    /// assert_eq!((standing.amount(), standing.corrects), (Some(35.0), Some(slip)));
    /// assert_eq!(log.batch(1)?.earlier(standing)[0].amount(), Some(53.0));
    /// # Ok::<(), vatsketch::record::RecordError>(())
    /// ```
    pub fn correct(&mut self, number: u32, at: Option<DateTime>, value: EntryValue) -> Result<u32, RecordError> {
        let has = |batch: &&BatchRecord| batch.entries.iter().any(|entry| entry.number == number);
        let batch = self.batches.iter().find(has).ok_or(RecordError::NoEntry { number })?;
        let old = batch.entries.iter().find(|entry| entry.number == number).ok_or(RecordError::NoEntry { number })?;
        if let Some(by) = batch.corrected_by(number) {
            return Err(RecordError::Corrected { number, by: by.number, withdrawn: by.value == EntryValue::Withdrawn });
        }
        let (value, at, kind) = (value.checked(old.kind)?, at.unwrap_or(old.at), old.kind);
        let batch = batch.number;
        self.push(batch, Entry { number: 0, at, kind, value, corrects: Some(number) })
    }

    fn push(&mut self, batch: u32, mut entry: Entry) -> Result<u32, RecordError> {
        let (number, known) = (self.end().after_entry + 1, self.batches.len());
        let batch = self.batches.iter_mut().find(|one| one.number == batch).ok_or(RecordError::NoBatch { number: batch, known })?;
        entry.number = number;
        batch.entries.push(entry);
        Ok(number)
    }
}
