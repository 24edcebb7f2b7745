//! The course of souring in a curd.

use super::{cultured, near, way};
use vatsketch::design::DrainingDesign;
use vatsketch::law::Matter;
use vatsketch::law::souring::{
    AcidAmounts, Culture, CultureLaw, CultureState, SOURING_STEP_H, Sourable, hours_to, sour, souring_at,
};
use vatsketch::process::{CultureNow, SourPoint, Sourness, VatOutcome, draining, hours_to_ph, ph_at};

/// The curd of S40 to S43 in `tests/reference/souring.csv`, all whey out of it: protein 16 %, water 60 %, lactose 3 %.
fn curd() -> Matter {
    Matter { water_kg: 0.60, casein_kg: 0.16, carbohydrate_kg: 0.03, fat_kg: 0.21, ..Matter::default() }
}

/// Returns that curd in the moulds for two days in a room as warm as it is itself.
fn in_moulds(temperature_c: f64, cells_per_g: f64) -> Vec<SourPoint> {
    let law = CultureLaw::of(Culture::Mesophilic);
    let culture = Some(CultureNow { law, cells_per_g, dose: 0.0 });
    let sourness = Sourness { culture, ..Sourness::unsoured(6.5) };
    let vat =
        VatOutcome { curd: curd(), drained_curd: curd(), ladle_temperature_c: temperature_c, sourness, ..VatOutcome::default() };
    let design =
        DrainingDesign { turn_count: 1, turn_gap_h: 24.0, draining_temperature_c: temperature_c, ..DrainingDesign::default() };
    draining(&design, &vat).unwrap().souring
}

/// `tests/reference/souring.csv`, S40 to S43, an independent program: 7.713, 11.151, 15.837 and 34.303 h. Ours is drawn at 96 points over the
/// two days, and between them straight: 0.05 h.
#[test]
fn a_curd_that_keeps_its_whey_and_its_warmth_sours_as_the_reference_does() {
    let points = in_moulds(21.0, 6.5e7);
    for (ph, hours) in [(5.5, 7.713), (5.2, 11.151), (5.0, 15.837), (4.6, 34.303)] {
        near(hours_to_ph(&points, ph).unwrap(), hours, 0.05);
    }
}

#[test]
fn the_stage_follows_the_law_at_any_constant_warmth() {
    for (temperature_c, cells) in [(21.0, 6.5e7), (12.0, 2e7), (30.0, 1e8)] {
        let points = in_moulds(temperature_c, cells);
        let start = CultureState::new(cells, 0.03, AcidAmounts::default());
        let sourable = Sourable::new(0.16, 0.60, 6.5, 1.0);
        let law = CultureLaw::of(Culture::Mesophilic);
        let wanted = sour(&law, &start, &sourable, &|_| temperature_c, 48.0, SOURING_STEP_H);
        for point in &points {
            near(point.ph, souring_at(&wanted, point.at_h).unwrap().ph, 0.02);
            near(point.temperature_c, temperature_c, 1e-9);
        }
        for ph in [5.5, 5.2, 5.0] {
            match (hours_to(&wanted, ph), hours_to_ph(&points, ph)) {
                (Some(wanted), Some(got)) => near(got, wanted, 0.05),
                neither => assert_eq!(neither, (None, None), "{temperature_c} °C, pH {ph}"),
            }
        }
    }
}

#[test]
fn what_nothing_sours_keeps_its_ph() {
    let points = in_moulds(21.0, 0.0);
    assert!(points.iter().all(|point| point.ph == 6.5 && point.cells_per_g == 0.0 && point.lactic_mm == 0.0));
}

/// By hand: straight between two points, and at once where it begins below.
#[test]
fn hours_and_ph_are_read_straight_between_points() {
    let at = |at_h, ph| SourPoint { at_h, ph, ..SourPoint::default() };
    let points = [at(0.0, 6.5), at(2.0, 6.0), at(2.0, 5.8), at(6.0, 5.0)];
    near(hours_to_ph(&points, 6.25).unwrap(), 1.0, 1e-12);
    near(hours_to_ph(&points, 5.4).unwrap(), 4.0, 1e-12);
    assert_eq!((hours_to_ph(&points, 6.6), hours_to_ph(&points, 4.9), hours_to_ph(&[], 6.0)), (Some(0.0), None, None));
    near(ph_at(&points, 1.0).unwrap(), 6.25, 1e-12);
    near(ph_at(&points, 4.0).unwrap(), 5.4, 1e-12);
    assert_eq!(ph_at(&points, 6.5), None);
}

/// A colder room: the curd cools further, so it sours later and less. In the first hour both are still nearly as warm as the vat.
#[test]
fn colder_moulds_sour_slower() {
    let at = |draining_temperature_c: f64| {
        let mut design = cultured();
        design.draining.draining_temperature_c = draining_temperature_c;
        way(&design).unwrap().draining.souring
    };
    let (cold, warm) = (at(10.0), at(22.0));
    assert_eq!(cold[0].ph, warm[0].ph);
    for ph in [5.5, 5.2] {
        let (slow_h, fast_h) = (hours_to_ph(&cold, ph), hours_to_ph(&warm, ph).unwrap());
        assert!(slow_h.is_none_or(|slow_h| slow_h > fast_h), "pH {ph}: {slow_h:?} and {fast_h}");
    }
    assert!(cold.last().unwrap().ph > warm.last().unwrap().ph);
}
