//! One open design: its batch, and the file it belongs to.

use super::SessionError;
use super::own_file::OwnFile;
use super::saved::Saved;
use crate::batch::{Batch, batch, batch_after, judged_by};
use crate::design::{Design, DesignError, DesignId};
use crate::file::{DesignFile, FileError, is_pipe_or_device, stamp};
use crate::process::SlowSoak;
use std::path::{Path, PathBuf};

/// A design with its batch, and the file that it belongs to. A session holds one or two of them.
#[derive(Clone, Debug)]
pub struct OpenDesign {
    design: Design,
    batch: Batch,
    pub(super) file: OwnFile,
}

impl OpenDesign {
    /// Opens a design that counts as saved until it is changed: a new one or an example, which get an id, or that of a file which was read
    /// elsewhere.
    ///
    /// # Errors
    /// [`DesignError`] if the design holds a number out of its range.
    pub(super) fn unchanged(design: Design, path: Option<PathBuf>) -> Result<Self, DesignError> {
        let file = match path {
            None => OwnFile::none(Some(design.clone())),
            Some(path) => OwnFile::read(&DesignFile { id: None, design: design.clone() }, &path, stamp(&path)),
        };
        Self::with(file, design)
    }

    /// Opens a design that is in no file, so that closing it would lose it; it gets an id.
    ///
    /// # Errors
    /// As for [`OpenDesign::unchanged`].
    pub(super) fn never_saved(design: Design) -> Result<Self, DesignError> {
        Self::with(OwnFile::none(None), design)
    }

    /// Opens the design of a file.
    ///
    /// # Errors
    /// [`SessionError`]; the file is left as it is.
    pub(super) fn of_file(path: &Path) -> Result<Self, SessionError> {
        if is_pipe_or_device(path) {
            let cause = std::io::Error::other("it is not an ordinary file");
            return Err(FileError::Unreadable { path: path.to_owned(), cause }.into());
        }
        // Stamped before it is read, so that a change between the two is noticed at the next saving.
        let seen = stamp(path);
        let read = DesignFile::read(path)?;
        Ok(Self::with(OwnFile::read(&read, path, seen), read.design)?)
    }

    /// Opens a design that belongs to a known file.
    ///
    /// # Errors
    /// As for [`OpenDesign::unchanged`].
    pub(super) fn with(file: OwnFile, design: Design) -> Result<Self, DesignError> {
        Ok(Self { batch: batch(&design)?, design, file })
    }

    /// Returns a copy that belongs to no file, and has its own id.
    pub(super) fn copy_without_file(&self) -> Self {
        Self { file: OwnFile::none(None), ..self.clone() }
    }

    /// Returns the design.
    #[must_use]
    pub const fn design(&self) -> &Design {
        &self.design
    }

    /// Returns what tells it from every other design; nothing if its file has no id yet.
    #[must_use]
    pub const fn id(&self) -> Option<DesignId> {
        self.file.id
    }

    /// Returns everything that follows from it.
    #[must_use]
    pub const fn batch(&self) -> &Batch {
        &self.batch
    }

    /// Returns the file that it belongs to, from the root of the disk.
    #[must_use]
    pub fn path(&self) -> Option<&Path> {
        self.file.path.as_deref()
    }

    /// Returns whether closing it loses something that is in no file.
    #[must_use]
    pub fn is_dirty(&self) -> bool {
        self.file.saved.as_ref() != Some(&self.design)
    }

    /// Returns whether its file is another on the disk than the maker last knew, or gone.
    #[must_use]
    pub fn changed_on_disk(&self) -> bool {
        self.file.changed_on_disk()
    }

    /// Returns its file as it would be written.
    pub(super) fn to_file(&self) -> DesignFile {
        DesignFile { id: self.file.id, design: self.design.clone() }
    }

    /// Puts a changed design in the place of this one, which keeps its file; the batch follows. Returns the design and the batch before.
    ///
    /// # Errors
    /// [`DesignError`] if the design holds a number out of its range; nothing was changed.
    pub(super) fn change(&mut self, design: Design) -> Result<(Design, Batch), DesignError> {
        let batch = batch_after(&design, Some(&self.batch))?.0;
        Ok((std::mem::replace(&mut self.design, design), std::mem::replace(&mut self.batch, batch)))
    }

    /// Judges the design by a slow cheese of many draws, instead of by the one run that stands in for them.
    pub(super) fn judge(&mut self, slow: &SlowSoak) {
        self.batch = judged_by(&self.batch, slow);
    }

    /// Judges it by the one run again.
    ///
    /// # Errors
    /// [`DesignError`], which a checked design never gives.
    pub(super) fn judge_by_one_run(&mut self) -> Result<(), DesignError> {
        self.batch = batch(&self.design)?;
        Ok(())
    }

    /// Saves the design, and keeps the last version of the file next to it. What has not changed is not written again.
    ///
    /// A design that has an id keeps it in its own file. In another file it is another design, with a new id.
    ///
    /// # Errors
    /// [`SessionError::ChangedOnDisk`] if somebody else wrote its own file since; [`SessionError::File`], also for a title or a note that is
    /// too long to be kept whole. Nothing is lost either way.
    pub(super) fn save(&mut self, path: &Path) -> Result<Saved, SessionError> {
        self.file.save(&self.design, path)
    }
}
