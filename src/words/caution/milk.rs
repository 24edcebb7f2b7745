//! Cautions about milk and calcium, in words.

use crate::caution::{MilkCaution, RAW_MILK_AGEING};
use crate::law::calcium::LEGAL_LIMIT;
use crate::law::pasteurising::{
    QUICK_PASTEURISING, QUICK_PASTEURISING_TIME, SLOW_PASTEURISING, SLOW_PASTEURISING_TIME, in_seconds,
};
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::{quantity, value};
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &MilkCaution) -> CautionWords {
    match caution {
        MilkCaution::RawMilk => said(
            format!(
                "Raw milk may carry Listeria, Salmonella and germs that make toxins. Rules ask for {} days of ageing for raw-milk cheese, and a fresh cheese does not get them.",
                value(&RAW_MILK_AGEING)
            ),
            format!(
                "Use pasteurised milk, or pasteurise it in the vat: at least {} for {}, or {} for {}. {MUST_NOT_EAT}",
                quantity(&SLOW_PASTEURISING),
                quantity(&SLOW_PASTEURISING_TIME),
                quantity(&QUICK_PASTEURISING),
                quantity(&QUICK_PASTEURISING_TIME)
            ),
            "Raw milk: Listeria. Not for the pregnant, old, very young or ill.",
        ),
        MilkCaution::PasteurisedInVat { hold_c, hold_min } => said(
            format!(
                "Raw milk is pasteurised here in a kitchen pot, which is no licensed process. It must have had {hold_c:.1} °C or more in its coldest place for {} without a break; otherwise it is raw milk still. That undoes neither toxin that is in the milk already nor careless handling afterwards. Growth of germs is counted from the end of the hold, as if the hold had worked.",
                length(*hold_min)
            ),
            format!(
                "Keep the lid on, stir, read a checked thermometer in the coldest place and write down what it says. If it was cooler once, count the whole time anew. Local codes come first. {MUST_NOT_EAT}"
            ),
            "A kitchen heat step: unless the whole hold is kept, it is raw milk.",
        ),
        MilkCaution::UltraHeatedMilk => said(
            "Ultra-heated milk hardly sets with rennet, and the times and yields here do not hold for it.",
            "Use pasteurised milk that was not ultra-heated.",
            "Ultra-heated milk hardly sets: use another milk.",
        ),
        MilkCaution::HomogenisedMilk => said(
            "Homogenised milk gives a soft curd that breaks easily.",
            "Do not leave out the calcium, cut late and ladle gently. Milk that is not homogenised sets firmer.",
            "The curd is soft: cut late, ladle gently.",
        ),
        MilkCaution::CalciumAboveLimit { dose_percent } => {
            let most = quantity(&LEGAL_LIMIT);
            said(
                format!(
                    "{dose_percent:.3} % of calcium chloride is more than the {most} of the milk that several food laws allow, and it tastes bitter."
                ),
                format!("Use {most} or less, counted as anhydrous salt."),
                "More calcium chloride than several food laws allow.",
            )
        }
        MilkCaution::UnlikelyMilk { density_kg_l } => said(
            format!("Milk with this fat and protein would have {density_kg_l:.3} kg/L, which no milk has."),
            "Read the carton again: it gives fat and protein in g for each 100 g or 100 mL.",
            "No milk is this heavy or this light: read the carton again.",
        ),
    }
}

/// Returns a time of holding, in seconds where it is short.
fn length(minutes: f64) -> String {
    let seconds = 60.0 * minutes;
    if in_seconds(seconds) { format!("{seconds:.0} s") } else { format!("{minutes:.0} min") }
}
