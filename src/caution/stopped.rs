//! A stage that could not be calculated is the first thing to say.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::design::{AcidBy, Design, Stage};
use crate::process::{DrainingError, DryingError, KeepingError, MilkError, PicklingError, SaltingError, StageError, VatError};
use crate::source::SourceId;

/// A stage failed.
#[derive(Clone, Debug, PartialEq)]
pub struct StageFailed {
    /// Why.
    pub error: StageError,
    /// The input whose change most likely removes it.
    pub caused_by: &'static str,
}

impl StageFailed {
    pub(super) const fn facts(&self) -> Facts {
        Facts::caused("stage_failed", Severity::Stop, self.caused_by, SourceId::Ourselves)
    }
}

/// Returns the input whose change most likely removes an error.
const fn cause(error: &StageError, design: &Design) -> &'static str {
    match error {
        StageError::Milk(MilkError::FatOutOfReach { .. }) => "fat_target_percent",
        StageError::Milk(MilkError::AcidClots { .. }) => match design.milk.acid_by {
            AcidBy::Ph => "soured_milk_ph",
            AcidBy::Amount => "milk_acid_g_l",
        },
        StageError::Milk(MilkError::TooCoolToPasteurise { .. }) => "pasteurising_temperature_c",
        StageError::Vat(VatError::TooSour { .. }) => "ripening_h",
        StageError::Vat(VatError::NeverWarm { .. } | VatError::DoesNotSet { .. }) => "rennet_temperature_c",
        StageError::Vat(VatError::NeverAtHold { .. } | VatError::HoldNotKept { .. }) => "pasteurising_bath_temperature_c",
        StageError::Vat(VatError::NeverCool { .. }) => "cooling_water_temperature_c",
        StageError::Vat(VatError::TooMoist { .. }) => "drip_end_moisture_percent",
        StageError::Draining(DrainingError::TooMuchCurd { .. }) => "mould_count",
        StageError::Salting(
            SaltingError::NoSaltedTurn { .. } | SaltingError::MoreSaltedThanTurned { .. } | SaltingError::Stuck(_),
        ) => "salted_turns",
        StageError::Drying(DryingError::NoOpenFace) => "underside_open_percent",
        StageError::Drying(DryingError::NothingToDry { .. } | DryingError::NoSolution { .. } | DryingError::Salt(_)) => "drying_h",
        StageError::Pickling(PicklingError::NoEquilibrium(_)) => "vinegar_ml_per_g",
        StageError::Pickling(PicklingError::Jar(_) | PicklingError::NoRoom { .. }) | StageError::Keeping(KeepingError::Jar(_)) => {
            "jar_width_mm"
        }
        StageError::Pickling(_) => "pickling_h",
    }
}

pub(super) fn cautions(batch: &Batch) -> Vec<StageFailed> {
    let failures = Stage::ALL.into_iter().filter_map(|stage| batch.ending(stage).failed().cloned());
    failures.map(|error| StageFailed { caused_by: cause(&error, &batch.design), error }).collect()
}
