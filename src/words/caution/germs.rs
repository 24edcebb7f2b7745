//! Germs that could grow in a stage, in words.

use crate::caution::{GermCaution, GermDanger};
use crate::design::Stage;
use crate::law::growth::{CARELESS_START, SOUR_BEFORE_DRYING_PH, STAPHYLOCOCCI_TEST};
use crate::process::GermLine;
use crate::words::model::MUST_NOT_EAT;
use crate::words::number::value;
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &GermCaution) -> CautionWords {
    let GermCaution { stage, danger, worst, log10, others, soured, .. } = caution;
    let there = place(*stage);
    let grows = format!("{} could multiply tenfold {log10:.1} times {there}, or more.", short_name(*worst));
    let (more, short) = match danger {
        GermDanger::Grows => (String::new(), format!("{} could grow {there}.", short_name(*worst))),
        GermDanger::Toxin => (
            format!(
                " From {} in a gram, as careless hands leave it, it could come to {} by then, where its toxin has been found. The toxin stays, whatever comes after: heat, vinegar and cold do not remove it.",
                tens(CARELESS_START.value),
                value(&STAPHYLOCOCCI_TEST)
            ),
            format!("Staphylococcus toxin could form {there}."),
        ),
        GermDanger::ToxinIfLacticFails => (
            format!(
                " Here lactic acid is taken not to slow it. With our own guess of how much slows it, the model comes from {} in a gram to less than {}; no published amount was found, so both are shown.",
                tens(CARELESS_START.value),
                value(&STAPHYLOCOCCI_TEST)
            ),
            format!("Staphylococcus, acid not counted, could grow {there}."),
        ),
    };
    let also = if others.is_empty() {
        String::new()
    } else {
        let names: Vec<&str> = others.iter().map(|line| short_name(*line)).collect();
        format!(" Also: {}.", names.join(", "))
    };
    let listeria = *worst == GermLine::Listeria || others.contains(&GermLine::Listeria);
    let who = if listeria { format!(" {MUST_NOT_EAT}") } else { String::new() };
    said(format!("{grows}{more}{also}"), format!("{}{who}", remedy(*stage, *soured)), short)
}

/// Returns where a stage takes place, within a sentence.
pub(super) const fn place(stage: Stage) -> &'static str {
    match stage {
        Stage::Milk | Stage::Vat => "in the vat",
        Stage::Draining | Stage::Salting => "in the moulds",
        Stage::Drying => "while drying",
        Stage::Pickling => "in the vinegar",
        Stage::Keeping => "in the jar",
    }
}

/// Returns the name of a germ where there is little room.
const fn short_name(line: GermLine) -> &'static str {
    match line {
        GermLine::Listeria => "Listeria",
        GermLine::Staphylococcus | GermLine::StaphylococcusWithoutLactic => "Staphylococcus",
        GermLine::Salmonella => "Salmonella",
        GermLine::Coli => "E. coli",
        GermLine::Cereus => "B. cereus",
        GermLine::ColdBotulinum => "Cold-type botulinum",
    }
}

/// Returns ten to a power, as a number.
fn tens(log10: f64) -> String {
    format!("{:.0}", 10.0_f64.powf(log10))
}

fn remedy(stage: Stage, soured: bool) -> String {
    let cooler = match stage {
        Stage::Milk | Stage::Vat => "Less time in the vat leaves less time to grow.",
        Stage::Draining | Stage::Salting => "Drain cooler, or for a shorter time.",
        Stage::Drying => "Dry cooler, or make thinner cheeses.",
        Stage::Pickling => "Keep the jar colder, use more or stronger vinegar, or thinner cheeses.",
        Stage::Keeping => "Keep it colder and for fewer days.",
    };
    // Said where souring begins, not at every stage again.
    if soured || stage > Stage::Draining {
        return cooler.to_owned();
    }
    format!(
        "Sour the milk with a culture or GDL until a pH meter shows {} or less before the cheeses come to warm air; an acid stirred in cannot sour it so far. {cooler}",
        value(&SOUR_BEFORE_DRYING_PH)
    )
}
