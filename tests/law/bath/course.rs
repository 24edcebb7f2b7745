//! Courses of several legs: facts that were published or calculated, refusals, and the first law.

use super::lidded_pot;
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::bath::{Bath, Course, End, Leg, Thermostat, bath_of};
use vatsketch::law::bath::{MILK_SIDE, Pot};

const fn thermostat(most_w: f64, set_c: f64) -> Thermostat {
    Thermostat { most_w, set_c, band_k: 0.5 }
}

const fn warm_to(heater: Thermostat, milk_c: f64) -> Leg {
    Leg { heater: Some(heater), end: End::MilkAt { milk_c, within_s: 21_600.0 } }
}

/// Perry, table 11-7: agitated jackets of steel around milk or water 285 to 1700 W/(m² K), unagitated about half of it.
#[test]
fn the_wall_lets_through_what_unstirred_jackets_do() {
    let overall = Pot::new(9.4).overall_w_m2_k();
    assert!((0.5 * 285.0..0.5 * 1700.0).contains(&overall), "{overall}");
    assert!(overall < MILK_SIDE.value);
}

/// Our own computation: 9.4 L from 4 to 35.4 °C in 11 L of bath held at 36.4 °C take 65.47 min at 800 W and 59.75 min at 1000 W, with
/// 58.75 g of water at 20 °C added at 15.5 °C; half a unit of the last digit.
#[test]
fn nine_litres_and_a_little_take_an_hour() {
    for (watt, minutes) in [(800.0, 65.47), (1000.0, 59.75)] {
        let mut course = Course::new(lidded_pot(), 20.0, 4.0);
        assert!(course.follow(&warm_to(thermostat(watt, 36.4), 15.5)));
        course.add(0.05875 * 4180.0, 20.0);
        assert!(course.follow(&warm_to(thermostat(watt, 36.4), 35.4)));
        near(course.now.at_s / 60.0, minutes, 0.005);
    }
}

#[test]
fn milk_that_does_not_get_warm_is_told_of() {
    let mut course = Course::new(lidded_pot(), 20.0, 4.0);
    assert!(!course.follow(&warm_to(thermostat(1000.0, 33.0), 34.0)));
    near(course.now.at_s, 21_600.0, 1e-6);
    let (bath_c, milk_c) = course.warmest_c();
    assert!(milk_c < bath_c && bath_c <= 33.0, "{bath_c} {milk_c}");
    let mut unlit = Course::new(lidded_pot(), 20.0, 4.0);
    assert!(!unlit.follow(&warm_to(thermostat(0.0, 36.4), 21.0)));
    let mut nothing = Course::new(lidded_pot(), 20.0, f64::NAN);
    assert!(!nothing.follow(&warm_to(thermostat(1000.0, 36.4), 34.0)));
}

#[test]
fn milk_that_is_there_already_needs_no_time() {
    let mut course = Course::new(lidded_pot(), 40.0, 34.0);
    assert!(course.follow(&warm_to(thermostat(1000.0, 36.4), 34.0)));
    assert_eq!((course.now.at_s, course.energy_j), (0.0, 0.0));
}

/// Between two times that were gone through the course is the same as at them; before an addition that falls on the time.
#[test]
fn the_course_can_be_read_back() {
    let mut course = Course::new(lidded_pot(), 20.0, 4.0);
    assert!(course.follow(&warm_to(thermostat(1000.0, 36.4), 15.5)));
    let first = course.now;
    course.add(5000.0, 60.0);
    assert!(course.now.milk_c > 15.5 && course.nodes.milk_j_k > lidded_pot().milk_j_k);
    assert!(course.follow(&warm_to(thermostat(1000.0, 36.4), 35.4)));
    assert_eq!(course.at(0.0).milk_c, 4.0);
    near(course.at(first.at_s).milk_c, 15.5, 1e-9);
    near(course.at(course.now.at_s).milk_c, 35.4, 1e-9);
    assert!(course.at(first.at_s + 0.001).milk_c > 15.6);
}

