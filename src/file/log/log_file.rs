//! A log as it was read, with what was lost.

use super::LostLine;
use crate::record::{Additions, Log};

/// A log as a file holds it.
#[derive(Clone, Debug, Default)]
pub struct LogFile {
    /// The batches; what is added here is written by [`LogFile::append`].
    pub log: Log,
    /// What could not be read.
    pub lost: Vec<LostLine>,
    /// What was in the file when it was read or written last; none where there is no file yet.
    pub(super) content: Option<Content>,
    /// Where additions begin that are not in the file.
    pub(super) written: Additions,
}

impl LogFile {
    /// Returns what could not be read, a sentence each.
    #[must_use]
    pub fn lost_words(&self) -> Vec<String> {
        self.lost.iter().map(LostLine::in_words).collect()
    }

    /// Returns a log that is in no file yet.
    #[must_use]
    pub fn of(log: Log) -> Self {
        Self { log, ..Self::default() }
    }
}

/// What a file held.
#[derive(Clone, Debug, Default)]
pub(super) struct Content {
    /// Its size, bytes.
    pub(super) bytes: u64,
    /// The check of all of it.
    pub(super) check: u32,
    /// Whether its last line is ended.
    pub(super) ended: bool,
    /// The lines whose check fits, as they are; kept only where others are lost.
    pub(super) good: Vec<String>,
    /// Batches and entries that are lost for good, to be told once.
    pub(super) missing: (Vec<u32>, Vec<u32>),
}

impl Content {
    /// Returns what is remembered of some bytes.
    pub(super) fn of(bytes: &[u8]) -> Self {
        Self {
            bytes: bytes.len() as u64,
            check: crc32fast::hash(bytes),
            ended: bytes.is_empty() || bytes.ends_with(b"\n"),
            ..Self::default()
        }
    }

    /// Returns whether a file still holds the same.
    pub(super) fn is(&self, bytes: &[u8]) -> bool {
        self.bytes == bytes.len() as u64 && self.check == crc32fast::hash(bytes)
    }
}
