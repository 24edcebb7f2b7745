//! The factors by which one condition holds growth back.

use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::growth::{Cardinal, Distances, Power, hindered, interaction, line, undissociated};

const VALUES: Cardinal = Cardinal { least: 4.0, best: 7.0, most: 9.0 };

/// The pH form that the chapter gives, worked out by another way: (x − min)(x − max)/[(x − min)(x − max) − (x − opt)²].
#[test]
fn the_model_of_power_one_is_its_other_form() {
    for x in [4.2, 5.0, 6.1, 7.0, 8.3, 8.9] {
        let between = (x - 4.0) * (x - 9.0);
        near(VALUES.factor(x, Power::One), between / (between - (x - 7.0_f64).powi(2)), 1e-12);
    }
}

#[test]
fn the_ends_are_nothing_and_the_best_is_one() {
    for power in [Power::One, Power::Two] {
        assert_eq!([3.9, 4.0, 9.0, 20.0, f64::INFINITY, f64::NEG_INFINITY].map(|x| VALUES.factor(x, power)), [0.0; 6]);
        near(VALUES.factor(7.0, power), 1.0, 1e-12);
    }
    assert_eq!([4.0, 5.5, 7.0, 8.9, 9.0].map(|x| VALUES.squared(x)), [0.0, 0.25, 1.0, 1.0, 0.0]);
    assert_eq!([0.9, 0.95, 0.975, 1.0, 1.2].map(|aw| (100.0 * line(aw, 0.95)).round()), [0.0, 0.0, 50.0, 100.0, 100.0]);
}

/// By hand: at the pK half is split; one unit above a tenth to an eleventh is left.
#[test]
fn acids_split_and_hinder() {
    near(undissociated(22.0, 4.76, 4.76), 11.0, 1e-12);
    near(undissociated(22.0, 5.76, 4.76), 2.0, 1e-12);
    assert_eq!(
        [(0.0, 1.0), (1.0, 0.75), (4.0, 0.0), (9.0, 0.0), (-1.0, 1.0)].map(|(acid, _)| hindered(acid, 4.0, 1.0)),
        [1.0, 0.75, 0.0, 0.0, 1.0]
    );
    near(hindered(1.0, 4.0, 0.5), 0.5, 1e-12);
}

/// By hand: ψ of 0.5 and 0.5 is (0.5/0.5 + 0.5/0.5)/2 = 1, none; of 0.4 and 0.2 it is (0.5 + 1/3)/2 = 0.41667, all.
#[test]
fn the_interaction_begins_at_half_and_ends_at_one() {
    near(interaction(&[0.5, 0.5]), 0.0, 1e-12);
    near(interaction(&[0.4, 0.2]), 1.0, 1e-12);
    // 0.4/0.6/2 + 0.4/0.6/2 = 2/3; 2 (1 − 2/3) = 2/3.
    near(interaction(&[0.4, 0.4]), 2.0 / 3.0, 1e-12);
    assert_eq!((interaction(&[1.0, 0.0]), interaction(&[-3.0, 0.1]), interaction(&[])), (0.0, 1.0, 1.0));
}

#[test]
fn what_is_no_number_holds_nothing_back() {
    let none = f64::NAN;
    for power in [Power::One, Power::Two] {
        near(VALUES.factor(none, power), 1.0, 0.0);
    }
    near(VALUES.squared(none), 1.0, 0.0);
    near(VALUES.distance(none), 0.0, 0.0);
    near(line(none, 0.95), 1.0, 0.0);
    near(hindered(none, 4.0, 0.5), 1.0, 0.0);
    near(interaction(&[none, 0.1]), 1.0, 0.0);
}

proptest! {
    #[test]
    fn every_factor_lies_between_nothing_and_one(
        least in -5.0..10.0_f64, way in 0.1..40.0_f64, beyond in 0.01..1.0_f64, x in -100.0..100.0_f64,
    ) {
        // The best lies above the middle, as in every published set but pH.
        let values = Cardinal { least, best: least + way, most: least + way * (1.0 + beyond) };
        for factor in [values.factor(x, Power::One), values.factor(x, Power::Two), values.squared(x), values.distance(x)] {
            prop_assert!((0.0..=1.0).contains(&factor), "{}", factor);
        }
    }

    #[test]
    fn one_more_distance_is_the_same_as_all_at_once(far in prop::array::uniform4(-0.2..1.2_f64)) {
        let [a, b, c, d] = far;
        let (at_once, later) = (interaction(&far), Distances::of(&[a, b, c]).interaction_with(d));
        prop_assert!((at_once - later).abs() < 1e-9, "{} {}", at_once, later);
    }
}
