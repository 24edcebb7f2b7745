//! What a column does and does not: conserve, saturate, crystallise, turn.

use super::{THICKNESS_MM, WATER, even, seconds};
use proptest::prelude::*;
use vatsketch::law::salt::saturated_kg_kg;
use vatsketch::process::{Face, SaltColumn, SaltRun};

#[test]
fn more_salt_than_dissolves_leaves_brine_and_the_rest_on_the_faces() {
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &even);
    run.sprinkle(Face::Top, 2.0);
    run.advance(seconds(20.0), &mut |_| ()).unwrap();
    let holds = WATER * saturated_kg_kg();
    assert!((run.undissolved() - (2.0 - holds)).abs() < 1e-6, "{}", run.undissolved());
    assert!((run.at_the_centre() - saturated_kg_kg()).abs() < 1e-6);
    // Inside, a step may go beyond saturation by its own error.
    assert!((run.on_the_faces() - run.undissolved()).abs() < 1e-3, "{} of {}", run.on_the_faces(), run.undissolved());
}

/// A face that dries out holds its salt as crystals and gives it back to no one; the moisture left there is brine.
#[test]
fn a_crust_without_water_holds_crystals() {
    let dries = |at_s: f64, water: &mut [f64]| {
        let dry = (1.0 - at_s / 3600.0).max(0.0);
        water.fill(WATER);
        if let [first, .., last] = water {
            (*first, *last) = (WATER * dry, WATER * dry);
        }
        1e-14
    };
    let mut column = SaltColumn::unsalted(THICKNESS_MM);
    column.spread_evenly(0.05);
    let mut run = SaltRun::new(column, 0.0, &dries);
    assert_eq!(run.undissolved(), 0.0);
    run.advance(3600.0, &mut |_| ()).unwrap();
    let in_the_faces = 2.0 * run.column.layers[0] * 0.05;
    assert!((run.undissolved() / in_the_faces - 1.0).abs() < 0.01, "{} of {in_the_faces}", run.undissolved());
    assert_eq!(run.on_average_at_the_faces(), saturated_kg_kg());
}

#[test]
fn a_turned_column_is_its_mirror_image() {
    let mut column = SaltColumn::unsalted(THICKNESS_MM);
    column.sprinkle(Face::Underside, 0.01);
    let turned = column.clone().turned();
    assert_eq!((turned.salt.last(), turned.salt[0]), (column.salt.first(), 0.0));
    assert_eq!(turned.turned(), column);
}

#[test]
fn without_salt_nothing_is_stepped_and_no_number_stops_it() {
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &even);
    run.advance(1e6, &mut |_| ()).unwrap();
    assert_eq!((run.steps(), run.at_s), ((0, 0), 1e6));
    let nothing = |_: f64, water: &mut [f64]| {
        water.fill(f64::NAN);
        f64::NAN
    };
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &nothing);
    run.sprinkle(Face::Top, 0.01);
    let stuck = run.advance(1e6, &mut |_| ()).unwrap_err().to_string();
    assert!(stuck.contains("0.00 h"), "{stuck}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever is sprinkled on and however it dries, the column holds what it was given, to rounding, and no moisture holds more than brine.
    #[test]
    fn no_salt_is_made_or_lost(
        below in 0.0..0.3_f64, above in 0.0..0.3_f64, loss in 0.0..0.97_f64, thickness_mm in 4.0..60.0_f64, tolerance in 1e-3..1e-1_f64,
    ) {
        let dries = |at_s: f64, water: &mut [f64]| {
            let dried = (at_s / 3600.0 / 60.0).min(1.0);
            let last = water.len() - 1;
            for (node, water) in water.iter_mut().enumerate() {
                let outside = (2.0 * node as f64 / last as f64 - 1.0).powi(4);
                *water = WATER * (1.0 - loss * dried * (0.3 + 0.7 * outside));
            }
            4e-10 * (1.0 + dried)
        };
        let mut run = SaltRun::new(SaltColumn::unsalted(thickness_mm), 0.0, &dries);
        run.tolerance = tolerance;
        run.sprinkle(Face::Underside, below);
        run.advance(3600.0 * 8.0, &mut |_| ()).unwrap();
        run.sprinkle(Face::Top, above);
        let given = below + above;
        let mut worst = 0.0_f64;
        run.advance(3600.0 * 70.0, &mut |run| worst = worst.max((run.column.salt_in_all() - given).abs())).unwrap();
        prop_assert!(worst <= 1e-12 * given.max(1e-3), "{worst} of {given}");
        prop_assert!(run.column.salt.iter().all(|salt| *salt > -1e-6 * given.max(1e-3)), "{:?}", run.column.salt);
        prop_assert!(run.steps().0 < 600, "{:?}", run.steps());
    }
}
