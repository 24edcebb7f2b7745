//! Cautions about souring in vinegar, in words.

use crate::caution::{EGG_HOURS, PicklingCaution, SourAfter, Souring};
use crate::law::acidity::{LEAST_ML_PER_G, LEAST_VINEGAR, USUAL_VINEGAR};
use crate::law::growth::{ACIDIFIED_PH, TABLE_B_PH};
use crate::words::number::{number_words, quantity, value};
use crate::words::said::{CautionWords, cold, measured, said};

/// Hours from which an estimate is given in days.
const DAYS_FROM_H: f64 = 47.5;

pub(super) fn words(caution: &PicklingCaution) -> CautionWords {
    let sour = value(&TABLE_B_PH);
    match caution {
        PicklingCaution::NeverSour { ph, .. } => said(
            format!(
                "Cheese and vinegar settle at pH {ph:.2}, so the cheese never comes below pH {sour}. Table B of the Food Code asks for less than {sour} in food this moist."
            ),
            "Use more vinegar for each gram, or stronger vinegar. Do not rely on the acid of this vinegar.",
            "This vinegar never sours the centre: use more, or stronger.",
        ),
        PicklingCaution::MayNeverSour { ph, strong_ph, .. } => said(
            format!(
                "Cheese and vinegar settle at pH {ph:.2}. If the cheese takes up more acid than usual, they end at pH {strong_ph:.2}, and it never comes below pH {sour}."
            ),
            "Use more vinegar for each gram, or stronger vinegar, and measure.",
            "This vinegar may never sour the centre: measure.",
        ),
        PicklingCaution::WeakVinegar { acid_g_per_100ml } => said(
            format!(
                "{acid_g_per_100ml:.1} g of acid in 100 mL is weaker than anything that may be sold as vinegar ({}).",
                quantity(&LEAST_VINEGAR)
            ),
            format!("Use vinegar whose label says {} or more, and do not dilute it.", quantity(&USUAL_VINEGAR)),
            format!("Weaker than vinegar may be: use {} or more.", quantity(&USUAL_VINEGAR)),
        ),
        PicklingCaution::LittleVinegar { ml_per_g, counted_ml_per_g, .. } => little(*ml_per_g, *counted_ml_per_g),
        PicklingCaution::CentreNotSour { soak_h, centre_ph, slurry_ph, souring } => said(
            format!(
                "After {} in vinegar the centre is still at pH {centre_ph:.2} and a blended sample at pH {slurry_ph:.2}; this food needs less than {sour} throughout. The centre is below pH {sour}: {}.",
                about(*soak_h),
                when(souring)
            ),
            format!("Soak longer, at {}, until {}. Thinner cheeses and more vinegar are quicker.", cold(), measured()),
            "The centre is not sour at the end: soak longer, measure.",
        ),
        PicklingCaution::CentreMayNotBeSour { souring } => said(
            format!(
                "By the best estimate the centre is below pH {sour} when the soak ends, but a slow cheese takes longer ({}). Of four published trials with eggs this model meets three and is late in one; if one of the three was in a warm room, which is not said, its eggs took {} times the hours of this model.",
                when(souring),
                number_words(EGG_HOURS.range.1)
            ),
            format!("Soak longer, until {}. Do not go by the hours.", measured()),
            "The centre may not be sour yet: go by a pH meter.",
        ),
        PicklingCaution::WarmPickling { temperature_c, souring } => said(
            format!("The jar is at {temperature_c:.0} °C while the centre has no acid yet.{}", sour_when(sour, souring.as_ref())),
            format!(
                "Keep it at {} from the start of the soak until {}, and after that too. The acid moves more slowly in the cold, and germs grow much more slowly.",
                cold(),
                measured()
            ),
            format!("Too warm before it is sour: keep it at {}.", cold()),
        ),
        PicklingCaution::CheesesTouch { cheeses } => said(
            format!(
                "Up to {cheeses} cheeses are stacked with no vinegar between them. They sour like one thick cheese, and the middle of the pile is sour last."
            ),
            "Choose mesh between them, or on edge with gaps: then each cheese sours on its own.",
            "Stacked cheeses sour like one thick cheese: choose mesh or gaps.",
        ),
        PicklingCaution::SaltLeaves { taken_percent, even_g_per_100ml } => said(
            format!(
                "The vinegar takes about {taken_percent:.0} % of the salt out of the cheeses. That changes the taste, not how sour they get."
            ),
            format!(
                "{even_g_per_100ml:.1} g of salt in each 100 mL of vinegar keeps them about as salty as when they go in. Or salt them when you serve them."
            ),
            format!("The vinegar takes {taken_percent:.0} % of the salt: salt it, or serve with salt."),
        ),
        PicklingCaution::NotSubmerged { ml_per_g, cover_ml_per_g } => said(
            format!(
                "{ml_per_g:.1} mL of vinegar for each gram does not cover the cheeses in this jar, which needs {cover_ml_per_g:.1} mL for each gram. What sticks out does not sour."
            ),
            "Use a narrower jar or more vinegar, and keep every cheese submerged.",
            "Cheeses stick out and do not sour: cover them with vinegar.",
        ),
        PicklingCaution::MeasureThePh => measure_the_ph(),
        PicklingCaution::InTheJar => in_the_jar(),
    }
}

