//! Cautions about warming and setting.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::design::Heating;
use crate::law::bath::{Scorching, scorching};
use crate::process::{VatOutcome, WarmingEvent};
use crate::source::SourceId;

crate::constants! {
    /// Setting that takes too long.
    LONG_SETTING = { "Longest setting that is still usual", 120.0, "min", (90.0, 180.0), Ourselves, "curd is usually cut within an hour or two of the rennet", Judged }
    /// A first test that comes too late.
    LATE_TEST = { "Minutes after a clean break from which the curd is over-firm", 30.0, "min", (15.0, 60.0), Ourselves, "twice the usual quarter of an hour", Judged }
    /// A clot that comes too fast.
    FAST_CLOT = { "Shortest clotting time that leaves time to stir", 6.0, "min", (4.0, 8.0), Ourselves, "stirring in takes a minute or two, and the milk must be still before it sets", Judged }
    /// Milk that does not stay where the rennet went in.
    DRIFT = { "Change of temperature from rennet to cut that is worth a word", 4.0, "K", (2.0, 6.0), Ourselves, "by then the clotting time has changed by a tenth", Judged }
}

/// Tests of the curd that are still few.
const FEW_TESTS: u32 = 3;

/// A caution about warming and setting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum VatCaution {
    /// The wall of the pot gets hot.
    HotWall {
        /// How hot at most.
        wall_c: f64,
        /// From how hot to how hot, where that is known only roughly.
        likely_c: Option<(f64, f64)>,
        /// What that does to the milk.
        does: Scorching,
        /// The input that makes it hot.
        caused_by: &'static str,
    },
    /// Calcium would go in after the rennet.
    CalciumAfterRennet {
        /// When the calcium goes in.
        calcium_c: f64,
        /// When the rennet goes in.
        rennet_c: f64,
    },
    /// It clots before the rennet is stirred in.
    FastClot {
        /// After how long.
        clotting_min: f64,
    },
    /// The break is clean late, or only after many tests.
    LateBreak {
        /// After how long.
        clean_break_min: f64,
        /// At which test.
        tests: u32,
    },
    /// The first test comes long after the clean break.
    LateTest {
        /// When the break is clean.
        clean_break_min: f64,
        /// When it is tested first.
        cut_min: f64,
    },
    /// The milk warms or cools while it sets.
    DriftsWhileSetting {
        /// With the rennet.
        rennet_c: f64,
        /// Where it is farthest from that.
        farthest_c: f64,
    },
}

impl VatCaution {
    pub(super) fn facts(&self) -> Facts {
        use Severity::{Caution, Note};
        match self {
            Self::HotWall { does, caused_by, .. } => {
                let severity = if *does > Scorching::Deposits { Caution } else { Note };
                Facts::caused("hot_wall", severity, caused_by, SourceId::JDairySci1968)
            }
            Self::CalciumAfterRennet { .. } => {
                Facts::caused("calcium_after_rennet", Caution, "calcium_temperature_c", SourceId::GuelphNotes)
            }
            Self::FastClot { .. } => Facts::caused("fast_clot", Note, "rennet_dose_imcu_kg", SourceId::GuelphNotes),
            Self::LateBreak { clean_break_min, .. } if sets_long(*clean_break_min) => {
                Facts::caused("late_break", Caution, "rennet_dose_imcu_kg", SourceId::CommonPractice)
            }
            Self::LateBreak { .. } => Facts::caused("late_break", Note, "first_test_min", SourceId::CommonPractice),
            Self::LateTest { .. } => Facts::caused("late_test", Note, "first_test_min", SourceId::Ourselves),
            Self::DriftsWhileSetting { .. } => {
                Facts::caused("drifts_while_setting", Caution, "heat_while_setting", SourceId::Ourselves)
            }
        }
    }
}

/// Returns whether setting takes longer than is usual.
#[must_use]
pub fn sets_long(clean_break_min: f64) -> bool {
    clean_break_min > LONG_SETTING.value
}

pub(super) fn cautions(batch: &Batch) -> Vec<VatCaution> {
    let mut all = Vec::new();
    let Some(vat) = batch.vat.done() else { return all };
    let design = &batch.design.vat;
    let does = scorching(vat.wall_most_c);
    if does > Scorching::Fine {
        let caused_by = match design.heating {
            Heating::Bath if heat_step_is_hottest(batch) => "pasteurising_bath_temperature_c",
            Heating::Bath if design.bath_start_temperature_c > design.bath_set_temperature_c => "bath_start_temperature_c",
            Heating::Bath => "bath_set_temperature_c",
            Heating::DoubleBoiler | Heating::Hob => "heater_power_w",
        };
        all.push(VatCaution::HotWall { wall_c: vat.wall_most_c, likely_c: vat.likely_wall_most_c, does, caused_by });
    }
    if design.calcium_temperature_c > design.rennet_temperature_c {
        all.push(VatCaution::CalciumAfterRennet { calcium_c: design.calcium_temperature_c, rennet_c: design.rennet_temperature_c });
    }
    if sets_long(vat.clean_break_min) || vat.tests > FEW_TESTS {
        all.push(VatCaution::LateBreak { clean_break_min: vat.clean_break_min, tests: vat.tests });
    }
    if vat.cut_min - vat.clean_break_min > LATE_TEST.value {
        all.push(VatCaution::LateTest { clean_break_min: vat.clean_break_min, cut_min: vat.cut_min });
    }
    all.extend(drift(vat));
    if vat.clotting_min < FAST_CLOT.value {
        all.push(VatCaution::FastClot { clotting_min: vat.clotting_min });
    }
    all
}

/// Returns whether the bath is hottest while raw milk is pasteurised.
fn heat_step_is_hottest(batch: &Batch) -> bool {
    let design = &batch.design.vat;
    let others_c = design.bath_start_temperature_c.max(design.bath_set_temperature_c);
    let step = batch.milk.done().and_then(|milk| milk.pasteurising).filter(|_| design.heating == Heating::Bath);
    step.is_some_and(|step| step.bath_c >= others_c)
}

/// Returns the caution about milk that warms or cools between rennet and cut.
fn drift(vat: &VatOutcome) -> Option<VatCaution> {
    let rennet_c = vat.events.iter().find(|mark| mark.event == WarmingEvent::Rennet).map(|mark| mark.milk_c)?;
    let setting = vat.to_rennet_min..=vat.to_rennet_min + vat.cut_min;
    let setting = vat.curve.iter().filter(|point| setting.contains(&point.at_min)).map(|point| point.milk_c);
    // The end is not enough: a small pot may warm on in its bath and cool again.
    let off = |milk_c: f64| (milk_c - rennet_c).abs();
    let farthest_c = setting.max_by(|one, other| off(*one).total_cmp(&off(*other)))?;
    (off(farthest_c) > DRIFT.value).then_some(VatCaution::DriftsWhileSetting { rennet_c, farthest_c })
}
