//! The rate at a place, beyond the rows of the table.

use super::plain;
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::growth::{Conditions, Germ, GrowthLaw};

#[test]
fn a_law_may_be_made_faster_and_its_acids_changed() {
    let law = GrowthLaw::of(Germ::Staphylococcus);
    let sour = Conditions { lactic_mm: 60.0, ..plain(30.0, 5.0, 0.985) };
    near(law.faster(1.5).rate_per_h(&sour), 1.5 * law.rate_per_h(&sour), 1e-12);
    let (free, hardy) = (law.without_lactic().rate_per_h(&sour), law.inhibited_at(60.0, 15.0).rate_per_h(&sour));
    assert!(law.rate_per_h(&sour) < hardy && hardy < free);
    near(free, law.rate_per_h(&plain(30.0, 5.0, 0.985)), 1e-12);
    assert!(law.inhibited_at(1.0, 15.0).rate_per_h(&sour) == 0.0);
}

/// Section 0.2 of the chapter: at 38 to 40 °C, pH 6.45, water activity 0.97, S. aureus gains 1 log in 1.6 h; 1.59 and 1.52 by the independent program.
#[test]
fn warm_drying_is_where_staphylococci_grow_best() {
    let law = GrowthLaw::of(Germ::Staphylococcus);
    for (temperature_c, hours) in [(38.0, 1.59), (40.0, 1.52)] {
        near(std::f64::consts::LN_10 / law.rate_per_h(&plain(temperature_c, 6.45, 0.97)), hours, 0.005);
    }
}

/// Section 0.6 of the chapter, 48 h at 40 °C by the pH at its beginning, without the judged amount of lactic acid: 24/21/19/15 and 12 at 4.6.
#[test]
fn acid_alone_does_not_stop_staphylococci_in_the_warm() {
    let law = GrowthLaw::of(Germ::Staphylococcus).without_lactic();
    let log = |ph| 48.0 * law.rate_per_h(&plain(40.0, ph, 0.97)) / std::f64::consts::LN_10;
    for (ph, wanted) in [(5.4, 24.0), (5.2, 21.0), (5.0, 19.0), (4.8, 15.0), (4.6, 12.0)] {
        // The chapter follows the temperature and the water activity of the cheese.
        assert!((log(ph) / wanted - 1.0).abs() < 0.15, "{ph}: {} against {wanted}", log(ph));
    }
}

/// Undissociated lactic acid of a soured curd, section 2 of the chapter: 3.8 mmol/kg at pH 5.4 stops the default Listeria, 5.6 at 5.3 the average strain.
#[test]
fn a_soured_curd_stops_listeria_where_the_chapter_says() {
    let total = |undissociated: f64, ph: f64| undissociated * (1.0 + 10.0_f64.powf(ph - 3.86));
    let law = GrowthLaw::of(Germ::Listeria);
    let at = |ph, undissociated| Conditions { lactic_mm: total(undissociated, ph), ..plain(30.0, ph, 0.985) };
    assert!(law.rate_per_h(&at(5.4, 3.8)) == 0.0 && law.rate_per_h(&at(5.5, 2.5)) > 0.0);
    let average = law.inhibited_at(5.0, 19.0);
    assert!(average.rate_per_h(&at(5.3, 5.6)) == 0.0 && average.rate_per_h(&at(5.4, 3.8)) > 0.0);
}

#[test]
fn what_is_no_number_holds_nothing_back() {
    let none = f64::NAN;
    let nothing_known = Conditions { temperature_c: none, ph: none, water_activity: none, lactic_mm: none, acetic_mm: none };
    for germ in Germ::ALL {
        let law = GrowthLaw::of(germ);
        near(law.rate_per_h(&nothing_known), law.best_rate_per_h, 1e-12);
    }
}

/// Any number at all, the odd ones among them.
fn any() -> impl Strategy<Value = f64> {
    prop_oneof![4 => -20.0..60.0_f64, 4 => 0.8..1.05_f64, 1 => prop::num::f64::ANY]
}

proptest! {
    #[test]
    fn every_factor_and_rate_stays_in_bounds_whatever_comes(
        temperature_c in any(), ph in any(), water_activity in any(), lactic_mm in any(), acetic_mm in any(),
    ) {
        let at = Conditions { temperature_c, ph, water_activity, lactic_mm, acetic_mm };
        for germ in Germ::ALL {
            let law = GrowthLaw::of(germ);
            let f = law.factors(&at);
            for factor in [f.temperature, f.ph, f.water, f.acids, f.interaction] {
                prop_assert!((0.0..=1.0).contains(&factor), "{:?}: {:?}", germ, f);
            }
            let rate = law.rate_per_h(&at);
            prop_assert!((0.0..=law.best_rate_per_h).contains(&rate), "{:?}: {}", germ, rate);
            prop_assert!((rate - law.best_rate_per_h * f.product()).abs() < 1e-12);
        }
    }

    #[test]
    fn more_acid_never_helps(
        temperature_c in 0.0..45.0_f64, ph in 4.2..7.0_f64, aw in 0.9..1.0_f64, acid in 0.0..200.0_f64, more in 0.0..200.0_f64,
    ) {
        for germ in Germ::ALL {
            let rate = |lactic_mm, acetic_mm| {
                GrowthLaw::of(germ).rate_per_h(&Conditions { lactic_mm, acetic_mm, ..plain(temperature_c, ph, aw) })
            };
            prop_assert!(rate(acid + more, acid) <= rate(acid, acid) && rate(acid, acid + more) <= rate(acid, acid));
        }
    }
}
