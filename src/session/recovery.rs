//! The recovery copy: what was not saved when the program ended badly.

use crate::design::Design;
use crate::file::{self, FileError, write_safely};
use std::path::{Path, PathBuf};

/// Seconds after the last change at which the copy is written.
pub const WAIT_S: f64 = 2.0;

/// The place of the recovery copy, and when it is next due. Times are seconds on the caller's own clock.
#[derive(Clone, Debug)]
pub struct Recovery {
    path: PathBuf,
    due_s: Option<f64>,
}

impl Recovery {
    /// Returns the recovery of a folder that is made when it is first needed.
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        Self { path: folder.join("recovery.vat.ron"), due_s: None }
    }

    /// Returns the design that was left behind, if there is one and it can be read.
    #[must_use]
    pub fn left_behind(&self) -> Option<Design> {
        file::read(&self.path).ok()
    }

    /// Notes that the design changed at a moment.
    pub const fn changed(&mut self, now_s: f64) {
        self.due_s = Some(now_s + WAIT_S);
    }

    /// Returns the seconds until the copy is due, if one is.
    #[must_use]
    pub fn due_in_s(&self, now_s: f64) -> Option<f64> {
        self.due_s.map(|due_s| (due_s - now_s).max(0.0))
    }

    /// Writes the copy if it is due.
    ///
    /// # Errors
    /// [`FileError`]; it is tried again after the next change.
    pub fn write_if_due(&mut self, design: &Design, now_s: f64) -> Result<(), FileError> {
        if self.due_s.is_none_or(|due_s| now_s < due_s) {
            return Ok(());
        }
        self.due_s = None;
        if let Some(folder) = self.path.parent() {
            std::fs::create_dir_all(folder).map_err(|cause| FileError::Unwritable { path: self.path.clone(), cause })?;
        }
        write_safely(&self.path, file::to_text(design).as_bytes(), false)
    }

    /// Removes the copy: the design was saved, or given up on purpose.
    pub fn clear(&mut self) {
        self.due_s = None;
        // Not there is as good as removed.
        let _ = std::fs::remove_file(&self.path);
    }
}
