//! Cautions about keeping, in words.

use crate::caution::{KeepingCaution, OIL_DAYS};
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::value;
use crate::words::said::{CautionWords, cold, discard, may_grow, measured, said};

pub(super) fn words(caution: &KeepingCaution) -> CautionWords {
    let days = value(&OIL_DAYS);
    match caution {
        KeepingCaution::OilIsUntested { centre_ph, slow_ph } => said(
            format!(
                "There is no tested recipe for cheese under oil, and acid added at home does not preserve an oil mixture. The pH of {centre_ph:.2} at the centre ({slow_ph:.2} in a slow cheese) is only modelled. Oil keeps the air out: botulism from cheese kept in that way is documented, and its toxin may give no sign."
            ),
            format!(
                "Cover it with oil only after {}. Then keep it at {} and no longer than {days} days, and discard what is left.",
                measured(),
                cold()
            ),
            format!("Oil: botulism. Only after a measured pH; discard after {days} days."),
        ),
        KeepingCaution::OilBeforeAcid { centre_ph, slow_ph, slurry_ph, water_activity } => said(
            format!(
                "There is no air under oil, and the cheese is not sour, or a slow one is not: pH {centre_ph:.2} at the centre, {slow_ph:.2} in a slow cheese, {slurry_ph:.2} in a blended sample, water activity {water_activity:.2}. Botulism from cheese kept in that way is documented, and its toxin may give no sign."
            ),
            format!("Do not put it under oil. Leave it in vinegar, cold, until {}.", measured()),
            "Not sour: botulism. Do not put it under oil.",
        ),
        KeepingCaution::OilUnjudged => said(
            "There is no air under oil, and how sour the cheese gets could not be calculated. Botulism from cheese kept in oil is documented, and its toxin may give no sign.",
            format!("Do not put it under oil unless {}.", measured()),
            "Not known to be sour: botulism. Do not put it under oil.",
        ),
        KeepingCaution::LongInOil { days: planned } => said(
            format!(
                "{planned:.0} days in oil are too long. Guidance allows garlic and herbs {days} days in oil at {}; after that botulism is the danger.",
                cold()
            ),
            format!(
                "Put only a small part under oil, discard what is left of it after {days} days, and keep the rest in its vinegar."
            ),
            format!("Botulism: discard what has been in oil for {days} days."),
        ),
        KeepingCaution::NoVinegarToKeepIn => said(
            "The cheeses do not go into vinegar, so there is none to keep them in. They are counted as kept without it.",
            "Put them into vinegar, or choose that they are taken out.",
            "There is no vinegar to keep them in.",
        ),
        KeepingCaution::WarmKeeping { temperature_c, growers } => said(
            format!("The cheeses are kept at {temperature_c:.0} °C.{}", may_grow(growers)),
            format!("Keep them at {}, sour or not. {MUST_NOT_EAT}", cold()),
            format!("Too warm: keep at {}.", cold()),
        ),
        KeepingCaution::NeedsCold { centre_ph, slow_ph, water_activity, growers, .. } => said(
            format!(
                "By table B of the Food Code this food needs control of time and temperature (pH {centre_ph:.2} at the centre, {slow_ph:.2} in a slow cheese, water activity {water_activity:.2}, all modelled).{}",
                may_grow(growers)
            ),
            format!("Keep it at {}. That slows germs and does not stop Listeria. {MUST_NOT_EAT} {}", cold(), discard()),
            format!("Needs cold: {}. It does not stop Listeria.", cold()),
        ),
        KeepingCaution::ClassIsNoProof { centre_ph, slow_ph, water_activity, .. } => said(
            format!(
                "Table B of the Food Code asks for no control of time and temperature at these figures (pH {centre_ph:.2} at the centre, {slow_ph:.2} in a slow cheese, water activity {water_activity:.2}). All are modelled, and a class in a table is no proof."
            ),
            format!("Have pH and water activity measured, and keep the cheese at {} all the same.", cold()),
            "Its class in the Food Code is modelled: no proof.",
        ),
    }
}
