//! The germs and what the records say of them.

use std::collections::BTreeSet;
use vatsketch::law::growth::{Germ, GrowthLaw};

/// Section 2 of the chapter: h0, greatest density, rate where it grows best and its range.
#[test]
fn the_numbers_are_those_of_the_chapter() {
    let table = [
        ("listeria", 2.0, 8.0, 0.742, (0.41, 1.3)),
        ("staphylococcus", 2.3, 8.5, 1.97, (1.2, 3.0)),
        ("salmonella", 2.0, 8.5, 1.195, (0.7, 2.14)),
        ("coli", 2.0, 8.5, 2.3, (1.4, 4.3)),
        ("cereus", 3.0, 7.0, 2.0, (0.5, 5.6)),
        ("cold_botulinum", 0.0, 8.0, 0.3, (0.1, 0.9)),
    ];
    let ours = Germ::ALL.map(|germ| {
        let rate = GrowthLaw::rate_record(germ);
        (germ.key(), germ.h0(), germ.most_log(), rate.value, rate.range)
    });
    assert_eq!(ours, table);
}

/// Section 2 of the chapter, inhibiting amounts, mmol per kg of water.
#[test]
fn the_inhibiting_amounts_are_those_of_the_chapter() {
    let ours = Germ::ALL.map(|germ| {
        let law = GrowthLaw::of(germ);
        (law.lactic_mm, law.acetic_mm)
    });
    assert_eq!(
        ours,
        [
            (Some(3.79), Some(10.3)),
            (Some(30.0), Some(15.0)),
            (Some(11.0), Some(14.0)),
            (Some(11.0), Some(14.0)),
            (Some(4.0), Some(9.0)),
            (None, None)
        ]
    );
}

#[test]
fn every_germ_has_a_key_and_a_name_of_its_own() {
    assert_eq!(Germ::ALL.map(Germ::key).into_iter().collect::<BTreeSet<_>>().len(), 6);
    assert_eq!(Germ::ALL.map(Germ::name).into_iter().collect::<BTreeSet<_>>().len(), 6);
}
