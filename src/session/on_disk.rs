//! A design and its file when somebody else changed the file: reload it, or write over it.

use super::{OpenDesign, Saved, Session, SessionError, Which};
use crate::file::{DesignFile, stamp};
use std::path::Path;

/// A design whose file somebody else changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ChangedFile {
    /// Which design.
    pub which: Which,
    /// Whether the file cannot be found any more.
    pub gone: bool,
}

impl Session {
    /// Returns one of the two, if it is there.
    #[must_use]
    pub const fn one(&self, which: Which) -> Option<&OpenDesign> {
        match which {
            Which::First => Some(&self.first),
            Which::Second => self.second.as_ref(),
        }
    }

    /// Returns the open designs.
    #[must_use]
    pub const fn open_designs(&self) -> (&OpenDesign, Option<&OpenDesign>) {
        (&self.first, self.second.as_ref())
    }

    pub(super) const fn one_mut(&mut self, which: Which) -> Option<&mut OpenDesign> {
        match which {
            Which::First => Some(&mut self.first),
            Which::Second => self.second.as_mut(),
        }
    }

    /// Returns those whose file on the disk is not what the maker last knew.
    #[must_use]
    pub fn changed_on_disk(&self) -> Vec<ChangedFile> {
        let changed = |which: Which| {
            let open = self.one(which).filter(|open| open.changed_on_disk())?;
            Some(ChangedFile { which, gone: open.path().is_none_or(|path| !path.exists()) })
        };
        [Which::First, Which::Second].into_iter().filter_map(changed).collect()
    }

    /// Takes what is in its file now: one step to undo, so that the maker's own version is not lost. Does nothing without a file.
    ///
    /// # Errors
    /// [`SessionError`] if the file is gone or cannot be read; nothing was changed.
    pub fn reload(&mut self, which: Which) -> Result<(), SessionError> {
        let Some(path) = self.one(which).and_then(OpenDesign::path).map(Path::to_owned) else { return Ok(()) };
        // Stamped before it is read, so that a change between the two is noticed.
        let seen = stamp(&path);
        let read = DesignFile::read(&path)?;
        self.end_drag();
        let before = self.both();
        let Some(open) = self.one_mut(which) else { return Ok(()) };
        let (_, old) = open.change(read.design.clone())?;
        (open.file.id, open.file.seen, open.file.saved) = (read.id, seen, Some(read.design));
        let name = format!("Reload {}", path.file_name().unwrap_or(path.as_os_str()).to_string_lossy());
        self.note(&name, before);
        let told = name.replacen("Reload", "Reloaded", 1);
        match which {
            Which::First => {
                self.before = Some((which, old));
                self.tell(&told);
            }
            Which::Second => self.last_change = format!("B: {told}"),
        }
        Ok(())
    }

    /// Writes a design over its file, whatever that holds now; what it held stays beside it as `.bak`.
    ///
    /// # Errors
    /// As for [`Session::save`]. Does nothing and returns nothing without a file.
    pub fn overwrite(&mut self, which: Which) -> Result<Option<Saved>, SessionError> {
        self.end_drag();
        let Some(open) = self.one_mut(which) else { return Ok(None) };
        let Some(path) = open.path().map(Path::to_owned) else { return Ok(None) };
        open.file.accept();
        // It differs from what is there now, even where the maker changed nothing.
        open.file.saved = None;
        open.save(&path).map(Some)
    }
}
