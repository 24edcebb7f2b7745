//! The second design, beside the open one.

use super::open::{keep, never_saved};
use super::{Command, Session, SessionError, Step};
use crate::analysis::{Difference, DifferingChoice, compare, differing_choices, from_milk, same_vat_from};
use crate::batch::{Batch, batch, batch_after};
use crate::design::{Design, DesignError, MilkKind, field, lower_first};
use crate::file::{self, Stamp, stamp};
use std::path::{Path, PathBuf};

/// The second design with its batch, and the file that it belongs to.
#[derive(Clone, Debug)]
pub struct Second {
    design: Design,
    batch: Batch,
    saved: Design,
    path: Option<PathBuf>,
    seen: Option<Stamp>,
}

impl Second {
    /// Returns a design that belongs to no file.
    fn without_file(design: Design) -> Result<Self, DesignError> {
        Ok(Self { batch: batch(&design)?, design, saved: never_saved(), path: None, seen: None })
    }

    /// Returns the second design.
    #[must_use]
    pub const fn design(&self) -> &Design {
        &self.design
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

    /// Returns whether dropping it loses something that is in no file.
    #[must_use]
    pub fn is_dirty(&self) -> bool {
        self.design != self.saved
    }
}

/// What the session does with a second design. Only what changes the first is on the undo list.
impl Session {
    /// Returns the second design, if there is one.
    #[must_use]
    pub const fn second(&self) -> Option<&Second> {
        self.second.as_ref()
    }

    /// Lays a copy of the first design beside it.
    ///
    /// # Errors
    /// [`SessionError`], which a checked design never gives.
    pub fn second_from_first(&mut self) -> Result<(), SessionError> {
        self.second = Some(Second { batch: self.batch.clone(), ..Second::without_file(self.design.clone())? });
        "B is a copy of A. Change A and see what follows.".clone_into(&mut self.last_change);
        Ok(())
    }

    /// Lays the same vat from another milk beside the first design.
    ///
    /// # Errors
    /// [`SessionError`], which a checked design never gives.
    pub fn second_from_milk(&mut self, kind: MilkKind) -> Result<(), SessionError> {
        self.second = Some(Second::without_file(from_milk(&self.design, kind))?);
        self.last_change = format!("B is {}.", lower_first(&same_vat_from(kind)));
        Ok(())
    }

    /// Lays the design of a file beside the first one.
    ///
    /// # Errors
    /// [`SessionError`]; a second design that was there stays.
    pub fn second_from_file(&mut self, path: &Path) -> Result<(), SessionError> {
        let seen = stamp(path);
        let design = file::read(path)?;
        self.second = Some(Second { saved: design.clone(), path: Some(path.to_owned()), seen, ..Second::without_file(design)? });
        self.last_change = format!("B is {}.", path.display());
        Ok(())
    }

    /// Lays a design that was never saved beside the first one: a recovered one.
    ///
    /// # Errors
    /// [`SessionError`] if the design holds a number out of its range.
    pub fn second_recovered(&mut self, design: Design) -> Result<(), SessionError> {
        self.second = Some(Second::without_file(design)?);
        Ok(())
    }

    /// Returns what is in no file: the first design and the second, each if it is so.
    #[must_use]
    pub fn unsaved(&self) -> (Option<&Design>, Option<&Design>) {
        let second = self.second.as_ref().filter(|second| second.is_dirty()).map(Second::design);
        (self.is_dirty().then_some(&self.design), second)
    }

    /// Saves the second design; the first one and its file stay as they are. Does nothing without a second.
    ///
    /// # Errors
    /// As for [`Session::save`].
    pub fn save_second(&mut self, path: &Path) -> Result<(), SessionError> {
        let Some(second) = &mut self.second else { return Ok(()) };
        second.seen = keep(&second.design, path, second.path.as_deref(), &mut second.seen)?;
        second.saved = second.design.clone();
        second.path = Some(path.to_owned());
        self.last_change = format!("B is saved as {}.", path.display());
        Ok(())
    }

    /// Puts the second design away.
    pub fn drop_second(&mut self) {
        if self.second.take().is_some() {
            "B is put away.".clone_into(&mut self.last_change);
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
        let before = self.design.clone();
        if !self.exchange() {
            return Ok(());
        }
        let name = "Swap A and B".to_owned();
        self.history.push(Step { name: name.clone(), before, after: self.design.clone(), swaps: true });
        self.swapped(&name)
    }

    /// Works the first design out after an exchange, and leaves no ghost: it would lie on the second design's curve.
    pub(super) fn swapped(&mut self, name: &str) -> Result<(), SessionError> {
        self.recompute(name)?;
        self.before = None;
        Ok(())
    }

    /// Takes a choice of the second design over into the first: one step to undo. Does nothing without a second.
    ///
    /// # Errors
    /// [`SessionError`] if there is no such input.
    pub fn copy_from_second(&mut self, key: &str) -> Result<(), SessionError> {
        let Some(second) = &self.second else { return Ok(()) };
        let field = field(key)?;
        let value = field.get(&second.design);
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
        let given = Command::SetInput { key: field.key, value: field.get(&self.design) };
        let name = given.name(&second.design);
        given.apply(&mut second.design)?;
        second.batch = batch_after(&second.design, Some(&second.batch))?.0;
        self.last_change = format!("B: {name}");
        Ok(())
    }

    /// Returns the inputs that differ between the two; none without a second.
    #[must_use]
    pub fn differing_choices(&self) -> Vec<DifferingChoice> {
        self.second.as_ref().map(|second| differing_choices(&self.design, &second.design)).unwrap_or_default()
    }

    /// Returns the figures of the two side by side; none without a second.
    #[must_use]
    pub fn differences(&self) -> Vec<Difference> {
        self.second.as_ref().map(|second| compare(&self.batch, &second.batch)).unwrap_or_default()
    }

    /// Takes a swap back, or does it again, so that the first design is this one.
    ///
    /// If the second design was put away or changed since, the first one belongs to no file any more: it must not be saved over another. A
    /// changed second design is on no undo list, so it stays where it is.
    pub(super) fn swap_to(&mut self, design: Design) -> Result<(), SessionError> {
        let gone = self.second.is_none();
        if gone {
            self.second = Some(Second::without_file(design.clone())?);
        }
        if self.second.as_ref().is_some_and(|second| second.design == design) {
            self.exchange();
        } else {
            (self.path, self.seen, self.saved) = (None, None, never_saved());
            self.before = Some(self.batch.clone());
            self.design = design;
        }
        Ok(())
    }

    /// Exchanges the two with everything that belongs to them; returns whether there were two.
    fn exchange(&mut self) -> bool {
        let Some(second) = &mut self.second else { return false };
        self.before = Some(self.batch.clone());
        std::mem::swap(&mut self.design, &mut second.design);
        std::mem::swap(&mut self.batch, &mut second.batch);
        std::mem::swap(&mut self.saved, &mut second.saved);
        std::mem::swap(&mut self.path, &mut second.path);
        std::mem::swap(&mut self.seen, &mut second.seen);
        true
    }
}
