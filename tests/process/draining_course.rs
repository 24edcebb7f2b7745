//! The moulds from hour to hour: the curd cools, the whey drips after its warmth and its pH.

use super::souring::{acidified, cultured, near, way};
use std::f64::consts::PI;
use vatsketch::design::{Design, DrainingDesign, MilkAcid};
use vatsketch::law::heat::specific_heat_kj_kg_k;
use vatsketch::law::syneresis::mould_time_h;
use vatsketch::process::{COOLING_CONSTANTS, Sourness, VatOutcome, draining};

fn ladled() -> VatOutcome {
    way(&Design::default()).unwrap().vat
}

/// Newton's law of cooling by hand: T = T_room + (T₀ − T_room) e^(−t/τ), τ = m c/(h A), A the side and both ends of what stands in the mould.
#[test]
fn the_curd_cools_to_the_room_as_worked_out_by_hand() {
    let vat = ladled();
    let design = DrainingDesign { draining_temperature_c: 12.0, ..DrainingDesign::default() };
    let drained = draining(&design, &vat).unwrap();
    let (diameter_m, depth_m) = (0.068, 0.001 * drained.ladled_depth_mm.min(70.0));
    let area_m2 = 12.0 * (PI * diameter_m * depth_m + 2.0 * PI * diameter_m * diameter_m / 4.0);
    let heat_j_k = 1000.0 * specific_heat_kj_kg_k(&vat.curd, vat.ladle_temperature_c) * vat.curd.total_kg();
    let time_h = heat_j_k / (COOLING_CONSTANTS[0].value * area_m2) / 3600.0;
    // Of the order of an hour for cheeses of this size.
    assert!((0.3..3.0).contains(&time_h), "{time_h}");
    assert!(vat.ladle_temperature_c > 30.0, "it comes warm from the vat");
    for point in &drained.souring {
        let by_hand_c = 12.0 + (vat.ladle_temperature_c - 12.0) * (-point.at_h / time_h).exp();
        near(point.temperature_c, by_hand_c, 1e-8);
    }
    near(drained.temperature_c, 12.0, 0.01);
}

/// First order with one time constant has the closed form w = W (1 − e^(−t/τ)): so it is where the curd is as warm as the room from the start.
#[test]
fn the_drip_of_a_curd_as_warm_as_its_room_has_the_closed_form() {
    for temperature_c in [8.0, 16.0, 24.0] {
        let vat = VatOutcome { ladle_temperature_c: temperature_c, ..ladled() };
        let design = DrainingDesign { draining_temperature_c: temperature_c, ..DrainingDesign::default() };
        let drained = draining(&design, &vat).unwrap();
        let whey_g = 1000.0 * (vat.curd.total_kg() - vat.drained_curd.total_kg());
        let time_h = mould_time_h(temperature_c);
        for (at_h, so_far_g, rate_g_h) in &drained.drip {
            let left = (-at_h / time_h).exp();
            near(*so_far_g, whey_g * (1.0 - left), 1e-9 * whey_g);
            near(*rate_g_h, whey_g * left / time_h, 1e-9 * whey_g / time_h);
        }
        // ln 50 time constants until a fiftieth is left.
        near(drained.drip_stops_h, 50.0_f64.ln() * time_h, 1e-6);
    }
}

/// Chapter on souring: the time constant × 0.85 for each 0.1 of pH below 6.6, down to 6.0, over that of curd of its own pH.
#[test]
fn a_sourer_curd_drips_faster_by_the_law() {
    let vat = VatOutcome { ladle_temperature_c: 16.0, ..ladled() };
    let rate = |ph: f64| {
        let (sourness, curd) = Sourness::unsoured(6.5).measured(&vat.curd, ph);
        let vat = VatOutcome { sourness, curd, ..vat.clone() };
        draining(&DrainingDesign::default(), &vat).unwrap().drip[0].2
    };
    let unsoured = rate(6.5);
    for (ph, tenths) in [(6.5, 0), (6.3, 2), (6.2, 3), (6.0, 5), (5.5, 5)] {
        near(unsoured / rate(ph), 0.85_f64.powi(tenths), 1e-3);
    }
}

#[test]
fn colder_moulds_drip_slower() {
    for design in [Design::default(), cultured(), acidified(MilkAcid::Vinegar, 6.0)] {
        let drained = |draining_temperature_c: f64| {
            let mut design = design.clone();
            design.draining.draining_temperature_c = draining_temperature_c;
            way(&design).unwrap().draining
        };
        let (cold, warm) = (drained(8.0), drained(22.0));
        assert!(cold.drip.iter().zip(&warm.drip).skip(1).all(|(cold, warm)| cold.1 < warm.1));
        assert!(cold.drip_stops_h > warm.drip_stops_h);
    }
}

/// Curd that comes warm drips faster at first than curd as cool as the room, and ends in the same drained curd.
#[test]
fn warm_curd_drips_sooner_and_not_more() {
    let warm = ladled();
    let cool = VatOutcome { ladle_temperature_c: 16.0, ..warm.clone() };
    let design = DrainingDesign::default();
    let (warm, cool) = (draining(&design, &warm).unwrap(), draining(&design, &cool).unwrap());
    assert!(warm.drip_stops_h < cool.drip_stops_h);
    assert!(warm.drip.iter().zip(&cool.drip).skip(1).all(|(warm, cool)| warm.1 > cool.1));
}
