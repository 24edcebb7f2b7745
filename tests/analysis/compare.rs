//! Two batches side by side.

use crate::design::any::any_design;
use proptest::prelude::*;
use vatsketch::analysis::{Difference, Likeness, compare, differing_choices, from_milk, other_milk};
use vatsketch::batch::batch;
use vatsketch::design::{Design, MilkKind, Value, field};
use vatsketch::units::Units;

fn with(settings: &[(&str, &str)]) -> Design {
    let mut design = Design::default();
    for (key, text) in settings {
        let field = field(key).unwrap();
        field.set(&mut design, field.read(text).unwrap()).unwrap();
    }
    design
}

fn compared(a: &Design, b: &Design) -> Vec<Difference> {
    compare(&batch(a).unwrap(), &batch(b).unwrap())
}

fn of<'a>(all: &'a [Difference], key: &str) -> &'a Difference {
    all.iter().find(|difference| difference.key == key).unwrap_or_else(|| panic!("{key}"))
}

#[test]
fn a_number_that_moves_beyond_its_spread_is_told_with_its_sign() {
    let all = compared(&with(&[]), &with(&[("milk_l", "9"), ("drying_h", "30")]));
    let milk = of(&all, "vat_milk_l");
    assert_eq!(milk.likeness, Likeness::Differs);
    assert!(
        milk.change_text(Units::METRIC).starts_with('+') && milk.change_text(Units::METRIC).ends_with(" L"),
        "{}",
        milk.change_text(Units::METRIC)
    );
    let back = compared(&with(&[("milk_l", "9")]), &with(&[]));
    assert!(of(&back, "vat_milk_l").change_text(Units::METRIC).starts_with('−'));
}

/// Clotting is known to ±30 %: two rennet doses a unit apart cannot be told apart by it, though the rennet to measure can.
#[test]
fn a_difference_below_the_models_spread_is_about_the_same() {
    let all = compared(&with(&[("rennet_dose_imcu_kg", "38")]), &with(&[("rennet_dose_imcu_kg", "40")]));
    let clot = of(&all, "clotting_min");
    assert_eq!((clot.likeness, clot.change_text(Units::METRIC).as_str()), (Likeness::WithinSpread, "≈ same"));
    assert!(clot.change.unwrap() < 0.0 && clot.spread.unwrap() > clot.change.unwrap().abs());
    assert_eq!(of(&all, "rennet_ml").likeness, Likeness::Differs);
}

#[test]
fn counts_are_exact_words_compare_as_words_and_what_one_lacks_is_said() {
    let all = compared(&with(&[]), &with(&[("mould_count", "13"), ("drying_h", "200"), ("heating", "hob")]));
    assert_eq!(of(&all, "cheese_count").change_text(Units::METRIC), "+1");
    let firmness = of(&all, "firmness");
    assert_eq!((firmness.change, firmness.change_text(Units::METRIC).as_str()), (None, "differs"));
    let bath = of(&all, "bath_most_c");
    assert_eq!((bath.change_text(Units::METRIC).as_str(), bath.b_text(Units::METRIC).as_str()), ("only in A", "–"));
    assert_eq!(of(&all, "milk_ph").change_text(Units::METRIC), "same");
    let failed = compared(&with(&[("mould_count", "1")]), &with(&[]));
    assert_eq!(of(&failed, "cheese_count").change_text(Units::METRIC), "only in B");
    assert!(failed.windows(2).all(|pair| pair[0].stage <= pair[1].stage));
}

#[test]
fn the_same_vat_from_sheeps_milk_differs_in_its_milk_alone_and_comes_back() {
    let cow = with(&[("milk_l", "4.5"), ("ph_known", "measured")]);
    let sheep = from_milk(&cow, other_milk(cow.milk.milk_kind));
    let choices = differing_choices(&cow, &sheep);
    assert_eq!(choices.iter().map(|choice| choice.field.key).collect::<Vec<_>>(), ["milk_kind"]);
    assert_eq!((choices[0].a, choices[0].b, choices[0].in_use), (Value::Choice("cow"), Value::Choice("sheep"), true));
    let back = from_milk(&sheep, other_milk(sheep.milk.milk_kind));
    assert_eq!((back.milk, MilkKind::Cow), (cow.milk, back.milk.milk_kind));
}

#[test]
fn a_choice_without_effect_in_either_design_is_told_apart() {
    let choices = differing_choices(&with(&[]), &with(&[("day_temperature_c", "30"), ("milk_l", "7")]));
    let in_use: Vec<_> = choices.iter().map(|choice| (choice.field.key, choice.in_use)).collect();
    assert_eq!(in_use, [("milk_l", true), ("day_temperature_c", false)]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn a_design_with_itself_shows_no_difference_anywhere(design in any_design(0.3)) {
        prop_assert!(differing_choices(&design, &design).is_empty());
        for difference in compared(&design, &design) {
            prop_assert_eq!(difference.likeness, Likeness::Same, "{}", difference.key);
            prop_assert!(difference.change.is_none_or(|change| change == 0.0), "{}", difference.key);
            prop_assert_eq!(difference.change_text(Units::METRIC), "same");
        }
    }

    #[test]
    fn swapping_two_designs_negates_every_difference(one in any_design(0.15), other in any_design(0.15)) {
        let (a, b) = (batch(&one).unwrap(), batch(&other).unwrap());
        let (there, back) = (compare(&a, &b), compare(&b, &a));
        prop_assert_eq!(there.len(), back.len());
        for difference in &there {
            let swapped = of(&back, difference.key);
            prop_assert_eq!(difference.change, swapped.change.map(|change| -change), "{}", difference.key);
            prop_assert_eq!(difference.likeness, swapped.likeness, "{}", difference.key);
            prop_assert_eq!(difference.spread, swapped.spread, "{}", difference.key);
            prop_assert_eq!((&difference.a, &difference.b), (&swapped.b, &swapped.a), "{}", difference.key);
        }
        let (there, back) = (differing_choices(&one, &other), differing_choices(&other, &one));
        prop_assert_eq!(
            there.iter().map(|choice| (choice.field.key, choice.a, choice.b)).collect::<Vec<_>>(),
            back.iter().map(|choice| (choice.field.key, choice.b, choice.a)).collect::<Vec<_>>()
        );
    }

    #[test]
    fn the_choices_that_differ_are_all_that_parts_two_designs(one in any_design(0.3), other in any_design(0.3)) {
        let mut copied = one.clone();
        for choice in differing_choices(&one, &other) {
            choice.field.set(&mut copied, choice.b).unwrap();
        }
        prop_assert_eq!(copied, Design { title: one.title, note: one.note, ..other });
    }
}
