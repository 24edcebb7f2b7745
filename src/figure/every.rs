//! Every figure of a batch, stage by stage.

use super::figure::Figure;
use super::{draining, drying, finished, germs, keeping, milk, pickling, salting, souring, vat};
use crate::batch::Batch;
use crate::process::Runs;

/// Returns every figure of a batch, in the order of the stages; stages that were not calculated have none.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, figure::figures, design::Design};
/// let figures = figures(&batch(&Design::default())?);
/// assert!(figures.iter().any(|figure| figure.key == "cream_g"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn figures(batch: &Batch) -> Vec<Figure> {
    let mut all = Vec::new();
    all.extend(batch.milk.done().into_iter().flat_map(|outcome| milk::figures(outcome, &batch.design)));
    all.extend(souring::milk(batch));
    all.extend(batch.vat.done().into_iter().flat_map(|outcome| vat::figures(outcome, &batch.design)));
    all.extend(souring::vat(batch));
    all.extend(batch.draining.done().into_iter().flat_map(draining::figures));
    all.extend(souring::draining(batch));
    all.extend(batch.salting.done().into_iter().flat_map(salting::figures));
    all.extend(batch.drying.done().into_iter().flat_map(|outcome| drying::figures(outcome, &batch.design)));
    all.extend(souring::drying(batch));
    all.extend(batch.pickling.done().into_iter().flat_map(|outcome| pickling::figures(outcome, &batch.design)));
    all.extend(batch.keeping.done().into_iter().flat_map(|outcome| keeping::figures(outcome, &batch.design)));
    // Of a way that was gone to its end: half a way would look like little growth.
    all.extend(batch.germs.iter().filter(|_| batch.keeping.done().is_some()).flat_map(germs::figures));
    all.extend(finished::figures(batch));
    if batch.given.runs == Runs::MiddleOnly {
        all.retain(|figure| !rests_on_runs_beside(figure.key));
    }
    all
}

/// The figures that rest on a run beside the one that is shown, or on one that goes on after it.
const RUNS_BESIDE: [&str; 9] = [
    pickling::IF_SLOW,
    pickling::SLOW_PH,
    "table_b",
    "acid_class",
    "growers",
    "soak_softens",
    "rest_ph",
    "rest_moisture",
    "rest_salt",
];

/// Returns whether a figure rests on a run beside the one that is shown, or on one that goes on after it; where those are not calculated, it is not there.
#[must_use]
pub fn rests_on_runs_beside(key: &str) -> bool {
    RUNS_BESIDE.contains(&key)
}

/// Returns the figures of salting alone, for a cheese that was described.
#[must_use]
pub fn salting_figures(outcome: &crate::process::SaltingOutcome) -> Vec<Figure> {
    salting::figures(outcome)
}
