//! The drying stage as a whole: trays, swapping, day and night, the balance.

use vatsketch::batch::batch;
use vatsketch::design::{Design, DryingDesign, DryingPlace};
use vatsketch::law::Matter;
use vatsketch::process::{AirPlan, Cheese, DryingError, DryingOutcome, Place, SaltingOutcome, dry_cheese, drying};

fn salted() -> SaltingOutcome {
    batch(&Design::default()).unwrap().salting.done().unwrap().clone()
}

fn dried(design: &DryingDesign) -> DryingOutcome {
    drying(design, &salted(), 16.0).unwrap()
}

fn cheese() -> Cheese {
    let matter = Matter { water_kg: 0.030, fat_kg: 0.010, casein_kg: 0.008, ash_kg: 0.001, salt_kg: 0.001, ..Matter::default() };
    Cheese { matter, diameter_mm: 60.0, thickness_mm: 17.0, ..Cheese::default() }
}

#[test]
fn swapping_brings_the_fastest_and_the_slowest_together() {
    assert_eq!(dried(&DryingDesign::default()).swap_h, None, "all cheeses lie on one tray");
    // Four cheeses to a tray.
    let small = DryingDesign { tray_width_mm: 160.0, tray_depth_mm: 160.0, ..DryingDesign::default() };
    let swapped = dried(&small);
    assert!(swapped.spread_swapped_percent < 0.5 * swapped.spread_unswapped_percent, "{}", swapped.spread_swapped_percent);
    assert_eq!(swapped.swap_h, Some(0.5 * small.drying_h));
    let apart = swapped.slowest.end_moisture_percent() - swapped.fastest.end_moisture_percent();
    assert!((apart - swapped.spread_swapped_percent).abs() < 1e-12);
    let unswapped = dried(&DryingDesign { tray_swap: false, ..small });
    assert_eq!(unswapped.swap_h, None);
    let apart = unswapped.slowest.end_moisture_percent() - unswapped.fastest.end_moisture_percent();
    assert!((apart - unswapped.spread_unswapped_percent).abs() < 1e-12 && apart > 0.5, "{apart}");
    // Which way the trays stand does not matter to the middle one.
    assert_eq!(swapped.middle, unswapped.middle);
}

#[test]
fn the_middle_tray_dries_between_the_first_and_the_last() {
    let dried = dried(&DryingDesign { tray_swap: false, ..DryingDesign::default() });
    let (fast, slow) = (dried.fastest.end_moisture_percent(), dried.slowest.end_moisture_percent());
    assert!(fast < dried.end.moisture_percent && dried.end.moisture_percent < slow, "{fast} {} {slow}", dried.end.moisture_percent);
}

/// The trays are calculated on a coarser grid than the middle one; without that grid's error the three differ only by their air.
#[test]
fn swapped_trays_end_where_the_middle_one_does() {
    let dried = dried(&DryingDesign::default());
    for tray in [&dried.fastest, &dried.slowest] {
        // Half the time 1.5 K warmer and half 1.5 K cooler: a second-order difference.
        assert!((tray.end_moisture_percent() - dried.end.moisture_percent).abs() < 0.15, "{}", tray.end_moisture_percent());
    }
}

#[test]
fn one_tray_has_no_spread_and_nothing_to_swap() {
    let dried = dried(&DryingDesign { tray_count: 1, ..DryingDesign::default() });
    assert_eq!(dried.spread_unswapped_percent, 0.0);
    assert_eq!(dried.swap_h, None);
    assert_eq!((&dried.fastest, &dried.slowest), (&dried.middle, &dried.middle));
}

#[test]
fn the_vapour_is_what_the_cheeses_lose_and_only_water_leaves() {
    let dried = dried(&DryingDesign::default());
    let residual = dried.balance.residual();
    assert!(residual.parts_kg().iter().all(|part| part.abs() < 1e-12), "{residual:?}");
    let vapour = dried.balance.left[0].matter;
    assert!(vapour.water_kg > 0.1 && vapour.solids_kg().abs() < 1e-12);
    let loss_percent = 100.0 * vapour.total_kg() / dried.balance.came.total_kg();
    assert!((loss_percent - dried.end.loss_percent).abs() < 1e-9, "{loss_percent}");
    let each_g = 1000.0 * dried.cheese.total_kg() / f64::from(dried.cheese_count);
    assert!((each_g - dried.end.cheese_g).abs() < 1e-9, "{each_g}");
}

