//! Calcium that souring dissolves.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::souring::{colloidal_calcium_left, curd_calcium_share};

/// Fox and McSweeney, page seen: all dissolved below about 4.9. Between the points straight, worked out by hand.
#[test]
fn the_casein_loses_all_of_it_below_4_9() {
    assert_eq!([colloidal_calcium_left(4.9), colloidal_calcium_left(4.0), colloidal_calcium_left(7.0)], [0.0, 0.0, 1.0]);
    near(colloidal_calcium_left(5.5), 0.50, 1e-12);
    near(colloidal_calcium_left(6.525), 0.975, 1e-12);
    assert!(colloidal_calcium_left(f64::NAN).is_nan());
}

/// 0.67 + 0.12 × 0.33 at the pH of milk; only the whey's 0.12 where all is dissolved.
#[test]
fn the_curd_keeps_what_the_casein_and_its_own_whey_hold() {
    near(curd_calcium_share(6.65), 0.7096, 1e-9);
    near(curd_calcium_share(4.6), 0.12, 1e-12);
}

proptest! {
    #[test]
    fn sourer_draining_never_keeps_more(ph in 4.0..7.0_f64, less in 0.0..1.0_f64) {
        prop_assert!(curd_calcium_share(ph - less) <= curd_calcium_share(ph));
        prop_assert!((0.0..=1.0).contains(&colloidal_calcium_left(ph)));
    }
}
