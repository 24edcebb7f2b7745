//! Cheese without acid, in words.

use crate::caution::{FRESH_PH, NoAcid};
use crate::law::growth::{COLD_ENOUGH, HOT_ENOUGH};
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::{quantity, value};
use crate::words::said::{CautionWords, said};

pub(super) fn words(no_acid: &NoAcid) -> CautionWords {
    let (cold, hot) = (value(&COLD_ENOUGH), quantity(&HOT_ENOUGH));
    let hours = no_acid
        .zone_h
        .map(|hours| format!(" In this plan the cheese spends {hours:.0} h between {cold} and {hot}, where germs grow."));
    said(
        format!(
            "Fresh cheese made without acid stays near pH {}, where dangerous germs grow. Neither salt nor cold stops Listeria in it.{}",
            value(&FRESH_PH),
            hours.unwrap_or_default()
        ),
        format!(
            "{MUST_NOT_EAT} Clean pasteurised milk and strict hygiene lower the risk and do not remove it. Your local food rules and licensed practice come first."
        ),
        "No acid: Listeria grows. Not for the pregnant, old, very young or ill.",
    )
}
