//! Cautions about souring in vinegar.

use super::caution::{Caution, Severity};
use crate::batch::Batch;
use crate::design::{Design, VinegarBy};
use crate::law::acidity::{LEAST_ML_PER_G, LEAST_VINEGAR, USUAL_VINEGAR};
use crate::law::growth::{COLD_ENOUGH, TABLE_B_PH};
use crate::process::{LONGEST_SOAK_H, PicklingOutcome};
use crate::source::SourceId;

pub(super) fn cautions(batch: &Batch, all: &mut Vec<Caution>) {
    let design = &batch.design;
    let Some(soured) = batch.pickling.done().filter(|soured| soured.pickled) else { return };
    rest(soured, design, all);
    strength(soured, design, all);
    soak(soured, design, all);
    cover(soured, design, all);
    always(all);
}

/// Returns the input that says how much vinegar there is.
const fn amount(design: &Design) -> &'static str {
    match design.pickling.vinegar_by {
        VinegarBy::PerGram => "vinegar_ml_per_g",
        VinegarBy::Cover => "vinegar_by",
    }
}

/// Cautions about where cheese and vinegar come to rest.
fn rest(soured: &PicklingOutcome, design: &Design, all: &mut Vec<Caution>) {
    let (rest_ph, (_, strong_ph)) = (soured.equilibrium_ph, soured.likely_equilibrium_ph);
    let wanted = TABLE_B_PH.value;
    let sours = rest_ph < wanted;
    let sours_if_strong = strong_ph < wanted;
    if !sours {
        all.push(Caution::new(
            "never_sour",
            Severity::Stop,
            Some(amount(design)),
            SourceId::FoodCode,
            format!("This vinegar never brings the cheese below pH {wanted}: they come to rest at pH {rest_ph:.2}, however long it lies. Table B of the Food Code wants less than {wanted} in food as moist as this."),
            "Take more vinegar for each gram, or stronger vinegar; do not rely on the acid of this one.",
        ));
    } else if !sours_if_strong {
        all.push(Caution::new(
            "may_never_sour",
            Severity::Caution,
            Some(amount(design)),
            SourceId::Lucey1993,
            format!("Cheese and vinegar come to rest at pH {rest_ph:.2}, but at pH {strong_ph:.2} if the cheese holds as much acid as is likely: it then never comes below {wanted}."),
            "Take more vinegar for each gram, or stronger vinegar, and measure.",
        ));
    }
}

/// Cautions about how much acid there is.
fn strength(soured: &PicklingOutcome, design: &Design, all: &mut Vec<Caution>) {
    let acid = design.pickling.acid_g_per_100ml;
    let least = LEAST_VINEGAR.value;
    if acid < least {
        all.push(Caution::new(
            "weak_vinegar",
            Severity::Stop,
            Some("acid_g_per_100ml"),
            SourceId::VinegarGuide,
            format!("{acid:.1} g of acid in 100 mL is weaker than anything that may be sold as vinegar ({least:.0} g/100 mL)."),
            "Use vinegar of 5 g/100 mL or more as its label says, and do not dilute it.",
        ));
    }
    // Weaker vinegar counts by the acid that it brings.
    let counted_ml_per_g = soured.vinegar_ml_per_g * acid / USUAL_VINEGAR.value;
    if counted_ml_per_g < LEAST_ML_PER_G.value {
        all.push(Caution::new(
            "little_vinegar",
            Severity::Stop,
            Some(amount(design)),
            SourceId::Ourselves,
            format!(
                "{:.1} mL of this vinegar for each gram of cheese brings the acid of {counted_ml_per_g:.1} mL of vinegar of 5 g/100 mL; below {:.0} mL a cheese may never sour.",
                soured.vinegar_ml_per_g, LEAST_ML_PER_G.value
            ),
            "Take 3 mL or more of vinegar of 5 g/100 mL for each gram of dried cheese, of a weaker one more; what just covers the cheeses is often too little.",
        ));
    }
}

/// Returns hours as an estimate that may be off by half: whole hours, and whole days from two on.
fn about(hours: f64) -> String {
    if hours < 47.5 { format!("{hours:.0} h") } else { format!("{:.0} days", hours / 24.0) }
}

