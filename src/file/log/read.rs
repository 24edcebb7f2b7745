//! Reading a log: every line whose check fits counts, whatever is broken before or after it.

use super::checked::checked;
use super::log_file::{Content, LogFile};
use super::v1::{self, FORMAT, Line};
use super::{LostLine, WhyLost};
use crate::file::FileError;
use crate::record::{Additions, Log};
use std::collections::BTreeSet;
use std::path::Path;

/// Greatest size of a log; a thousand batches have about a tenth of it.
const MOST_BYTES: u64 = 64 << 20;
/// Letters of a broken line that are told.
const MOST_SEEN: usize = 160;
/// How a log begins.
const BEGINS: &[u8] = b"log(format:";

impl LogFile {
    /// Reads a log, as far as it can be read; [`LogFile::lost`] says what cannot. Nothing is written.
    ///
    /// # Errors
    /// [`FileError`] for a file that cannot be read at all, is no log, or is of a later format.
    pub fn read(path: &Path) -> Result<Self, FileError> {
        let bytes = content(path)?;
        Self::from_bytes(&bytes).map_err(|error| error.of_file(path))
    }

    /// Reads a log from the bytes of its file.
    ///
    /// # Errors
    /// As for [`LogFile::read`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, FileError> {
        let mut reading = Reading::default();
        let mut lines: Vec<&[u8]> = bytes.split(|byte| *byte == b'\n').collect();
        // Behind the end of the last line there is nothing.
        if lines.last().is_some_and(|last| last.is_empty()) {
            lines.pop();
        }
        let ended = bytes.ends_with(b"\n");
        for (at, line) in lines.iter().enumerate() {
            let line = line.strip_suffix(b"\r").unwrap_or(line);
            let is_cut = at + 1 == lines.len() && !ended;
            reading.line(at + 1, line, is_cut)?;
        }
        let first = lines.first().copied().unwrap_or_default();
        let begins_so = first.starts_with(BEGINS) || BEGINS.starts_with(first);
        if !reading.any_good && !begins_so {
            return Err(FileError::NotALog);
        }
        Ok(reading.finish(lines.len(), bytes))
    }
}

/// Returns the bytes of a file that may be a log.
pub(super) fn content(path: &Path) -> Result<Vec<u8>, FileError> {
    let unreadable = |cause| FileError::Unreadable { path: path.to_owned(), cause };
    let bytes = std::fs::metadata(path).map_err(unreadable)?.len();
    if bytes > MOST_BYTES {
        return Err(FileError::TooLarge { bytes, most: MOST_BYTES }.of_file(path));
    }
    std::fs::read(path).map_err(unreadable)
}

/// A log while it is read.
#[derive(Default)]
struct Reading {
    log: Log,
    lost: Vec<LostLine>,
    good: Vec<String>,
    any_good: bool,
    seen_entries: BTreeSet<u32>,
    told: (BTreeSet<u32>, BTreeSet<u32>),
}

impl Reading {
    fn line(&mut self, number: usize, line: &[u8], is_cut: bool) -> Result<(), FileError> {
        let Some(body) = checked(line) else {
            self.lose(number, line, if is_cut { WhyLost::CutShort } else { WhyLost::Broken });
            return Ok(());
        };
        self.any_good = true;
        self.good.push(body.to_owned());
        let understood = match ron::from_str::<Line>(body) {
            Ok(Line::Log { format }) if format > FORMAT => return Err(FileError::LogTooNew { found: format, newest: FORMAT }),
            Ok(understood) => self.take(understood),
            Err(error) => Err(WhyLost::NotUnderstood(error.code.to_string())),
        };
        if let Err(why) = understood {
            self.lose(number, body.as_bytes(), why);
        }
        Ok(())
    }

    fn take(&mut self, line: Line) -> Result<(), WhyLost> {
        match line {
            Line::Log { .. } => {}
            Line::Batch { number, name, begun, zone, design } => {
                let batch = v1::batch(number, name, (&begun, zone), &design).map_err(WhyLost::NotUnderstood)?;
                if self.log.batch(number).is_ok() {
                    return Err(WhyLost::NotUnderstood(format!("there is a batch {number} already")));
                }
                self.log.batches.push(batch);
            }
            Line::Entry { number, batch, at, kind, value, corrects } => {
                let twice = !self.seen_entries.insert(number);
                let entry = v1::entry(number, &at, &kind, value, corrects).map_err(WhyLost::NotUnderstood)?;
                if twice {
                    return Err(WhyLost::NotUnderstood(format!("there is an entry {number} already")));
                }
                let known = self.log.batches.iter_mut().rev().find(|one| one.number == batch);
                known.ok_or(WhyLost::NoBatch(batch))?.entries.push(entry);
            }
            Line::Lost { batches, entries, .. } => {
                self.told.0.extend(batches);
                self.told.1.extend(entries);
            }
        }
        Ok(())
    }

    fn lose(&mut self, line: usize, bytes: &[u8], why: WhyLost) {
        let seen = String::from_utf8_lossy(bytes).chars().take(MOST_SEEN).collect();
        self.lost.push(LostLine { line, why, seen });
    }

    fn finish(mut self, lines: usize, bytes: &[u8]) -> LogFile {
        let orphaned: BTreeSet<u32> = self.lost.iter().filter_map(LostLine::orphan_of).collect();
        let mut numbers: BTreeSet<u32> = self.log.batches.iter().map(|batch| batch.number).collect();
        let given = Additions {
            after_batch: numbers.union(&orphaned).last().copied().unwrap_or(0),
            after_entry: self.seen_entries.last().copied().unwrap_or(0),
        };
        let (told_batches, told_entries) = &self.told;
        numbers.extend(told_batches);
        let gaps = |seen: &BTreeSet<u32>, last: u32| -> Vec<u32> { (1..=last).filter(|number| !seen.contains(number)).collect() };
        let batches = gaps(&numbers, given.after_batch);
        self.seen_entries.extend(told_entries);
        let entries = gaps(&self.seen_entries, given.after_entry);
        // What was told when it was lost is not told again.
        self.lost.retain(|lost| lost.orphan_of().is_none_or(|batch| !told_batches.contains(&batch)));
        if !batches.is_empty() || !entries.is_empty() {
            let why = WhyLost::Missing { batches: batches.clone(), entries: entries.clone() };
            self.lost.push(LostLine { line: lines, why, seen: String::new() });
        }
        let good = if self.lost.is_empty() { Vec::new() } else { self.good };
        self.log.given = given;
        let (written, content) = (self.log.end(), Content { good, missing: (batches, entries), ..Content::of(bytes) });
        LogFile { log: self.log, lost: self.lost, content: Some(content), written }
    }
}
