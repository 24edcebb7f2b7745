//! Cheese without acid, or with some, in words.

use crate::caution::{FRESH_PH, FreshCaution};
use crate::law::growth::{COLD_ENOUGH, HOT_ENOUGH, LISTERIA_STOPS_PH};
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::{quantity, value};
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &FreshCaution) -> CautionWords {
    match caution {
        FreshCaution::NoAcid { zone_h } => said(
            format!(
                "Fresh cheese made without acid stays near pH {}, where dangerous germs grow. Neither salt nor cold stops Listeria in it.{}",
                value(&FRESH_PH),
                hours(*zone_h)
            ),
            format!(
                "{MUST_NOT_EAT} Clean pasteurised milk, strict hygiene and souring the milk lower the risk and do not remove it. Your local food rules and licensed practice come first."
            ),
            "No acid: Listeria grows. Not for the pregnant, old, very young or ill.",
        ),
        FreshCaution::Soured { ph, zone_h } => said(
            format!("{}{}", soured(*ph), hours(*zone_h)),
            format!(
                "{MUST_NOT_EAT} Measure the pH when draining begins and when the cheeses leave the moulds: where the souring is late or fails, this is a cheese without acid. Your local food rules and licensed practice come first."
            ),
            "Acid is only foreseen. Not for the pregnant, old, very young or ill.",
        ),
    }
}

/// Returns what the foreseen pH means; a pH just above the limit is not rounded to the limit.
fn soured(ph: f64) -> String {
    let limit = value(&LISTERIA_STOPS_PH);
    if ph > LISTERIA_STOPS_PH.value {
        format!(
            "The model foresees pH {ph:.2} when the cheeses leave the moulds. Listeria may still grow there: rules for food on sale count on acid alone only at pH {limit} or less."
        )
    } else {
        format!(
            "The model foresees pH {ph:.2} when the cheeses leave the moulds. Rules for food on sale count on acid against Listeria at pH {limit} or less, but a model is no measurement, and germs that grew before stay, with their toxins."
        )
    }
}

/// Returns the hours in which germs grow, as a sentence with a space before it.
fn hours(zone_h: Option<f64>) -> String {
    let (cold, hot) = (value(&COLD_ENOUGH), quantity(&HOT_ENOUGH));
    zone_h
        .map(|hours| format!(" In this plan the cheese spends {hours:.0} h between {cold} and {hot}, where germs grow."))
        .unwrap_or_default()
}
