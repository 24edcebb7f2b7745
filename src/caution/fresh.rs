//! Food without acid, and the hours it spends warm.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::process::{draining_hours, drying_hours, vat_hours};
use crate::source::SourceId;

crate::constants! {
    /// pH of cheese without a starter.
    FRESH_PH = { "pH of fresh cheese made without acid", 6.5, "pH", (6.3, 6.7), CommonPractice, "no source; milk is near 6.7, and without a starter it hardly falls", FromMemory }
}

/// The cheese has no acid. No choice removes this one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoAcid {
    /// Hours of the whole batch between cold and hot keeping, if that was calculated.
    pub zone_h: Option<f64>,
}

impl NoAcid {
    pub(super) const fn facts() -> Facts {
        Facts { key: "no_acid", severity: Severity::Stop, caused_by: None, source: SourceId::FoodCode }
    }
}

pub(super) fn caution(batch: &Batch) -> NoAcid {
    NoAcid { zone_h: hours_in_zone(batch) }
}

/// Returns the hours that the whole batch spends between cold and hot keeping, if it was calculated so far.
///
/// The keeping counts them; where it was not reached, the stages that were are counted as if nothing had soured the cheese.
#[must_use]
pub fn hours_in_zone(batch: &Batch) -> Option<f64> {
    if let Some(kept) = batch.keeping.done() {
        return Some(kept.zone_h);
    }
    let vat_h = vat_hours(batch.vat.done()?).zone_h;
    let draining_h = draining_hours(batch.draining.done()?).zone_h;
    // Cheeses that could not be dried are taken as there all the time.
    let drying_h = batch.drying.done().map_or(batch.design.drying.drying_h, |dried| drying_hours(dried).zone_h);
    Some(vat_h + draining_h + drying_h)
}
