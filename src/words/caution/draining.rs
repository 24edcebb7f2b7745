//! Cautions about draining and moulds, in words.

use crate::caution::DrainingCaution;
use crate::law::growth::{COLD_DRAINING, SERVICE_HOURS, SERVICE_WARM};
use crate::words::number::{quantity, range_words};
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &DrainingCaution) -> CautionWords {
    let cold = quantity(&COLD_DRAINING);
    match caution {
        DrainingCaution::WarmDraining { hours, temperature_c } => said(
            format!(
                "The cheeses drain for {hours:.0} h at {temperature_c:.0} °C. Food-service rules allow food without acid {} h above {}, and Staphylococcus makes its toxin above about {cold}.",
                range_words(&SERVICE_HOURS),
                quantity(&SERVICE_WARM)
            ),
            format!("Drain at {cold} or colder, which takes longer, and only until the whey has stopped dripping."),
            format!("Germs grow: drain at {cold} or colder."),
        ),
        DrainingCaution::DripGoesOn { stops_h, draining_h } => said(
            format!(
                "Whey still drips when the cheeses leave the moulds: they leave after {draining_h:.0} h, and the drip stops after about {stops_h:.0} h."
            ),
            "Turn more often, or leave the cheeses longer in the moulds. A wet cheese dries slowly and loses its shape.",
            "Whey still drips when the cheeses leave the moulds.",
        ),
        DrainingCaution::TopUpMoulds { ladled_ml, mould_ml, moulds } => said(
            format!("The curd does not fit into the moulds in one filling: {ladled_ml:.0} mL for each mould of {mould_ml:.0} mL."),
            format!("Top the moulds up as the curd sinks, or use {moulds} moulds of this size."),
            "Fill the moulds twice: the curd sinks.",
        ),
        DrainingCaution::ThinCheese { thickness_mm } => said(
            format!("The drained cheeses are only {thickness_mm:.1} mm thick and break when they are turned."),
            "Use fewer or narrower moulds, or more milk.",
            "The cheeses are thin and break when they are turned.",
        ),
    }
}
