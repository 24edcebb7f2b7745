//! Cautions about milk and calcium.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::design::MilkTreatment;
use crate::law::calcium::LEGAL_LIMIT;
use crate::law::pasteurising::is_of_a_rule;
use crate::process::Pasteurising;
use crate::source::SourceId;

crate::constants! {
    /// Lightest milk.
    LIGHT_MILK = { "Density below which milk is unlikely", 1.022, "kg/L", (1.020, 1.026), Ourselves, "milk in the fridge is 1.028 to 1.038 kg/L", Judged }
    /// Heaviest milk.
    HEAVY_MILK = { "Density above which milk is unlikely", 1.043, "kg/L", (1.040, 1.046), Ourselves, "milk in the fridge is 1.028 to 1.038 kg/L; our fit gives up to 1.0415 for sheep's", Judged }
    /// Ageing of raw-milk cheese.
    RAW_MILK_AGEING = { "Ageing that rules ask of raw-milk cheese", 60.0, "d", (60.0, 60.0), Cfr21, "part 133, standards of cheese from milk that is not pasteurised", FromMemory }
}

/// A caution about milk and calcium.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MilkCaution {
    /// Raw milk.
    RawMilk,
    /// Raw milk that is pasteurised in the vat.
    PasteurisedInVat {
        /// Temperature that it is held at.
        hold_c: f64,
        /// For how long.
        hold_min: f64,
        /// Whether a rule has this time at this temperature; else it is our own line between two rules.
        of_a_rule: bool,
    },
    /// Ultra-heated milk.
    UltraHeatedMilk,
    /// Homogenised milk.
    HomogenisedMilk,
    /// More calcium than food laws allow.
    CalciumAboveLimit {
        /// How much, % of the milk.
        dose_percent: f64,
    },
    /// Milk that there hardly is.
    UnlikelyMilk {
        /// Its density.
        density_kg_l: f64,
    },
}

impl MilkCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::{Caution, Note, Stop};
        match self {
            Self::RawMilk => Facts::caused("raw_milk", Stop, "milk_treatment", SourceId::Cfr21),
            Self::PasteurisedInVat { .. } => {
                Facts::caused("pasteurised_in_vat", Stop, "pasteurising_temperature_c", SourceId::Cfr21)
            }
            Self::UltraHeatedMilk => Facts::caused("ultra_heated_milk", Stop, "milk_treatment", SourceId::GuelphNotes),
            Self::HomogenisedMilk => Facts::caused("homogenised_milk", Note, "milk_treatment", SourceId::GuelphNotes),
            Self::CalciumAboveLimit { .. } => {
                Facts::caused("calcium_above_limit", Caution, "calcium_dose_percent", SourceId::Cfr21)
            }
            Self::UnlikelyMilk { .. } => Facts::caused("unlikely_milk", Note, "label_protein_percent", SourceId::Ourselves),
        }
    }
}

/// More than the rounding of a typed dose.
const ROUNDING_PERCENT: f64 = 1e-12;

pub(super) fn cautions(batch: &Batch) -> Vec<MilkCaution> {
    let design = &batch.design.milk;
    let mut all = Vec::new();
    match design.milk_treatment {
        MilkTreatment::Raw => all.push(raw(batch)),
        MilkTreatment::UltraHeated => all.push(MilkCaution::UltraHeatedMilk),
        MilkTreatment::Homogenised => all.push(MilkCaution::HomogenisedMilk),
        MilkTreatment::Pasteurised => {}
    }
    if design.calcium_dose_percent > LEGAL_LIMIT.value + ROUNDING_PERCENT {
        all.push(MilkCaution::CalciumAboveLimit { dose_percent: design.calcium_dose_percent });
    }
    if let Some(milk) = batch.milk.done() {
        let density_kg_l = milk.bought_density_kg_l;
        if !(LIGHT_MILK.value..=HEAVY_MILK.value).contains(&density_kg_l) {
            all.push(MilkCaution::UnlikelyMilk { density_kg_l });
        }
    }
    all
}

/// Returns the caution about raw milk. Where its heat step could not be calculated it is raw milk still.
fn raw(batch: &Batch) -> MilkCaution {
    let heated = batch.vat.done().is_some_and(|vat| vat.heat_step.is_some());
    match batch.milk.done().and_then(|milk| milk.pasteurising).filter(|_| heated) {
        Some(Pasteurising { hold_c, hold_min, rich, .. }) => {
            MilkCaution::PasteurisedInVat { hold_c, hold_min, of_a_rule: is_of_a_rule(hold_c, 60.0 * hold_min, rich) }
        }
        None => MilkCaution::RawMilk,
    }
}
