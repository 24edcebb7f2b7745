//! Milk and curd, in which every place is as the others.

use super::airless::AirlessHours;
use super::places::{Moment, Places, Sourness};
use super::water::MILK_WATER_ACTIVITY;
use crate::design::Stage;
use crate::law::growth::Sour;
use crate::process::{DrainingOutcome, SourPoint, VatOutcome};

/// Two times no farther apart than this are the same, min.
const SAME_MIN: f64 = 1e-6;

/// Grows through the vat: along the temperature of the milk, with the pH that it has then. Milk that is pasteurised there counts from the end of
/// its hold: what grew before has been heated, and what comes in later may grow while it cools. Returns the hour from which it counts.
pub(super) fn through_vat(places: &mut Places, vat: &VatOutcome) -> f64 {
    let from_min = vat.heat_step.map_or(0.0, |step| step.hold_ends_min);
    let mut sours = vat.souring.as_slice();
    let mut begun = false;
    for point in vat.curve.iter().filter(|point| point.at_min >= from_min - SAME_MIN) {
        let at_h = point.at_min / 60.0;
        while let [_, next, ..] = sours
            && next.at_h <= at_h
        {
            sours = sours.get(1..).unwrap_or_default();
        }
        let soured = sours.first().copied().unwrap_or_default();
        let moment = Moment { at_h, temperature_c: point.milk_c, crowd: soured.crowd, air: true };
        step(places, &moment, &soured, &mut begun);
    }
    places.end(Stage::Vat);
    from_min / 60.0
}

/// Grows through the moulds: along the curd's own temperature and pH. The salt is not counted before it has gone inwards.
pub(super) fn through_moulds(places: &mut Places, drained: &DrainingOutcome, airless: &mut AirlessHours) {
    let ladled_h = places.at_h();
    let mut begun = false;
    for point in &drained.souring {
        let moment = Moment { at_h: ladled_h + point.at_h, temperature_c: point.temperature_c, crowd: point.crowd, air: false };
        airless.count(moment.at_h - places.at_h(), point.temperature_c, point.ph, MILK_WATER_ACTIVITY.value);
        step(places, &moment, point, &mut begun);
    }
    places.end(Stage::Draining);
}

fn step(places: &mut Places, moment: &Moment, soured: &SourPoint, begun: &mut bool) {
    let sour = Sourness::Even(Sour::of(soured.ph, soured.lactic_mm, soured.acetic_mm));
    let water = [MILK_WATER_ACTIVITY.value];
    if *begun {
        places.go_on(moment, sour, &water);
    } else {
        places.begin(moment, sour, &water);
        *begun = true;
    }
}
