//! Cautions about what the cheeses are kept in, how warm and how long.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::design::KeptIn;
use crate::law::growth::{COLD_ENOUGH, Control, TABLE_B_PH};
use crate::process::KeepingOutcome;
use crate::source::SourceId;

crate::constants! {
    /// Days in oil.
    OIL_DAYS = { "Days that garlic or herbs may stand in oil at 4 °C or colder", 4.0, "d", (2.0, 4.0), OilGuidance, "home food preservation pages, after Nummer 2011", Published }
    /// Days in the cold.
    COLD_DAYS = { "Days that food-service rules allow food without acid in the cold before it is discarded", 7.0, "d", (4.0, 7.0), FoodCode, "3-501.17, date marking, at 5 °C or colder; the day of making counts", FromMemory }
}

/// A caution about keeping.
#[derive(Clone, Debug, PartialEq)]
pub enum KeepingCaution {
    /// Under oil, sour by the model alone.
    OilIsUntested {
        /// pH at the centre.
        centre_ph: f64,
        /// The same in a slow cheese.
        slow_ph: f64,
    },
    /// Under oil and not sour.
    OilBeforeAcid {
        /// pH at the centre.
        centre_ph: f64,
        /// The same in a slow cheese.
        slow_ph: f64,
        /// pH of a blended sample.
        slurry_ph: f64,
        /// The higher of its water activities.
        water_activity: f64,
    },
    /// Under oil, where nobody can say how sour it is: a stage before could not be calculated.
    OilUnjudged,
    /// Too long in oil.
    LongInOil {
        /// How long.
        days: f64,
    },
    /// To be kept in a vinegar that there is not.
    NoVinegarToKeepIn,
    /// Not cold.
    WarmKeeping {
        /// How warm.
        temperature_c: f64,
        /// The germs that no published minimum holds back there.
        growers: Vec<&'static str>,
    },
    /// Table B asks for control of time and temperature.
    NeedsCold {
        /// pH at the centre.
        centre_ph: f64,
        /// The same in a slow cheese.
        slow_ph: f64,
        /// The higher of its water activities.
        water_activity: f64,
        /// The germs that no published minimum holds back there.
        growers: Vec<&'static str>,
        /// The input that most likely changes it.
        caused_by: &'static str,
    },
    /// Table B asks for none, by the model alone.
    ClassIsNoProof {
        /// pH at the centre.
        centre_ph: f64,
        /// The same in a slow cheese.
        slow_ph: f64,
        /// The higher of its water activities.
        water_activity: f64,
        /// The input that decides it.
        caused_by: &'static str,
    },
}

impl KeepingCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::{Caution, Note, Stop};
        match self {
            Self::OilIsUntested { .. } => Facts::caused("oil_is_untested", Stop, "kept_in", SourceId::OilGuidance),
            Self::OilUnjudged | Self::OilBeforeAcid { .. } => {
                Facts::caused("oil_before_acid", Stop, "kept_in", SourceId::BotulismReports)
            }
            Self::LongInOil { .. } => Facts::caused("long_in_oil", Stop, "keeping_days", SourceId::OilGuidance),
            Self::NoVinegarToKeepIn => Facts::caused("no_vinegar_to_keep_in", Caution, "kept_in", SourceId::Ourselves),
            Self::WarmKeeping { .. } => Facts::caused("warm_keeping", Stop, "keeping_temperature_c", SourceId::BadBugBook),
            Self::NeedsCold { caused_by, .. } => Facts::caused("needs_cold", Caution, caused_by, SourceId::FoodCode),
            Self::ClassIsNoProof { caused_by, .. } => Facts::always("class_is_no_proof", Note, Some(caused_by), SourceId::FoodCode),
        }
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<KeepingCaution> {
    let mut all = Vec::new();
    let design = &batch.design.keeping;
    let pickled = batch.design.pickling.pickled;
    // Of a batch that does not come so far, what its choices alone say stays said.
    let kept = batch.keeping.done();
    if design.kept_in == KeptIn::Oil {
        all.push(kept.map_or(KeepingCaution::OilUnjudged, oil));
        if design.keeping_days > OIL_DAYS.value {
            all.push(KeepingCaution::LongInOil { days: design.keeping_days });
        }
    }
    if design.kept_in == KeptIn::Vinegar && !pickled {
        all.push(KeepingCaution::NoVinegarToKeepIn);
    }
    if design.keeping_temperature_c > COLD_ENOUGH.value {
        let growers = kept.map(|kept| kept.growers.clone()).unwrap_or_default();
        all.push(KeepingCaution::WarmKeeping { temperature_c: design.keeping_temperature_c, growers });
    }
    all.extend(kept.map(|kept| class(kept, pickled)));
    all
}

/// Returns the caution about oil, which keeps the air out: there is one however sour the cheese is.
fn oil(kept: &KeepingOutcome) -> KeepingCaution {
    let is_sour = kept.slow_centre_ph < TABLE_B_PH.value;
    if is_sour {
        KeepingCaution::OilIsUntested { centre_ph: kept.centre_ph, slow_ph: kept.slow_centre_ph }
    } else {
        let &KeepingOutcome { centre_ph, slow_centre_ph: slow_ph, slurry_ph, water_activity, .. } = kept;
        KeepingCaution::OilBeforeAcid { centre_ph, slow_ph, slurry_ph, water_activity }
    }
}

/// Returns what table B says; it proves nothing.
fn class(kept: &KeepingOutcome, pickled: bool) -> KeepingCaution {
    let (centre_ph, slow_ph, water_activity) = (kept.centre_ph, kept.slow_centre_ph, kept.water_activity);
    let caused_by = if pickled { "pickling_h" } else { "pickled" };
    match kept.table_b {
        Control::AssessmentRequired => {
            KeepingCaution::NeedsCold { centre_ph, slow_ph, water_activity, growers: kept.growers.clone(), caused_by }
        }
        Control::NotRequired => KeepingCaution::ClassIsNoProof { centre_ph, slow_ph, water_activity, caused_by },
    }
}
