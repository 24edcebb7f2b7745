//! The pH of milk and curd with acids in it.

use super::{curd, milk};
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::buffering::Buffer;
use vatsketch::law::souring::{Acid, AcidAmounts, SOURING_BUFFER_SCALE, Sourable};
use vatsketch::numeric::{Bracket, brent};

#[test]
fn without_acid_it_keeps_its_ph_and_not_a_number_stays_one() {
    assert_eq!([milk().ph_of(&AcidAmounts::default()), curd().ph_of(&AcidAmounts::default())], [6.65, 6.5]);
    assert_eq!(milk().start_ph(), 6.65);
    assert!(milk().ph_of(&AcidAmounts::of(Acid::Citric, f64::NAN)).is_nan());
    assert!(milk().acid_for(f64::NAN, Acid::Lactic).is_nan());
    assert_eq!([milk().acid_for(6.65, Acid::Lactic), milk().acid_for(7.0, Acid::Citric)], [0.0, 0.0]);
}

/// The set yoghurts of the table, 57.7 mmol/kg at pH 4.54, ask for a buffer of about 0.72; the range of the record reaches there.
#[test]
fn the_range_of_the_buffer_reaches_the_measured_yoghurts() {
    let (least, most) = SOURING_BUFFER_SCALE.range;
    let ph = |scale: f64| Sourable::new(0.0395, 0.86, 6.50, scale).ph_of(&AcidAmounts::of(Acid::Lactic, 0.0577));
    assert!(ph(least) < 4.54 && 4.54 < ph(most), "{} {}", ph(least), ph(most));
    near(ph(0.72), 4.54, 0.02);
}

#[test]
fn acid_that_is_there_already_is_not_wanted_again() {
    let already = AcidAmounts::of(Acid::Lactic, 0.01);
    let more = milk().acid_for_beside(5.6, Acid::Citric, &already);
    near(milk().ph_of(&(already + AcidAmounts::of(Acid::Citric, more))), 5.6, 1e-7);
    assert_eq!(milk().acid_for_beside(6.5, Acid::Citric, &already), 0.0);
}

fn amounts() -> impl Strategy<Value = AcidAmounts> {
    (0.0..0.3_f64, 0.0..0.3_f64, 0.0..0.1_f64, 0.0..0.2_f64).prop_map(|(lactic, acetic, citric, gluconic)| AcidAmounts {
        lactic,
        acetic,
        citric,
        gluconic,
    })
}

proptest! {
    #[test]
    fn the_amount_for_a_ph_leads_to_it(ph in 3.8..6.3_f64, protein in 0.01..0.3_f64, water in 0.3..0.95_f64, scale in 0.65..1.2_f64) {
        let matter = Sourable::new(protein, water, 6.6, scale);
        for acid in Acid::ALL {
            let got = matter.ph_of(&AcidAmounts::of(acid, matter.acid_for(ph, acid)));
            prop_assert!((got - ph).abs() < 1e-7, "{acid:?}: {got} for {ph}");
        }
    }

    /// Against a general root finder on the balance, written out anew.
    #[test]
    fn the_ph_is_the_root_of_the_balance_from_any_guess(acids in amounts(), guess in 0.0..9.0_f64, protein in 0.0..0.3_f64) {
        prop_assume!(acids.lactic > 1e-4);
        let (water, buffer) = (0.8, Buffer::new(protein, 0.8, 6.6, 1.0));
        let balance = |ph: f64| {
            let given: f64 = Acid::ALL.into_iter().map(|acid| acids.amount(acid) * acid.given_off(ph)).sum();
            given - buffer.taken_and_slope(ph).0 - water * 10.0_f64.powf(-ph)
        };
        let root = brent(balance, Bracket { from: 1.0, to: 6.6 }, 1e-12).unwrap();
        let got = Sourable::new(protein, water, 6.6, 1.0).ph_near(&acids, guess);
        prop_assert!((got - root).abs() < 1e-7, "{got} is not {root}");
    }

    #[test]
    fn more_acid_is_sourer_and_more_buffer_less(acids in amounts(), more in 1e-4..0.1_f64, stronger in 1.05..1.8_f64) {
        let (weak, strong) = (Sourable::new(0.1, 0.7, 6.5, 0.65), Sourable::new(0.1, 0.7, 6.5, 0.65 * stronger));
        let ph = weak.ph_of(&acids);
        prop_assert!((1.0..=6.5).contains(&ph));
        prop_assert!(strong.ph_of(&acids) >= ph);
        for acid in Acid::ALL {
            prop_assert!(weak.ph_of(&(acids + AcidAmounts::of(acid, more))) < ph);
        }
    }

    /// A trace of acid, less than the free hydrogen ions of milk itself, moves nothing beyond its own pH.
    #[test]
    fn a_trace_of_acid_leaves_the_ph_alone(trace in 1e-15..1e-7_f64) {
        let ph = milk().ph_of(&AcidAmounts::of(Acid::Lactic, trace));
        prop_assert!((6.649..=6.65).contains(&ph), "{ph}");
    }
}
