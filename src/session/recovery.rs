//! The recovery copies: what was not saved when the program ended badly.

use super::OpenDesign;
use crate::file::{DesignFile, FileError, write_safely};
use std::path::{Path, PathBuf};

/// Seconds after the last change at which the copies are written.
pub const WAIT_S: f64 = 2.0;

/// What was left behind.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LeftBehind {
    /// The open design.
    pub first: Option<DesignFile>,
    /// The one beside it.
    pub second: Option<DesignFile>,
}

impl LeftBehind {
    /// Returns the titles of what was left behind, in words.
    #[must_use]
    pub fn titles(&self) -> String {
        let title = |DesignFile { design, .. }: &DesignFile| {
            if design.title.is_empty() { "an untitled design".to_owned() } else { format!("“{}”", design.title) }
        };
        let all: Vec<String> = self.first.iter().chain(&self.second).map(title).collect();
        all.join(" and ")
    }
}

/// The place of the recovery copies, and when they are next due. Times are seconds on the caller's own clock.
#[derive(Clone, Debug)]
pub struct Recovery {
    first: PathBuf,
    second: PathBuf,
    due_s: Option<f64>,
}

impl Recovery {
    /// Returns the recovery of a folder that is made when it is first needed.
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        Self { first: folder.join("recovery.vat.ron"), second: folder.join("recovery-second.vat.ron"), due_s: None }
    }

    /// Returns the designs that were left behind, if there are any that can be read.
    #[must_use]
    pub fn left_behind(&self) -> Option<LeftBehind> {
        let left = LeftBehind { first: DesignFile::read(&self.first).ok(), second: DesignFile::read(&self.second).ok() };
        (left != LeftBehind::default()).then_some(left)
    }

    /// Returns the copies that are there.
    #[must_use]
    pub fn copies(&self) -> Vec<&Path> {
        [&self.first, &self.second].into_iter().map(PathBuf::as_path).filter(|path| path.exists()).collect()
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
    pub fn write_if_due(&mut self, first: Option<&OpenDesign>, second: Option<&OpenDesign>, now_s: f64) -> Result<(), FileError> {
        if self.due_s.is_none_or(|due_s| now_s < due_s) {
            return Ok(());
        }
        self.keep(first, second)
    }

    /// Keeps a copy of what is not saved, and removes that of what is.
    ///
    /// # Errors
    /// [`FileError`]; it is tried again after the next change.
    pub fn keep(&mut self, first: Option<&OpenDesign>, second: Option<&OpenDesign>) -> Result<(), FileError> {
        self.due_s = None;
        keep(&self.first, first)?;
        keep(&self.second, second)
    }

    /// Removes the copies: the designs were saved, or given up on purpose.
    pub fn clear(&mut self) {
        self.due_s = None;
        for path in [&self.first, &self.second] {
            // Not there is as good as removed.
            let _ = std::fs::remove_file(path);
        }
    }
}

fn keep(path: &Path, design: Option<&OpenDesign>) -> Result<(), FileError> {
    let Some(design) = design else {
        // Not there is as good as removed.
        let _ = std::fs::remove_file(path);
        return Ok(());
    };
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder).map_err(|cause| FileError::Unwritable { path: path.to_owned(), cause })?;
    }
    write_safely(path, design.to_text().as_bytes(), false)
}
