//! Calcium chloride against the handbook and the molar masses.

use super::tables::{near, rows};
use proptest::prelude::*;
use vatsketch::law::calcium::{DIHYDRATE_RATIO, LEGAL_LIMIT, anhydrous_g, solution_kg_l, solution_ml};

#[derive(serde::Deserialize)]
struct Row {
    percent: f64,
    density: f64,
}

/// CRC Handbook; the curve goes through the points.
#[test]
fn the_solution_has_the_handbooks_densities() {
    let rows: Vec<Row> = rows("cacl2_density");
    assert_eq!(rows.len(), 6);
    for row in rows {
        near(solution_kg_l(row.percent), row.density, 1e-12);
    }
}

/// A cubic through the four points beside, worked by Lagrange's formula as the table's comment does; the monotone curve may differ by 0.0005.
#[test]
fn between_the_points_the_curve_is_near_a_cubic() {
    let points = [(10.0, 1.0835), (20.0, 1.1775), (30.0, 1.2816), (40.0, 1.3957)];
    for percent in [25.0, 35.0] {
        let cubic: f64 = points
            .iter()
            .map(|(x, y)| y * points.iter().filter(|(z, _)| z != x).map(|(z, _)| (percent - z) / (x - z)).product::<f64>())
            .sum();
        near(solution_kg_l(percent), cubic, 0.0005);
    }
}

/// Atomic masses of IUPAC (Ca 40.078, Cl 35.45, H 1.008, O 15.999): 1.3246 to 1.3247.
#[test]
fn the_dihydrate_is_heavier_by_its_water() {
    let (salt, water) = (40.078 + 2.0 * 35.45, 2.0 * 1.008 + 15.999);
    near(DIHYDRATE_RATIO.value, (salt + 2.0 * water) / salt, 0.0001);
}

/// Our own computation for 10 kg at the limit of 21 CFR 133.113, to the digits that were printed.
#[test]
fn ten_kilograms_at_the_legal_limit() {
    let salt_g = anhydrous_g(10.0, LEGAL_LIMIT.value);
    near(salt_g, 2.000, 1e-9);
    near(salt_g * DIHYDRATE_RATIO.value, 2.649, 0.0005);
    near(solution_ml(salt_g, 30.0), 5.202, 0.0005);
    // Codex: 200 mg/kg of milk is the same.
    near(1000.0 * salt_g / 10.0, 200.0, 1e-9);
}

#[test]
fn no_calcium_takes_no_solution_and_not_a_number_stays_so() {
    assert_eq!(solution_ml(0.0, 33.0), 0.0);
    assert!(solution_ml(f64::NAN, 33.0).is_nan());
}

proptest! {
    #[test]
    fn the_solution_measured_holds_the_salt(grams in 0.01..20.0_f64, percent in 5.0..40.0) {
        let held_g = solution_ml(grams, percent) * solution_kg_l(percent) * percent / 100.0;
        prop_assert!((held_g - grams).abs() < 1e-12 * grams.max(1.0));
    }

    #[test]
    fn stronger_solution_is_denser(percent in 1.0..39.0) {
        prop_assert!(solution_kg_l(percent + 0.5) > solution_kg_l(percent));
    }
}
