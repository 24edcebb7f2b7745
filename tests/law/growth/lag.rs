//! From a dose to an increase.

use crate::law::tables::near;
use proptest::prelude::*;
use std::f64::consts::LN_10;
use vatsketch::law::growth::{increase_capped_log10, increase_log10};

/// The form in which the chapter gives it, where that does not overflow.
fn as_written(dose: f64, h0: f64) -> f64 {
    ((dose.exp() / h0.exp_m1()).ln_1p() - (1.0 / h0.exp_m1()).ln_1p()) / LN_10
}

#[test]
fn the_form_that_does_not_overflow_is_the_published_one() {
    for dose in [0.0, 0.01, 0.5, 2.0, 2.3, 10.0, 30.0, 100.0] {
        for h0 in [0.1, 1.0, 2.3, 4.0, 20.0] {
            near(increase_log10(dose, h0), as_written(dose, h0), 1e-9);
        }
        near(increase_log10(dose, 0.0), dose / LN_10, 1e-12);
    }
}

/// After a long time the lag costs h0; before it next to nothing has grown.
#[test]
fn a_lag_costs_its_work() {
    near(increase_log10(1000.0, 2.3), (1000.0 - 2.3) / LN_10, 1e-9);
    // ln(1 + M e^−h0) for a small dose.
    near(increase_log10(1e-9, 2.0), 1e-9 * (-2.0_f64).exp() / LN_10, 1e-18);
    near(increase_log10(1000.0, 1000.0), 2.0_f64.log10(), 1e-9);
    assert_eq!((increase_log10(-1.0, 2.0), increase_log10(0.0, 0.0)), (0.0, 0.0));
}

/// Nmax/(1 + (Nmax/N0 − 1) e^−A) by hand: from 10² to half of 10⁸ takes A = ln(10⁶ − 1).
#[test]
fn a_greatest_density_ends_it() {
    near(increase_capped_log10((1e6_f64 - 1.0).ln(), 0.0, 2.0, 8.0), 6.0 - 2.0_f64.log10(), 1e-9);
    near(increase_capped_log10(1000.0, 3.0, 2.0, 8.0), 6.0, 1e-9);
    assert_eq!((increase_capped_log10(50.0, 0.0, 8.0, 8.0), increase_capped_log10(50.0, 0.0, 9.0, 8.0)), (0.0, 0.0));
}

proptest! {
    #[test]
    fn a_lag_and_a_cap_only_take_away(
        dose in 0.0..1000.0_f64, more in 0.0..10.0_f64, h0 in 0.0..30.0_f64, start in 0.0..9.0_f64, most in 6.0..9.0_f64,
    ) {
        let (free, late) = (increase_log10(dose, 0.0), increase_log10(dose, h0));
        prop_assert!(late.is_finite() && 0.0 <= late && late <= free + 1e-12);
        prop_assert!(increase_log10(dose + more, h0) >= late);
        let capped = increase_capped_log10(dose, h0, start, most);
        prop_assert!(0.0 <= capped && capped <= late + 1e-9 && capped <= (most - start).max(0.0));
    }
}
