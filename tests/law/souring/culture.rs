//! The laws of the cultures, and their edges.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::souring::{Beyond, CULTURE_LAG_WORK, Culture, CultureLaw, MESOPHILIC_RATE, MIXED_RATE, THERMOPHILIC_RATE};

#[test]
fn each_grows_best_at_its_own_warmth_and_ph() {
    let rates = [MESOPHILIC_RATE.value, MIXED_RATE.value, THERMOPHILIC_RATE.value];
    for (culture, rate) in Culture::ALL.into_iter().zip(rates) {
        let law = CultureLaw::of(culture);
        let ([coldest, best_c, warmest], [_, best_ph, _]) = (law.warmth_c, law.sourness);
        near(law.growth_per_h(best_c, best_ph), rate, 1e-12);
        assert_eq!([law.growth_per_h(coldest, best_ph), law.growth_per_h(warmest, best_ph)], [0.0, 0.0], "{culture:?}");
        assert_eq!(law.h0, CULTURE_LAG_WORK.value);
        near(law.faster(1.5).growth_per_h(21.0, 6.0), 1.5 * law.growth_per_h(21.0, 6.0), 1e-12);
    }
}

/// Rosso's form with n = 2 at 20 °C, worked out by hand for 5, 33 and 40.5 °C: (−20.5)(15)²/{28 [28(−13) + 7.5 (−2)]} = 0.4346.
#[test]
fn warmth_slows_as_the_published_form_says() {
    near(CultureLaw::of(Culture::Mesophilic).warmth_factor(20.0), 4612.5 / (28.0 * 379.0), 1e-12);
}

/// Above 45 °C the rate of 45 °C stands as long as the culture grows at all, and below pH 4.2 that of 4.2.
#[test]
fn beyond_the_law_the_rate_of_its_edge_stands() {
    let hot = CultureLaw::of(Culture::Thermophilic);
    for temperature_c in [45.1, 48.0, 51.9] {
        assert_eq!(hot.growth_per_h(temperature_c, 6.0).to_bits(), hot.growth_per_h(45.0, 6.0).to_bits());
    }
    assert_eq!([hot.warmth_factor(52.0), hot.warmth_factor(90.0)], [0.0, 0.0]);
    assert_eq!(hot.growth_per_h(40.0, 4.05).to_bits(), hot.growth_per_h(40.0, 4.2).to_bits());
    assert_eq!(hot.growth_per_h(40.0, 4.0), 0.0);
    assert_eq!(CultureLaw::of(Culture::Mesophilic).growth_per_h(46.0, 6.0), 0.0);
    assert_eq!(Beyond::at(46.0, 4.0), Some(Beyond::TooHot));
    assert_eq!(Beyond::at(30.0, 4.1), Some(Beyond::TooSour));
    assert_eq!(Beyond::at(30.0, 5.0), None);
}

proptest! {
    #[test]
    fn a_rate_is_never_negative_nor_above_the_best(t in -10.0..80.0_f64, ph in 1.0..10.0_f64) {
        for culture in Culture::ALL {
            let law = CultureLaw::of(culture);
            let rate = law.growth_per_h(t, ph);
            prop_assert!((0.0..=law.rate_per_h * (1.0 + 1e-12)).contains(&rate), "{culture:?}: {rate}");
        }
    }
}
