//! The recovery copies: what is not saved is kept beside the settings, for each running program in a folder of its own.
//!
//! A lock on a file of the folder says that its program still runs. A crash frees it, and what the folder holds is offered at the next start.

use super::OpenDesign;
use super::left_behind::{Entry, LeftBehind, LeftFile};
use super::recovery_folder::{LIST, LOCK, Place};
use super::saved::drawn_id;
use crate::file::{FileError, write_safely};
use std::fs::File;
use std::io::{Error, Result};
use std::path::{Path, PathBuf};

/// Seconds after the last change at which the copies are written.
pub const WAIT_S: f64 = 2.0;

/// The place of this program's recovery copies, and when they are next due. Times are seconds on the caller's own clock.
#[derive(Debug)]
pub struct Recovery {
    /// The folder of every program's folders.
    all: PathBuf,
    /// This program's, which is made when it is first needed.
    own: PathBuf,
    lock: Option<File>,
    due_s: Option<f64>,
}

impl Recovery {
    /// Returns the recovery of this program, under a folder that is made when it is first needed.
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        let all = folder.join("unsaved");
        let own = all.join(drawn_id().to_string());
        Self { all, own, lock: None, due_s: None }
    }

    /// Returns where this program's copies are.
    #[must_use]
    pub fn folder(&self) -> &Path {
        &self.own
    }

    /// Returns what programs that run no more left behind, the last first. Each stays locked until its value is dropped, so that no second
    /// window offers it; what holds nothing is removed.
    #[must_use]
    pub fn left_behind(&self) -> Vec<LeftBehind> {
        let mut left: Vec<LeftBehind> = LeftBehind::of_old_program(self.all.parent().unwrap_or(&self.all)).into_iter().collect();
        let folders = std::fs::read_dir(&self.all).into_iter().flatten().flatten().map(|entry| entry.path());
        left.extend(folders.filter(|folder| folder != &self.own).filter_map(LeftBehind::take));
        left.sort_by_key(|left| std::cmp::Reverse(left.written()));
        left
    }

    /// Notes that a design changed at a moment.
    pub const fn changed(&mut self, now_s: f64) {
        self.due_s = Some(now_s + WAIT_S);
    }

    /// Returns the seconds until the copies are due, if they are.
    #[must_use]
    pub fn due_in_s(&self, now_s: f64) -> Option<f64> {
        self.due_s.map(|due_s| (due_s - now_s).max(0.0))
    }

    /// Writes the copies if they are due.
    ///
    /// # Errors
    /// As for [`Recovery::keep`].
    pub fn write_if_due(&mut self, open: (&OpenDesign, Option<&OpenDesign>), now_s: f64) -> std::result::Result<(), FileError> {
        if self.due_s.is_none_or(|due_s| now_s < due_s) {
            return Ok(());
        }
        self.keep(open)
    }

    /// Keeps a copy of each open design that is not saved, and removes that of what is.
    ///
    /// # Errors
    /// [`FileError`]; it is tried again after the next change.
    pub fn keep(&mut self, (first, second): (&OpenDesign, Option<&OpenDesign>)) -> std::result::Result<(), FileError> {
        self.due_s = None;
        let open: Vec<(Place, &OpenDesign)> = [(Place::First, Some(first)), (Place::Second, second)]
            .into_iter()
            .filter_map(|(place, open)| Some((place, open?)))
            .collect();
        if open.iter().all(|(_, open)| !open.is_dirty()) {
            self.clear();
            return Ok(());
        }
        self.begin().map_err(|cause| FileError::Unwritable { path: self.own.clone(), cause })?;
        // The list first: a copy that it does not name would not be found.
        let list: Vec<Entry> = open.iter().map(|(place, open)| Entry::of(*place, open)).collect();
        let text = ron::ser::to_string_pretty(&list, ron::ser::PrettyConfig::default()).unwrap_or_default();
        write_safely(&self.own.join(LIST), text.as_bytes(), false)?;
        for place in Place::ALL {
            let copy = self.own.join(place.copy());
            match open.iter().find(|(of, open)| *of == place && open.is_dirty()) {
                Some((_, open)) => write_safely(&copy, open.to_file().to_text().as_bytes(), false)?,
                // Not there is as good as removed.
                None => drop(std::fs::remove_file(&copy)),
            }
        }
        Ok(())
    }

    /// Removes the copies: the designs were saved, or given up on purpose.
    pub fn clear(&mut self) {
        self.due_s = None;
        if self.lock.take().is_some() {
            // Not there is as good as removed.
            let _ = std::fs::remove_dir_all(&self.own);
        }
    }

    /// Makes the folder and locks it. It gets its name only once it is locked, so that no other program takes it for left behind.
    fn begin(&mut self) -> Result<()> {
        if self.lock.is_some() && self.own.is_dir() {
            return Ok(());
        }
        let name = self.own.file_name().unwrap_or_default().to_string_lossy();
        let unnamed = self.all.join(format!(".{name}"));
        private_folder(&unnamed)?;
        let lock = File::create(unnamed.join(LOCK))?;
        // Where the disk knows no locks the copies are kept all the same; then no program offers them by itself.
        if let Err(std::fs::TryLockError::WouldBlock) = lock.try_lock() {
            return Err(Error::other("another program holds it"));
        }
        std::fs::rename(&unnamed, &self.own)?;
        self.lock = Some(lock);
        Ok(())
    }
}

/// Makes a folder that only its owner reads, and those above it.
fn private_folder(folder: &Path) -> Result<()> {
    let mut builder = std::fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(folder)
}

/// Opens what was left behind, and keeps it as this program's own before the old copy goes.
impl super::Session {
    /// Returns a session with what was left behind open, each design with the file that it belonged to.
    ///
    /// # Errors
    /// [`super::SessionError`]; what was left behind stays.
    pub fn recovered(left: &LeftBehind) -> std::result::Result<Self, super::SessionError> {
        let open = |place: Place| -> std::result::Result<Option<OpenDesign>, super::SessionError> {
            left.files().iter().find(|file| file.place() == place).map(LeftFile::open).transpose()
        };
        let (first, second) = (open(Place::First)?, open(Place::Second)?);
        let mut session = match first {
            Some(first) => Self::with(first),
            None => Self::open(crate::design::Design::default(), None)?,
        };
        session.second = second;
        Ok(session)
    }
}
