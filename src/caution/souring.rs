//! Cautions about souring the milk and the curd.

use super::drying::warmest_air;
use super::facts::{Facts, Severity};
use crate::batch::{Batch, culture_check};
use crate::design::{AcidBy, CultureBy, MilkDesign, SouredBy};
use crate::law::growth::{SOUR_BEFORE_DRYING_PH, WARM_DRYING};
use crate::law::souring::{Beyond, SOURING_WARMEST, STIR_ACID_BELOW_C, WARM_ACID_CLOT_PH};
use crate::process::{SourPoint, VatOutcome, ph_at};
use crate::source::SourceId;

crate::constants! {
    /// Where a culture has done its work.
    CULTURE_DONE_PH = { "pH that a culture is to reach before anything stops it", 5.2, "pH", (5.0, 5.5), Ourselves, "short, mildly sour curd; our calculation of germs in warm drying still has them grow above 4.8", Judged }
}

/// More than the rounding of a pH that was measured or searched for.
const ROUNDING_PH: f64 = 1e-6;

/// A caution about souring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SouringCaution {
    /// The culture is slow.
    NotSourInTime {
        /// pH at the hour at which it is measured.
        ph: f64,
        /// The input that says how much culture.
        caused_by: &'static str,
    },
    /// Warm air before the cheese is sour.
    WarmBeforeSour {
        /// pH when drying begins.
        ph: f64,
        /// Of the air.
        temperature_c: f64,
        /// The input that says how warm.
        caused_by: &'static str,
    },
    /// Too hot for the culture before the cheese is sour.
    CultureStops {
        /// pH where that happens.
        ph: f64,
        /// How hot it is then.
        temperature_c: f64,
        /// Hotter than this it does not grow, or the law does not hold.
        most_c: f64,
        /// The input that makes it hot.
        caused_by: &'static str,
    },
    /// How many cells there are is taken from records.
    CellsAssumed {
        /// Cells in each g of milk.
        cells_per_g: f64,
        /// How the culture is measured.
        by: CultureBy,
    },
    /// Acid goes into milk that is not cold.
    AcidIntoWarmMilk {
        /// How warm.
        milk_c: f64,
    },
    /// The milk is an acid gel in part when it is cut.
    PartlyAcidGel {
        /// pH at the cut.
        ph: f64,
        /// The input that makes it so sour.
        caused_by: &'static str,
    },
}

impl SouringCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::{Caution, Note, Stop};
        match self {
            Self::NotSourInTime { caused_by, .. } => Facts::caused("not_sour_in_time", Caution, caused_by, SourceId::RawMilkCheese),
            Self::WarmBeforeSour { caused_by, .. } => Facts::caused("warm_before_sour", Stop, caused_by, SourceId::Ourselves),
            Self::CultureStops { caused_by, .. } => Facts::caused("culture_stops", Caution, caused_by, SourceId::CultureTables),
            Self::CellsAssumed { .. } => Facts::caused("culture_cells_assumed", Note, "culture_by", SourceId::CommonPractice),
            Self::AcidIntoWarmMilk { .. } => {
                Facts::caused("acid_into_warm_milk", Caution, "fridge_temperature_c", SourceId::CommonPractice)
            }
            Self::PartlyAcidGel { caused_by, .. } => Facts::caused("partly_acid_gel", Note, caused_by, SourceId::Textbook),
        }
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<SouringCaution> {
    let design = &batch.design.milk;
    let mut all = Vec::new();
    let Some(vat) = batch.vat.done() else { return all };
    let check = culture_check(batch).filter(|check| check.ph > check.in_time_ph + ROUNDING_PH);
    all.extend(check.map(|check| SouringCaution::NotSourInTime { ph: check.ph, caused_by: amount(design) }));
    all.extend(warm_before_sour(batch));
    all.extend(culture_stops(batch, vat));
    if design.soured_by == SouredBy::Culture && design.culture_by != CultureBy::Cells {
        let cells_per_g = batch.milk.done().map_or(0.0, |milk| milk.soured.cells_per_g);
        all.push(SouringCaution::CellsAssumed { cells_per_g, by: design.culture_by });
    }
    if design.soured_by == SouredBy::Acid && !design.pasteurises() && design.fridge_temperature_c > STIR_ACID_BELOW_C.value {
        all.push(SouringCaution::AcidIntoWarmMilk { milk_c: design.fridge_temperature_c });
    }
    let cut_h = (vat.to_rennet_min + vat.cut_min) / 60.0;
    let sour_at_cut = ph_at(&vat.souring, cut_h).filter(|ph| *ph < WARM_ACID_CLOT_PH.value);
    all.extend(sour_at_cut.map(|ph| SouringCaution::PartlyAcidGel { ph, caused_by: sourest(design) }));
    all
}

/// Returns the input that says how much culture there is.
const fn amount(design: &MilkDesign) -> &'static str {
    match design.culture_by {
        CultureBy::Packet => "culture_packets",
        CultureBy::Bulk => "culture_bulk_percent",
        CultureBy::Cells => "culture_cells_million_g",
    }
}

/// Returns the input that makes the milk sour before it is cut.
const fn sourest(design: &MilkDesign) -> &'static str {
    match (design.soured_by, design.acid_by) {
        (SouredBy::Lactone, _) => "lactone_g_l",
        (SouredBy::Acid, AcidBy::Ph) => "soured_milk_ph",
        (SouredBy::Acid, AcidBy::Amount) => "milk_acid_g_l",
        (SouredBy::Culture | SouredBy::Nothing, _) => "ripening_h",
    }
}

/// Returns the caution about warm drying of a cheese that was soured, and not enough; one that nothing sours is warned of as such.
fn warm_before_sour(batch: &Batch) -> Option<SouringCaution> {
    let soured = batch.design.milk.soured_by != SouredBy::Nothing;
    let ph = batch.drying.done()?.souring.first()?.ph;
    let (caused_by, temperature_c) = warmest_air(batch);
    let too_early = soured && ph > SOUR_BEFORE_DRYING_PH.value + ROUNDING_PH && temperature_c > WARM_DRYING.value;
    (too_early && batch.design.drying.drying_h > 0.0).then_some(SouringCaution::WarmBeforeSour { ph, temperature_c, caused_by })
}

/// Returns the caution about a culture that gets too hot to work before the cheese is sour.
fn culture_stops(batch: &Batch, vat: &VatOutcome) -> Option<SouringCaution> {
    let law = vat.sourness.culture?.law;
    let [_, _, grows_to_c] = law.warmth_c;
    let culture_h = vat.to_culture_min / 60.0;
    let stopped = |point: &&SourPoint| {
        let too_hot = point.temperature_c >= grows_to_c || point.beyond == Some(Beyond::TooHot);
        too_hot && point.ph > CULTURE_DONE_PH.value
    };
    let in_vat =
        vat.souring.iter().filter(|point| point.at_h >= culture_h).find(stopped).map(|point| (point, "rennet_temperature_c"));
    let in_moulds = batch.draining.done().and_then(|drained| drained.souring.iter().find(stopped));
    let in_air = batch.drying.done().and_then(|dried| dried.souring.iter().find(stopped));
    let (point, caused_by) = in_vat
        .or_else(|| in_moulds.map(|point| (point, "rennet_temperature_c")))
        .or_else(|| in_air.map(|point| (point, warmest_air(batch).0)))?;
    let most_c = grows_to_c.min(SOURING_WARMEST.value);
    Some(SouringCaution::CultureStops { ph: point.ph, temperature_c: point.temperature_c, most_c, caused_by })
}
