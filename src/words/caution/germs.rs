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
    let grows = format!("{} could grow by up to {log10:.1} tenfold steps {there}.", worst.germ().name());
    let (more, short) = match danger {
        GermDanger::Grows => (String::new(), format!("{} could grow {there}.", short_name(*worst))),
        GermDanger::Toxin => (
            format!(
                " From {} in a gram, as careless hands leave them, they could come to {} in a gram by then, where their toxin has been found. It stays, whatever comes after: heat, vinegar and cold do not remove it.",
                tens(CARELESS_START.value),
                value(&STAPHYLOCOCCI_TEST)
            ),
            format!("Staphylococcus could leave its toxin {there}."),
        ),
        GermDanger::ToxinIfLacticFails => (
            format!(
                " That holds if lactic acid does not stop it. With our own judgement of how much does, it stays below {} in a gram; no published amount was found, so both are shown.",
                value(&STAPHYLOCOCCI_TEST)
            ),
            format!("Staphylococcus, if lactic acid fails, could grow {there}."),
        ),
    };
    let also = if others.is_empty() {
        String::new()
    } else {
        let names: Vec<&str> = others.iter().map(|line| line.germ().name()).collect();
        format!(" Also: {}.", names.join("; "))
    };
    let listeria = *worst == GermLine::Listeria || others.contains(&GermLine::Listeria);
    let who = if listeria { format!(" {MUST_NOT_EAT}") } else { String::new() };
    said(format!("{grows}{more}{also}"), format!("{}{who}", remedy(*stage, *soured)), short)
}

/// Returns where a stage takes place, within a sentence.
const fn place(stage: Stage) -> &'static str {
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
    let sour = format!(
        "Sour the milk with a culture or an acid, so that a pH meter shows {} or less before the cheeses come to warm air.",
        value(&SOUR_BEFORE_DRYING_PH)
    );
    let colder = match stage {
        Stage::Milk | Stage::Vat => "More culture or a shorter time in the vat shortens the hours before the acid is there.",
        Stage::Draining | Stage::Salting => "More culture sours sooner; once it is sour, drain and turn colder.",
        Stage::Drying => "Let it sour further before it is dried, dry it cooler, or cut it thinner.",
        Stage::Pickling => "Keep the jar colder, use more or stronger vinegar, or thinner cheeses.",
        Stage::Keeping => "Keep it colder and for fewer days.",
    };
    if soured { colder.to_owned() } else { format!("{sour} {colder}") }
}
