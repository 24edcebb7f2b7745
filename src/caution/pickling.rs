//! Cautions about souring in vinegar: of a batch, and of one described cheese.

use super::facts::{Facts, Severity};
use crate::batch::Batch;
use crate::design::{Design, VinegarBy};
use crate::law::acidity::{LEAST_ML_PER_G, LEAST_VINEGAR, USUAL_VINEGAR};
use crate::law::growth::{COLD_ENOUGH, TABLE_B_PH};
use crate::process::{LONGEST_SOAK_H, PickleRun, PicklingOutcome, VinegarBath};
use crate::source::SourceId;

crate::constants! {
    /// How long real food took.
    EGG_HOURS = { "Hours that eggs took to sour in vinegar over those of this model", 0.81, "1", (0.4, 1.8), PickledEggs, "four trials, recomputed with our own diffusivity: 120 h against 117, 216 against 207, 23.5 against 54, 220 against 241 at 2 °C; the summary of the last does not say which of its packings it was, and had it been one at 25 °C, it would be 220 against 122", Secondhand }
    /// When it is said that the vinegar takes the salt.
    SALT_TAKEN = { "Share of the salt from which it is said that the vinegar takes it", 33.0, "%", (20.0, 50.0), Ourselves, "a third less is tasted", Judged }
}

/// When a centre is sour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SourAfter {
    /// After so many hours.
    Hours(f64),
    /// Later than the hours that are calculated.
    Beyond(f64),
    /// Never with this vinegar.
    Never,
}

/// When the centre is sour: by the middle estimate, and between what it likely is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Souring {
    /// By the middle estimate.
    pub middle: SourAfter,
    /// In a cheese that sours fast.
    pub fast: SourAfter,
    /// In a cheese that sours slowly.
    pub slow: SourAfter,
}

/// A caution about souring in vinegar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PicklingCaution {
    /// Cheese and vinegar settle above the pH that is needed.
    NeverSour {
        /// Where they settle.
        ph: f64,
        /// The input that says how much vinegar there is.
        caused_by: &'static str,
    },
    /// They do in a cheese that takes up much acid.
    MayNeverSour {
        /// Where they settle.
        ph: f64,
        /// Where they settle then.
        strong_ph: f64,
        /// The input that says how much vinegar there is.
        caused_by: &'static str,
    },
    /// Weaker than vinegar may be.
    WeakVinegar {
        /// Its acid.
        acid_g_per_100ml: f64,
    },
    /// Too little acid.
    LittleVinegar {
        /// Vinegar for each gram.
        ml_per_g: f64,
        /// Usual vinegar with the same acid.
        counted_ml_per_g: f64,
        /// The input that says how much vinegar there is.
        caused_by: &'static str,
    },
    /// The soak ends before the centre is sour.
    CentreNotSour {
        /// When it ends.
        soak_h: f64,
        /// pH at the centre then.
        centre_ph: f64,
        /// pH of a blended sample then.
        slurry_ph: f64,
        /// When the centre is sour.
        souring: Souring,
    },
    /// It does so in a slow cheese.
    CentreMayNotBeSour {
        /// When the centre is sour.
        souring: Souring,
    },
    /// Warm before it is sour.
    WarmPickling {
        /// How warm.
        temperature_c: f64,
        /// When the centre is sour, if that was calculated.
        souring: Option<Souring>,
    },
    /// Cheeses stick out.
    NotSubmerged {
        /// Vinegar for each gram.
        ml_per_g: f64,
        /// What covers them.
        cover_ml_per_g: f64,
    },
    /// Cheeses touch, and sour as one thick body.
    CheesesTouch {
        /// How many.
        cheeses: u32,
    },
    /// The vinegar takes most of the salt.
    SaltLeaves {
        /// How much of it, %.
        taken_percent: f64,
        /// Salt in the vinegar that would leave the cheese as salty as it is.
        even_g_per_100ml: f64,
    },
    /// A modelled pH is no proof.
    MeasureThePh,
    /// What may grow in a jar.
    InTheJar,
}

