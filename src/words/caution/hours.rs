//! Hours that add up over the stages, in words.

use super::germs::place;
use crate::caution::{COLD_DAYS, HoursCaution};
use crate::law::growth::{COOL_ABOVE, COOL_HOURS, SERVICE_HOURS, SERVICE_WARM};
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::{quantity, range_words, value};
use crate::words::said::{CautionWords, cold, measured, said};

pub(super) fn words(caution: &HoursCaution) -> CautionWords {
    match caution {
        HoursCaution::WarmInAll { hours, most_in, .. } => said(
            format!(
                "From vat to jar the cheeses spend {hours:.0} h above {}, most of it {}. Food-service rules allow food without acid {} h of such warmth, all stages added together.",
                quantity(&SERVICE_WARM),
                place(*most_in),
                range_words(&SERVICE_HOURS)
            ),
            format!("Sour the milk. Or let the cheeses be cooler {}, or shorten that stage.", place(*most_in)),
            format!("Too long above {} in all.", quantity(&SERVICE_WARM)),
        ),
        HoursCaution::CoolForDays { hours, most_in, .. } => said(
            format!(
                "From vat to jar the cheeses spend {hours:.0} h between {} and {}, most of it {}. Without acid, more than {} there is too long: germs grow slowly, and they do not stop.",
                value(&COOL_ABOVE),
                quantity(&SERVICE_WARM),
                place(*most_in),
                quantity(&COOL_HOURS)
            ),
            format!("Sour the milk. Or let the cheeses be colder {}, or shorten that stage.", place(*most_in)),
            format!("Too long between {} and {} in all.", value(&COOL_ABOVE), quantity(&SERVICE_WARM)),
        ),
        HoursCaution::KeptLong { days, soak_days } => kept_long(*days, *soak_days),
    }
}

/// Says whose number each number of days is: a plan of weeks beside a rule of days made cooks think that the soak may not end.
fn kept_long(days: f64, soak_days: f64) -> CautionWords {
    let rule = value(&COLD_DAYS);
    let soaked = if soak_days > 0.0 { format!(", {soak_days:.0} of them in the vinegar") } else { String::new() };
    let longer = if soak_days > COLD_DAYS.value {
        format!(" The rules’ {rule} days end before this plan’s soak does: sour the milk before, or plan a shorter soak.")
    } else {
        String::new()
    };
    said(
        format!(
            "This plan keeps a moist cheese that is not sour for {days:.0} days{soaked}. Food-service rules have it discarded after {rule} days in the cold, the day of making counted, because Listeria grows there.{longer}"
        ),
        format!(
            "Keep it at {}, always. When the {rule} days of the rules are over, discard it unless {}. {MUST_NOT_EAT}",
            cold(),
            measured()
        ),
        format!("Not sour: keep cold, discard after {rule} days, day of making included."),
    )
}
