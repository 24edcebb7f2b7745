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
        HoursCaution::KeptLong { days } => said(
            format!(
                "A moist cheese that is not sour is kept for {days:.0} days, including the soak. Food-service rules say to discard it after {} days in the cold, because Listeria grows there.",
                value(&COLD_DAYS)
            ),
            format!(
                "Keep it at {}, always. Discard it after {} days, unless {}. {MUST_NOT_EAT}",
                cold(),
                value(&COLD_DAYS),
                measured()
            ),
            format!("Not sour: keep it no longer than {} days, cold.", value(&COLD_DAYS)),
        ),
    }
}