/// Nothing poured in changes nothing; as much again of the same warmth doubles the milk.
#[test]
fn an_addition_mixes_by_heat() {
    let mut course = Course::new(lidded_pot(), 20.0, 4.0);
    course.add(0.0, 90.0);
    assert_eq!(course.now.milk_c, 4.0);
    course.add(lidded_pot().milk_j_k, 10.0);
    near(course.now.milk_c, 7.0, 1e-12);
    near(course.nodes.milk_j_k, 2.0 * lidded_pot().milk_j_k, 1e-9);
}

/// Closed form: in so much water that it stays as warm as it is, (T_b − T)/(T_b − T₀) = e^(−UA t/C_m).
#[test]
fn milk_comes_to_its_hold_as_the_closed_form_says_and_stays_above_it() {
    let nodes = Bath { bath_j_k: 1e15, bath_loss_w_k: 0.0, milk_loss_w_k: 0.0, ..lidded_pot() };
    let mut course = Course::new(nodes, 66.0, 5.0);
    let warm = Leg { heater: None, end: End::MilkAt { milk_c: 63.0, within_s: 21_600.0 } };
    assert!(course.follow(&warm));
    let lag_s = nodes.milk_j_k / nodes.between_w_k;
    let to_hold_s = course.now.at_s;
    near(to_hold_s, lag_s * (61.0_f64 / 3.0).ln(), 1e-3);
    assert!(course.follow(&Leg { heater: None, end: End::After(1800.0) }));
    near(course.now.milk_c, 66.0 - 3.0 * (-1800.0 / lag_s).exp(), 1e-6);
    near(course.coldest_milk_since_c(to_hold_s), 63.0, 1e-9);
}

/// Closed form without losses: milk and cold water meet at (C_m T_m + C_b T_b)/(C_m + C_b), with the rate UA (1/C_m + 1/C_b).
#[test]
fn a_cold_bath_cools_the_milk_as_the_closed_form_says() {
    let cold = Bath { bath_loss_w_k: 0.0, milk_loss_w_k: 0.0, ..bath_of(&Pot::new(9.4), 30.0, true, 20.0) };
    let mut course = Course::new(lidded_pot(), 66.0, 64.0);
    course.add(1000.0, 64.0);
    let milk_j_k = lidded_pot().milk_j_k + 1000.0;
    course.put_into(cold, 10.0);
    let meet_c = (milk_j_k * 64.0 + cold.bath_j_k * 10.0) / (milk_j_k + cold.bath_j_k);
    let rate = cold.between_w_k * (1.0 / milk_j_k + 1.0 / cold.bath_j_k);
    assert!(course.follow(&Leg { heater: None, end: End::MilkAt { milk_c: 30.0, within_s: 7200.0 } }));
    near(course.now.at_s, ((64.0 - meet_c) / (30.0 - meet_c)).ln() / rate, 1e-3);
    // It comes no lower than where the two meet.
    let after_s = course.now.at_s;
    assert!(!course.follow(&Leg { heater: None, end: End::MilkAt { milk_c: meet_c - 0.1, within_s: 72_000.0 } }));
    near(course.coldest_milk_since_c(after_s), meet_c, 1e-4);
}

/// A bath that is hot at the start and set lower warms the milk past its hold and then falls below it: the coldest moment is at the end.
#[test]
fn a_hold_that_is_not_kept_is_seen() {
    let mut course = Course::new(lidded_pot(), 95.0, 50.0);
    let heater = thermostat(1000.0, 60.0);
    assert!(course.follow(&warm_to(heater, 63.0)));
    let began_s = course.now.at_s;
    assert!(course.follow(&Leg { heater: Some(heater), end: End::After(20_000.0) }));
    assert!(course.coldest_milk_since_c(began_s) < 60.0);
    assert!(course.warmest_since_c(began_s).1 > 63.0);
}

