//! Food without acid, and the hours it spends warm.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::law::growth::LISTERIA_STOPS_PH;
use crate::process::{draining_hours, drying_hours, vat_hours};
use crate::source::SourceId;

crate::constants! {
    /// pH of cheese without a starter.
    FRESH_PH = { "pH of fresh cheese made without acid", 6.5, "pH", (6.3, 6.7), CommonPractice, "no source; milk is near 6.7, and without a starter it hardly falls", FromMemory }
}

/// Little acid or some: every cheese is warned of, in one way or the other. No choice removes both.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FreshCaution {
    /// The cheese has no acid when it leaves the moulds.
    NoAcid {
        /// Hours of the whole batch between cold and hot keeping, if that was calculated.
        zone_h: Option<f64>,
    },
    /// The cheese is soured by then.
    Soured {
        /// Its pH when it leaves the moulds.
        ph: f64,
        /// Hours of the whole batch between cold and hot keeping, if that was calculated.
        zone_h: Option<f64>,
    },
}

impl FreshCaution {
    pub(super) const fn facts(&self) -> Facts {
        match self {
            Self::NoAcid { .. } => Facts::caused("no_acid", Severity::Stop, "soured_by", SourceId::FoodCode),
            // Sourer cheese is a choice; that even the sourest is only foreseen to be so is not.
            Self::Soured { ph, .. } if *ph > LISTERIA_STOPS_PH.value => {
                Facts::caused("acid_is_foreseen", Severity::Stop, "soured_by", SourceId::EuMicrobiology)
            }
            Self::Soured { .. } => Facts::always("acid_is_foreseen", Severity::Stop, None, SourceId::EuMicrobiology),
        }
    }
}

pub(super) fn caution(batch: &Batch) -> FreshCaution {
    let zone_h = hours_in_zone(batch);
    match unmoulded_ph(batch).filter(|_| is_soured_in_moulds(batch)) {
        Some(ph) => FreshCaution::Soured { ph, zone_h },
        None => FreshCaution::NoAcid { zone_h },
    }
}

/// Returns whether the cheeses are sourer when they leave the moulds than any cheese without acid is. Rules that count hours are for food without
/// acid: where this is so, the growth of germs along the way is judged instead, and the hours are figures beside it.
pub(super) fn is_soured_in_moulds(batch: &Batch) -> bool {
    unmoulded_ph(batch).is_some_and(|ph| ph < FRESH_PH.range.0)
}

/// Returns the pH of the cheeses when they leave the moulds: as measured, or as calculated; none where they do not come so far.
fn unmoulded_ph(batch: &Batch) -> Option<f64> {
    let in_air = batch.drying.done().and_then(|dried| dried.souring.first());
    let in_moulds = batch.draining.done().and_then(|drained| drained.souring.last());
    in_air.or(in_moulds).map(|point| point.ph)
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