#[test]
fn a_curve_loses_weight_shrinks_and_dries_from_the_outside_all_the_way() {
    let points = dried(&DryingDesign::default()).middle.points;
    assert!(points.len() > 20);
    for pair in points.windows(2) {
        assert!(pair[1].at_h > pair[0].at_h && pair[1].cheese_g < pair[0].cheese_g && pair[1].diameter_mm < pair[0].diameter_mm);
    }
    for point in points.iter().skip(1) {
        assert!(
            point.surface_moisture_percent < point.moisture_percent
                && point.moisture_percent < point.centre_moisture_percent + 1e-9
        );
    }
}

#[test]
fn zero_hours_change_nothing() {
    let salted = salted();
    let dried = dried(&DryingDesign { drying_h: 0.0, ..DryingDesign::default() });
    assert!(dried.end.at_h == 0.0 && dried.end.loss_percent.abs() < 1e-9, "{:?}", dried.end);
    assert!((dried.end.moisture_percent - salted.cheese.moisture_percent()).abs() < 1e-9);
    assert!(dried.balance.left[0].matter.total_kg().abs() < 1e-12);
}

#[test]
fn open_air_dries_less_by_night() {
    let lost = |day_h: f64| {
        let design = DryingDesign { drying_place: DryingPlace::OpenAir, drying_h: 40.0, day_h, ..DryingDesign::default() };
        dry_cheese(&cheese(), &design, &[]).unwrap().points.last().unwrap().loss_percent
    };
    let (long_night, even, long_day) = (lost(4.0), lost(12.0), lost(20.0));
    assert!(long_night < even && even < long_day, "{long_night} {even} {long_day}");
}

#[test]
fn the_open_air_begins_with_a_day_and_changes_at_its_hours() {
    let design = DryingDesign { drying_place: DryingPlace::OpenAir, day_h: 11.0, ..DryingDesign::default() };
    let plan = AirPlan::of(&design, Place::MIDDLE, 0.06);
    let at = |hour: f64| {
        let (air, until_s) = plan.at(3600.0 * hour);
        (air.temperature_c, until_s / 3600.0)
    };
    assert_eq!(at(0.0), (design.day_temperature_c, 11.0));
    assert_eq!(at(11.0), (design.night_temperature_c, 24.0));
    assert_eq!(at(24.0), (design.day_temperature_c, 35.0));
    assert_eq!(at(47.9), (design.night_temperature_c, 48.0));
}

#[test]
fn a_cheese_that_no_air_reaches_or_that_holds_nothing_to_dry_is_refused() {
    let board = DryingDesign { underside_open_percent: 0.0, ..DryingDesign::default() };
    let closed = Cheese { top_open: 0.0, side_open: 0.0, ..cheese() };
    assert_eq!(dry_cheese(&closed, &board, &[]).unwrap_err(), DryingError::NoOpenFace);
    let water = Cheese { matter: Matter::water(0.05), ..cheese() };
    let refused = dry_cheese(&water, &board, &[]).unwrap_err();
    assert_eq!(refused, DryingError::NothingToDry { moisture_percent: 100.0 });
    assert!(refused.to_string().contains("100.0 %"));
    let dry = Cheese { matter: Matter { water_kg: 0.0, ..cheese().matter }, ..cheese() };
    assert!(dry_cheese(&dry, &board, &[]).is_err());
}

#[test]
fn hours_that_are_asked_for_are_reported_and_agree_with_the_curve() {
    let design = DryingDesign { drying_h: 24.0, ..DryingDesign::default() };
    let asked = dry_cheese(&cheese(), &design, &[0.0, 6.0, 24.0]).unwrap().points;
    assert_eq!(asked.iter().map(|point| point.at_h.round()).collect::<Vec<_>>(), [0.0, 6.0, 24.0]);
    let whole = dry_cheese(&cheese(), &design, &[]).unwrap();
    // Stopping at 6 h changes the steps after it: 0.2 % of moisture, a third of what the solver is held to.
    assert!((asked[2].moisture_percent / whole.end_moisture_percent() - 1.0).abs() < 2e-3);
}

