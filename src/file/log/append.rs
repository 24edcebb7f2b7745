//! Adding to a log: behind what is there, flushed to the disk, and nothing that is there is touched.

use super::LostLine;
use super::checked::with_check;
use super::log_file::{Content, LogFile};
use super::v1::{FORMAT, Line};
use crate::file::FileError;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::{Error, Read, Seek, SeekFrom, Write};
use std::path::Path;

impl LogFile {
    /// Writes what was added to the log since it was read or written; where there is no file yet, one is begun.
    ///
    /// Where something was lost, the file as it is is first copied beside it, and the log begins again with the lines that are good; the
    /// answer is then the name of that copy.
    ///
    /// # Errors
    /// [`FileError`]; what was in the file is still there, and may be read again.
    pub fn append(&mut self, path: &Path) -> Result<Option<std::path::PathBuf>, FileError> {
        let added = self.added();
        let copy = if self.lost.iter().any(LostLine::is_gone) { Some(self.repair(path)?) } else { None };
        let unwritable = |cause| FileError::Unwritable { path: path.to_owned(), cause };
        let bytes = match &self.content {
            None => begin(path, &added)?,
            Some(_) if added.is_empty() => return Ok(copy),
            Some(content) => {
                let mut file = OpenOptions::new().read(true).append(true).open(path).map_err(unwritable)?;
                hold(&file).map_err(|error| error.of_file(path))?;
                let mut there = Vec::new();
                file.read_to_end(&mut there).map_err(unwritable)?;
                if !content.is(&there) {
                    return Err(FileError::LogChanged.of_file(path));
                }
                let text = if content.ended { added } else { format!("\n{added}") };
                put(&mut file, text.as_bytes(), content.bytes).map_err(unwritable)?;
                there.extend(text.into_bytes());
                there
            }
        };
        self.content = Some(Content::of(&bytes));
        self.written = self.log.end();
        Ok(copy)
    }

    /// Returns the lines of what is not in the file, in the order of their numbers.
    fn added(&self) -> String {
        let mut text = String::new();
        for batch in self.log.batches.iter().filter(|batch| batch.number > self.written.after_batch) {
            text.extend(Line::of_batch(batch).map(|line| with_check(&line.text())));
        }
        let mut entries: Vec<_> = self
            .log
            .batches
            .iter()
            .flat_map(|batch| batch.entries.iter().map(move |entry| (batch.number, entry)))
            .filter(|(_, entry)| entry.number > self.written.after_entry)
            .collect();
        entries.sort_by_key(|(_, entry)| entry.number);
        text.extend(entries.into_iter().map(|(batch, entry)| with_check(&Line::of_entry(batch, entry).text())));
        text
    }
}

/// Begins a file that is not there yet.
fn begin(path: &Path, added: &str) -> Result<Vec<u8>, FileError> {
    let text = with_check(&Line::Log { format: FORMAT }.text()) + added;
    let made = OpenOptions::new().write(true).create_new(true).open(path);
    let mut file = made.map_err(|cause| match cause.kind() {
        std::io::ErrorKind::AlreadyExists => FileError::LogChanged.of_file(path),
        _ => FileError::Unwritable { path: path.to_owned(), cause },
    })?;
    let unwritable = |cause| FileError::Unwritable { path: path.to_owned(), cause };
    hold(&file).map_err(|error| error.of_file(path))?;
    put(&mut file, text.as_bytes(), 0).map_err(unwritable)?;
    if let Some(folder) = path.parent() {
        // So that the new name outlives a power cut; not every system lets a folder be flushed.
        let _ = File::open(folder).and_then(|folder| folder.sync_all());
    }
    Ok(text.into_bytes())
}

/// Keeps other programs from writing as long as the file is open.
fn hold(file: &File) -> Result<(), FileError> {
    match file.try_lock() {
        Err(TryLockError::WouldBlock) => Err(FileError::LogInUse),
        // Where the disk knows no locks, nobody else is kept away.
        Err(TryLockError::Error(_)) | Ok(()) => Ok(()),
    }
}

/// Writes behind what is there and waits until the disk has it; what was written by half is taken away again.
fn put(file: &mut File, text: &[u8], end: u64) -> Result<(), Error> {
    let done = file.seek(SeekFrom::End(0)).and_then(|_| file.write_all(text)).and_then(|()| file.sync_all());
    if done.is_err() {
        // If that fails too, the half line is told as lost at the next reading.
        let _ = file.set_len(end);
    }
    done
}
