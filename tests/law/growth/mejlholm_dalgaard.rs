//! The whole model for chilled food, beyond the rows of the table.

use super::plain;
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::growth::{Chilled, Conditions, mejlholm_dalgaard};

/// At 25 °C, in pure water and far from the least pH nothing holds growth back: the reference rate, 0.419 and 0.583 an hour.
#[test]
fn the_best_is_the_reference_rate() {
    for (whose, reference) in [(Chilled::Listeria, 0.419), (Chilled::LacticBacteria, 0.583)] {
        near(mejlholm_dalgaard(whose, &plain(25.0, 40.0, 1.0), 0.0), reference, 1e-12);
    }
}

/// Each limit of the record, reached by itself: −2.83 °C, 0.923, pH 4.97; 3.79, 10.3 and 2.119 mmol/kg at a pH where all is undissociated.
#[test]
fn nothing_grows_at_a_limit() {
    let at = plain(10.0, 6.5, 0.985);
    let listeria = |at: &Conditions, citric| mejlholm_dalgaard(Chilled::Listeria, at, citric);
    assert!(listeria(&at, 0.0) > 0.0);
    for at in [plain(-2.83, 6.5, 0.985), plain(10.0, 6.5, 0.923), plain(10.0, 4.97, 0.985)] {
        near(listeria(&at, 0.0), 0.0, 0.0);
    }
    let half = 2.0_f64;
    for (lactic_mm, acetic_mm, citric_mm) in [(half * 3.79, 0.0, 0.0), (0.0, half * 10.3, 0.0), (0.0, 0.0, half * 2.119)] {
        // At pH 5 the share of each acid is 1/(1 + 10^(5 − pK)).
        let share = |pk: f64| 1.0 + 10.0_f64.powf(5.0 - pk);
        let sour = Conditions { lactic_mm: lactic_mm * share(3.86), acetic_mm: acetic_mm * share(4.76), ..plain(20.0, 5.0, 0.99) };
        near(listeria(&sour, citric_mm * share(3.13)), 0.0, 0.0);
    }
}

#[test]
fn citric_acid_hinders_too() {
    let at = plain(10.0, 6.0, 0.985);
    assert!(mejlholm_dalgaard(Chilled::Listeria, &at, 200.0) < mejlholm_dalgaard(Chilled::Listeria, &at, 0.0));
}

proptest! {
    #[test]
    fn a_rate_lies_between_nothing_and_the_reference(
        at in prop::array::uniform4(-10.0..60.0_f64), water_activity in 0.8..1.0_f64, citric_mm in -1.0..200.0_f64,
    ) {
        let [temperature_c, tenfold_ph, lactic_mm, acetic_mm] = at;
        // The model has no fastest temperature, so it is held to where it holds.
        let at = Conditions { temperature_c: temperature_c.min(25.0), ph: 0.2 * tenfold_ph, water_activity, lactic_mm, acetic_mm };
        for (whose, reference) in [(Chilled::Listeria, 0.419), (Chilled::LacticBacteria, 0.583)] {
            let rate = mejlholm_dalgaard(whose, &at, citric_mm);
            prop_assert!((0.0..=reference).contains(&rate), "{}", rate);
        }
    }
}

#[test]
fn what_is_no_number_holds_nothing_back() {
    let none = f64::NAN;
    let nothing_known = Conditions { temperature_c: none, ph: none, water_activity: none, lactic_mm: none, acetic_mm: none };
    near(mejlholm_dalgaard(Chilled::Listeria, &nothing_known, none), 0.419, 1e-12);
}
