//! Opening a log, saying what was lost, and writing to it.

use crate::cli::ending::{CliError, Ending};
use crate::design::{WeekDesign, read_moment};
use crate::export::printable;
use crate::file::LogFile;
use crate::plan::{Lean, Now, spoken_time};
use crate::record::BatchRecord;
use crate::session;
use jiff::civil::DateTime;
use std::io::Write;
use std::path::Path;

use super::EntryOptions;

/// Reads a log and says what of it is lost.
pub(super) fn read(file: &Path, words: &mut dyn Write) -> Result<LogFile, CliError> {
    let log = LogFile::read(file)?;
    for lost in &log.lost {
        writeln!(words, "vatsketch: {}: {}", printable(&file.display().to_string()), printable(&lost.in_words()))?;
    }
    Ok(log)
}

/// Returns how a command ends that only read a log.
pub(super) fn ending(log: &LogFile) -> Ending {
    if log.lost.is_empty() { Ending::Done } else { Ending::FileTrouble }
}

/// Writes what was added, and says where the broken file is kept, if it was one.
pub(super) fn append(log: &mut LogFile, file: &Path, words: &mut dyn Write) -> Result<(), CliError> {
    if let Some(copy) = log.append(file)? {
        writeln!(words, "vatsketch: the broken log is kept as {}", printable(&copy.display().to_string()))?;
    }
    Ok(())
}

/// Returns a batch by its number, or the last one.
pub(super) fn batch(log: &LogFile, number: Option<u32>) -> Result<&BatchRecord, CliError> {
    match number {
        Some(number) => Ok(log.log.batch(number)?),
        None => log.log.batches.last().ok_or_else(|| {
            CliError::Arguments("this log has no batch yet; begin one with `vatsketch log FILE begin DESIGN`".to_owned())
        }),
    }
}

/// Returns what the clock in the kitchen of a week says, or what is said instead of it.
pub(super) fn now(when: &EntryOptions, week: &WeekDesign) -> Result<Now, CliError> {
    let clock = session::now().for_week(week);
    Ok(match &when.as_of {
        None => clock,
        Some(text) => Now { at: read_moment(text)?, ..clock },
    })
}

/// Returns the time that is given; none where none is.
pub(super) fn given(when: &EntryOptions, week: &WeekDesign) -> Result<Option<DateTime>, CliError> {
    let now = now(when, week)?.at;
    Ok(when.at.as_deref().map(|text| spoken_time(text, now, Lean::Back)).transpose()?)
}
