//! A log that begins again with its good lines, after the broken file was copied.

use super::checked::with_check;
use super::log_file::{Content, LogFile};
use super::read::content;
use super::v1::{FORMAT, Line};
use crate::file::{FileError, write_safely};
use std::path::{Path, PathBuf};

/// Copies that are kept at most; who has so many has other troubles.
const MOST_COPIES: u32 = 1000;

impl LogFile {
    /// Copies the file as it is, writes its good lines in its place, and returns the name of the copy.
    pub(super) fn repair(&mut self, path: &Path) -> Result<PathBuf, FileError> {
        let Some(known) = self.content.clone() else { return Err(FileError::LogChanged.of_file(path)) };
        let there = content(path)?;
        if !known.is(&there) {
            return Err(FileError::LogChanged.of_file(path));
        }
        let copy = free_name(path);
        write_safely(&copy, &there, false)?;
        let (batches, entries) = known.missing;
        let name = copy.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let head = Line::Log { format: FORMAT }.text();
        let mut lines: Vec<String> = known.good;
        // The first line may be the broken one.
        if lines.first() != Some(&head) {
            lines.insert(0, head);
        }
        lines.push(Line::Lost { batches, entries, copy: name }.text());
        let text: String = lines.iter().map(|line| with_check(line)).collect();
        write_safely(path, text.as_bytes(), false)?;
        self.content = Some(Content::of(text.as_bytes()));
        self.lost.retain(|lost| !lost.is_gone());
        Ok(copy)
    }
}

/// Returns a name beside a file that nothing has.
fn free_name(path: &Path) -> PathBuf {
    let named = |number: u32| {
        let ending = if number == 1 { ".broken".to_owned() } else { format!(".broken-{number}") };
        crate::file::with_ending(path, &ending)
    };
    (1..MOST_COPIES).map(named).find(|name| !name.exists()).unwrap_or_else(|| named(MOST_COPIES))
}
