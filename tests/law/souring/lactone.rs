//! How fast glucono-delta-lactone splits.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::souring::{gluconic_mol_kg, lactone_rate_per_h, lactone_split_share};

/// Niki 2000, abstract: 17 kcal/mol, 71 kJ/mol; so 10 K warmer splits about 2.5 times as fast near 30 °C.
#[test]
fn ten_degrees_more_than_double_the_rate() {
    near(lactone_rate_per_h(30.0), 0.80, 1e-12);
    let energy: f64 = 17.0 * 4184.0;
    let by_hand = (energy / 8.314 * (1.0 / 293.15 - 1.0 / 303.15)).exp();
    near(lactone_rate_per_h(30.0) / lactone_rate_per_h(20.0), by_hand, 0.01);
}

#[test]
fn half_has_split_after_ln_2_over_the_rate() {
    near(lactone_split_share(30.0, std::f64::consts::LN_2 / 0.80), 0.5, 1e-12);
    assert_eq!([lactone_split_share(30.0, 0.0), lactone_split_share(30.0, -1.0)], [0.0, 0.0]);
    near(gluconic_mol_kg(17.814), 0.1, 1e-12);
}

proptest! {
    #[test]
    fn longer_and_warmer_splits_more(t in 0.0..45.0_f64, hours in 0.0..10.0_f64, more in 0.1..5.0_f64) {
        let split = lactone_split_share(t, hours);
        prop_assert!((0.0..=1.0).contains(&split));
        prop_assert!(lactone_split_share(t, hours + more) > split);
        prop_assert!(lactone_split_share(t + more, hours) >= split);
    }
}
