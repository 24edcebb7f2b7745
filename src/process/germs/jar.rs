//! The cheese in vinegar and in the jar: every place has a pH and an amount of acid of its own.

use super::airless::AirlessHours;
use super::places::{Moment, Places, Sourness};
use crate::design::{KeepingDesign, KeptIn, PicklingDesign, Stage};
use crate::law::growth::{Sour, mould_mm_per_day, yeast_rate_per_h};
use crate::process::{DiscField, PicklingOutcome};
use std::f64::consts::LN_10;

/// The cheese in the jar.
#[derive(Clone, Copy, Debug)]
pub(super) struct InJar<'a> {
    pub(super) pickled: &'a PicklingOutcome,
    pub(super) pickling: &'a PicklingDesign,
    pub(super) keeping: &'a KeepingDesign,
    /// Lactic acid that is left in its water, mmol/kg.
    pub(super) lactic_mm: f64,
    /// Water activity: the highest before and after the soak.
    pub(super) water_activity: f64,
    /// How the cheese was cut up before.
    pub(super) before: &'a DiscField,
}

/// What spoils beside the germs.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Spoilage {
    /// Potential increase of yeasts, log₁₀, where their law holds.
    pub(super) yeast_log10: Option<f64>,
    /// Radius of a colony of blue mould, mm.
    pub(super) mould_mm: f64,
}

/// Grows through the soak and the keeping; in the keeping all stays as the soak has left it.
pub(super) fn through_jar(places: &mut Places, jar: &InJar<'_>, airless: &mut AirlessHours) -> Spoilage {
    let InJar { pickled, pickling, keeping, .. } = *jar;
    let mut spoilage = Spoilage::default();
    let began_h = places.at_h();
    let (mut sours, mut waters) = (Vec::new(), Vec::new());
    if let (Some(ph), Some(acetate)) = (&pickled.field, &pickled.acetate) {
        places.cut_up(Some(jar.before), ph, pickled.pile);
        let temperature_c = pickling.pickling_temperature_c;
        let (centre, rim) = super::section::centre_and_rim(ph);
        for (index, (ph, acetate)) in ph.frames.iter().zip(&acetate.frames).enumerate() {
            sours.clear();
            let places_now = ph.values.iter().zip(&acetate.values);
            sours.extend(places_now.map(|(ph, acetate)| Sour::of(f64::from(*ph), jar.lactic_mm, f64::from(*acetate))));
            waters.resize(sours.len(), jar.water_activity);
            let moment = Moment { at_h: began_h + ph.at_h, temperature_c, crowd: 0.0, air: false };
            if index == 0 {
                places.begin(&moment, Sourness::Each(&sours), &waters);
                places.keep_map(ph.at_h, ph.shrunk);
                continue;
            }
            let hours = moment.at_h - places.at_h();
            let sour_at = |place: usize| sours.get(place).map_or(0.0, |sour: &Sour| sour.ph);
            airless.count(hours, temperature_c, sour_at(centre), jar.water_activity);
            spoilage.count_yeast(hours, temperature_c, sour_at(rim), jar.water_activity);
            places.go_on(&moment, Sourness::Each(&sours), &waters);
            places.keep_map(ph.at_h, ph.shrunk);
        }
        places.end(Stage::Pickling);
    }
    let (kept_h, kept_c) = (24.0 * keeping.keeping_days, keeping.keeping_temperature_c);
    if sours.is_empty() {
        sours.resize(places.count(), Sour::of(pickled.start_ph, jar.lactic_mm, 0.0));
        waters.resize(places.count(), jar.water_activity);
    }
    let air = keeping.kept_in == KeptIn::Bare;
    let moment = |at_h: f64| Moment { at_h, temperature_c: kept_c, crowd: 0.0, air: false };
    let began_h = places.at_h();
    places.begin(&moment(began_h), Sourness::Each(&sours), &waters);
    places.go_on(&moment(began_h + kept_h), Sourness::Each(&sours), &waters);
    places.end(Stage::Keeping);
    let centre_ph = sours.get(places.centre()).map_or(pickled.start_ph, |sour| sour.ph);
    airless.count(kept_h, kept_c, centre_ph, jar.water_activity);
    if air {
        spoilage.mould_mm = kept_h / 24.0 * mould_mm_per_day(kept_c, jar.water_activity);
    } else {
        spoilage.count_yeast(kept_h, kept_c, pickled.end.slurry_ph, jar.water_activity);
    }
    spoilage
}

impl Spoilage {
    fn count_yeast(&mut self, hours: f64, temperature_c: f64, ph: f64, water_activity: f64) {
        if let Some(rate) = yeast_rate_per_h(temperature_c, ph, water_activity) {
            *self.yeast_log10.get_or_insert(0.0) += hours * rate / LN_10;
        }
    }
}
