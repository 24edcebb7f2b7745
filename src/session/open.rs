//! The open design, its batch, and where it is kept.

use super::{Command, History, Second, Step, what_changed};
use crate::batch::{Batch, batch, batch_after};
use crate::design::{Design, DesignError};
use crate::file::{self, FileError, Stamp, check_texts, stamp, write_safely};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Something asked of the session that cannot be done; nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum SessionError {
    /// An input was refused.
    #[error(transparent)]
    Design(#[from] DesignError),
    /// A file could not be read or written.
    #[error(transparent)]
    File(#[from] FileError),
    /// Somebody else wrote the file since it was opened.
    #[error("{} was changed on the disk since you opened it; save under another name to keep both, or save again to write over it", path.display())]
    ChangedOnDisk {
        /// Which file.
        path: PathBuf,
    },
}

/// The open design and what was done to it.
#[derive(Clone, Debug)]
pub struct Session {
    pub(super) design: Design,
    pub(super) saved: Design,
    pub(super) batch: Batch,
    /// The batch as it was before the running drag, or before the last change: the ghost on the curves.
    pub(super) before: Option<Batch>,
    pub(super) history: History,
    /// The design when the running drag began, and the drag's last command.
    drag: Option<(Design, Option<Command>)>,
    /// Where the design was opened from or saved to.
    pub(super) path: Option<PathBuf>,
    /// The file as the maker last knew it; nothing if there was none.
    pub(super) seen: Option<Stamp>,
    /// The design beside it.
    pub(super) second: Option<Second>,
    /// Choices that an aim may not move.
    pub(super) pins: BTreeSet<&'static str>,
    /// One line that says what the last change did.
    pub last_change: String,
}

impl Session {
    /// Returns a session with this design open, as not yet changed.
    ///
    /// # Errors
    /// [`DesignError`] if the design holds a number out of its range.
    pub fn open(design: Design, path: Option<PathBuf>) -> Result<Self, DesignError> {
        let batch = batch(&design)?;
        Ok(Self {
            saved: design.clone(),
            design,
            batch,
            before: None,
            history: History::default(),
            drag: None,
            seen: path.as_deref().and_then(stamp),
            path,
            second: None,
            pins: BTreeSet::new(),
            last_change: String::new(),
        })
    }

    /// Returns the open design.
    #[must_use]
    pub const fn design(&self) -> &Design {
        &self.design
    }

    /// Returns everything that follows from it.
    #[must_use]
    pub const fn batch(&self) -> &Batch {
        &self.batch
    }

    /// Returns the batch before the last change, for the ghost curve.
    #[must_use]
    pub const fn before(&self) -> Option<&Batch> {
        self.before.as_ref()
    }

    /// Returns the undo list.
    #[must_use]
    pub const fn history(&self) -> &History {
        &self.history
    }

    /// Returns whether the design differs from what was last saved or opened.
    #[must_use]
    pub fn is_dirty(&self) -> bool {
        self.design != self.saved
    }

    /// Returns a session with the design of a file open.
    ///
    /// # Errors
    /// [`SessionError`]; the file is left as it is.
    pub fn open_file(path: &Path) -> Result<Self, SessionError> {
        // Stamped before it is read, so that a change between the two is noticed at the next saving.
        let seen = stamp(path);
        let session = Self::open(file::read(path)?, Some(path.to_owned()))?;
        Ok(Self { seen, ..session })
    }

    /// Returns a session with a design open that was never saved: a recovered one, or an example that the maker changed before.
    ///
    /// # Errors
    /// As for [`Session::open`].
    pub fn recovered(design: Design) -> Result<Self, DesignError> {
        let mut session = Self::open(design, None)?;
        session.saved = never_saved();
        Ok(session)
    }

    /// Returns where the design was opened from or saved to.
    #[must_use]
    pub fn path(&self) -> Option<&Path> {
        self.path.as_deref()
    }

    /// Saves the open design, and keeps the last version beside it.
    ///
    /// # Errors
    /// [`SessionError::ChangedOnDisk`] once for each time that somebody else wrote the file; [`SessionError::File`], also for a title or a
    /// note that is too long to be kept whole. Nothing is lost either way.
    pub fn save(&mut self, path: &Path) -> Result<(), SessionError> {
        let kept = keep(&self.design, path, self.path.as_deref(), &mut self.seen)?;
        self.end_drag();
        self.saved = self.design.clone();
        self.path = Some(path.to_owned());
        self.seen = kept;
        Ok(())
    }

    /// Returns whether a drag is going on.
    #[must_use]
    pub const fn is_dragging(&self) -> bool {
        self.drag.is_some()
    }

    /// Begins a drag: all commands until [`Session::end_drag`] become one step to undo.
    pub fn begin_drag(&mut self) {
        if self.drag.is_none() {
            self.drag = Some((self.design.clone(), None));
            self.before = Some(self.batch.clone());
        }
    }

    /// Ends a drag and notes it as one step, if it changed anything.
    pub fn end_drag(&mut self) {
        if let Some((before, Some(command))) = self.drag.take()
            && before != self.design
        {
            self.history.push(Step { name: command.name(&before), before, after: self.design.clone(), swaps: false });
        }
    }

    /// Gives a drag up: the design is as it was when it began, and no step is noted.
    ///
    /// # Errors
    /// [`SessionError`], which a design that was checked before never gives.
    pub fn give_up_drag(&mut self) -> Result<(), SessionError> {
        let Some((before, _)) = self.drag.take() else { return Ok(()) };
        if before == self.design {
            return Ok(());
        }
        self.design = before;
        self.recompute("Given up")
    }

    /// Does a command: the design, its batch, the undo list and the line of the last change follow.
    ///
    /// # Errors
    /// [`SessionError`]; nothing was changed.
    pub fn apply(&mut self, command: Command) -> Result<(), SessionError> {
        let mut design = self.design.clone();
        command.apply(&mut design)?;
        if design == self.design {
            return Ok(());
        }
        let name = command.name(&self.design);
        let old = std::mem::replace(&mut self.design, design);
        if let Some((began, last)) = &mut self.drag {
            let name = command.name(began);
            *last = Some(command);
            self.recompute(&name)
        } else {
            self.before = Some(self.batch.clone());
            self.history.push(Step { name: name.clone(), before: old, after: self.design.clone(), swaps: false });
            self.recompute(&name)
        }
    }

    /// Takes the last step back; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn undo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(Step { name, before, swaps, .. }) = self.history.undo() else { return Ok(()) };
        self.replace(before, swaps, &format!("Undid: {name}"))
    }

    /// Does the last undone step again; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn redo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(Step { name, after, swaps, .. }) = self.history.redo() else { return Ok(()) };
        self.replace(after, swaps, &format!("Did again: {name}"))
    }

    fn replace(&mut self, design: Design, swaps: bool, name: &str) -> Result<(), SessionError> {
        if swaps {
            self.swap_to(design)?;
            return self.swapped(name);
        }
        self.before = Some(self.batch.clone());
        self.design = design;
        self.recompute(name)
    }

    pub(super) fn recompute(&mut self, name: &str) -> Result<(), SessionError> {
        self.batch = batch_after(&self.design, Some(&self.batch))?.0;
        self.last_change = what_changed(name, self.before.as_ref(), &self.batch);
        Ok(())
    }
}

/// Writes a design to a file, and keeps the last version beside it; returns the stamp of what stands there now.
///
/// # Errors
/// As for [`Session::save`].
pub(super) fn keep(
    design: &Design,
    path: &Path,
    own: Option<&Path>,
    seen: &mut Option<Stamp>,
) -> Result<Option<Stamp>, SessionError> {
    check_texts(design)?;
    let now = stamp(path);
    if own == Some(path) && seen.is_some() && *seen != now {
        // Told once; saving again writes over what is there now, but not over what is put there later.
        *seen = now;
        return Err(SessionError::ChangedOnDisk { path: path.to_owned() });
    }
    write_safely(path, file::to_text(design).as_bytes(), true)?;
    Ok(stamp(path))
}

/// Returns what stands for the saved design where none was ever saved: no design has such a title.
pub(super) fn never_saved() -> Design {
    Design { title: "\u{0}".to_owned(), ..Design::default() }
}
