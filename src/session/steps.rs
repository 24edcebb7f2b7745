//! Undo and redo: every step is what was open before it and after it, A and B alike.

use super::nudge::Nudge;
use super::own_file::OwnFile;
use super::undo::Both;
use super::which::named;
use super::{Command, OpenDesign, Session, SessionError, Step, Which, what_changed};
use crate::design::{Design, DesignId};

/// Seconds within which small moves of one choice, as by the arrow keys, are one step to undo.
pub const ONE_STEP_S: f64 = 1.0;

impl Session {
    /// Returns what is open.
    pub(super) fn both(&self) -> Both {
        let of = |open: &OpenDesign| (open.file.serial, open.design().clone());
        Both { first: of(&self.first), second: self.second.as_ref().map(of) }
    }

    /// Notes what was just done as one step, unless nothing came of it.
    pub(super) fn note(&mut self, name: &str, before: Both) {
        self.nudged = None;
        let after = self.both();
        if before != after {
            self.history.push(Step { name: name.to_owned(), before, after });
        }
    }

    /// Does a command that moves a choice a little, as by an arrow key: moves of one choice that follow each other within
    /// [`ONE_STEP_S`] are one step to undo.
    ///
    /// # Arguments
    /// * `which`: of the two designs; nothing is done to a second one that is not there
    /// * `now_s`: seconds on the caller's own clock
    ///
    /// # Errors
    /// [`SessionError`]; nothing was changed.
    pub fn nudge(&mut self, which: Which, command: Command, now_s: f64) -> Result<(), SessionError> {
        let goes_on = !self.is_dragging()
            && self.history.redo_name().is_none()
            && self.nudged.as_ref().is_some_and(|last| {
                last.which == which && last.command.is_about_the_same(&command) && now_s - last.at_s <= ONE_STEP_S
            });
        let began = self.history.last().filter(|_| goes_on).and_then(|step| step.before.of(which).cloned());
        let (ghost, both) = (self.before.clone(), self.both());
        self.apply_to(which, command.clone())?;
        if let Some(began) = began.filter(|_| self.both() != both) {
            let name = named(which, &command, Some(&began));
            self.history.join_last(&name);
            self.before = ghost;
            self.tell(&name);
        }
        self.nudged = Some(Nudge { command, which, at_s: now_s });
        Ok(())
    }

    /// Takes the last step back; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn undo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(Step { name, before, .. }) = self.history.undo() else { return Ok(()) };
        self.bring_back(before, &format!("Undo: {name}"))
    }

    /// Does the last undone step again; does nothing if there is none.
    ///
    /// # Errors
    /// [`SessionError`], which an undo list of checked designs never gives.
    pub fn redo(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(Step { name, after, .. }) = self.history.redo() else { return Ok(()) };
        self.bring_back(after, &format!("Redo: {name}"))
    }

    /// Opens what was open once, each design with its own file as it is known today.
    fn bring_back(&mut self, both: Both, name: &str) -> Result<(), SessionError> {
        self.nudged = None;
        let second = both.second.map(|(serial, design)| self.open_again(serial, design)).transpose()?;
        let mut first = self.open_again(both.first.0, both.first.1)?;
        if second.is_some() {
            // Two designs are judged alike.
            first.judge_by_one_run()?;
        }
        let swapped = first.file.serial != self.first.file.serial;
        let moved = first.design() != self.first.design();
        let old_first = std::mem::replace(&mut self.first, first);
        let old_second = std::mem::replace(&mut self.second, second);
        let old_batch = old_first.batch().clone();
        self.put_away(old_first);
        if let Some(old_second) = old_second {
            self.put_away(old_second);
        }
        if swapped {
            // The ghost would be drawn over the second design's curve.
            self.before = None;
            self.last_change = what_changed(name, Some(&old_batch), self.batch());
        } else if moved {
            self.before = Some((Which::First, old_batch));
            self.tell(name);
        } else {
            self.before = None;
            name.clone_into(&mut self.last_change);
        }
        Ok(())
    }

    fn open_again(&self, serial: DesignId, design: Design) -> Result<OpenDesign, SessionError> {
        let open = [Some(&self.first), self.second.as_ref()].into_iter().flatten().find(|open| open.file.serial == serial);
        if let Some(open) = open {
            let mut open = open.clone();
            if open.design() != &design {
                open.change(design)?;
            }
            return Ok(open);
        }
        let closed = self.closed.iter().find(|file| file.serial == serial);
        let file = closed.cloned().unwrap_or_else(|| OwnFile::none(None));
        Ok(OpenDesign::with(file, design)?)
    }

    /// Keeps what is known of the file of a design that is open no more, in case a step brings it back.
    pub(super) fn put_away(&mut self, closed: OpenDesign) {
        let serial = closed.file.serial;
        self.closed.retain(|file| file.serial != serial);
        let is_open = |open: &OpenDesign| open.file.serial == serial;
        if !is_open(&self.first) && !self.second.as_ref().is_some_and(is_open) {
            self.closed.push(closed.file);
        }
    }
}
