//! The open design, its batch, and where it is kept.

use super::{Command, History, Step, what_changed};
use crate::batch::{Batch, batch};
use crate::design::{Design, DesignError};
use std::path::PathBuf;

/// Something asked of the session that cannot be done; nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum SessionError {
    /// An input was refused.
    #[error(transparent)]
    Design(#[from] DesignError),
}

/// The open design and what was done to it.
#[derive(Clone, Debug)]
pub struct Session {
    design: Design,
    saved: Design,
    batch: Batch,
    /// The batch as it was before the running drag, or before the last change: the ghost on the curves.
    before: Option<Batch>,
    history: History,
    /// The design when the running drag began, and the drag's last command.
    drag: Option<(Design, Option<Command>)>,
    /// Where the design was opened from or saved to.
    pub path: Option<PathBuf>,
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
            path,
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

    /// Notes that the open design is now what is in the file.
    pub fn mark_saved(&mut self, path: PathBuf) {
        self.saved = self.design.clone();
        self.path = Some(path);
    }

    /// Marks the open design as differing from anything saved, as after a recovery.
    pub fn mark_never_saved(&mut self, saved: Design) {
        self.saved = saved;
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
            self.history.push(Step { name: command.name(&before), before, after: self.design.clone() });
        }
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
            self.history.push(Step { name: name.clone(), before: old, after: self.design.clone() });
            self.recompute(&name)
        }
    }

    /// Takes the last step back; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn undo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let name = self.history.undo_name().map(|name| format!("Undid: {name}"));
        match (self.history.undo(), name) {
            (Some(design), Some(name)) => self.replace(design, &name),
            _ => Ok(()),
        }
    }

    /// Does the last undone step again; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn redo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let name = self.history.redo_name().map(|name| format!("Did again: {name}"));
        match (self.history.redo(), name) {
            (Some(design), Some(name)) => self.replace(design, &name),
            _ => Ok(()),
        }
    }

    fn replace(&mut self, design: Design, name: &str) -> Result<(), SessionError> {
        self.before = Some(self.batch.clone());
        self.design = design;
        self.recompute(name)
    }

    fn recompute(&mut self, name: &str) -> Result<(), SessionError> {
        self.batch = batch(&self.design)?;
        self.last_change = what_changed(name, self.before.as_ref(), &self.batch);
        Ok(())
    }
}
