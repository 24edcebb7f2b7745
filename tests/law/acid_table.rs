//! The table of acid and buffer against the sum of powers that it stands for.

use proptest::prelude::*;
use vatsketch::law::acid_table::AcidTable;
use vatsketch::law::acidity::split_share;
use vatsketch::law::buffering::{Buffer, local_equilibrium};

/// Cheese around each m³ of the water of a dried cheese, kg.
const PER_WATER: f64 = 1074.0 / 0.379;

fn dried() -> (Buffer, AcidTable) {
    let buffer = Buffer::new(0.26, 0.352, 6.5, 1.0);
    let table = AcidTable::new(&buffer, PER_WATER, 4.65);
    (buffer, table)
}

/// The rows of local pH that were computed apart from this program, to the table's own error.
#[test]
fn the_local_ph_of_the_checks_comes_from_the_table_too() {
    let checks: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string("tests/reference/pickling_checks.json").unwrap()).unwrap();
    let rows = checks["local_pH"].as_array().unwrap();
    assert!(rows.len() >= 7);
    for row in rows {
        let of = |key: &str| row[key].as_f64().unwrap();
        let table = AcidTable::new(&dried().0, of("k"), of("pK"));
        let place = table.place(of("C"), of("P"), of("pH"));
        assert!((place.ph - of("pH")).abs() < 1e-6, "{row}: {}", place.ph);
    }
}

#[test]
fn what_the_table_cannot_hold_ends_at_its_ends() {
    let (_, table) = dried();
    for (protons, ph) in [(1e7, 0.5), (-1e7, 9.0)] {
        let place = table.place(500.0, protons, 5.0);
        assert!((place.ph - ph).abs() < 1e-6, "{protons}: {place:?}");
        assert!(place.all_slope < 0.0 && place.whole.is_finite() && place.hydrogen_mol_m3 > 0.0);
    }
    assert!((0.5..=9.0).contains(&table.place(500.0, 700.0, f64::NAN).ph));
}

/// Vinegar alone: the table without a cheese gives the pH that the sum gives.
#[test]
fn a_place_without_cheese_is_a_bath() {
    let table = AcidTable::new(&Buffer::new(0.2, 0.5, 7.0, 0.0), PER_WATER, 4.65);
    let exact = local_equilibrium(832.6, 832.6, None, 4.65, 3.0);
    assert!((table.place(832.6, 832.6, exact.ph).ph - exact.ph).abs() < 1e-6);
}

proptest! {
    /// From its own answer the table errs by less than a millionth; from afar the last step leaves less than a fifty-thousandth.
    #[test]
    fn the_table_gives_what_the_sum_gives(acetate in 0.0..1500.0_f64, ph in 2.2..7.5_f64, guess in 0.6..8.9_f64) {
        let (buffer, table) = dried();
        let protons = acetate * (1.0 - split_share(ph, 4.65)) + 10.0_f64.powf(3.0 - ph) + PER_WATER * buffer.taken_and_slope(ph).0;
        let exact = local_equilibrium(acetate, protons, Some((&buffer, PER_WATER)), 4.65, ph);
        prop_assert!((exact.ph - ph).abs() < 1e-8);
        prop_assert!((table.place(acetate, protons, exact.ph).ph - ph).abs() < 1e-6);
        let place = table.place(acetate, protons, guess);
        prop_assert!((place.ph - ph).abs() < 2e-5, "{} is not {ph}", place.ph);
        prop_assert!((place.whole - (1.0 - exact.split)).abs() < 2e-5);
        prop_assert!((place.hydrogen_mol_m3 / exact.hydrogen_mol_m3 - 1.0).abs() < 1e-4);
        let slope = -std::f64::consts::LN_10 * (acetate * exact.split * (1.0 - exact.split) + exact.hydrogen_mol_m3) - exact.buffer_slope;
        prop_assert!((place.all_slope / slope - 1.0).abs() < 1e-3);
    }

    /// Side by side the places are what they are one by one, to the last bit: near their answer, far from it, and beyond the table.
    #[test]
    fn places_side_by_side_are_those_one_by_one(
        acetate in proptest::array::uniform4(0.0..1500.0_f64),
        protons in proptest::array::uniform4(-2e3..5e3_f64),
        guess in proptest::array::uniform4(0.0..9.5_f64),
        near in proptest::bool::ANY,
    ) {
        let (_, table) = dried();
        let alone = |lane: usize, guess: f64| table.place(acetate[lane], protons[lane], guess);
        let guess = if near { [0, 1, 2, 3].map(|lane| alone(lane, guess[lane]).ph) } else { guess };
        let places = table.places(&acetate, &protons, &guess);
        for (lane, guess) in guess.iter().enumerate() {
            prop_assert_eq!(places.place(lane), alone(lane, *guess));
        }
    }
}
