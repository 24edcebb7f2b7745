//! When a batch has come how far, in minutes from the start of warming.

use super::Batch;

/// Returns the minutes from the start of warming to the last air; none if the batch did not come so far.
#[must_use]
pub fn dried_min(batch: &Batch) -> Option<f64> {
    batch.drying.done()?;
    let unmoulded_min = batch.vat.done()?.to_ladle_min + 60.0 * batch.draining.done()?.draining_h;
    Some(unmoulded_min + 60.0 * batch.design.drying.drying_h)
}

/// Returns the minutes from the start of warming to the end of the soak, or to the last air where there is no vinegar.
#[must_use]
pub fn soaked_min(batch: &Batch) -> Option<f64> {
    let soak_h = if batch.pickling.done()?.pickled { batch.design.pickling.pickling_h } else { 0.0 };
    Some(dried_min(batch)? + 60.0 * soak_h)
}