/// Returns that a modelled pH is no proof.
fn measure_the_ph() -> CautionWords {
    let sour = value(&TABLE_B_PH);
    said(
        format!(
            "A modelled pH is no proof, and there is no tested process for this soak; the real hours may be longer. Moist food that is not heated in its package needs less than pH {sour} throughout: {} is not enough.",
            value(&ACIDIFIED_PH)
        ),
        "Measure with a pH meter at the centre of a cheese and in a blended sample before you rely on the acid. Local food rules and licensed practice come first.",
        "A modelled pH is no proof: measure it.",
    )
}

/// Returns what to watch for in the jar.
fn in_the_jar() -> CautionWords {
    said(
        "Sour liquid around a centre that is not sour has made people ill. Gas, swelling or an odd smell mean that something grows, but toxin may give no sign.",
        format!(
            "Keep the cheeses submerged and at {}, before and after they are sour. Discard, without tasting, what swells, fizzes or smells. Never put a cheese under oil before {}: oil keeps the air out, and botulism from cheese kept in that way is documented.",
            cold(),
            measured()
        ),
        "Discard untasted what swells, fizzes or smells.",
    )
}

fn little(ml_per_g: f64, counted_ml_per_g: f64) -> CautionWords {
    let (usual, least) = (quantity(&USUAL_VINEGAR), quantity(&LEAST_ML_PER_G));
    let (_, plenty) = LEAST_ML_PER_G.range;
    let plenty = number_words(plenty);
    said(
        format!(
            "{ml_per_g:.1} mL of this vinegar for each gram of cheese holds as much acid as {counted_ml_per_g:.1} mL of vinegar with {usual} of acid; below {least} of that vinegar a cheese may never sour."
        ),
        format!(
            "Use {plenty} mL or more of vinegar of {usual} for each gram of dried cheese, and more of a weaker one. What just covers the cheeses is often too little."
        ),
        format!("Too little acid: {plenty} mL or more of {usual} for each gram."),
    )
}

/// Returns hours as an estimate that may be off by half: whole hours, and whole days from two on.
fn about(hours: f64) -> String {
    if hours < DAYS_FROM_H { format!("{hours:.0} h") } else { format!("{:.0} days", hours / 24.0) }
}

/// Returns when the centre is sour, as a sentence with a space before it; nothing where that was not calculated.
fn sour_when(sour: impl std::fmt::Display, souring: Option<&Souring>) -> String {
    souring.map(|souring| format!(" The centre is below pH {sour}: {}.", when(souring))).unwrap_or_default()
}

/// Returns when the centre is sour, with the likely range.
fn when(souring: &Souring) -> String {
    let after = |after: SourAfter| match after {
        SourAfter::Hours(hours) => format!("after {}", about(hours)),
        SourAfter::Beyond(hours) => format!("not within {hours:.0} h"),
        SourAfter::Never => "never".to_owned(),
    };
    let Souring { middle, fast, slow } = souring;
    format!("best estimate {}, fast cheese {}, slow cheese {}", after(*middle), after(*fast), after(*slow))
}
