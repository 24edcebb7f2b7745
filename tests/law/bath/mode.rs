//! One mode against printed problems, closed forms, and a step method that closes in on it.

use super::{lidded_pot, reference};
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::bath::{Bath, Mode, Node, Power};

/// Returns a bath so large that nothing changes its temperature.
fn endless_bath(milk_j_k: f64, between_w_k: f64, milk_loss_w_k: f64, room_c: f64) -> Bath {
    Bath { bath_j_k: 1e18, milk_j_k, between_w_k, bath_loss_w_k: 0.0, milk_loss_w_k, room_c }
}

/// Çengel 2008, problems 11-17 and 11-18: milk in a glass of 6 cm by 7 cm, from 3 to 38 °C in a bath of 60 °C, 120 and 240 W/(m² K): printed
/// 348 and 174 s, so ±0.5 s; the closed form to 1e-3 s.
#[test]
fn a_glass_of_milk_warms_in_the_printed_time() {
    for row in reference("warming_more")["published"].as_array().unwrap() {
        let given = |key: &str| row[key].as_f64().unwrap();
        let nodes = endless_bath(given("C"), given("UA"), 0.0, 20.0);
        let seconds = Mode::new(&nodes, Power::Off, given("Tb"), given("T0")).first_at(Node::Milk, given("T1"), 3600.0).unwrap();
        near(seconds, given("published_t"), 0.5);
        near(seconds, given("t"), 1e-3);
    }
}

#[test]
fn a_bath_that_stays_warm_follows_the_closed_form() {
    for row in reference("warming_more")["steady"].as_array().unwrap() {
        let given = |key: &str| row[key].as_f64().unwrap();
        let nodes = endless_bath(given("C"), given("UA"), given("G"), given("Tr"));
        let seconds = Mode::new(&nodes, Power::Off, given("Tb"), given("T0")).first_at(Node::Milk, given("T1"), 2e4).unwrap();
        near(seconds, given("t"), 1e-3);
    }
}

/// Without losses: the mean by heat capacity rises as P t, the difference goes to `P τ/C_b` with `τ = 1/(UA (1/C_b + 1/C_m))`.
#[test]
fn without_losses_the_nodes_follow_the_closed_form() {
    for row in reference("warming_more")["lossless"].as_array().unwrap() {
        let given = |key: &str| row[key].as_f64().unwrap();
        let nodes = Bath {
            bath_j_k: given("Cb"),
            milk_j_k: given("Cm"),
            between_w_k: given("UA"),
            bath_loss_w_k: 0.0,
            milk_loss_w_k: 0.0,
            room_c: 20.0,
        };
        let mode = Mode::new(&nodes, Power::Full(given("P")), given("Tb0"), given("Tm0"));
        let (bath_c, milk_c) = mode.at(given("t"));
        near(bath_c, given("Tb"), 1e-6);
        near(milk_c, given("Tm"), 1e-6);
        let (bath_c, milk_c) = mode.at(40.0 * given("tau"));
        near(bath_c - milk_c, given("dss"), 1e-9);
    }
}

/// The reference had its capacities and conductances rounded: to ten digits and to five places.
#[test]
fn each_mode_is_that_of_the_reference_and_ends_in_its_steady_state() {
    let nodes = Bath {
        bath_j_k: 46419.72223,
        milk_j_k: 38140.83893,
        between_w_k: 48.54886,
        bath_loss_w_k: 2.44351,
        milk_loss_w_k: 0.40437,
        room_c: 20.0,
    };
    for row in reference("warming_more")["modes"].as_array().unwrap() {
        let given = |key: &str| row[key].as_f64().unwrap();
        let power = match row["kind"].as_str().unwrap() {
            "sat" => Power::Full(1000.0),
            "band" => Power::Band { most_w: 1000.0, set_c: 36.4, band_k: 0.5 },
            _ => Power::Off,
        };
        let start = |node: usize| row["x0"][node].as_f64().unwrap();
        let mode = Mode::new(&nodes, power, start(0), start(1));
        let (bath_c, milk_c) = mode.at(given("t"));
        near(bath_c, given("Tb"), 1e-6);
        near(milk_c, given("Tm"), 1e-6);
        let (bath_c, milk_c) = mode.at(-50.0 / given("l2"));
        near(bath_c, given("xs_Tb"), 1e-6);
        near(milk_c, given("xs_Tm"), 1e-6);
    }
}

/// Returns bath and milk after some seconds at full power, by so many steps of the classical fourth-order Runge–Kutta method.
fn stepped(nodes: &Bath, watt: f64, start: [f64; 2], seconds: f64, steps: u32) -> [f64; 2] {
    let slope = |[bath_c, milk_c]: [f64; 2]| {
        let through_w = nodes.between_w_k * (bath_c - milk_c);
        [
            (watt - through_w - nodes.bath_loss_w_k * (bath_c - nodes.room_c)) / nodes.bath_j_k,
            (through_w - nodes.milk_loss_w_k * (milk_c - nodes.room_c)) / nodes.milk_j_k,
        ]
    };
    let ahead = |at: [f64; 2], by: [f64; 2], h: f64| [at[0] + h * by[0], at[1] + h * by[1]];
    let h = seconds / f64::from(steps);
    (0..steps).fold(start, |at, _| {
        let one = slope(at);
        let two = slope(ahead(at, one, 0.5 * h));
        let three = slope(ahead(at, two, 0.5 * h));
        let four = slope(ahead(at, three, h));
        ahead(at, std::array::from_fn(|node| (one[node] + 2.0 * two[node] + 2.0 * three[node] + four[node]) / 6.0), h)
    })
}

