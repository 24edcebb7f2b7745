//! Cautions about draining and moulds.

use super::facts::{Facts, Severity};
use super::fresh::is_soured_in_moulds;
use crate::batch::Batch;
use crate::law::growth::{COLD_DRAINING, COOL_HOURS, SERVICE_HOURS, SERVICE_WARM};
use crate::source::SourceId;

crate::constants! {
    /// Thin cheeses.
    THIN = { "Thickness below which a cheese hardly bears turning", 8.0, "mm", (5.0, 12.0), Ourselves, "by feel", Judged }
}

/// A caution about draining and moulds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DrainingCaution {
    /// Warm for hours.
    WarmDraining {
        /// How long.
        hours: f64,
        /// How warm.
        temperature_c: f64,
    },
    /// Unmoulded before the whey has stopped dripping.
    DripGoesOn {
        /// When it would stop.
        stops_h: f64,
        /// When the cheeses leave the moulds.
        draining_h: f64,
    },
    /// The curd does not fit into the moulds in one filling.
    TopUpMoulds {
        /// Ladled curd for each mould.
        ladled_ml: f64,
        /// What a mould holds.
        mould_ml: f64,
        /// Moulds that would hold it in one filling.
        moulds: u32,
    },
    /// Too thin to turn.
    ThinCheese {
        /// How thin.
        thickness_mm: f64,
    },
}

impl DrainingCaution {
    pub(super) fn facts(&self) -> Facts {
        use Severity::{Caution, Note, Stop};
        match self {
            Self::WarmDraining { hours, temperature_c } => {
                let too_long = *temperature_c > SERVICE_WARM.value || *hours > COOL_HOURS.value;
                let severity = if too_long { Stop } else { Caution };
                Facts::caused("warm_draining", severity, "draining_temperature_c", SourceId::FoodCode)
            }
            Self::DripGoesOn { .. } => Facts::caused("drip_goes_on", Caution, "turn_gap_h", SourceId::MarshallCastillo),
            Self::TopUpMoulds { .. } => Facts::caused("top_up_moulds", Note, "mould_count", SourceId::Ourselves),
            Self::ThinCheese { .. } => Facts::caused("thin_cheese", Note, "mould_count", SourceId::Ourselves),
        }
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<DrainingCaution> {
    let mut all = Vec::new();
    let Some(drained) = batch.draining.done() else { return all };
    let temperature_c = batch.design.draining.draining_temperature_c;
    if !is_soured_in_moulds(batch) && temperature_c > COLD_DRAINING.value && drained.draining_h > SERVICE_HOURS.value {
        all.push(DrainingCaution::WarmDraining { hours: drained.draining_h, temperature_c });
    }
    if !drained.drip_has_stopped {
        all.push(DrainingCaution::DripGoesOn { stops_h: drained.drip_stops_h, draining_h: drained.draining_h });
    }
    if !drained.fits {
        all.push(DrainingCaution::TopUpMoulds {
            ladled_ml: drained.ladled_ml,
            mould_ml: drained.mould_ml,
            moulds: drained.moulds_wanted,
        });
    }
    if drained.thickness_mm < THIN.value {
        all.push(DrainingCaution::ThinCheese { thickness_mm: drained.thickness_mm });
    }
    all
}
