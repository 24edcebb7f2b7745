//! Hours that add up over the stages, for a cheese that nothing sours in time. One that is soured is judged by the growth of germs instead.

use super::draining::DrainingCaution;
use super::drying::{DryingCaution, warmest_air};
use super::facts::{Facts, Severity};
use super::fresh::is_soured_in_moulds;
use super::keeping::COLD_DAYS;
use super::pickling::is_sour_if_slow;
use crate::batch::Batch;
use crate::design::{PicklingDesign, Stage};
use crate::law::growth::{ACIDIFIED_PH, COOL_HOURS, Control, SERVICE_HOURS};
use crate::process::{StageHours, draining_hours, drying_hours, vat_hours};
use crate::source::SourceId;

const HOURS_IN_A_DAY: f64 = 24.0;

/// A caution about hours or days that add up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HoursCaution {
    /// Warm for too long in all, though no stage alone is.
    WarmInAll {
        /// Hours above 21 °C.
        hours: f64,
        /// Where most of them are spent.
        most_in: Stage,
        /// The input that says how warm it is there.
        caused_by: &'static str,
    },
    /// Cool, but not cold, for more than a day.
    CoolForDays {
        /// Hours between 7 and 21 °C.
        hours: f64,
        /// Where most of them are spent.
        most_in: Stage,
        /// The input that says how warm it is there.
        caused_by: &'static str,
    },
    /// A moist cheese that is not sour is kept for longer than rules allow.
    KeptLong {
        /// Days in the cold, with those in the vinegar.
        days: f64,
        /// Days of them in the vinegar.
        soak_days: f64,
    },
}

impl HoursCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::Stop;
        match self {
            Self::WarmInAll { caused_by, .. } => Facts::caused("warm_in_all", Stop, caused_by, SourceId::FoodCode),
            Self::CoolForDays { caused_by, .. } => Facts::caused("cool_for_days", Stop, caused_by, SourceId::FoodCode),
            Self::KeptLong { .. } => Facts::caused("kept_long", Stop, "keeping_days", SourceId::FoodCode),
        }
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<HoursCaution> {
    if is_soured_in_moulds(batch) {
        return kept_long(batch).filter(|_| !is_acidified(batch)).into_iter().collect();
    }
    let hours = of_stages(batch);
    let (draining, drying) = (super::draining::cautions(batch), super::drying::cautions(batch));
    let is_serious = |facts: Facts| matches!(facts.severity, Severity::Stop);
    let drains_warm =
        draining.iter().any(|caution| matches!(caution, DrainingCaution::WarmDraining { .. }) && is_serious(caution.facts()));
    let dries_warm =
        drying.iter().any(|caution| matches!(caution, DryingCaution::WarmDrying { .. }) && is_serious(caution.facts()));
    // A stage that is seriously warned of by itself leads to its own choice; a mere caution about it takes no hour off the sum.
    let unsaid = |stage: &&StageHours| match stage.stage {
        Stage::Draining => !drains_warm,
        Stage::Drying => !dries_warm,
        // Whatever is not cold there is warned of as such.
        Stage::Pickling | Stage::Keeping => false,
        Stage::Milk | Stage::Vat | Stage::Salting => true,
    };
    let sum = |of: fn(&StageHours) -> f64| hours.iter().filter(unsaid).map(of).sum::<f64>();
    let most_in = |of: fn(&StageHours) -> f64| {
        let most = hours.iter().filter(unsaid).max_by(|one, other| of(one).total_cmp(&of(other)));
        most.map_or(Stage::Draining, |most| most.stage)
    };
    let mut all = Vec::new();
    if sum(|stage| stage.warm_h) > SERVICE_HOURS.value {
        let most_in = most_in(|stage| stage.warm_h);
        let hours = hours.iter().map(|stage| stage.warm_h).sum();
        all.push(HoursCaution::WarmInAll { hours, most_in, caused_by: how_warm(batch, most_in) });
    }
    if sum(|stage| stage.cool_h) > COOL_HOURS.value {
        let most_in = most_in(|stage| stage.cool_h);
        let hours = hours.iter().map(|stage| stage.cool_h).sum();
        all.push(HoursCaution::CoolForDays { hours, most_in, caused_by: how_warm(batch, most_in) });
    }
    all.extend(kept_long(batch));
    all
}

/// Returns whether the souring alone makes an acidified food of the dried cheese, by what is known or measured of it.
fn is_acidified(batch: &Batch) -> bool {
    batch.pickling.done().is_some_and(|soured| soured.start_ph <= ACIDIFIED_PH.value)
}

/// Returns the hours of the stages that were calculated.
fn of_stages(batch: &Batch) -> Vec<StageHours> {
    if let Some(kept) = batch.keeping.done() {
        return kept.hours.clone();
    }
    let vat = batch.vat.done().map(vat_hours);
    let moulds = batch.draining.done().map(draining_hours);
    let air = batch.drying.done().map(drying_hours);
    [vat, moulds, air].into_iter().flatten().collect()
}

/// Returns the input that says how warm a stage is.
fn how_warm(batch: &Batch, stage: Stage) -> &'static str {
    match stage {
        Stage::Milk | Stage::Vat => "rennet_temperature_c",
        Stage::Draining | Stage::Salting => "draining_temperature_c",
        Stage::Drying | Stage::Pickling | Stage::Keeping => warmest_air(batch).0,
    }
}

/// Returns the days that cheeses are to lie in vinegar.
///
/// # Example
/// ```
/// use vatsketch::{caution::soak_days, design::PicklingDesign};
/// let bare = PicklingDesign { pickled: false, pickling_h: 60.0, ..PicklingDesign::default() };
/// assert_eq!((soak_days(&bare), soak_days(&PicklingDesign { pickled: true, ..bare })), (0.0, 2.5));
/// ```
#[must_use]
pub fn soak_days(pickling: &PicklingDesign) -> f64 {
    if pickling.pickled { pickling.pickling_h / HOURS_IN_A_DAY } else { 0.0 }
}

/// Returns the caution about a moist cheese that is kept long and not sour: as dry or as sour as table B asks for, it may be.
fn kept_long(batch: &Batch) -> Option<HoursCaution> {
    let kept = batch.keeping.done()?;
    let (pickling, keeping) = (&batch.design.pickling, &batch.design.keeping);
    let soak_days = soak_days(pickling);
    let days = keeping.keeping_days + soak_days;
    let needs_cold = kept.table_b == Control::AssessmentRequired || (pickling.pickled && !is_sour_if_slow(batch));
    (needs_cold && days > COLD_DAYS.value).then_some(HoursCaution::KeptLong { days, soak_days })
}
