//! What a session does with a second design next to the first.

use super::{Command, OpenDesign, Saved, Session, SessionError, clear_note_of_example, what_changed};
use crate::analysis::{Alike, Difference, DifferingChoice, alike_from, compare, differing_choices, same_vat_from};
use crate::curve::Spread;
use crate::design::{MilkKind, field, lower_first};
use std::path::Path;

/// What the session does with a second design; each is one step to undo.
///
/// Draws are made of the first design alone. So that two are judged alike, both are judged by the one run that stands in for the draws.
impl Session {
    /// Judges the first design by the draws of a spread, as long as it stands alone and is what was drawn. No step to undo: nothing was chosen.
    /// Returns whether it was judged anew.
    pub fn judge(&mut self, spread: &Spread) -> bool {
        let alone = self.second.is_none() && spread.design.same_cheese(self.design());
        let Some(slow) = spread.slow_soak.as_ref().filter(|_| alone) else { return false };
        self.first.judge(slow);
        true
    }

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
        self.first.judge_by_one_run()?;
        let copy = self.first.copy_without_file();
        self.put_second("Compare with a copy of A", copy);
        "B is a copy of A. Change A and see what follows.".clone_into(&mut self.last_change);
        Ok(())
    }

    /// Makes B the same vat from another milk, like in one respect.
    ///
    /// # Errors
    /// [`SessionError`], which a checked design never gives.
    pub fn second_from_milk(&mut self, kind: MilkKind, alike: Alike) -> Result<(), SessionError> {
        let mut design = alike_from(self.batch(), kind, alike)?;
        clear_note_of_example(&mut design);
        let other = OpenDesign::never_saved(design)?;
        let named = lower_first(&same_vat_from(kind));
        self.first.judge_by_one_run()?;
        self.put_second(&format!("Compare with {named}"), other);
        self.last_change = format!("B is {named}. What stays the same: {}.", alike.label().replace(':', ","));
        Ok(())
    }

    /// Opens the design of a file as B.
    ///
    /// # Errors
    /// [`SessionError`]; a second design that was there stays.
    pub fn second_from_file(&mut self, path: &Path) -> Result<(), SessionError> {
        let other = OpenDesign::of_file(path)?;
        self.first.judge_by_one_run()?;
        let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy();
        self.put_second(&format!("Compare with {name}"), other);
        self.last_change = format!("B is {}.", path.display());
        Ok(())
    }

    fn put_second(&mut self, name: &str, second: OpenDesign) {
        self.end_drag();
        let before = self.both();
        if let Some(old) = self.second.replace(second) {
            self.put_away(old);
        }
        self.note(name, before);
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

    /// Closes the second design; one step to undo.
    pub fn drop_second(&mut self) {
        self.end_drag();
        let before = self.both();
        if let Some(old) = self.second.take() {
            self.put_away(old);
            self.note("Close B", before);
            "B is closed.".clone_into(&mut self.last_change);
        }
    }

    /// Puts the second design first and the first one second, each with its own file; one step to undo. Does nothing without a second.
    ///
    /// # Errors
    /// [`SessionError`], which checked designs never give.
    pub fn swap_second(&mut self) -> Result<(), SessionError> {
        self.end_drag();
        let before = self.both();
        let Some(second) = self.second.as_mut() else { return Ok(()) };
        std::mem::swap(&mut self.first, second);
        let name = "Swap A and B";
        self.last_change = what_changed(name, Some(second.batch()), self.first.batch());
        // The ghost would be drawn over the second design's curve.
        self.before = None;
        self.note(name, before);
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

    /// Takes a choice of the first design over into the second: one step to undo. Does nothing without a second.
    ///
    /// # Errors
    /// [`SessionError`] if there is no such input.
    pub fn copy_to_second(&mut self, key: &str) -> Result<(), SessionError> {
        self.end_drag();
        let before = self.both();
        let Some(second) = &mut self.second else { return Ok(()) };
        let field = field(key)?;
        let given = Command::SetInput { key: field.key, value: field.get(self.first.design()) };
        let name = format!("B: {}", given.name(second.design()));
        let mut design = second.design().clone();
        given.apply(&mut design)?;
        clear_note_of_example(&mut design);
        second.change(design)?;
        self.note(&name, before);
        self.last_change = name;
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
}
