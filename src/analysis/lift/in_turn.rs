//! Warnings lifted one after another, the gravest first.

use super::lifted::{Lift, Lifted};
use super::lifts::lifts;
use super::trial::is_own_serious;
use crate::batch::Batch;
use crate::caution::{Caution, cautions};
use std::collections::BTreeSet;

/// The way from a design to one with fewer serious warnings of its own.
#[derive(Clone, Debug)]
pub struct LiftedInTurn {
    /// The warnings that were lifted, each with the lift that was taken, in turn.
    pub presses: Vec<(Caution, Lift)>,
    /// The serious warnings of its own that the last design has, each with what would lift it.
    pub left: Vec<Lifted>,
}

impl LiftedInTurn {
    /// Returns the last batch, if anything was lifted.
    #[must_use]
    pub fn last(&self) -> Option<&Batch> {
        self.presses.last().map(|(_, lift)| &lift.batch)
    }
}

/// Returns the way from a design on which each time the gravest serious warning of its own is lifted that can be, by the lift that leaves fewest
/// of them, and of equals by the nearest. A lift that leaves no fewer is not taken.
///
/// # Arguments
/// * `pins`: keys of choices that are left alone
/// * `most`: the most lifts that are taken
///
/// # Example
/// ```
/// use std::collections::BTreeSet;
/// use vatsketch::{analysis::lift_in_turn, batch::batch, design::Design};
/// let mut design = Design::default();
/// design.salting.pepper_treated = false;
/// let way = lift_in_turn(&batch(&design)?, &BTreeSet::new(), 1);
/// assert_eq!(way.presses.len(), 1);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn lift_in_turn(batch: &Batch, pins: &BTreeSet<&'static str>, most: usize) -> LiftedInTurn {
    let mut presses: Vec<(Caution, Lift)> = Vec::new();
    loop {
        let now = presses.last().map_or(batch, |(_, lift)| &lift.batch);
        let serious: Vec<Caution> = cautions(now).into_iter().filter(is_own_serious).collect();
        let fewer = |warning: &Caution| {
            let lifted = lifts(now, pins, warning).lifts.into_iter().filter(|lift| lift.serious_left < serious.len());
            Some((warning.clone(), lifted.min_by_key(|lift| lift.serious_left)?))
        };
        let next = if presses.len() < most { serious.iter().find_map(fewer) } else { None };
        let Some(press) = next else {
            let left = serious.iter().map(|warning| lifts(now, pins, warning)).collect();
            return LiftedInTurn { presses, left };
        };
        presses.push(press);
    }
}
