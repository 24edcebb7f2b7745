//! How much of an acid splits, and sums of acids.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::acidity::split_share;
use vatsketch::law::souring::{ACETIC_PK, Acid, AcidAmounts};

/// An acid of one step splits by the law of mass action, as the laws of vinegar have it.
#[test]
fn one_step_splits_as_vinegar_does() {
    let [pk] = ACETIC_PK.coefficients;
    for ph in [2.0, 4.0, 4.76, 5.5, 8.0] {
        near(Acid::Acetic.given_off(ph), split_share(ph, pk), 1e-12);
    }
}

/// Half-way between two pKs that lie far apart, a whole number has been given off; half of a step at its pK. Citric acid has steps
/// 1.6 apart, so within a tenth.
#[test]
fn citric_acid_gives_off_three_in_turn() {
    near(Acid::Citric.given_off(0.0), 0.0, 0.01);
    near(Acid::Citric.given_off(3.945), 1.0, 0.1);
    near(Acid::Citric.given_off(5.58), 2.0, 0.1);
    near(Acid::Citric.given_off(10.0), 3.0, 0.01);
}

/// Atomic masses: C 12.011, H 1.008, O 15.999; the tolerance is the last digit of the records.
#[test]
fn molar_masses_are_sums_of_atoms() {
    let of = |c: f64, h: f64, o: f64| 12.011 * c + 1.008 * h + 15.999 * o;
    let sums = [of(3.0, 6.0, 3.0), of(2.0, 4.0, 2.0), of(6.0, 8.0, 7.0), of(6.0, 12.0, 7.0)];
    for (acid, sum) in Acid::ALL.into_iter().zip(sums) {
        near(acid.g_per_mol(), sum, 0.01);
    }
}

#[test]
fn amounts_add_up_by_acid() {
    let sum = Acid::ALL.into_iter().map(|acid| AcidAmounts::of(acid, 0.01)).fold(AcidAmounts::default(), |sum, of| sum + of) * 2.0;
    assert_eq!(Acid::ALL.map(|acid| sum.amount(acid)), [0.02; 4]);
    assert!(AcidAmounts::default().is_none() && !sum.is_none());
}

proptest! {
    #[test]
    fn more_is_given_off_at_a_higher_ph(ph in 0.0..12.0_f64, more in 0.001..1.0_f64) {
        for acid in Acid::ALL {
            let (lower, higher) = (acid.given_off(ph), acid.given_off(ph + more));
            prop_assert!((0.0..=3.0).contains(&lower) && lower <= higher, "{acid:?} {lower} {higher}");
        }
    }
}
