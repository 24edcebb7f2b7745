//! Cautions about milk, calcium and salt.

use super::caution::{Caution, Severity};
use crate::batch::Batch;
use crate::design::MilkTreatment;
use crate::law::calcium::LEGAL_LIMIT;
use crate::source::SourceId;

crate::constants! {
    /// Little salt.
    SALT_LITTLE = { "Salt in the moisture below which fresh cheese is little salted", 2.5, "%", (2.0, 3.0), Ourselves, "targets of 2.5 to 4 % for fresh cheese", Judged }
    /// Much salt.
    SALT_MUCH = { "Salt in the moisture above which fresh cheese is very salty", 6.0, "%", (5.0, 7.0), Ourselves, "targets of 2.5 to 4 % for fresh cheese, 5 % for firmer", Judged }
    /// Lightest milk.
    LIGHT_MILK = { "Density below which milk is unlikely", 1.022, "kg/L", (1.020, 1.026), Ourselves, "milk in the fridge is 1.028 to 1.038 kg/L", Judged }
    /// Heaviest milk.
    HEAVY_MILK = { "Density above which milk is unlikely", 1.043, "kg/L", (1.040, 1.046), Ourselves, "milk in the fridge is 1.028 to 1.038 kg/L; our fit gives up to 1.0415 for sheep's", Judged }
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let design = &batch.design.milk;
    match design.milk_treatment {
        MilkTreatment::Raw => all.push(Caution::new(
            "raw_milk",
            Severity::Stop,
            Some("milk_treatment"),
            SourceId::Cfr21,
            "Raw milk may carry Listeria, Salmonella and toxin-forming germs, and a fresh cheese never meets the 60 days that rules ask of raw-milk cheese.",
            "Use pasteurised milk (63 °C for 30 min, or 72 °C for 15 s, is the published minimum).",
        )),
        MilkTreatment::UltraHeated => all.push(Caution::new(
            "ultra_heated_milk",
            Severity::Stop,
            Some("milk_treatment"),
            SourceId::GuelphNotes,
            "Ultra-heated milk is unsuitable: it hardly sets with rennet, and these times and yields do not hold for it.",
            "Use pasteurised milk that was not ultra-heated.",
        )),
        MilkTreatment::Homogenised => all.push(Caution::new(
            "homogenised_milk",
            Severity::Note,
            Some("milk_treatment"),
            SourceId::GuelphNotes,
            "Homogenised milk gives a softer curd that breaks more easily.",
            "Keep the calcium, cut late and ladle gently; milk that is not homogenised sets firmer.",
        )),
        MilkTreatment::Pasteurised => {}
    }
    if design.calcium_dose_percent > LEGAL_LIMIT.value + 1e-12 {
        all.push(Caution::new(
            "calcium_above_limit",
            Severity::Caution,
            Some("calcium_dose_percent"),
            SourceId::Cfr21,
            format!(
                "{:.3} % of calcium chloride is above the {:.2} % of the milk that several food laws allow, and tastes bitter.",
                design.calcium_dose_percent, LEGAL_LIMIT.value
            ),
            "Use 0.02 % or less, counted as anhydrous salt.",
        ));
    }
    if let Some(milk) = batch.milk.done() {
        let density = milk.bought_density_kg_l;
        if !(LIGHT_MILK.value..=HEAVY_MILK.value).contains(&density) {
            all.push(Caution::new(
                "unlikely_milk",
                Severity::Note,
                Some("label_protein_percent"),
                SourceId::Ourselves,
                format!("Milk of this fat and protein would have {density:.3} kg/L, which no milk has."),
                "Read the carton again: fat and protein in g per 100 g.",
            ));
        }
    }
    let Some(salted) = batch.salting.done() else { return };
    let salt = salted.salt_in_moisture_percent;
    if salt < SALT_LITTLE.value {
        all.push(Caution::new(
            "little_salt",
            Severity::Note,
            Some("salt_percent"),
            SourceId::Ourselves,
            format!("{salt:.1} g of salt in 100 g of the cheese's water is little for a fresh cheese."),
            "2.5 to 4 g is usual; salt alone never makes up for missing acid or cold.",
        ));
    } else if salt > SALT_MUCH.value {
        all.push(Caution::new(
            "much_salt",
            Severity::Note,
            Some("salt_percent"),
            SourceId::Ourselves,
            format!("{salt:.1} g of salt in 100 g of the cheese's water will taste very salty."),
            "2.5 to 5 g is usual.",
        ));
    }
}
