//! A batch whose slow cheese is that of the draws.

use super::{Batch, Progress, batch_until};
use crate::design::Stage;
use crate::process::SlowSoak;
use std::sync::Arc;

/// Returns the same batch, its slow cheese as the draws have it: what is judged by it, from the class of the cheese to the oil, follows. Where
/// there is no soak it stays as it is.
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, judged_by}, design::Design, process::SlowSoak};
/// let plain = batch(&Design::default())?;
/// let slow = SlowSoak { centre_ph: 5.9, slurry_ph: 5.0, equilibrium_ph: 4.4, ..SlowSoak::default() };
/// assert_eq!(judged_by(&plain, &slow).keeping.done().unwrap().slow_centre_ph, 5.9);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn judged_by(batch: &Batch, slow: &SlowSoak) -> Batch {
    let Some(soured) = batch.pickling.done().filter(|soured| soured.pickled) else { return batch.clone() };
    let guarded = batch.guarded.as_ref().map(|guarded| Arc::new(judged_by(guarded, slow)));
    let before = Batch { pickling: Progress::Done(soured.judged_by(slow)), guarded, ..batch.clone() };
    // Its choices and what comes in are as before, so the soak is taken over, and what rests on it is said again.
    batch_until(&batch.design, &batch.given, Some(&before), Stage::Keeping).map_or_else(|_| batch.clone(), |(judged, _)| judged)
}
