//! Growth beside a starter.

use super::{plain, steady};
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::growth::{
    Germ, GrowthLaw, LogisticCrowd, Start, beside_crowd, dose_along, increase_capped_log10, increase_log10,
};

const START: Start = Start { start_log: 3.0, most_log: 8.5, h0: 2.3 };

/// Half full when the crowd has grown by ln(most/start − 1): 10, from 10⁸/11.
#[test]
fn a_logistic_crowd_is_half_full_in_its_middle() {
    let crowd = LogisticCrowd { start_log: 7.0, rate_per_h: 1.0, most_per_g: 1.1e8 };
    near(crowd.share(10.0_f64.ln()), 0.5, 1e-12);
    near(crowd.share(0.0), 1.0 / 11.0, 1e-12);
    near(crowd.share(100.0), 1.0, 1e-12);
    near(LogisticCrowd { start_log: 9.0, ..crowd }.share(0.0), 1.0, 0.0);
}

#[test]
fn a_full_place_lets_nothing_grow_and_an_empty_one_everything() {
    let law = GrowthLaw::of(Germ::Staphylococcus);
    let rate = |at: &_| law.rate_per_h(at);
    let history = steady(24.0, plain(25.0, 6.6, 0.992));
    near(beside_crowd(rate, &history, |_| 1.0, &START), 0.0, 0.0);
    let alone = beside_crowd(rate, &history, |_| 0.0, &START);
    near(alone, increase_capped_log10(dose_along(rate, &history), 2.3, 3.0, 8.5), 0.01);
    near(beside_crowd(rate, &[], |_| 0.0, &START), 0.0, 0.0);
}

/// Section 3 of the chapter: published at 25 °C for 10^6.6 cells 0.88 log; the law 1.16 with and 2.11 without lag (there for another pH).
#[test]
fn the_crowd_counts_beside_the_acid() {
    let law = GrowthLaw::of(Germ::Staphylococcus);
    let history = steady(12.0, plain(25.0, 6.6, 0.992));
    let crowd = LogisticCrowd { start_log: 6.6, rate_per_h: 0.85, most_per_g: 1.5e9 };
    let beside = beside_crowd(|at| law.rate_per_h(at), &history, |at_h| crowd.share(at_h), &START);
    let alone = increase_log10(dose_along(|at| law.rate_per_h(at), &history), START.h0);
    assert!(beside > 0.88 && beside < alone, "{beside} {alone}");
}

proptest! {
    #[test]
    fn no_crowd_lets_more_grow_than_none_and_no_lag_helps(
        share in 0.0..1.0_f64, h0 in 0.0..4.0_f64, start_log in 0.0..9.0_f64, temperature_c in 5.0..45.0_f64,
    ) {
        let law = GrowthLaw::of(Germ::Staphylococcus);
        let history = steady(6.0, plain(temperature_c, 6.5, 0.985));
        let grown = |share: f64, h0: f64| {
            beside_crowd(|at| law.rate_per_h(at), &history, |_| share, &Start { start_log, h0, ..START })
        };
        prop_assert!(grown(share, h0) <= grown(0.0, h0) && grown(0.0, h0) <= grown(0.0, 0.0));
        prop_assert!(grown(share, h0) >= 0.0 && grown(0.0, 0.0) <= (8.5 - start_log).max(0.0) + 1e-12);
    }
}
