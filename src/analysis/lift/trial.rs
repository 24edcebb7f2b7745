//! One warning judged again in changed designs.

use crate::batch::{Batch, batch_until};
use crate::caution::{Caution, CautionKind, GermCaution, GermDanger, Severity, cautions};
use crate::design::{Design, Stage};
use crate::process::Given;
use std::cell::Cell;

/// Returns whether a caution is a serious warning that the design can change.
pub(super) fn is_own_serious(caution: &Caution) -> bool {
    caution.severity == Severity::Stop && !caution.always
}

/// Returns how many serious warnings are the design's own.
pub(super) fn own_serious(all: &[Caution]) -> usize {
    all.iter().filter(|caution| is_own_serious(caution)).count()
}

/// Returns whether one caution warns of what another does, at least as gravely.
///
/// Germs are told apart by stage, unless their toxin is warned of: that another stage crosses its line lifts nothing.
fn warns_of(one: &Caution, other: &Caution) -> bool {
    match (&one.kind, &other.kind) {
        (CautionKind::Germs(one), CautionKind::Germs(other)) => germs_warn_of(one, other),
        _ => one.key == other.key && one.severity >= other.severity && one.always == other.always,
    }
}

fn germs_warn_of(one: &GermCaution, other: &GermCaution) -> bool {
    let grave = |danger| match danger {
        GermDanger::Grows => 0,
        GermDanger::ToxinIfLacticFails => 1,
        GermDanger::Toxin => 2,
    };
    let same_place = one.stage == other.stage || other.danger != GermDanger::Grows;
    same_place && grave(one.danger) >= grave(other.danger)
}

/// Returns whether a batch with these cautions is warned of something as before, or more gravely.
pub(super) fn is_among(warning: &Caution, all: &[Caution]) -> bool {
    all.iter().any(|caution| warns_of(caution, warning))
}

/// Returns what a batch is still warned of where a warning was lifted: the same less gravely, or germs that grow in the same stage, but less far.
fn less_grave<'a>(warning: &Caution, all: &'a [Caution]) -> Option<&'a Caution> {
    let same = |caution: &&Caution| match (&caution.kind, &warning.kind) {
        (CautionKind::Germs(one), CautionKind::Germs(other)) => one.stage == other.stage,
        _ => caution.key == warning.key && !caution.always,
    };
    all.iter().filter(|caution| caution.severity > Severity::Note).find(same)
}

/// A changed design in which the warning is lifted.
#[derive(Clone)]
pub(super) struct Trial {
    /// The batch that follows from it.
    pub(super) batch: Batch,
    /// Serious warnings of the design's own that came and were not there.
    pub(super) brought: usize,
    /// Serious warnings of the design's own that are left.
    pub(super) serious: usize,
    /// What the warning has become, if it is only less grave.
    pub(super) stays: Option<Caution>,
}

impl Trial {
    /// Returns whether nothing stays of the warning, and no serious warning came that was not there.
    pub(super) const fn is_clean(&self) -> bool {
        self.brought == 0 && self.stays.is_none()
    }

    /// Returns what is to be least: the serious warnings that came, then whether something stays, then the serious warnings that are left.
    pub(super) const fn gravity(&self) -> (usize, bool, usize) {
        (self.brought, self.stays.is_some(), self.serious)
    }

    /// Returns whether no more came, stays or is left than in another.
    pub(super) const fn is_as_good_as(&self, (brought, stays, serious): (usize, bool, usize)) -> bool {
        self.brought <= brought && (stays || self.stays.is_none()) && self.serious <= serious
    }
}

/// One warning of a batch, and how often it may still be judged again.
pub(super) struct Trials<'a> {
    pub(super) batch: &'a Batch,
    pub(super) warning: &'a Caution,
    before: Vec<Caution>,
    left: Cell<usize>,
}

impl<'a> Trials<'a> {
    pub(super) fn of(batch: &'a Batch, warning: &'a Caution) -> Self {
        Self { batch, warning, before: cautions(batch), left: Cell::new(0) }
    }

    /// Allows so many more batches to be calculated.
    pub(super) fn allow(&self, most: usize) {
        self.left.set(most);
    }

    /// Returns a changed design judged again, if that lifts the warning; nothing if a stage fails in it, or if no more may be calculated.
    pub(super) fn of_design(&self, design: &Design) -> Option<Trial> {
        self.left.set(self.left.get().checked_sub(1)?);
        // Another culture may be tried, of which the log of this one tells nothing.
        let given = Given { runs: self.batch.given.runs, ..Given::of(design) };
        let (batch, _) = batch_until(design, &given, Some(self.batch), Stage::Keeping).ok()?;
        if batch.first_missing().is_some() {
            return None;
        }
        let after = cautions(&batch);
        if is_among(self.warning, &after) {
            return None;
        }
        let brought = after.iter().filter(|caution| is_own_serious(caution) && !is_among(caution, &self.before)).count();
        let stays = less_grave(self.warning, &after).cloned();
        Some(Trial { brought, serious: own_serious(&after), stays, batch })
    }
}
