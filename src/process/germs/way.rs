//! The whole way of a batch, stage by stage, as germs go through it.

use super::airless::AirlessHours;
use super::drying::{InAir, through_drying};
use super::jar::{InJar, Spoilage, through_jar};
use super::outcome::{GermsOutcome, StageSpan};
use super::places::Places;
use super::uniform::{through_moulds, through_vat};
use super::water::MILK_WATER_ACTIVITY;
use crate::design::{KeepingDesign, PicklingDesign, Stage};
use crate::law::souring::LACTIC_MOLAR_MASS;
use crate::process::{DrainingOutcome, DryingOutcome, Given, PicklingOutcome, SaltingOutcome, VatOutcome};

/// The stages that a batch came through, and the choices about the last two.
#[derive(Clone, Copy, Debug)]
pub struct GermsWay<'a> {
    /// Warming and setting.
    pub vat: &'a VatOutcome,
    /// Draining, if the batch came so far.
    pub drained: Option<&'a DrainingOutcome>,
    /// Salting, likewise.
    pub salted: Option<&'a SaltingOutcome>,
    /// Drying, likewise.
    pub dried: Option<&'a DryingOutcome>,
    /// The vinegar, likewise.
    pub pickled: Option<&'a PicklingOutcome>,
    /// The choices about the vinegar.
    pub pickling: &'a PicklingDesign,
    /// The choices about the jar.
    pub keeping: &'a KeepingDesign,
}

/// Returns how far germs could grow on the whole way, as far as the batch came.
///
/// Growth dose M = ∫ μ(T, pH, a_w, acids) dt at every place of the cheese along what it goes through, free of lag, from the cold milk on, or from the
/// end of its hold where raw milk is pasteurised in the vat; beside a culture (1 − S/S_most) times as fast. Nothing dies. What is left out: germs that come later, how many there are, toxin that is there already.
///
/// # Source
/// [`crate::law::growth::GrowthLaw`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, process::GermLine};
/// let batch = batch(&Design::default())?;
/// let listeria = batch.germs.as_ref().and_then(|germs| germs.of(GermLine::Listeria)).unwrap();
/// // Unsoured cheese that dries in the warmth.
/// assert!(listeria.increase_log10() > 3.0 && listeria.increase_with_lag_log10() < listeria.dose());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn germs(way: &GermsWay<'_>) -> GermsOutcome {
    germs_given(way, &Given::default())
}

/// Returns the same as [`germs()`] under other parameters.
#[must_use]
pub fn germs_given(way: &GermsWay<'_>, given: &Given) -> GermsOutcome {
    let mut places = Places::start(&given.parameters);
    let (mut airless, mut spans, mut spoilage) = (AirlessHours::default(), Vec::new(), Spoilage::default());
    let mut dried_mould_mm = 0.0;
    let mut span = |stage: Stage, begins_h: f64, ends_h: f64| spans.push(StageSpan { stage, begins_h, ends_h });
    let began_h = through_vat(&mut places, way.vat);
    span(Stage::Vat, began_h, places.at_h());
    let mut section = None;
    if let Some(drained) = way.drained {
        let began_h = places.at_h();
        through_moulds(&mut places, drained, &mut airless);
        span(Stage::Draining, began_h, places.at_h());
        if let (Some(salted), Some(dried)) = (way.salted, way.dried) {
            let (began_h, cheese) = (places.at_h(), &salted.cheese);
            let air = InAir { dried, cheese, unmoulded_h: salted.unmoulded_h, solids_hold: given.parameters.solids_hold };
            dried_mould_mm = through_drying(&mut places, &air, &mut airless);
            span(Stage::Drying, began_h, places.at_h());
            section = Some(&dried.moisture);
            if let Some(pickled) = way.pickled {
                let began_h = places.at_h();
                let (pickling, keeping) = (way.pickling, way.keeping);
                let jar = InJar {
                    pickled,
                    pickling,
                    keeping,
                    lactic_mm: lactic_left_mm(pickled),
                    water_activity: dried.end.centre_water_activity.max(pickled.water_activity).min(MILK_WATER_ACTIVITY.value),
                    before: &dried.moisture,
                };
                spoilage = through_jar(&mut places, &jar, &mut airless);
                section = pickled.field.as_ref().or(section);
                let soaked_h = if pickled.pickled { began_h + pickling.pickling_h } else { began_h };
                if pickled.pickled {
                    span(Stage::Pickling, began_h, soaked_h);
                }
                span(Stage::Keeping, soaked_h, places.at_h());
            }
        }
    }
    let (courses, met) = places.into_courses(section);
    GermsOutcome {
        courses,
        met: std::sync::Arc::new(met),
        spans,
        airless,
        yeast_log10: spoilage.yeast_log10,
        mould_mm: dried_mould_mm + spoilage.mould_mm,
    }
}

/// Returns the lactic acid in the water of a cheese after the soak, mmol/kg: it is taken to go out as the salt does, from the first hour on.
fn lactic_left_mm(pickled: &PicklingOutcome) -> f64 {
    let cheese = &pickled.cheese;
    1000.0 * pickled.left_share * cheese.lactic_kg / LACTIC_MOLAR_MASS.value / cheese.water_kg
}