/// A day of 7.504 422 988… hours once lasted no time at all when its end came, by the last digit of a difference.
#[test]
fn the_air_always_lasts_for_some_time() {
    for step in 0..2000 {
        let day_h = 1.0 + 22.0 * f64::from(step) / 1999.7;
        let design = DryingDesign { drying_place: DryingPlace::OpenAir, day_h, ..DryingDesign::default() };
        let plan = AirPlan::of(&design, Place::MIDDLE, 0.06);
        let mut at_s = 0.0;
        for change in 0..60 {
            let (air, until_s) = plan.at(at_s);
            assert!(until_s > at_s, "{day_h} h, change {change}");
            let expected_c = if change % 2 == 0 { design.day_temperature_c } else { design.night_temperature_c };
            assert_eq!(air.temperature_c, expected_c, "{day_h} h, change {change}");
            at_s = until_s;
        }
    }
}

/// Hot dry wind over a thin wide cheese leaves its skin almost without water, where the isotherm is level: 30 000 steps were taken
/// once, with a face below zero. The steps are few and no face is drier than nothing.
#[test]
fn a_skin_that_is_almost_dry_does_not_swing() {
    let matter = Matter {
        water_kg: 0.0901,
        fat_kg: 0.0352,
        casein_kg: 0.0151,
        carbohydrate_kg: 0.0042,
        ash_kg: 0.0011,
        salt_kg: 0.0027,
        ..Matter::default()
    };
    let cheese = Cheese { matter, diameter_mm: 189.5, thickness_mm: 5.1449, temperature_c: 16.0, ..Cheese::default() };
    for (cabinet_temperature_c, room_humidity_percent) in [(52.3, 20.6), (60.0, 5.0), (45.0, 30.0), (60.0, 50.0)] {
        for air_speed_m_s in [0.8, 2.5, 3.0] {
            for underside_open_percent in [21.2, 60.0, 100.0] {
                let design = DryingDesign {
                    cabinet_temperature_c,
                    room_humidity_percent,
                    air_speed_m_s,
                    underside_open_percent,
                    drying_h: 125.7,
                    ..DryingDesign::default()
                };
                let points = dry_cheese(&cheese, &design, &[]).unwrap().points;
                let driest = points.iter().map(|point| point.surface_moisture_percent).fold(100.0, f64::min);
                assert!(points.len() < 300 && driest > -0.1, "{} steps, face at {driest} % in {design:?}", points.len());
            }
        }
    }
}

/// A cold night and a warm morning: a step as long as the night's last one once left the face at −7 % moisture.
#[test]
fn no_face_is_drier_than_nothing_after_a_change_of_the_air() {
    for (night_temperature_c, night_humidity_percent) in [(2.0, 78.0), (2.0, 98.0), (18.0, 78.0), (10.0, 30.0)] {
        for underside_open_percent in [0.0, 60.0, 100.0] {
            let design = DryingDesign {
                drying_place: DryingPlace::OpenAir,
                drying_h: 268.5,
                night_temperature_c,
                night_humidity_percent,
                underside_open_percent,
                ..DryingDesign::default()
            };
            let points = dry_cheese(&cheese(), &design, &[]).unwrap().points;
            let driest = points.iter().map(|point| point.surface_moisture_percent).fold(100.0, f64::min);
            assert!(driest > 0.0 && points.len() < 1500, "{driest} %, {} steps, {design:?}", points.len());
        }
    }
}

#[test]
fn damp_air_gives_a_cheese_water_and_the_balance_says_from_where() {
    let damp = DryingDesign {
        drying_place: DryingPlace::OpenAir,
        day_humidity_percent: 98.0,
        night_humidity_percent: 98.0,
        drying_h: 40.0,
        ..DryingDesign::default()
    };
    let salted = SaltingOutcome { cheese: Matter { salt_kg: 0.06, ..salted().cheese }, ..salted() };
    let dried = drying(&damp, &salted, 4.0).unwrap();
    assert!(dried.end.loss_percent < -0.1, "{}", dried.end.loss_percent);
    assert!(dried.balance.added[0].matter.water_kg > 0.0 && dried.balance.left[0].matter.total_kg() == 0.0);
    assert!(dried.balance.residual().parts_kg().iter().all(|part| part.abs() < 1e-12));
    let each_g = 1000.0 * dried.cheese.total_kg() / f64::from(dried.cheese_count);
    assert!((each_g - dried.end.cheese_g).abs() < 1e-9, "{each_g}");
}
