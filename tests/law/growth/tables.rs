//! Every boundary of the tables on both sides, against the printed grid of an independent computation.

use proptest::prelude::*;
use vatsketch::law::growth::{AcidClass, Control, acid_class, table_b};

const NO: Control = Control::NotRequired;
const PA: Control = Control::AssessmentRequired;

/// Food Code, table B: below 0.88 at any pH; ≤ 0.90 up to 5.0; ≤ 0.92 up to 4.6; above only below 4.2.
#[test]
fn table_b_has_its_published_boundaries() {
    let grid = [
        (0.879_9, [NO, NO, NO, NO, NO, NO]),
        (0.88, [NO, NO, NO, NO, NO, PA]),
        (0.90, [NO, NO, NO, NO, NO, PA]),
        (0.900_1, [NO, NO, NO, PA, PA, PA]),
        (0.92, [NO, NO, NO, PA, PA, PA]),
        (0.920_1, [NO, PA, PA, PA, PA, PA]),
        (0.99, [NO, PA, PA, PA, PA, PA]),
    ];
    for (activity, row) in grid {
        for (ph, wanted) in [4.199, 4.2, 4.6, 4.601, 5.0, 5.001].into_iter().zip(row) {
            assert_eq!(table_b(activity, ph), wanted, "water activity {activity}, pH {ph}");
        }
    }
    assert_eq!(table_b(0.879_9, 6.8), NO);
}

/// The states that the independent computation lists, with what it says by table B.
#[test]
fn the_listed_states_of_a_cheese_have_their_classes() {
    let states = [
        ("fresh", 6.5, 0.981, PA),
        ("dried, mean", 6.5, 0.945, PA),
        ("dried, centre", 6.5, 0.965, PA),
        ("in vinegar, centre", 6.5, 0.975, PA),
        ("in vinegar, equilibrium at 4.2", 4.2, 0.975, PA),
        ("in vinegar, at 4.0", 4.0, 0.975, NO),
        ("evened out too soon", 4.9, 0.975, PA),
    ];
    for (state, ph, activity, b) in states {
        assert_eq!(table_b(activity, ph), b, "{state}");
    }
}

/// 21 CFR 114.3: acid by nature ≤ 4.6; outside ≤ 0.85; acidified ≤ 4.6 at equilibrium; low-acid above both.
#[test]
fn the_classes_of_part_114_have_their_published_boundaries() {
    for (activity, natural, at_rest, class) in [
        (0.97, 4.6, 6.0, AcidClass::Acid),
        (0.80, 4.6, 4.0, AcidClass::Acid),
        (0.97, 4.601, 4.6, AcidClass::Acidified),
        (0.97, 4.601, 4.601, AcidClass::LowAcid),
        (0.85, 6.5, 6.5, AcidClass::LowWaterActivity),
        (0.850_1, 6.5, 6.5, AcidClass::LowAcid),
        (0.850_1, 6.5, 4.6, AcidClass::Acidified),
    ] {
        assert_eq!(acid_class(activity, natural, at_rest), class, "{activity}, {natural}, {at_rest}");
    }
}

#[test]
fn a_figure_that_is_no_number_takes_the_graver_class() {
    let none = f64::NAN;
    assert_eq!((table_b(none, 4.0), table_b(0.5, none), table_b(none, none)), (PA, PA, PA));
    for class in [acid_class(none, 6.5, 4.0), acid_class(0.97, 6.5, none), acid_class(0.97, none, 4.7)] {
        assert_eq!(class, AcidClass::LowAcid);
    }
}

#[test]
fn the_words_claim_no_more_than_the_table() {
    assert!(NO.words().ends_with("this is no proof"));
    assert!(PA.words().contains("laboratory assessment"));
    assert!(AcidClass::LowWaterActivity.words().contains("outside"));
}

proptest! {
    #[test]
    fn drier_or_sourer_food_never_needs_more(
        activity in 0.80..1.0_f64, ph in 3.5..7.0_f64, drier in 0.0..0.2_f64, sourer in 0.0..3.0_f64,
    ) {
        if table_b(activity, ph) == NO {
            prop_assert_eq!(table_b(activity - drier, ph - sourer), NO);
        }
    }
}
