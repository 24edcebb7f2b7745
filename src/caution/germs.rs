//! Cautions about germs: where they could grow, one for each stage.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::design::{DryingPlace, SouredBy, Stage};
use crate::law::growth::{CARELESS_START, GERM_GREW, LISTERIA_GREW, TOXIN_DENSITY};
use crate::process::{GermLine, GermsOutcome};
use crate::source::SourceId;

/// What could grow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GermDanger {
    /// A germ could grow so far that it is worth a word.
    Grows,
    /// Staphylococci could come to the density from which their toxin was found.
    Toxin,
    /// The same, if lactic acid does not stop them, of which no published amount is known.
    ToxinIfLacticFails,
}

/// Germs could grow in a stage.
#[derive(Clone, Debug, PartialEq)]
pub struct GermCaution {
    /// In which stage.
    pub stage: Stage,
    /// What could come of it.
    pub danger: GermDanger,
    /// The worst.
    pub worst: GermLine,
    /// Its potential increase in this stage, log₁₀, which nine of ten draws do not exceed.
    pub log10: f64,
    /// The others that could grow there too.
    pub others: Vec<GermLine>,
    /// Whether anything sours the milk.
    pub soured: bool,
    /// The choice that makes the stage warm.
    caused_by: Option<&'static str>,
}

impl GermCaution {
    pub(super) const fn facts(&self) -> Facts {
        let (key, severity, source) = match self.danger {
            GermDanger::Grows => ("germs_could_grow", Severity::Caution, SourceId::EuMicrobiology),
            GermDanger::Toxin => ("toxin_could_form", Severity::Stop, SourceId::EuMicrobiology),
            GermDanger::ToxinIfLacticFails => ("toxin_if_lactic_fails", Severity::Caution, SourceId::StaphylococcusAcid),
        };
        Facts { key, severity, caused_by: self.caused_by, source, always: false }
    }
}

/// Returns the growth of staphylococci from careless hands to the density of toxin, log₁₀.
const fn toxin_log10() -> f64 {
    TOXIN_DENSITY.value - CARELESS_START.value
}

/// Returns the increase from which a germ is worth a word, log₁₀.
const fn least_log10(line: GermLine) -> f64 {
    if matches!(line, GermLine::Listeria) { LISTERIA_GREW.value } else { GERM_GREW.value }
}

pub(super) fn cautions(batch: &Batch) -> Vec<GermCaution> {
    let Some(germs) = &batch.germs else { return Vec::new() };
    germs.spans.iter().filter_map(|span| of_stage(batch, germs, span.stage, (span.begins_h, span.ends_h))).collect()
}

fn of_stage(batch: &Batch, germs: &GermsOutcome, stage: Stage, (begins_h, ends_h): (f64, f64)) -> Option<GermCaution> {
    let comes_to = |line: GermLine, at_h: f64| {
        germs.of(line).map_or(0.0, |course| {
            let upto = course.points.iter().take_while(|point| point.at_h <= at_h + 1e-9).last();
            upto.map_or(0.0, |point| course.cautious_log10(point))
        })
    };
    let crosses = |line| comes_to(line, begins_h) < toxin_log10() && comes_to(line, ends_h) >= toxin_log10();
    let grown = |line: GermLine| germs.of(line).map_or(0.0, |course| course.cautious_in_stage_log10(stage));
    let mut growing: Vec<GermLine> = GermLine::ALL.into_iter().filter(|line| grown(*line) > least_log10(*line)).collect();
    // The line without lactic acid is the same germ once more.
    if growing.contains(&GermLine::Staphylococcus) {
        growing.retain(|line| *line != GermLine::StaphylococcusWithoutLactic);
    }
    let most = growing.iter().copied().max_by(|one, other| grown(*one).total_cmp(&grown(*other)))?;
    let (danger, worst) = if crosses(GermLine::Staphylococcus) {
        (GermDanger::Toxin, GermLine::Staphylococcus)
    } else if crosses(GermLine::StaphylococcusWithoutLactic) && comes_to(GermLine::Staphylococcus, ends_h) < toxin_log10() {
        (GermDanger::ToxinIfLacticFails, GermLine::StaphylococcusWithoutLactic)
    } else {
        (GermDanger::Grows, most)
    };
    let soured = batch.design.milk.soured_by != SouredBy::Nothing;
    Some(GermCaution {
        stage,
        danger,
        worst,
        log10: grown(worst),
        others: growing.into_iter().filter(|line| line.germ() != worst.germ()).collect(),
        soured,
        caused_by: warm_choice(batch, stage, soured),
    })
}

/// Returns the choice that makes a stage warm.
const fn warm_choice(batch: &Batch, stage: Stage, soured: bool) -> Option<&'static str> {
    match stage {
        Stage::Vat => Some(if soured { "ripening_h" } else { "soured_by" }),
        Stage::Draining | Stage::Salting => Some("draining_temperature_c"),
        Stage::Drying => Some(match batch.design.drying.drying_place {
            DryingPlace::Cabinet => "cabinet_temperature_c",
            DryingPlace::OpenAir => "day_temperature_c",
        }),
        Stage::Pickling => Some("pickling_temperature_c"),
        Stage::Keeping => Some("keeping_temperature_c"),
        Stage::Milk => None,
    }
}
