//! Yeasts and moulds, beyond the rows of the table.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::growth::{mould_mm_per_day, yeast_rate_per_h};

/// The law says nothing outside the conditions that it was fitted in: 2 to 20 °C, pH 4 to 7.5, water activity 0.95 to 0.994.
#[test]
fn yeasts_are_not_foreseen_outside_their_experiment() {
    for (temperature_c, ph, water_activity) in [(2.0, 4.0, 0.95), (20.0, 7.5, 0.994)] {
        assert!(yeast_rate_per_h(temperature_c, ph, water_activity).is_some());
    }
    let outside = [
        (1.9, 5.0, 0.97),
        (20.1, 5.0, 0.97),
        (10.0, 3.9, 0.97),
        (10.0, 7.6, 0.97),
        (10.0, 5.0, 0.949),
        (10.0, 5.0, 0.995),
        (f64::NAN, 5.0, 0.97),
    ];
    for (temperature_c, ph, water_activity) in outside {
        assert_eq!(yeast_rate_per_h(temperature_c, ph, water_activity), None);
    }
}

/// The record of Judet-Correia et al. 2010: 4.19 mm a day at 23.9 °C and 0.981; nothing at the ends.
#[test]
fn a_mould_grows_best_where_its_record_says() {
    near(mould_mm_per_day(23.9, 0.981), 4.19, 1e-9);
    for (temperature_c, water_activity) in [(-4.4, 0.98), (32.5, 0.98), (20.0, 0.856)] {
        near(mould_mm_per_day(temperature_c, water_activity), 0.0, 0.0);
    }
    assert!(mould_mm_per_day(20.0, 1.0) > 0.0, "pure water does not stop it");
}

proptest! {
    #[test]
    fn a_mould_never_grows_backwards(temperature_c in -20.0..60.0_f64, water_activity in 0.5..1.1_f64) {
        prop_assert!((0.0..=4.19 + 1e-9).contains(&mould_mm_per_day(temperature_c, water_activity)));
    }
}