impl PicklingCaution {
    pub(super) const fn facts(&self) -> Facts {
        use Severity::{Caution, Note, Stop};
        match self {
            Self::NeverSour { caused_by, .. } => Facts::caused("never_sour", Stop, caused_by, SourceId::FoodCode),
            Self::MayNeverSour { caused_by, .. } => Facts::caused("may_never_sour", Stop, caused_by, SourceId::Lucey1993),
            Self::WeakVinegar { .. } => Facts::caused("weak_vinegar", Stop, "acid_g_per_100ml", SourceId::VinegarGuide),
            Self::LittleVinegar { caused_by, .. } => Facts::caused("little_vinegar", Stop, caused_by, SourceId::Ourselves),
            Self::CentreNotSour { .. } => Facts::caused("centre_not_sour", Stop, "pickling_h", SourceId::FoodCode),
            Self::CentreMayNotBeSour { .. } => Facts::caused("centre_may_not_be_sour", Stop, "pickling_h", SourceId::PickledEggs),
            Self::WarmPickling { .. } => Facts::caused("warm_pickling", Stop, "pickling_temperature_c", SourceId::FoodCode),
            Self::NotSubmerged { .. } => Facts::caused("not_submerged", Stop, "vinegar_ml_per_g", SourceId::PickledEggs),
            Self::CheesesTouch { .. } => Facts::caused("cheeses_touch", Caution, "jar_lay", SourceId::Crank1975),
            Self::SaltLeaves { .. } => Facts::caused("salt_leaves", Note, "vinegar_salt_g_per_100ml", SourceId::MackieMeares1955),
            Self::MeasureThePh => Facts::always("measure_the_ph", Note, Some("pickled"), SourceId::Cfr21),
            Self::InTheJar => Facts::always("in_the_jar", Note, Some("pickled"), SourceId::PickledEggs),
        }
    }
}

/// What is known of the acid of any soak.
struct AcidOfSoak {
    ph: f64,
    strong_ph: f64,
    acid_g_per_100ml: f64,
    ml_per_g: f64,
    amount: &'static str,
}

pub(super) fn cautions(batch: &Batch) -> Vec<PicklingCaution> {
    let design = &batch.design;
    let Some(soured) = batch.pickling.done() else { return chosen_warm(design) };
    if !soured.pickled {
        return Vec::new();
    }
    let mut all = acid(&AcidOfSoak {
        ph: soured.equilibrium_ph,
        strong_ph: soured.likely_equilibrium_ph.1,
        acid_g_per_100ml: design.pickling.acid_g_per_100ml,
        ml_per_g: soured.vinegar_ml_per_g,
        amount: match design.pickling.vinegar_by {
            VinegarBy::PerGram => "vinegar_ml_per_g",
            VinegarBy::Cover => "vinegar_by",
        },
    });
    all.extend(soak(soured, design));
    all.extend([PicklingCaution::MeasureThePh, PicklingCaution::InTheJar]);
    all
}

/// Returns what is true of the choices alone, where a stage before the soak could not be calculated.
fn chosen_warm(design: &Design) -> Vec<PicklingCaution> {
    let temperature_c = design.pickling.pickling_temperature_c;
    let is_warm = design.pickling.pickled && temperature_c > COLD_ENOUGH.value;
    is_warm.then_some(PicklingCaution::WarmPickling { temperature_c, souring: None }).into_iter().collect()
}

/// Returns the cautions of one described cheese in its share of the vinegar.
pub(super) fn of_described(run: &PickleRun, bath: &VinegarBath) -> Vec<PicklingCaution> {
    let mut all = acid(&AcidOfSoak {
        ph: run.equilibrium_ph,
        strong_ph: run.strong_equilibrium_ph,
        acid_g_per_100ml: bath.acid_g_per_100ml,
        ml_per_g: run.vinegar_ml_per_g,
        amount: "vinegar_ml",
    });
    all.extend([PicklingCaution::MeasureThePh, PicklingCaution::InTheJar]);
    all
}

