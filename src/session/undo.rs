//! The undo list.

use super::Which;
use crate::design::{Design, DesignId};

/// What is open: for A and for B, which open design it is and what it says.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Both {
    /// A.
    pub(super) first: (DesignId, Design),
    /// B, if two are compared.
    pub(super) second: Option<(DesignId, Design)>,
}

impl Both {
    /// Returns what one of the two says.
    pub(super) fn of(&self, which: Which) -> Option<&Design> {
        match which {
            Which::First => Some(&self.first.1),
            Which::Second => self.second.as_ref().map(|(_, design)| design),
        }
    }
}

/// One step that can be undone.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What the menu says of it.
    pub name: String,
    /// What was open before it.
    pub(super) before: Both,
    /// What was open after it.
    pub(super) after: Both,
}

/// What was done, and what was undone and can be done again.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct History {
    done: Vec<Step>,
    undone: Vec<Step>,
}

/// Steps that are kept; older ones are forgotten.
const STEPS_KEPT: usize = 500;

impl History {
    /// Notes a step that was just done.
    pub fn push(&mut self, step: Step) {
        self.undone.clear();
        self.done.push(step);
        if self.done.len() > STEPS_KEPT {
            self.done.remove(0);
        }
    }

    /// Returns the last step that was done.
    pub(super) fn last(&self) -> Option<&Step> {
        self.done.last()
    }

    /// Makes the last two steps one.
    pub(super) fn join_last(&mut self, name: &str) {
        let (Some(last), Some(before_it)) = (self.done.pop(), self.done.pop()) else { return };
        if before_it.before != last.after {
            self.done.push(Step { name: name.to_owned(), before: before_it.before, after: last.after });
        }
    }

    /// Takes the last step back and returns it.
    pub fn undo(&mut self) -> Option<Step> {
        let step = self.done.pop()?;
        self.undone.push(step.clone());
        Some(step)
    }

    /// Does the last undone step again and returns it.
    pub fn redo(&mut self) -> Option<Step> {
        let step = self.undone.pop()?;
        self.done.push(step.clone());
        Some(step)
    }

    /// Returns the name of the step that undo would take back.
    #[must_use]
    pub fn undo_name(&self) -> Option<&str> {
        self.done.last().map(|step| step.name.as_str())
    }

    /// Returns the name of the step that redo would do again.
    #[must_use]
    pub fn redo_name(&self) -> Option<&str> {
        self.undone.last().map(|step| step.name.as_str())
    }
}
