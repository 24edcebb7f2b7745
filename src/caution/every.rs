//! Every caution of a batch, stage by stage.

use super::caution::{Caution, CautionKind};
use super::facts::Severity;
use super::guarded::worse_of;
use super::{draining, drying, fresh, germs, hours, keeping, milk, pickling, salting, souring, stopped, vat};
use crate::batch::Batch;
use crate::process::{PickleRun, Runs, VinegarBath};

/// Returns every caution of a batch, the gravest first; those of one severity in the order of the stages.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::{Severity, cautions}, design::Design};
/// let batch = batch(&Design::default())?;
/// assert_eq!(cautions(&batch)[0].severity, Severity::Stop);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn cautions(batch: &Batch) -> Vec<Caution> {
    // Cautions look at the likely ranges, which a batch without the runs at the ends of the ranges does not have.
    if batch.given.runs == Runs::MiddleOnly {
        return Vec::new();
    }
    let own = of(batch);
    gravest_first(match &batch.guarded {
        Some(guarded) => worse_of(own, of(guarded)),
        None => own,
    })
}

fn of(batch: &Batch) -> Vec<CautionKind> {
    let mut all: Vec<CautionKind> = Vec::new();
    all.extend(stopped::cautions(batch).into_iter().map(CautionKind::Stopped));
    all.push(CautionKind::Fresh(fresh::caution(batch)));
    all.extend(germs::cautions(batch).into_iter().map(CautionKind::Germs));
    all.extend(hours::cautions(batch).into_iter().map(CautionKind::Hours));
    all.extend(draining::cautions(batch).into_iter().map(CautionKind::Draining));
    all.extend(milk::cautions(batch).into_iter().map(CautionKind::Milk));
    all.extend(souring::cautions(batch).into_iter().map(CautionKind::Souring));
    all.extend(vat::cautions(batch).into_iter().map(CautionKind::Vat));
    all.extend(salting::cautions(batch).into_iter().map(CautionKind::Salting));
    all.extend(drying::cautions(batch).into_iter().map(CautionKind::Drying));
    all.extend(pickling::cautions(batch).into_iter().map(CautionKind::Pickling));
    all.extend(keeping::cautions(batch).into_iter().map(CautionKind::Keeping));
    all
}

/// Returns the serious warnings of a batch: the cautions of [`Severity::Stop`].
#[must_use]
pub fn serious_warnings(batch: &Batch) -> Vec<Caution> {
    cautions(batch).into_iter().filter(|caution| caution.severity == Severity::Stop).collect()
}

/// Returns the cautions of one described cheese in its share of the vinegar, the gravest first.
///
/// # Arguments
/// * `run`: the soak
/// * `bath`: the vinegar that it was calculated for
#[must_use]
pub fn soak_cautions(run: &PickleRun, bath: &VinegarBath) -> Vec<Caution> {
    gravest_first(pickling::of_described(run, bath).into_iter().map(CautionKind::Pickling).collect())
}

/// The sort is stable, so the order of the stages stays within a severity.
fn gravest_first(kinds: Vec<CautionKind>) -> Vec<Caution> {
    let mut all: Vec<Caution> = kinds.into_iter().map(Caution::from).collect();
    all.sort_by_key(|caution| std::cmp::Reverse(caution.severity));
    all
}
