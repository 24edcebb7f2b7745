//! What lifts a warning, as facts.

use super::cost::Cost;
use crate::batch::Batch;
use crate::caution::Caution;
use crate::design::{Field, Value};

/// One choice that is moved.
#[derive(Clone, Copy, Debug)]
pub struct Change {
    /// The choice.
    pub field: &'static Field,
    /// What it is in the design.
    pub from: Value,
    /// Whether it has any effect there; else another change brings it into use, and what it was says nothing.
    pub was_used: bool,
    /// What it becomes.
    pub to: Value,
}

/// One way to lift a warning.
#[derive(Clone, Debug)]
pub struct Lift {
    /// The choices that are moved, in the order of the form: one, or a few that do nothing alone.
    pub changes: Vec<Change>,
    /// How far they are moved: the share of its range for each number, and a fixed amount for another value of a list.
    pub moved: f64,
    /// The batch that follows.
    pub batch: Batch,
    /// What it costs.
    pub cost: Cost,
    /// Serious warnings of the design's own that are left.
    pub serious_left: usize,
    /// What the warning has become, if it is only less grave.
    pub stays: Option<Caution>,
}

impl Lift {
    /// Returns how many serious warnings of the design's own it brings that were not there.
    #[must_use]
    pub fn serious_brought(&self) -> usize {
        self.cost.serious_brought()
    }

    /// Returns whether nothing stays of the warning, and no serious warning comes with it.
    #[must_use]
    pub fn is_clean(&self) -> bool {
        self.stays.is_none() && self.serious_brought() == 0
    }
}

/// Why nothing lifts a warning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNot {
    /// It is true of every cheese like this.
    AlwaysTrue,
    /// The choices that could lift it are pinned, or have no effect in this design.
    NothingToMove,
    /// A stage cannot be calculated, which is to be lifted first.
    StageFailed,
    /// They were moved as far as their ranges go.
    OutOfReach,
}

/// A warning, and what lifts it.
#[derive(Clone, Debug)]
pub struct Lifted {
    /// The warning.
    pub warning: Caution,
    /// What lifts it, at most two: the nearest first, but those last that bring a serious warning.
    pub lifts: Vec<Lift>,
    /// The choices that were moved to find that out.
    pub tried: Vec<&'static Field>,
    /// The choices that might lift it and are pinned.
    pub pinned: Vec<&'static Field>,
    /// Why nothing lifts it, if nothing does.
    pub why_not: Option<WhyNot>,
}
