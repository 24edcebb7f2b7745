//! How souring changes clotting and drip.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::rennet::{CLOTTING_LEAST, clotting_min};
use vatsketch::law::souring::{clots_where_it_falls, clotting_factor, drip_factor};

/// Six tenths of pH, each × 0.85.
#[test]
fn the_drip_quickens_down_to_ph_6() {
    assert_eq!([drip_factor(6.65), drip_factor(6.6), drip_factor(9.0)], [1.0; 3]);
    near(drip_factor(6.0), 0.85_f64.powi(6), 1e-9);
    near(drip_factor(4.6), 0.85_f64.powi(6), 1e-9);
    assert!(drip_factor(f64::NAN).is_nan());
}

/// The law of rennet, in the part that rennet shortens, down to pH 6.0; below, that of 6.0.
#[test]
fn clotting_quickens_as_the_law_of_rennet_says() {
    let rennet = |ph: f64| clotting_min(40.0, 31.0, ph, 0.015) - CLOTTING_LEAST.value;
    for ph in [6.0, 6.3, 6.65, 6.8] {
        near(clotting_factor(ph), rennet(ph) / rennet(6.65), 1e-9);
    }
    assert_eq!(clotting_factor(5.5).to_bits(), clotting_factor(6.0).to_bits());
    assert!(clotting_factor(f64::NAN).is_nan());
}

#[test]
fn acid_clots_where_it_falls_only_in_warm_milk_and_far_down() {
    assert!(clots_where_it_falls(20.0, 5.2));
    assert!(!clots_where_it_falls(15.0, 5.0) && !clots_where_it_falls(20.0, 5.3));
}

proptest! {
    #[test]
    fn sourer_never_clots_or_drips_slower(ph in 4.0..7.0_f64, less in 0.0..1.0_f64) {
        prop_assert!(drip_factor(ph - less) <= drip_factor(ph));
        prop_assert!(clotting_factor(ph - less) <= clotting_factor(ph));
    }
}
