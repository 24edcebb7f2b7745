//! Conditions between two rows, and what holds growth back.

use super::plain;
use crate::law::tables::near;
use vatsketch::law::growth::{Conditions, Germ, GrowthFactors, GrowthLaw, HeldBackBy};

#[test]
fn half_way_is_the_mean_of_everything() {
    let there = Conditions { temperature_c: 20.0, ph: 5.0, water_activity: 0.96, lactic_mm: 40.0, acetic_mm: 8.0 };
    let half = plain(10.0, 6.0, 1.0).towards(&there, 0.5);
    for (got, want) in
        [(half.temperature_c, 15.0), (half.ph, 5.5), (half.water_activity, 0.98), (half.lactic_mm, 20.0), (half.acetic_mm, 4.0)]
    {
        near(got, want, 1e-12);
    }
}

#[test]
fn the_smallest_factor_is_named() {
    let one = GrowthFactors { temperature: 1.0, ph: 1.0, water: 1.0, acids: 1.0, interaction: 1.0 };
    let all = [
        (one, HeldBackBy::Nothing, "nothing"),
        (GrowthFactors { temperature: 0.5, ph: 0.6, ..one }, HeldBackBy::Temperature, "temperature"),
        (GrowthFactors { ph: 0.2, water: 0.9, ..one }, HeldBackBy::Acidity, "pH"),
        (GrowthFactors { water: 0.0, acids: 0.1, ..one }, HeldBackBy::Water, "water activity"),
        (GrowthFactors { acids: 0.3, ph: 0.4, ..one }, HeldBackBy::Acids, "acid (its undissociated part)"),
        (GrowthFactors { interaction: 0.0, ph: 0.4, ..one }, HeldBackBy::Together, "several conditions together"),
    ];
    for (factors, held, words) in all {
        assert_eq!((factors.held_back_by(), held.words()), (held, words));
    }
    near(GrowthFactors { temperature: 0.5, ph: 0.5, water: 0.5, acids: 0.5, interaction: 0.5 }.product(), 0.031_25, 1e-15);
}

/// The rows G023, G039 and the cold of the table: what stops Listeria in each.
#[test]
fn a_place_names_what_holds_its_germ_back() {
    let listeria = GrowthLaw::of(Germ::Listeria);
    let held = |at: Conditions| listeria.factors(&at).held_back_by();
    assert_eq!(held(plain(4.0, 6.5, 0.985)), HeldBackBy::Temperature);
    assert_eq!(held(plain(4.0, 5.0, 0.985)), HeldBackBy::Together);
    assert_eq!(held(plain(37.0, 6.5, 0.92)), HeldBackBy::Water);
    assert_eq!(held(Conditions { lactic_mm: 200.0, ..plain(37.0, 5.2, 0.985) }), HeldBackBy::Acids);
}
