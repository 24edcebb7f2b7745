//! The session: the open design, what was done to it, and the second design next to it.

use super::{Command, History, OpenDesign, Saved, SessionError, Step, what_changed};
use crate::batch::Batch;
use crate::design::{Design, DesignError, DesignId};
use crate::file::DesignFile;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// The open design and what was done to it.
#[derive(Clone, Debug)]
pub struct Session {
    /// A, the design that commands change.
    pub(super) first: OpenDesign,
    /// B, if the maker compares two.
    pub(super) second: Option<OpenDesign>,
    /// The batch as it was before the running drag, or before the last change: the ghost on the curves.
    pub(super) before: Option<Batch>,
    pub(super) history: History,
    /// The design when the running drag began, and the drag's last command.
    drag: Option<(Design, Option<Command>)>,
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
        Ok(Self::with(OpenDesign::unchanged(design, path)?))
    }

    /// Returns a session with nothing done to its design yet.
    fn with(first: OpenDesign) -> Self {
        Self {
            first,
            second: None,
            before: None,
            history: History::default(),
            drag: None,
            pins: BTreeSet::new(),
            last_change: String::new(),
        }
    }

    /// Returns the open design.
    #[must_use]
    pub const fn design(&self) -> &Design {
        self.first.design()
    }

    /// Returns what tells it from every other design; nothing if its file has no id yet.
    #[must_use]
    pub const fn id(&self) -> Option<DesignId> {
        self.first.id()
    }

    /// Returns everything that follows from it.
    #[must_use]
    pub const fn batch(&self) -> &Batch {
        self.first.batch()
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
        self.first.is_dirty()
    }

    /// Returns a session with the design of a file open.
    ///
    /// # Errors
    /// [`SessionError`]; the file is left as it is.
    pub fn open_file(path: &Path) -> Result<Self, SessionError> {
        Ok(Self::with(OpenDesign::of_file(path)?))
    }

    /// Returns a session with a design open that was left behind unsaved.
    ///
    /// # Errors
    /// As for [`Session::open`].
    pub fn recovered(left: DesignFile) -> Result<Self, DesignError> {
        Ok(Self::with(OpenDesign::recovered(left)?))
    }

    /// Returns where the design was opened from or saved to.
    #[must_use]
    pub fn path(&self) -> Option<&Path> {
        self.first.path()
    }

    /// Saves the open design, and keeps the last version next to it.
    ///
    /// # Errors
    /// [`SessionError::ChangedOnDisk`] once for each time that somebody else wrote the file; [`SessionError::File`], also for a title or a
    /// note that is too long to be kept whole. Nothing is lost either way.
    pub fn save(&mut self, path: &Path) -> Result<Saved, SessionError> {
        let saved = self.first.save(path)?;
        self.end_drag();
        Ok(saved)
    }

    /// Returns whether a drag is going on.
    #[must_use]
    pub const fn is_dragging(&self) -> bool {
        self.drag.is_some()
    }

    /// Begins a drag: all commands until [`Session::end_drag`] become one step to undo.
    pub fn begin_drag(&mut self) {
        if self.drag.is_none() {
            self.drag = Some((self.design().clone(), None));
            self.before = Some(self.batch().clone());
        }
    }

    /// Ends a drag and notes it as one step, if it changed anything.
    pub fn end_drag(&mut self) {
        if let Some((before, Some(command))) = self.drag.take()
            && &before != self.design()
        {
            self.history.push(Step { name: command.name(&before), before, after: self.design().clone(), swaps: false });
        }
    }

    /// Gives a drag up: the design is as it was when it began, and no step is noted.
    ///
    /// # Errors
    /// [`SessionError`], which a design that was checked before never gives.
    pub fn give_up_drag(&mut self) -> Result<(), SessionError> {
        let Some((before, _)) = self.drag.take() else { return Ok(()) };
        if &before == self.design() {
            return Ok(());
        }
        self.first.change(before)?;
        self.tell("Cancelled");
        Ok(())
    }

    /// Does a command: the design, its batch, the undo list and the line of the last change follow.
    ///
    /// # Errors
    /// [`SessionError`]; nothing was changed.
    pub fn apply(&mut self, command: Command) -> Result<(), SessionError> {
        let mut design = self.design().clone();
        command.apply(&mut design)?;
        if &design == self.design() {
            return Ok(());
        }
        let (old, ghost) = self.first.change(design)?;
        let name = if let Some((began, last)) = &mut self.drag {
            let name = command.name(began);
            *last = Some(command);
            name
        } else {
            let name = command.name(&old);
            self.before = Some(ghost);
            self.history.push(Step { name: name.clone(), before: old, after: self.design().clone(), swaps: false });
            name
        };
        self.tell(&name);
        Ok(())
    }

    /// Takes the last step back; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn undo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(Step { name, before, swaps, .. }) = self.history.undo() else { return Ok(()) };
        self.replace(before, swaps, &format!("Undo: {name}"))
    }

    /// Does the last undone step again; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn redo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(Step { name, after, swaps, .. }) = self.history.redo() else { return Ok(()) };
        self.replace(after, swaps, &format!("Redo: {name}"))
    }

    fn replace(&mut self, design: Design, swaps: bool, name: &str) -> Result<(), SessionError> {
        if swaps {
            return self.swap_to(design, name);
        }
        self.before = Some(self.first.change(design)?.1);
        self.tell(name);
        Ok(())
    }

    /// Puts into words what the last change did.
    pub(super) fn tell(&mut self, name: &str) {
        self.last_change = what_changed(name, self.before.as_ref(), self.first.batch());
    }
}
