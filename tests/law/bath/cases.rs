//! Eighteen runs of an independent solution, leg by leg: 1e-3 s and 1e-6 K, 1e-9 kWh; its own error is below these.

use super::reference;
use crate::law::tables::near;
use serde_json::Value;
use vatsketch::law::bath::{Course, End, Leg, Pot, Thermostat, bath_of};

const SECONDS: f64 = 1e-3;
const KELVIN: f64 = 1e-6;
const KILOWATT_HOURS: f64 = 1e-9;
const LATEST_S: f64 = 6.0 * 3600.0;

fn number(row: &Value, key: &str, otherwise: f64) -> f64 {
    row.get(key).map_or(otherwise, |value| value.as_f64().unwrap())
}

fn has_lid(row: &Value, key: &str) -> bool {
    row.get(key).is_none_or(|value| value.as_bool().unwrap())
}

/// Returns the course at the start, with the thermostat and the two additions (kg) of a case.
fn start(case: &Value) -> (Course, Thermostat) {
    let given = |key: &str| case["inputs"][key].as_f64().unwrap();
    let usual = Pot::new(given("V"));
    let pot = Pot {
        base_wetted: number(&case["inputs"], "f_base", 1.0),
        lid: has_lid(&case["inputs"], "pot_lid"),
        milk_side_w_m2_k: number(&case["inputs"], "h_i", usual.milk_side_w_m2_k),
        bath_side_w_m2_k: number(&case["inputs"], "h_o", usual.bath_side_w_m2_k),
        ..usual
    };
    let nodes = bath_of(&pot, given("Vb"), has_lid(&case["inputs"], "bath_lid"), given("Tr"));
    let thermostat = Thermostat { most_w: given("P"), set_c: given("Tset"), band_k: given("PB") };
    (Course::new(nodes, given("Tb0"), given("Tm0")), thermostat)
}

fn cases() -> Vec<Value> {
    let cases = reference("warming_bath")["cases"].as_array().unwrap().clone();
    assert_eq!(cases.len(), 18);
    cases
}

#[test]
fn litres_and_lids_give_the_heat_capacities_and_conductances_of_the_reference() {
    for case in cases() {
        let nodes = start(&case).0.nodes;
        let wanted = |key: &str| case["params"][key].as_f64().unwrap();
        let pairs = [
            (nodes.bath_j_k, "Cb"),
            (nodes.milk_j_k, "Cm"),
            (nodes.between_w_k, "UA"),
            (nodes.bath_loss_w_k, "Gb"),
            (nodes.milk_loss_w_k, "Gm"),
        ];
        for (got, key) in pairs {
            near(got, wanted(key), 1e-12 * wanted(key));
        }
    }
}

#[test]
fn warming_adding_setting_and_resting_are_those_of_the_reference() {
    for case in cases() {
        let (mut course, thermostat) = start(&case);
        let given = |key: &str| case["inputs"][key].as_f64().unwrap();
        let wanted = |key: &str| case["out"][key].as_f64().unwrap();
        let warm_to = |milk_c: f64| Leg { heater: Some(thermostat), end: End::MilkAt { milk_c, within_s: LATEST_S } };
        let heat = |kilograms: &str| given(kilograms) * given("add_cp");

        assert!(course.follow(&warm_to(given("target1"))));
        near(course.now.at_s, wanted("t_calcium"), SECONDS);
        near(course.now.bath_c, wanted("Tb_calcium"), KELVIN);
        let first_j = course.energy_j;
        near(first_j / 3.6e6, wanted("E_calcium"), KILOWATT_HOURS);
        course.add(heat("add1_kg"), given("add_T"));
        near(course.now.milk_c, wanted("Tm_calcium_after"), KELVIN);

        assert!(course.follow(&warm_to(given("target2"))));
        near(course.now.at_s, wanted("t_rennet"), SECONDS);
        near(course.now.bath_c, wanted("Tb_rennet"), KELVIN);
        near((course.energy_j - first_j) / 3.6e6, wanted("E_rennet"), KILOWATT_HOURS);
        course.add(heat("add2_kg"), given("add_T"));
        near(course.now.milk_c, wanted("Tm_rennet_after"), KELVIN);

        let off = |seconds: f64| Leg { heater: None, end: End::After(seconds) };
        let mut setting = Course::new(course.nodes, course.now.bath_c, course.now.milk_c);
        assert!(setting.follow(&off(given("set_s"))));
        near(setting.now.bath_c, wanted("set_Tb"), KELVIN);
        near(setting.now.milk_c, wanted("set_Tm"), KELVIN);
        near(setting.warmest_c().1, wanted("set_peak"), KELVIN);
        assert!(setting.follow(&off(given("rest_s"))));
        near(setting.now.bath_c, wanted("shr_Tb"), KELVIN);
        near(setting.now.milk_c, wanted("shr_Tm"), KELVIN);
        assert_eq!(setting.energy_j, 0.0);
    }
}

/// The wall as a third node is another model; ours gives its heat to both sides at once and warms the milk up to 0.7 % later: 1 %. The small
/// additions on the way change less than that.
#[test]
fn two_nodes_are_near_three() {
    for three in reference("warming_more")["wall"].as_array().unwrap() {
        let case = cases().into_iter().find(|case| case["case"] == three["case"]).unwrap();
        let (mut course, thermostat) = start(&case);
        let target = |key: &str| case["inputs"][key].as_f64().unwrap();
        for (milk_c, key) in [(target("target1"), "t_calcium"), (target("target2"), "t_rennet")] {
            assert!(course.follow(&Leg { heater: Some(thermostat), end: End::MilkAt { milk_c, within_s: LATEST_S } }));
            let theirs_s = three[key].as_f64().unwrap();
            near(course.now.at_s, theirs_s, 0.01 * theirs_s);
        }
    }
}
