//! The undo list.

use crate::design::Design;

/// One step that can be undone.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What the menu says of it.
    pub name: String,
    /// The design before it.
    pub before: Design,
    /// The design after it.
    pub after: Design,
    /// Whether it exchanged the first design and the second.
    pub swaps: bool,
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