/// A pot on the floor, half out of the water or without lids warms more slowly or loses more.
#[test]
fn a_rack_water_up_to_the_milk_and_lids_help() {
    let standing = bath_of(&Pot::new(9.4), 11.0, true, 20.0);
    let flat = bath_of(&Pot { base_wetted: 0.0, ..Pot::new(9.4) }, 11.0, true, 20.0);
    let shallow = bath_of(&Pot { side_wetted: 0.5, ..Pot::new(9.4) }, 11.0, true, 20.0);
    let open = bath_of(&Pot { lid: false, ..Pot::new(9.4) }, 11.0, false, 20.0);
    assert!(flat.between_w_k < standing.between_w_k && shallow.between_w_k < standing.between_w_k);
    // 36 against 7 W/(m² K): an open surface loses about five times as much.
    near(open.milk_loss_w_k / standing.milk_loss_w_k, 36.0 / 7.0, 1e-12);
    assert!(open.bath_loss_w_k > standing.bath_loss_w_k);
}

proptest! {
    /// First law over all the modes of a thermostat, without losses.
    #[test]
    fn whatever_the_thermostat_does_no_energy_is_lost(
        watt in 100.0..4000.0_f64, set_c in 20.0..95.0_f64, bath_c in 2.0..95.0_f64, milk_c in 1.0..25.0_f64, seconds in 60.0..20_000.0_f64,
    ) {
        let nodes = Bath { bath_loss_w_k: 0.0, milk_loss_w_k: 0.0, ..lidded_pot() };
        let mut course = Course::new(nodes, bath_c, milk_c);
        let leg = Leg { heater: Some(thermostat(watt, set_c)), end: End::After(seconds) };
        prop_assert!(course.follow(&leg));
        let now = course.now;
        let held_j = nodes.bath_j_k * (now.bath_c - bath_c) + nodes.milk_j_k * (now.milk_c - milk_c);
        prop_assert!((course.energy_j - held_j).abs() < 1e-9 * (held_j.abs() + 1e6), "{} {}", course.energy_j, held_j);
        prop_assert!((now.at_s - seconds).abs() < 1e-6);
        prop_assert!(course.energy_j <= watt * seconds * (1.0 + 1e-12));
    }

    /// Second law: no node gets warmer than the thermostat's setting or whatever was warmest at the start.
    #[test]
    fn nothing_gets_warmer_than_the_thermostat_allows(
        watt in 100.0..4000.0_f64, set_c in 20.0..95.0_f64, bath_c in 2.0..95.0_f64, milk_c in 1.0..25.0_f64, room_c in 5.0..40.0_f64,
    ) {
        let mut course = Course::new(Bath { room_c, ..lidded_pot() }, bath_c, milk_c);
        let leg = Leg { heater: Some(thermostat(watt, set_c)), end: End::After(15_000.0) };
        prop_assert!(course.follow(&leg));
        let allowed_c = set_c.max(bath_c).max(milk_c).max(room_c) + 1e-6;
        let (bath_most_c, milk_most_c) = course.warmest_c();
        prop_assert!(bath_most_c <= allowed_c && milk_most_c <= allowed_c);
    }

    /// More power is never slower.
    #[test]
    fn more_power_is_sooner_warm(watt in 200.0..2000.0_f64, more in 1.1..2.0_f64, target_c in 20.0..35.0_f64) {
        let time = |watt: f64| {
            let mut course = Course::new(lidded_pot(), 20.0, 4.0);
            course.follow(&warm_to(thermostat(watt, 36.4), target_c)).then_some(course.now.at_s)
        };
        let (slow, quick) = (time(watt), time(more * watt));
        prop_assert!(quick.is_some() && slow.is_none_or(|slow| quick.unwrap() < slow + 1e-6));
    }
}
