//! Which stages a choice of which causes a caution, and how grave the gravest is.

use super::{Caution, Severity};
use crate::design::{Stage, field};

/// Returns the stages of which a choice causes a caution or a serious warning, each with the gravest; notes and what is true of every such cheese are
/// left out.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::{cautions, worst_by_stage}, design::{Design, Stage}};
/// let worst = worst_by_stage(&cautions(&batch(&Design::default())?));
/// assert!(worst.iter().all(|(stage, _)| Stage::ALL.contains(stage)));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn worst_by_stage(cautions: &[Caution]) -> Vec<(Stage, Severity)> {
    let counted = |caution: &&Caution| !caution.always && caution.severity > Severity::Note;
    let caused = |caution: &Caution| Some((field(caution.caused_by?).ok()?.stage, caution.severity));
    let all: Vec<(Stage, Severity)> = cautions.iter().filter(counted).filter_map(caused).collect();
    let worst = |stage: Stage| all.iter().filter(|(at, _)| *at == stage).map(|(_, severity)| *severity).max();
    Stage::ALL.into_iter().filter_map(|stage| Some((stage, worst(stage)?))).collect()
}
