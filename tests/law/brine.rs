//! Water activity of salt in water against its published formula and published data.

use super::outside::Outside;
use proptest::prelude::*;
use vatsketch::law::brine::{SALT_SATURATION, log_activity_slope, osmotic_coefficient, water_activity};

#[derive(serde::Deserialize)]
struct Row {
    molality: f64,
    phi_formula: f64,
    phi_measured: f64,
    aw_formula: f64,
    aw_measured: f64,
}

/// Tolerance 1e-5: what the formula was asked to meet; it is the same equation, so 1e-9 is met as well.
#[test]
fn the_formula_is_that_of_pitzer_and_mayorga() {
    for row in crate::law::rows::<Row>("brine.csv") {
        assert!((osmotic_coefficient(row.molality) - row.phi_formula).abs() < 1e-9, "{} mol/kg", row.molality);
        assert!((water_activity(row.molality) - row.aw_formula).abs() < 1e-9, "{} mol/kg", row.molality);
    }
}

/// Robinson and Stokes, from memory: the formula is within 0.0006 in activity and 0.003 in the coefficient. Saturation has no row there, and
/// other notes quote 0.755 for it, which the formula does not meet.
pub fn measured_rows() -> Vec<Outside> {
    let measured = crate::law::rows("brine.csv").into_iter().filter(|row: &Row| row.phi_measured.is_finite()).map(|row| {
        let pair = (row.aw_measured, water_activity(row.molality));
        let (case, source) = (format!("{} mol/kg", row.molality), "Robinson and Stokes, Electrolyte Solutions, from memory");
        Outside::new("water activity of brine", case, source, pair, Some(6e-4), "the formula was fitted to others' data")
    });
    let saturated = (0.755, water_activity(SALT_SATURATION.value));
    let why = "0.003 off; other tables have 0.753";
    let last = Outside::new("water activity of brine", "saturated".to_owned(), "published notes", saturated, None, why);
    measured.chain([last]).collect()
}

#[test]
fn the_formula_is_near_the_measured_coefficients() {
    let measured = measured_rows();
    assert_eq!(measured.len(), 16 + 1);
    for row in measured.iter().filter(|row| row.tolerance.is_some()) {
        assert!((row.ours - row.expected).abs() < row.tolerance.unwrap(), "{}", row.case);
    }
    for row in crate::law::rows::<Row>("brine.csv").iter().filter(|row| row.phi_measured.is_finite()) {
        assert!((osmotic_coefficient(row.molality) - row.phi_measured).abs() < 3e-3, "{} mol/kg", row.molality);
    }
}

/// Values quoted in published notes: 0.9669 at 1 mol/kg, 0.760 at 6 mol/kg (rounded there), 0.755 of the saturated brine.
/// The last disagrees with the formula's 0.7523 by 0.003 and is kept; other tables have 0.753.
#[test]
fn quoted_activities_are_met_as_far_as_they_agree_with_each_other() {
    assert!((water_activity(1.0) - 0.9669).abs() < 1e-4);
    assert!((water_activity(6.0) - 0.760).abs() < 1e-3);
    assert!((water_activity(SALT_SATURATION.value) - 0.755).abs() < 3e-3);
}

#[test]
fn pure_water_has_activity_one_and_more_salt_than_dissolves_changes_nothing() {
    assert_eq!(water_activity(0.0), 1.0);
    assert_eq!(water_activity(20.0), water_activity(SALT_SATURATION.value));
    assert_eq!(log_activity_slope(20.0), 0.0);
    // Raoult's law: each mole of salt counts twice.
    assert!((log_activity_slope(0.0) + 2.0 * 0.01801528).abs() < 1e-9);
    assert!(water_activity(f64::INFINITY).is_finite());
}

proptest! {
    #[test]
    fn the_slope_is_that_of_a_finite_difference(molality in 0.01..6.1_f64) {
        let step = 1e-5;
        let difference = (water_activity(molality + step).ln() - water_activity(molality - step).ln()) / (2.0 * step);
        prop_assert!((log_activity_slope(molality) - difference).abs() < 1e-8, "{difference}");
        prop_assert!(difference < 0.0);
    }
}
