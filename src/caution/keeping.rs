//! Cautions about what the cheeses are kept in, how warm and how long.

use super::caution::{Caution, Severity};
use crate::batch::Batch;
use crate::design::{KeepingDesign, KeptIn};
use crate::law::growth::{COLD_ENOUGH, Control, TABLE_B_PH};
use crate::process::KeepingOutcome;
use crate::source::SourceId;

crate::constants! {
    /// Days in oil.
    OIL_DAYS = { "Days that garlic or herbs may stand in oil at 4 °C or colder", 4.0, "d", (2.0, 4.0), OilGuidance, "home food preservation pages, after Nummer 2011", Published }
}

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let design = &batch.design.keeping;
    let Some(kept) = batch.keeping.done() else { return };
    let pickled = batch.design.pickling.pickled;
    if design.kept_in == KeptIn::Oil {
        oil(kept, design, all);
    }
    if design.kept_in == KeptIn::Vinegar && !pickled {
        all.push(Caution::new(
            "no_vinegar_to_keep_in",
            Severity::Caution,
            Some("kept_in"),
            SourceId::Ourselves,
            "The cheeses were not soured, so there is no vinegar to keep them in; they are counted as kept without acid.",
            "Sour them in vinegar, or say that they are taken out.",
        ));
    }
    warmth(kept, design, all);
    class(kept, pickled, all);
}

/// Cautions about oil, which keeps the air out.
fn oil(kept: &KeepingOutcome, design: &KeepingDesign, all: &mut Vec<Caution>) {
    let wanted = TABLE_B_PH.value;
    let is_sour = kept.centre_ph < wanted;
    if is_sour {
        all.push(Caution::new(
            "oil_is_untested",
            Severity::Stop,
            Some("kept_in"),
            SourceId::OilGuidance,
            format!("Cheese under oil has no tested recipe, and acid added at home does not make an oil mixture keep: the pH of {:.2} at the centre is only modelled.", kept.centre_ph),
            format!("Cover it with oil only after a meter has shown less than pH {wanted} at the centre and in a blended cheese; then keep it at 4 °C or colder and eat it within days."),
        ));
    } else {
        all.push(Caution::new(
            "oil_before_acid",
            Severity::Stop,
            Some("kept_in"),
            SourceId::BotulismReports,
            format!(
                "Under oil there is no air, and the cheese is not sour: pH {:.2} at the centre, {:.2} blended, water activity {:.2}. Botulism from cheese kept so is documented, and its toxin may give no sign.",
                kept.centre_ph, kept.slurry_ph, kept.water_activity
            ),
            format!("Do not put it under oil. Leave it in its vinegar, cold, until a meter shows less than pH {wanted} at the centre and in a blended cheese."),
        ));
    }
    if design.keeping_days > OIL_DAYS.value {
        all.push(Caution::new(
            "long_in_oil",
            Severity::Stop,
            Some("keeping_days"),
            SourceId::OilGuidance,
            format!(
                "{:.0} days in oil are long: guidance allows garlic and herbs in oil {:.0} days at 4 °C or colder.",
                design.keeping_days, OIL_DAYS.value
            ),
            "Cover with oil only what is eaten within days, and keep the rest in its vinegar.",
        ));
    }
}

/// Returns the germs that may grow where the cheese is kept, as a sentence to add; nothing if none of those listed may.
fn may_grow(kept: &KeepingOutcome) -> String {
    if kept.growers.is_empty() {
        return String::new();
    }
    format!(" Where it is kept no published minimum holds back {}.", kept.growers.join(", "))
}

/// The caution about keeping that is not cold.
fn warmth(kept: &KeepingOutcome, design: &KeepingDesign, all: &mut Vec<Caution>) {
    let temperature_c = design.keeping_temperature_c;
    if temperature_c > COLD_ENOUGH.value {
        let germs = may_grow(kept);
        all.push(Caution::new(
            "warm_keeping",
            Severity::Stop,
            Some("keeping_temperature_c"),
            SourceId::BadBugBook,
            format!("The cheeses are kept at {temperature_c:.0} °C.{germs}"),
            "Keep them at 4 °C or colder, sour or not.",
        ));
    }
}

/// What table B says, and that it proves nothing.
fn class(kept: &KeepingOutcome, pickled: bool, all: &mut Vec<Caution>) {
    let (ph, activity) = (kept.centre_ph, kept.water_activity);
    let cause = if pickled { "pickling_h" } else { "pickled" };
    match kept.table_b {
        Control::AssessmentRequired => {
            let germs = may_grow(kept);
            all.push(Caution::new(
                "needs_cold",
                Severity::Caution,
                Some(cause),
                SourceId::FoodCode,
                format!("By table B of the Food Code this food needs control of time and temperature (centre pH {ph:.2}, water activity {activity:.2}, both modelled).{germs}"),
                "Keep it at 4 °C or colder, which slows them and does not stop Listeria, and eat it within days.",
            ));
        }
        Control::NotRequired => all.push(Caution::new(
            "class_is_no_proof",
            Severity::Note,
            Some(cause),
            SourceId::FoodCode,
            format!("Table B of the Food Code asks for no control of time and temperature at these figures (centre pH {ph:.2}, water activity {activity:.2}), but both are modelled and a class of a table is no proof."),
            "Have pH and water activity measured, and keep the cheese at 4 °C or colder all the same.",
        )),
    }
}
