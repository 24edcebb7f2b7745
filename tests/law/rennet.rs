//! Rennet against published definitions and our own worked values.

use super::tables::near;
use proptest::prelude::*;
use vatsketch::law::rennet::{CLOTTING_LEAST, clotting_min, imcu_per_ml};

/// Fresh cow's milk with its usual calcium chloride.
fn usual_min(dose_imcu_kg: f64, temperature_c: f64) -> f64 {
    clotting_min(dose_imcu_kg, temperature_c, 6.65, 0.0175)
}

/// From memory, ±20 %: 1:10 000 is about 145 and 1:15 000 about 217 IMCU/mL; tolerance the rounding.
#[test]
fn international_units_follow_from_parts() {
    near(imcu_per_ml(10_000.0), 145.0, 0.5);
    near(imcu_per_ml(15_000.0), 217.0, 0.5);
}

/// Our own computation, ±0.05 min, from a law that was set on the 15 to 20 minutes of the Guelph notes.
#[test]
fn clotting_takes_as_long_as_was_worked_out_by_hand() {
    for (dose, temperature_c, minutes) in
        [(20.0, 31.0, 32.5), (40.0, 31.0, 17.5), (60.0, 31.0, 12.5), (40.0, 35.0, 15.41), (40.0, 37.0, 14.57), (40.0, 25.0, 27.73)]
    {
        near(usual_min(dose, temperature_c), minutes, 0.05);
    }
}

/// Guelph notes, setting: 15 to 20 minutes with the usual dose at 30 to 32 °C.
#[test]
fn the_usual_dose_clots_in_the_published_time() {
    let minutes = usual_min(40.0, 31.0);
    assert!((15.0..=20.0).contains(&minutes), "{minutes}");
}

/// J. Dairy Sci. 41:61, abstract: 0.02 % of calcium chloride about halves the rennet needed; our law makes it exactly half.
#[test]
fn calcium_halves_the_rennet_needed() {
    let without = clotting_min(60.0, 33.0, 6.65, 0.0);
    let with = clotting_min(30.0, 33.0, 6.65, 0.02);
    near(with, without, 1e-9);
}

/// Abstract: a tenth of pH more takes 1.19 to 1.31 times as long; the part that rennet cannot shorten stays.
#[test]
fn sourer_milk_clots_sooner() {
    let fresh = usual_min(40.0, 33.0) - CLOTTING_LEAST.value;
    let sweeter = clotting_min(40.0, 33.0, 6.75, 0.0175) - CLOTTING_LEAST.value;
    assert!((1.19..=1.31).contains(&(sweeter / fresh)), "{}", sweeter / fresh);
}

#[test]
fn without_rennet_it_never_clots_and_not_a_number_stays_so() {
    assert!(usual_min(0.0, 31.0).is_infinite());
    assert!(usual_min(f64::NAN, 31.0).is_nan() && usual_min(40.0, f64::NAN).is_nan());
}

/// Limits of the range: slow, but there is a time, and it is best near 41 °C.
#[test]
fn at_the_edges_clotting_is_slow_and_near_41_it_is_quickest() {
    let best = usual_min(40.0, 41.0);
    for temperature_c in [18.0, 25.0, 35.0, 39.0, 43.0, 50.0, 55.0] {
        let minutes = usual_min(40.0, temperature_c);
        assert!(minutes.is_finite() && minutes > best, "{temperature_c} °C: {minutes}");
    }
}

proptest! {
    /// From 20 °C, where the table begins, to 40 °C; and up to the dose of calcium beyond which more is taken to do nothing.
    #[test]
    fn more_rennet_more_warmth_and_more_calcium_are_quicker(dose in 10.0..119.0, t in 20.0..40.0, calcium in 0.0..0.014) {
        let minutes = clotting_min(dose, t, 6.6, calcium);
        prop_assert!(clotting_min(dose + 1.0, t, 6.6, calcium) < minutes);
        prop_assert!(clotting_min(dose, t + 0.5, 6.6, calcium) < minutes);
        prop_assert!(clotting_min(dose, t, 6.6, calcium + 0.001) < minutes);
        prop_assert!(clotting_min(dose, t, 6.5, calcium) < minutes);
    }
}