/// A fourth-order method closes in on the exact course sixteen times with each halving of its step; the order may be 0.1 off.
#[test]
fn a_step_method_of_fourth_order_closes_in_on_the_exact_course() {
    let nodes = lidded_pot();
    let exact = Mode::new(&nodes, Power::Full(1000.0), 20.0, 4.0).at(2400.0).1;
    let error = |steps| (stepped(&nodes, 1000.0, [20.0, 4.0], 2400.0, steps)[1] - exact).abs();
    let orders = [(40, 80), (80, 160)].map(|(coarse, fine)| (error(coarse) / error(fine)).log2());
    for order in orders {
        near(order, 4.0, 0.1);
    }
}

#[test]
fn at_no_time_nothing_has_changed_and_what_is_not_reached_is_none() {
    let nodes = lidded_pot();
    let mode = Mode::new(&nodes, Power::Full(1000.0), 20.0, 4.0);
    assert_eq!(mode.at(0.0), (20.0, 4.0));
    assert_eq!(mode.energy_j(0.0), 0.0);
    assert_eq!(mode.first_at(Node::Milk, 90.0, 600.0), None, "not within ten minutes");
    assert_eq!(Mode::new(&nodes, Power::Off, 30.0, 4.0).first_at(Node::Milk, 31.0, 1e6), None, "never warmer than the bath");
    assert_eq!(mode.first_at(Node::Milk, f64::NAN, 600.0), None);
    assert!(Mode::new(&nodes, Power::Full(f64::NAN), 20.0, 4.0).at(60.0).1.is_nan());
}

/// A cold bath first cools the warm milk, then both warm: the milk turns once, and comes twice to a temperature above the turn.
#[test]
fn the_turn_is_where_the_milk_is_coldest() {
    let mode = Mode::new(&lidded_pot(), Power::Full(1500.0), 10.0, 30.0);
    let turn = mode.turn(Node::Milk).unwrap();
    let coldest_c = mode.at(turn).1;
    for aside in [-1.0, 1.0] {
        assert!(mode.at(turn + aside).1 > coldest_c);
    }
    let first = mode.first_at(Node::Milk, coldest_c + 1.0, 1e5).unwrap();
    assert!(first < turn);
    near(mode.at(first).1, coldest_c + 1.0, 1e-9);
    assert_eq!(mode.first_at(Node::Milk, coldest_c - 0.001, turn + 600.0), None);
}

/// In half a second Simpson's rule over the power is good to (λ t)⁴/2880 with λ = 0.044 per second, 8e-11 of the energy; at a whole second it
/// would be off by more than the tolerance.
#[test]
fn the_energy_of_a_moment_is_the_power_over_it() {
    let mode = Mode::new(&lidded_pot(), Power::Band { most_w: 1000.0, set_c: 36.4, band_k: 0.5 }, 36.0, 10.0);
    let watt = |t: f64| 1000.0 * (36.4 - mode.at(t).0) / 0.5;
    for seconds in [0.01, 0.1, 0.5] {
        let wanted_j = seconds / 6.0 * (watt(0.0) + 4.0 * watt(0.5 * seconds) + watt(seconds));
        near(mode.energy_j(seconds), wanted_j, 1e-9 * wanted_j);
    }
}

proptest! {
    /// First law, without losses: what the heater gives, bath and milk hold, in every mode.
    #[test]
    fn without_losses_no_energy_is_lost(
        watt in 100.0..4000.0_f64, set_c in 25.0..80.0_f64, bath_c in 2.0..40.0_f64, milk_c in 2.0..40.0_f64, seconds in 1.0..20_000.0_f64,
        banded in any::<bool>(),
    ) {
        let nodes = Bath { bath_loss_w_k: 0.0, milk_loss_w_k: 0.0, ..lidded_pot() };
        let power = if banded { Power::Band { most_w: watt, set_c, band_k: 0.5 } } else { Power::Full(watt) };
        let mode = Mode::new(&nodes, power, bath_c, milk_c);
        let (bath_end_c, milk_end_c) = mode.at(seconds);
        let held_j = nodes.bath_j_k * (bath_end_c - bath_c) + nodes.milk_j_k * (milk_end_c - milk_c);
        prop_assert!((mode.energy_j(seconds) - held_j).abs() < 1e-9 * (held_j.abs() + 1e6));
    }

    /// Two pieces of one mode are one.
    #[test]
    fn going_on_from_half_way_is_going_on(watt in 0.0..4000.0_f64, bath_c in 2.0..60.0_f64, milk_c in 2.0..60.0_f64, seconds in 2.0..20_000.0_f64) {
        let nodes = lidded_pot();
        let whole = Mode::new(&nodes, Power::Full(watt), bath_c, milk_c);
        let (half_bath_c, half_milk_c) = whole.at(0.5 * seconds);
        let (bath_end_c, milk_end_c) = Mode::new(&nodes, Power::Full(watt), half_bath_c, half_milk_c).at(0.5 * seconds);
        prop_assert!((bath_end_c - whole.at(seconds).0).abs() < 1e-9 && (milk_end_c - whole.at(seconds).1).abs() < 1e-9);
    }
}
