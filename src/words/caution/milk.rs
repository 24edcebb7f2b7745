//! Cautions about milk and calcium, in words.

use crate::caution::{MilkCaution, RAW_MILK_AGEING};
use crate::law::calcium::LEGAL_LIMIT;
use crate::law::pasteurising::{
    QUICK_PASTEURISING, QUICK_PASTEURISING_TIME, RICH_HOTTER, SLOW_PASTEURISING, SLOW_PASTEURISING_TIME, in_seconds,
};
use crate::source::Constant;
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::{number_words, quantity, value};
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &MilkCaution) -> CautionWords {
    match caution {
        MilkCaution::RawMilk => said(
            format!(
                "Raw milk may carry Listeria, Salmonella and germs that make toxins. Rules ask for {} days of ageing for raw-milk cheese, and a fresh cheese does not get them.",
                value(&RAW_MILK_AGEING)
            ),
            format!(
                "Use pasteurised milk, or pasteurise the raw milk in the vat: at least {} for {}, or {} for {}; milk that is rich in fat or solids at {} or {}. {MUST_NOT_EAT}",
                quantity(&SLOW_PASTEURISING),
                quantity(&SLOW_PASTEURISING_TIME),
                quantity(&QUICK_PASTEURISING),
                quantity(&QUICK_PASTEURISING_TIME),
                rich(&SLOW_PASTEURISING),
                rich(&QUICK_PASTEURISING)
            ),
            "Raw milk: Listeria. Not for the pregnant, old, very young or ill.",
        ),
        MilkCaution::PasteurisedInVat { hold_c, hold_min, of_a_rule } => said(
            format!(
                "Raw milk is pasteurised here in a kitchen pot, which is no licensed process. It must have had {hold_c:.1} °C or more in its coldest place for {} without a break; otherwise it is raw milk still.{} Heating undoes neither toxin that is in the milk already nor careless handling afterwards. Growth of germs is counted from the end of the hold, as if the hold had worked.",
                length(*hold_min),
                if *of_a_rule { "" } else { " No rule has this time: it is our own line between two rules." }
            ),
            format!(
                "Stir, read a checked thermometer in the coldest place and write down what it says; lid on in between. Spoon and thermometer stay in the hot milk. If it was cooler once, count the whole time anew. Local food rules and licensed practice come first. {MUST_NOT_EAT}"
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

/// Returns the temperature that a rule has for rich milk: in full, since a difference would be told wrongly in other units.
fn rich(usual: &Constant) -> String {
    format!("{} {}", number_words(usual.value + RICH_HOTTER.value), usual.unit)
}

/// Returns a time of holding, in seconds where it is short.
fn length(minutes: f64) -> String {
    let seconds = 60.0 * minutes;
    if in_seconds(seconds) { format!("{seconds:.0} s") } else { format!("{minutes:.0} min") }
}
