//! What a session does with a second design next to the first.

use super::{Command, OpenDesign, Saved, Session, SessionError, Step, what_changed};
use crate::analysis::{Difference, DifferingChoice, compare, differing_choices, from_milk, same_vat_from};
use crate::batch::Batch;
use crate::design::{Design, MilkKind, field, lower_first};
use crate::file::DesignFile;
use std::path::Path;

/// What the session does with a second design. Only what changes the first is on the undo list.
impl Session {
    /// Returns the second design, if there is one.
    #[must_use]
    pub const fn second(&self) -> Option<&OpenDesign> {
        self.second.as_ref()
    }

    /// Makes B a copy of A.
    ///
    /// # Errors
    /// [`SessionError`], which a checked design never gives.
    pub fn second_from_first(&mut self) -> Result<(), SessionError> {
        self.second = Some(self.first.copy_without_file());
        "B is a copy of A. Change A and see what follows.".clone_into(&mut self.last_change);
        Ok(())
    }

    /// Makes B the same vat from another milk.
    ///
    /// # Errors
    /// [`SessionError`], which a checked design never gives.
    pub fn second_from_milk(&mut self, kind: MilkKind) -> Result<(), SessionError> {
        self.second = Some(OpenDesign::never_saved(from_milk(self.design(), kind))?);
        self.last_change = format!("B is {}.", lower_first(&same_vat_from(kind)));
        Ok(())
    }

    /// Opens the design of a file as B.
    ///
    /// # Errors
    /// [`SessionError`]; a second design that was there stays.
    pub fn second_from_file(&mut self, path: &Path) -> Result<(), SessionError> {
        self.second = Some(OpenDesign::of_file(path)?);
        self.last_change = format!("B is {}.", path.display());
        Ok(())
    }

    /// Makes B a design that was never saved: a recovered one.
    ///
    /// # Errors
    /// [`SessionError`] if the design holds a number out of its range.
    pub fn second_recovered(&mut self, left: DesignFile) -> Result<(), SessionError> {
        self.second = Some(OpenDesign::recovered(left)?);
        Ok(())
    }

    /// Returns what is in no file: the first design and the second, each if it is so.
    #[must_use]
    pub fn unsaved(&self) -> (Option<&OpenDesign>, Option<&OpenDesign>) {
        (self.first.unsaved(), self.second.as_ref().and_then(OpenDesign::unsaved))
    }

    /// Saves the second design; the first one and its file stay as they are. Does nothing and returns nothing without a second.
    ///
    /// # Errors
    /// As for [`Session::save`].
    pub fn save_second(&mut self, path: &Path) -> Result<Option<Saved>, SessionError> {
        let Some(second) = &mut self.second else { return Ok(None) };
        let saved = second.save(path)?;
        self.last_change = format!("B is saved as {}.", path.display());
        Ok(Some(saved))
    }

    /// Puts the second design away.
    pub fn drop_second(&mut self) {
        if self.second.take().is_some() {
            "B is closed.".clone_into(&mut self.last_change);
        }
    }

    /// Takes the second design of another session over: opening another first design puts no second one away.
    pub fn take_second_of(&mut self, other: &mut Self) {
        self.second = other.second.take();
    }

    /// Puts the second design first and the first one second, each with its own file; one step to undo. Does nothing without a second.
    ///
    /// # Errors
    /// [`SessionError`], which checked designs never give.
    pub fn swap_second(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let Some(old) = self.exchange() else { return Ok(()) };
        let name = "Swap A and B".to_owned();
        self.history.push(Step { name: name.clone(), before: old.design.clone(), after: self.design().clone(), swaps: true });
        self.tell_swap(&name, &old);
        Ok(())
    }

    /// Takes a choice of the second design over into the first: one step to undo. Does nothing without a second.
    ///
    /// # Errors
    /// [`SessionError`] if there is no such input.
    pub fn copy_from_second(&mut self, key: &str) -> Result<(), SessionError> {
        let Some(second) = &self.second else { return Ok(()) };
        let field = field(key)?;
        let value = field.get(second.design());
        self.end_drag();
        self.apply(Command::SetInput { key: field.key, value })
    }

    /// Takes a choice of the first design over into the second. Does nothing without a second.
    ///
    /// # Errors
    /// [`SessionError`] if there is no such input.
    pub fn copy_to_second(&mut self, key: &str) -> Result<(), SessionError> {
        let Some(second) = &mut self.second else { return Ok(()) };
        let field = field(key)?;
        let given = Command::SetInput { key: field.key, value: field.get(self.first.design()) };
        let name = given.name(second.design());
        let mut design = second.design().clone();
        given.apply(&mut design)?;
        second.change(design)?;
        self.last_change = format!("B: {name}");
        Ok(())
    }

    /// Returns the inputs that differ between the two; none without a second.
    #[must_use]
    pub fn differing_choices(&self) -> Vec<DifferingChoice> {
        self.second.as_ref().map(|second| differing_choices(self.design(), second.design())).unwrap_or_default()
    }

    /// Returns the figures of the two side by side; none without a second.
    #[must_use]
    pub fn differences(&self) -> Vec<Difference> {
        self.second.as_ref().map(|second| compare(self.batch(), second.batch())).unwrap_or_default()
    }

    /// Takes a swap back, or does it again, so that the first design is this one.
    ///
    /// If the second design was put away or changed since, the first one belongs to no file any more: it must not be saved over another. A
    /// changed second design is on no undo list, so it stays where it is.
    pub(super) fn swap_to(&mut self, design: Design, name: &str) -> Result<(), SessionError> {
        if self.second.is_none() {
            self.second = Some(OpenDesign::never_saved(design.clone())?);
        }
        let old = if self.second.as_ref().is_some_and(|second| second.design() == &design) {
            self.exchange()
        } else {
            self.first.leave_file();
            Some(self.first.change(design)?.1)
        };
        if let Some(old) = old {
            self.tell_swap(name, &old);
        }
        Ok(())
    }

    /// Exchanges the two, each with its file; returns what was the first one's batch, if there were two.
    fn exchange(&mut self) -> Option<Batch> {
        let second = self.second.as_mut()?;
        std::mem::swap(&mut self.first, second);
        Some(second.batch().clone())
    }

    /// Puts into words what a swap moved, and leaves no ghost: it would be drawn over the second design's curve.
    fn tell_swap(&mut self, name: &str, old: &Batch) {
        self.last_change = what_changed(name, Some(old), self.batch());
        self.before = None;
    }
}
