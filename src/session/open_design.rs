//! One open design: its batch, the file it belongs to, and whether that file has it.

use super::SessionError;
use super::saved::{Saved, drawn_id};
use crate::batch::{Batch, batch, batch_after};
use crate::design::{Design, DesignError, DesignId};
use crate::file::{DesignFile, Stamp, check_texts, stamp, write_safely};
use std::path::{Path, PathBuf};

/// A design with its batch, and the file that it belongs to. A session holds one or two of them.
#[derive(Clone, Debug)]
pub struct OpenDesign {
    design: Design,
    /// What tells it from every other design; nothing as long as it is only in a file that has none.
    id: Option<DesignId>,
    batch: Batch,
    /// The design as it was opened or last saved; nothing if it was never saved.
    saved: Option<Design>,
    /// Where it was opened from or saved to.
    path: Option<PathBuf>,
    /// The file as the maker last knew it; nothing if there was none.
    seen: Option<Stamp>,
}

impl OpenDesign {
    /// Opens a design that counts as saved until it is changed: a new one or an example, which get an id, or that of a file which was read
    /// elsewhere.
    ///
    /// # Errors
    /// [`DesignError`] if the design holds a number out of its range.
    pub(super) fn unchanged(design: Design, path: Option<PathBuf>) -> Result<Self, DesignError> {
        let batch = batch(&design)?;
        let id = path.is_none().then(drawn_id);
        Ok(Self { saved: Some(design.clone()), design, id, batch, seen: path.as_deref().and_then(stamp), path })
    }

    /// Opens a design that is in no file, so that closing it would lose it; it gets an id.
    ///
    /// # Errors
    /// As for [`OpenDesign::unchanged`].
    pub(super) fn never_saved(design: Design) -> Result<Self, DesignError> {
        Ok(Self { saved: None, ..Self::unchanged(design, None)? })
    }

    /// Opens a design that was left behind; it keeps the id that it had.
    ///
    /// # Errors
    /// As for [`OpenDesign::unchanged`].
    pub(super) fn recovered(left: DesignFile) -> Result<Self, DesignError> {
        Ok(Self { id: left.id, ..Self::never_saved(left.design)? })
    }

    /// Opens the design of a file.
    ///
    /// # Errors
    /// [`SessionError`]; the file is left as it is.
    pub(super) fn of_file(path: &Path) -> Result<Self, SessionError> {
        // Stamped before it is read, so that a change between the two is noticed at the next saving.
        let seen = stamp(path);
        let DesignFile { id, design } = DesignFile::read(path)?;
        Ok(Self { id, seen, ..Self::unchanged(design, Some(path.to_owned()))? })
    }

    /// Returns a copy that belongs to no file, and has its own id.
    pub(super) fn copy_without_file(&self) -> Self {
        Self { saved: None, path: None, seen: None, id: Some(drawn_id()), ..self.clone() }
    }

    /// Returns the design.
    #[must_use]
    pub const fn design(&self) -> &Design {
        &self.design
    }

    /// Returns what tells it from every other design; nothing if its file has no id yet.
    #[must_use]
    pub const fn id(&self) -> Option<DesignId> {
        self.id
    }

    /// Returns everything that follows from it.
    #[must_use]
    pub const fn batch(&self) -> &Batch {
        &self.batch
    }

    /// Returns the file that it belongs to.
    #[must_use]
    pub fn path(&self) -> Option<&Path> {
        self.path.as_deref()
    }

    /// Returns whether closing it loses something that is in no file.
    #[must_use]
    pub fn is_dirty(&self) -> bool {
        self.saved.as_ref() != Some(&self.design)
    }

    /// Returns itself if closing it loses something.
    pub(super) fn unsaved(&self) -> Option<&Self> {
        self.is_dirty().then_some(self)
    }

    /// Returns the text of its file.
    pub(super) fn to_text(&self) -> String {
        text_of(self.id, &self.design)
    }

    /// Puts a changed design in the place of this one, which keeps its file; the batch follows. Returns the design and the batch before.
    ///
    /// # Errors
    /// [`DesignError`] if the design holds a number out of its range; nothing was changed.
    pub(super) fn change(&mut self, design: Design) -> Result<(Design, Batch), DesignError> {
        let batch = batch_after(&design, Some(&self.batch))?.0;
        Ok((std::mem::replace(&mut self.design, design), std::mem::replace(&mut self.batch, batch)))
    }

    /// Takes the design out of its file: the next save asks for a name, and cannot write over a file that belongs to another design.
    pub(super) fn leave_file(&mut self) {
        (self.saved, self.path, self.seen, self.id) = (None, None, None, Some(drawn_id()));
    }

    /// Saves the design, and keeps the last version of the file next to it.
    ///
    /// A design that has an id keeps it in its own file. In another file it is another design, with a new id.
    ///
    /// # Errors
    /// [`SessionError::ChangedOnDisk`] once for each time that somebody else wrote the file; [`SessionError::File`], also for a title or a
    /// note that is too long to be kept whole. Nothing is lost either way.
    pub(super) fn save(&mut self, path: &Path) -> Result<Saved, SessionError> {
        check_texts(&self.design)?;
        let now = stamp(path);
        if self.path() == Some(path) && self.seen.is_some() && self.seen != now {
            // Reported once; saving again writes over what is there now, but not over what is put there later.
            self.seen = now;
            return Err(SessionError::ChangedOnDisk { path: path.to_owned() });
        }
        let elsewhere = self.path.as_deref().is_some_and(|own| own != path);
        let saved = if self.id.is_none() { Saved::NamedFirst } else { Saved::Named };
        let id = self.id.filter(|_| !elsewhere).or_else(|| Some(drawn_id()));
        write_safely(path, text_of(id, &self.design).as_bytes(), true)?;
        self.id = id;
        self.seen = stamp(path);
        self.saved = Some(self.design.clone());
        self.path = Some(path.to_owned());
        Ok(saved)
    }
}

fn text_of(id: Option<DesignId>, design: &Design) -> String {
    DesignFile { id, design: design.clone() }.to_text()
}
