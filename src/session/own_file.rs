//! The file that an open design belongs to, as the maker last knew it.

use super::SessionError;
use super::saved::{Saved, drawn_id};
use crate::design::{Design, DesignId};
use crate::file::{DesignFile, Stamp, check_texts, stamp, write_safely};
use std::path::{Path, PathBuf};

/// The file of an open design, and what is known of it. It outlives the closing of its design, for that can be undone.
#[derive(Clone, Debug)]
pub(super) struct OwnFile {
    /// What tells this open design from every other while the program runs.
    pub(super) serial: DesignId,
    /// What tells the design from every other, for ever; nothing as long as it is only in a file that has none.
    pub(super) id: Option<DesignId>,
    /// The design as it was opened or last saved; nothing if it was never saved.
    pub(super) saved: Option<Design>,
    /// Where it was opened from or saved to, from the root of the disk.
    pub(super) path: Option<PathBuf>,
    /// The file as the maker last knew it; nothing if there was none.
    pub(super) seen: Option<Stamp>,
}

impl OwnFile {
    /// Returns that of a design which is in no file and gets an id; it counts as saved if it is given as such.
    pub(super) fn none(saved: Option<Design>) -> Self {
        Self { serial: drawn_id(), id: Some(drawn_id()), saved, path: None, seen: None }
    }

    /// Returns that of a file which was just read.
    pub(super) fn read(file: &DesignFile, path: &Path, seen: Option<Stamp>) -> Self {
        Self { serial: drawn_id(), id: file.id, saved: Some(file.design.clone()), path: Some(from_root(path)), seen }
    }

    /// Returns whether the file is another than the maker last knew, or gone.
    pub(super) fn changed_on_disk(&self) -> bool {
        self.seen.is_some() && self.path.as_deref().is_some_and(|path| stamp(path) != self.seen)
    }

    /// Takes the file for what it is now, so that the next saving writes over it.
    pub(super) fn accept(&mut self) {
        self.seen = self.path.as_deref().and_then(stamp);
    }

    /// Writes a design to a file, which becomes its own; what has not changed is not written again.
    ///
    /// # Errors
    /// As for [`super::OpenDesign::save`].
    pub(super) fn save(&mut self, design: &Design, path: &Path) -> Result<Saved, SessionError> {
        check_texts(design)?;
        let path = from_root(path);
        let own = self.path.as_deref().is_some_and(|own| is_same_file(own, &path));
        if own && self.changed_on_disk() {
            return Err(SessionError::ChangedOnDisk { path });
        }
        if own && self.id.is_some() && self.seen.is_some() && self.saved.as_ref() == Some(design) {
            return Ok(Saved::Unchanged);
        }
        let saved = if self.id.is_none() { Saved::NamedFirst } else { Saved::Named };
        let elsewhere = self.path.is_some() && !own;
        let id = self.id.filter(|_| !elsewhere).or_else(|| Some(drawn_id()));
        write_safely(&path, DesignFile { id, design: design.clone() }.to_text().as_bytes(), true)?;
        self.id = id;
        self.seen = stamp(&path);
        self.saved = Some(design.clone());
        self.path = Some(path);
        Ok(saved)
    }
}

/// Returns a path from the root of the disk, so that it means the same file from every folder.
pub(super) fn from_root(path: &Path) -> PathBuf {
    std::path::absolute(path).unwrap_or_else(|_| path.to_owned())
}

/// Returns whether two paths lead to one file, by links too.
#[must_use]
pub fn is_same_file(one: &Path, other: &Path) -> bool {
    let place = |path: &Path| std::fs::canonicalize(path).unwrap_or_else(|_| from_root(path));
    one == other || place(one) == place(other)
}
