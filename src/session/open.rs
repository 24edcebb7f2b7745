//! The session: the open design, what was done to it, and the second design next to it.

use super::clear_note_of_example;
use super::nudge::Nudge;
use super::own_file::OwnFile;
use super::undo::Both;
use super::which::{Which, named};
use super::{Command, History, OpenDesign, Saved, SessionError, what_changed};
use crate::batch::Batch;
use crate::design::{Design, DesignError, DesignId};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// The open design and what was done to it.
#[derive(Clone, Debug)]
pub struct Session {
    /// A, the open design.
    pub(super) first: OpenDesign,
    /// B, if the maker compares two.
    pub(super) second: Option<OpenDesign>,
    /// The batch as it was before the running drag, or before the last change, and whose it is: the ghost on the curves.
    pub(super) before: Option<(Which, Batch)>,
    pub(super) history: History,
    /// What was open when the running drag began, and the drag's last command with the design that it changed.
    drag: Option<(Both, Option<(Which, Command)>)>,
    /// The last small move, which the next one may go on with.
    pub(super) nudged: Option<Nudge>,
    /// The files of designs that a step on the undo list can bring back.
    pub(super) closed: Vec<OwnFile>,
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
    pub(super) fn with(first: OpenDesign) -> Self {
        Self {
            first,
            second: None,
            before: None,
            history: History::default(),
            drag: None,
            nudged: None,
            closed: Vec::new(),
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

    /// Returns the batch of the open design before its last change, for the ghost curve; none where the second design was changed last.
    #[must_use]
    pub fn before(&self) -> Option<&Batch> {
        self.before.as_ref().filter(|(which, _)| *which == Which::First).map(|(_, batch)| batch)
    }

    /// Returns the batch that a running drag began with, of the design that it changes.
    #[must_use]
    pub fn held(&self) -> Option<&Batch> {
        self.before.as_ref().filter(|_| self.is_dragging()).map(|(_, batch)| batch)
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

    /// Returns where the design was opened from or saved to.
    #[must_use]
    pub fn path(&self) -> Option<&Path> {
        self.first.path()
    }

    /// Saves the open design, and keeps the last version next to it.
    ///
    /// # Errors
    /// [`SessionError::ChangedOnDisk`] if somebody else wrote its own file since it was opened; [`SessionError::File`], also for a title or
    /// a note that is too long to be kept whole. Nothing is lost either way.
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
            self.drag = Some((self.both(), None));
            self.before = Some((Which::First, self.batch().clone()));
        }
    }

    /// Ends a drag and notes it as one step, if it changed anything.
    pub fn end_drag(&mut self) {
        if let Some((before, Some((which, command)))) = self.drag.take() {
            self.note(&named(which, &command, before.of(which)), before);
        }
    }

    /// Gives a drag up: the design is as it was when it began, and no step is noted.
    ///
    /// # Errors
    /// [`SessionError`], which a design that was checked before never gives.
    pub fn give_up_drag(&mut self) -> Result<(), SessionError> {
        let Some((before, _)) = self.drag.take() else { return Ok(()) };
        if before == self.both() {
            return Ok(());
        }
        self.first.change(before.first.1)?;
        if let Some((second, (_, design))) = self.second.as_mut().zip(before.second) {
            second.change(design)?;
        }
        "Cancelled".clone_into(&mut self.last_change);
        Ok(())
    }

    /// Does a command to the open design: its batch, the undo list and the line of the last change follow.
    ///
    /// # Errors
    /// [`SessionError`]; nothing was changed.
    pub fn apply(&mut self, command: Command) -> Result<(), SessionError> {
        self.apply_to(Which::First, command)
    }

    /// Does a command to one of the two designs, as [`Session::apply`] does; does nothing to a second design that is not there.
    ///
    /// # Errors
    /// [`SessionError`]; nothing was changed.
    pub fn apply_to(&mut self, which: Which, command: Command) -> Result<(), SessionError> {
        let Some(open) = self.one(which) else { return Ok(()) };
        let mut design = open.design().clone();
        command.apply(&mut design)?;
        if &design == open.design() {
            return Ok(());
        }
        if matches!(command, Command::SetInput { .. } | Command::SetInputs(_) | Command::Scale { .. } | Command::ResetStage(_)) {
            clear_note_of_example(&mut design);
        }
        let before = self.both();
        let Some(open) = self.one_mut(which) else { return Ok(()) };
        let (old, ghost) = open.change(design)?;
        let name = if let Some((began, last)) = &mut self.drag {
            let name = named(which, &command, began.of(which));
            // A drag begins with the open design; only here it shows that it moves the other.
            if last.is_none() {
                self.before = Some((which, ghost));
            }
            *last = Some((which, command));
            name
        } else {
            let name = named(which, &command, Some(&old));
            self.before = Some((which, ghost));
            self.note(&name, before);
            name
        };
        self.tell(&name);
        Ok(())
    }

    /// Puts into words what the last change did.
    pub(super) fn tell(&mut self, name: &str) {
        let which = self.before.as_ref().map_or(Which::First, |(which, _)| *which);
        let batch = self.one(which).map_or_else(|| self.first.batch(), OpenDesign::batch);
        self.last_change = what_changed(name, self.before.as_ref().map(|(_, batch)| batch), batch);
    }
}