/// Returns the cautions about where cheese and vinegar settle, and how much acid there is.
fn acid(soak: &AcidOfSoak) -> Vec<PicklingCaution> {
    let &AcidOfSoak { ph, strong_ph, acid_g_per_100ml, ml_per_g, amount: caused_by } = soak;
    let mut all = Vec::new();
    // Written so that a pH that is no number counts as not sour.
    let (sours, sours_if_strong) = (ph < TABLE_B_PH.value, strong_ph < TABLE_B_PH.value);
    if !sours {
        all.push(PicklingCaution::NeverSour { ph, caused_by });
    } else if !sours_if_strong {
        all.push(PicklingCaution::MayNeverSour { ph, strong_ph, caused_by });
    }
    if acid_g_per_100ml < LEAST_VINEGAR.value {
        all.push(PicklingCaution::WeakVinegar { acid_g_per_100ml });
    }
    // Weaker vinegar counts by the acid that it brings.
    let counted_ml_per_g = ml_per_g * acid_g_per_100ml / USUAL_VINEGAR.value;
    if counted_ml_per_g < LEAST_ML_PER_G.value {
        all.push(PicklingCaution::LittleVinegar { ml_per_g, counted_ml_per_g, caused_by });
    }
    all
}

/// Returns when the centre is sour, with the likely range.
pub(super) fn souring(soured: &PicklingOutcome) -> Souring {
    let [_, sour] = soured.targets;
    let ([_, fast], [_, slow]) = (soured.targets_if_fast, soured.targets_if_slow);
    let after = |hours: Option<f64>, settles_at: f64| match hours {
        Some(hours) => SourAfter::Hours(hours),
        None if settles_at < sour.ph => SourAfter::Beyond(LONGEST_SOAK_H),
        None => SourAfter::Never,
    };
    let (least_ph, most_ph) = soured.likely_equilibrium_ph;
    Souring {
        middle: after(sour.centre_h, soured.equilibrium_ph),
        fast: after(fast.centre_h, least_ph),
        slow: after(slow.centre_h, most_ph),
    }
}

/// Returns whether the soak sours even a slow cheese to its centre.
pub(super) fn is_sour_if_slow(batch: &Batch) -> bool {
    batch.pickling.done().filter(|soured| soured.pickled).is_some_and(|soured| ends_sour_if_slow(soured, &batch.design))
}

fn ends_sour_if_slow(soured: &PicklingOutcome, design: &Design) -> bool {
    matches!(souring(soured).slow, SourAfter::Hours(hours) if hours < design.pickling.pickling_h)
}

/// Returns the cautions about the end of the soak, its warmth and its depth.
fn soak(soured: &PicklingOutcome, design: &Design) -> Vec<PicklingCaution> {
    let mut all = Vec::new();
    let souring = souring(soured);
    let soak_h = design.pickling.pickling_h;
    let is_sour = soured.end.centre_ph < TABLE_B_PH.value;
    if !is_sour {
        let (centre_ph, slurry_ph) = (soured.end.centre_ph, soured.end.slurry_ph);
        all.push(PicklingCaution::CentreNotSour { soak_h, centre_ph, slurry_ph, souring });
    } else if !ends_sour_if_slow(soured, design) {
        all.push(PicklingCaution::CentreMayNotBeSour { souring });
    }
    let temperature_c = design.pickling.pickling_temperature_c;
    if temperature_c > COLD_ENOUGH.value {
        all.push(PicklingCaution::WarmPickling { temperature_c, souring: Some(souring) });
    }
    if soured.pile > 1 {
        all.push(PicklingCaution::CheesesTouch { cheeses: soured.pile });
    }
    let taken_percent = 100.0 * (1.0 - soured.salt_left_share);
    if taken_percent > SALT_TAKEN.value && soured.even_salt_g_per_100ml > 0.0 {
        all.push(PicklingCaution::SaltLeaves { taken_percent, even_g_per_100ml: soured.even_salt_g_per_100ml });
    }
    let by_hand = design.pickling.vinegar_by == VinegarBy::PerGram;
    let (ml_per_g, cover_ml_per_g) = (soured.vinegar_ml_per_g, soured.cover_ml_per_g);
    if by_hand && ml_per_g < cover_ml_per_g {
        all.push(PicklingCaution::NotSubmerged { ml_per_g, cover_ml_per_g });
    }
    all
}