/// Returns when the centre is sour, in words, with the likely range.
fn when(soured: &PicklingOutcome) -> String {
    let [_, sour] = soured.targets;
    let ([_, fast], [_, slow]) = (soured.targets_if_fast, soured.targets_if_slow);
    let never = |rest_ph: f64| {
        if rest_ph < sour.ph { format!("not within {LONGEST_SOAK_H:.0} h") } else { "never".to_owned() }
    };
    let words = |hours: Option<f64>, rest_ph: f64| hours.map_or_else(|| never(rest_ph), about);
    let (least_rest, most_rest) = soured.likely_equilibrium_ph;
    format!(
        "{}; likely {} to {}",
        words(sour.centre_h, soured.equilibrium_ph),
        words(fast.centre_h, least_rest),
        words(slow.centre_h, most_rest)
    )
}

/// Cautions about the end of the soak and its warmth.
fn soak(soured: &PicklingOutcome, design: &Design, all: &mut Vec<Caution>) {
    let end = &soured.end;
    let wanted = TABLE_B_PH.value;
    let [_, sour_if_slow] = soured.targets_if_slow;
    let soak_h = design.pickling.pickling_h;
    let is_sour = end.centre_ph < wanted;
    let is_sour_if_slow = sour_if_slow.centre_h.is_some_and(|hours| hours < soak_h);
    if !is_sour {
        all.push(Caution::new(
            "centre_not_sour",
            Severity::Stop,
            Some("pickling_h"),
            SourceId::FoodCode,
            format!(
                "After {} in vinegar the centre is still at pH {:.2} and a blended cheese at {:.2}; this food wants less than {wanted} throughout (below {wanted} at the centre: {}).",
                about(soak_h), end.centre_ph, end.slurry_ph, when(soured)
            ),
            "Soak longer, at 4 °C or colder, until a pH meter says so at the centre of a cheese and in a blended one; thinner cheeses and more vinegar are quicker.",
        ));
    } else if !is_sour_if_slow {
        all.push(Caution::new(
            "centre_may_not_be_sour",
            Severity::Caution,
            Some("pickling_h"),
            SourceId::PickledEggs,
            format!(
                "By the middle estimate the centre is below pH {wanted} when the soak ends, but in a slow cheese it is not ({}); eggs in vinegar took 2 to 4 times as long as such a model says.",
                when(soured)
            ),
            "Soak longer, and go by a pH meter at the centre and on a blended cheese, not by the hours.",
        ));
    }
    let temperature_c = design.pickling.pickling_temperature_c;
    if temperature_c > COLD_ENOUGH.value {
        all.push(Caution::new(
            "warm_pickling",
            Severity::Stop,
            Some("pickling_temperature_c"),
            SourceId::FoodCode,
            format!("The jar stands at {temperature_c:.0} °C while the centre has no acid yet (below pH {wanted}: {}).", when(soured)),
            "Keep it at 4 °C or colder from the start of the soak until the measured pH is below 4.2, and after; the acid moves slower there, and what could grow much slower.",
        ));
    }
}

/// The caution about cheeses that stick out of their vinegar.
fn cover(soured: &PicklingOutcome, design: &Design, all: &mut Vec<Caution>) {
    let by_hand = design.pickling.vinegar_by == VinegarBy::PerGram;
    if by_hand && soured.vinegar_ml_per_g < soured.cover_ml_per_g {
        all.push(Caution::new(
            "not_submerged",
            Severity::Stop,
            Some("vinegar_ml_per_g"),
            SourceId::PickledEggs,
            format!(
                "{:.1} mL of vinegar for each gram does not cover the cheeses in this jar, which takes {:.1} mL for each gram; what sticks out does not sour.",
                soured.vinegar_ml_per_g, soured.cover_ml_per_g
            ),
            "Take a narrower jar or more vinegar, and keep every cheese under the surface.",
        ));
    }
}

/// What is always true of a soak, in few notes.
fn always(all: &mut Vec<Caution>) {
    all.push(Caution::new(
        "measure_the_ph",
        Severity::Note,
        Some("pickled"),
        SourceId::Cfr21,
        "A modelled pH is no proof, and no tested process stands behind this soak; its hours are likely too short.",
        "Before you rely on the acid, measure with a pH meter at the centre of a cheese and on a blended one; local food codes and licensed practice come first.",
    ));
    all.push(Caution::new(
        "in_the_jar",
        Severity::Note,
        Some("pickled"),
        SourceId::PickledEggs,
        "Sour liquid around an unsour centre has made people ill; gas, swelling or an odd smell mean that something grows, but toxin may give no sign.",
        "Keep the cheeses submerged and at 4 °C or colder, before and after they are sour, and throw away untasted what swells, fizzes or smells.",
    ));
}
