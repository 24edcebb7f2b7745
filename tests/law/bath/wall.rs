//! The wall on the milk's side.

use super::reference;
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::bath::{Pot, Scorching, inner_wall_c, scorching};

/// Journal of Dairy Science 51:520, 1968 (abstract): deposits begin with heating water of about 55 °C. The further limits are our own judgement.
#[test]
fn deposits_begin_where_they_were_seen_to() {
    let wanted = [
        (54.9, Scorching::Fine),
        (55.0, Scorching::Deposits),
        (64.9, Scorching::Deposits),
        (65.0, Scorching::Heavy),
        (89.9, Scorching::Heavy),
        (90.0, Scorching::BurnsOn),
        (400.0, Scorching::BurnsOn),
        (-5.0, Scorching::Fine),
    ];
    for (wall_c, what) in wanted {
        assert_eq!(scorching(wall_c), what, "{wall_c} °C");
    }
}

#[test]
fn a_wall_that_is_not_a_number_is_taken_for_the_worst() {
    assert_eq!(scorching(f64::NAN), Scorching::BurnsOn);
    assert!(inner_wall_c(&Pot::new(5.0), f64::NAN, 30.0).is_nan());
}

/// A solution with the wall as a third node has its middle half the wall's own drop away from ours, up to 0.01 K here; and it is not quite steady:
/// 0.02 K.
#[test]
fn the_wall_is_where_a_third_node_has_it() {
    for three in reference("warming_more")["wall"].as_array().unwrap() {
        let given = |key: &str| three[key].as_f64().unwrap();
        assert_eq!((given("ho"), given("hi")), (Pot::new(9.4).bath_side_w_m2_k, Pot::new(9.4).milk_side_w_m2_k));
        near(inner_wall_c(&Pot::new(9.4), given("Tb"), given("target2")), given("Tw"), 0.02);
    }
}

proptest! {
    /// What goes through the wall goes into the milk: U (T_b − T_m) = h_i (T_w − T_m); so the wall is between the two.
    #[test]
    fn the_flux_into_the_milk_is_that_through_the_wall(bath_c in 2.0..100.0_f64, milk_c in 1.0..60.0_f64, litres in 0.5..60.0_f64) {
        let pot = Pot::new(litres);
        let wall_c = inner_wall_c(&pot, bath_c, milk_c);
        let (through, into) = (pot.overall_w_m2_k() * (bath_c - milk_c), pot.milk_side_w_m2_k * (wall_c - milk_c));
        prop_assert!((through - into).abs() < 1e-9);
        prop_assert!(wall_c >= bath_c.min(milk_c) - 1e-12 && wall_c <= bath_c.max(milk_c) + 1e-12);
    }
}
