//! Salt on its way out.

use super::{cheese, dried, soak, vinegar};
use proptest::prelude::*;
use vatsketch::law::soaking::salt_in_vinegar_m2_s;
use vatsketch::process::{Fineness, Soak, salt_left};

/// The same equations solved apart from this program, a check of numerics, not of cheese: share of salt left in the dried cheese at 21 °C.
/// Three decimals; a tenth of a per cent more for the grid, two on the one that is shown.
#[test]
fn the_salt_that_is_left_is_that_of_the_table() {
    let table = [(30.0, [0.422, 0.297, 0.278]), (60.0, [0.359, 0.192, 0.161]), (120.0, [0.323, 0.127, 0.088])];
    for (volume_ml, want) in table {
        for (fineness, allowed) in [(Fineness::SOAK_FINE, 0.0015), (Fineness::SOAK_SHOWN, 0.0025)] {
            let soak = Soak { water_share: 0.379, ..Soak::with(&dried(), &vinegar(volume_ml), fineness).unwrap() };
            let left = salt_left(&soak, salt_in_vinegar_m2_s(0.379, 21.0), &[24.0, 72.0, 2000.0]).unwrap();
            for (left, want) in left.iter().zip(want) {
                assert!((left - want).abs() < allowed, "{volume_ml} mL: {left} is not {want}");
            }
        }
    }
}

/// J. Crank 1975, sections 4.3.5 (slab) and 5.3.3 (cylinder), turned round: what has left a body into a limited bath, as the acid comes in.
#[test]
fn a_slab_and_a_cylinder_leach_by_cranks_series() {
    let checks: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string("tests/reference/pickling_checks.json").unwrap()).unwrap();
    for (key, top) in [("slab_limited", true), ("cyl_limited", false)] {
        for row in checks[key].as_array().unwrap() {
            let of = |key: &str| row[key].as_f64().unwrap();
            let (alpha, fourier) = (of("alpha"), of("Fo"));
            let base = Soak::new(&cheese(40.0, 20.0, 1050.0, 0.2, 0.5), &vinegar(50.0)).unwrap();
            let (d, length_m) = (2e-10, if top { 0.010 } else { 0.020 });
            let soak = Soak {
                // A film a thousand times quicker than the body.
                film_m_s: 1e-4,
                open: if top { (1.0, 0.0) } else { (0.0, 1.0) },
                bath_m3: alpha * 2.0 * base.grid.volume_m3() * base.water_share,
                tolerance: 1e-4,
                ..base
            };
            let left = salt_left(&soak, d, &[fourier * length_m * length_m / d / 3600.0]).unwrap()[0];
            let error = (1.0 - left) * (1.0 + alpha) / alpha - of("Mt_Minf");
            // As for the acid: the first row of the smallest bath is the steepest.
            let allowed = if fourier < 0.02 { 2e-3 } else { 5e-4 };
            assert!(error.abs() <= allowed, "{key} alpha {alpha} Fo {fourier}: off by {error:.1e}");
        }
    }
}

/// Second order in time: ten times the tolerance makes the error about ten times as large.
#[test]
fn a_tighter_tolerance_leaves_a_tenth_of_the_error() {
    let with = |tolerance: f64| salt_left(&Soak { tolerance, ..soak() }, 1.8e-10, &[24.0]).unwrap()[0];
    let truth = with(1e-6);
    let (loose, tight) = ((with(1e-2) - truth).abs(), (with(1e-3) - truth).abs());
    let order = 2.0 * (loose / tight).log10();
    assert!((1.5..3.0).contains(&order), "order {order} from errors of {loose:e} and {tight:e}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// It never ends below what the mixed waters hold, and more vinegar, more time and more warmth each leave less.
    #[test]
    fn salt_leaves_but_not_beyond_the_balance(ml in 5.0..200.0_f64, hours in 1.0..500.0_f64) {
        let left = |ml: f64, hours: f64, d: f64| {
            let soak = Soak::with(&dried(), &vinegar(ml), Fineness::SOAK_SHOWN).unwrap();
            (salt_left(&soak, d, &[hours]).unwrap()[0], soak)
        };
        let (some, soak) = left(ml, hours, 1.8e-10);
        let water_m3 = 2.0 * soak.grid.volume_m3() * soak.water_share;
        prop_assert!(some > water_m3 / (water_m3 + soak.bath_m3) - 1e-3 && some < 1.0);
        prop_assert!(left(1.5 * ml, hours, 1.8e-10).0 < some + 1e-3);
        prop_assert!(left(ml, 1.5 * hours, 1.8e-10).0 < some + 1e-3);
        prop_assert!(left(ml, hours, 2.5e-10).0 < some + 1e-3);
    }
}

#[test]
fn at_the_start_all_of_it_is_there_and_no_hours_give_no_answer() {
    assert!((salt_left(&soak(), 1.8e-10, &[0.0]).unwrap()[0] - 1.0).abs() < 1e-12);
    assert!(salt_left(&soak(), 1.8e-10, &[]).unwrap().is_empty());
    assert!(salt_left(&soak(), f64::NAN, &[24.0]).is_err());
}
