//! Double boiler and hob.

use crate::law::tables::{near, rows};
use proptest::prelude::*;
use vatsketch::law::bath::{DoubleBoiler, Hob};

#[derive(serde::Deserialize)]
struct Row {
    milk_j_k: f64,
    steam_w_k: f64,
    steam_c: f64,
    most_w: f64,
    loss_w_k: f64,
    room_c: f64,
    t_calcium: f64,
    t_rennet: f64,
}

/// Twenty-five boilers of an independent computation, 2.6 to 27 L and 400 to 3000 W, limited by the steam, by the wall, or first by one and then
/// by the other: 1e-3 s.
#[test]
fn the_double_boiler_warms_as_in_the_reference() {
    let rows: Vec<Row> = rows("double_boiler");
    assert_eq!(rows.len(), 25);
    let mut limits = [false; 2];
    for row in rows {
        let boiler = DoubleBoiler {
            milk_j_k: row.milk_j_k,
            steam_w_k: row.steam_w_k,
            steam_c: row.steam_c,
            most_w: row.most_w,
            loss_w_k: row.loss_w_k,
            room_c: row.room_c,
        };
        near(boiler.warming_s(4.0, 17.0).unwrap(), row.t_calcium, 1e-3);
        near(boiler.warming_s(4.0, 34.6).unwrap(), row.t_rennet, 1e-3);
        near(boiler.milk_c(4.0, row.t_calcium), 17.0, 1e-6);
        near(boiler.milk_c(4.0, row.t_rennet), 34.6, 1e-6);
        let by_wall = row.steam_c - row.most_w / row.steam_w_k < 34.6;
        limits[usize::from(by_wall)] = true;
    }
    assert!(limits[0] && limits[1], "both limits are met among the rows");
}

const BOILER: DoubleBoiler =
    DoubleBoiler { milk_j_k: 32_000.0, steam_w_k: 33.0, steam_c: 100.0, most_w: 1200.0, loss_w_k: 0.4, room_c: 20.0 };
const HOB: Hob = Hob { milk_j_k: 32_000.0, power_w: 800.0, loss_w_k: 1.9, room_c: 20.0, base_m2: 0.05, milk_side_w_m2_k: 400.0 };

#[test]
fn no_milk_gets_warmer_than_the_steam_or_than_its_losses_allow() {
    assert_eq!(BOILER.warming_s(4.0, 101.0), None);
    assert_eq!(DoubleBoiler { most_w: 0.0, ..BOILER }.warming_s(25.0, 30.0), None);
    // Steady where the power is lost: 20 + 800/1.9 = 441 °C.
    assert_eq!(HOB.warming_s(4.0, 442.0), None);
    assert!(HOB.warming_s(4.0, 441.0).is_some());
    assert_eq!(Hob { power_w: 10.0, ..HOB }.warming_s(4.0, 34.0), None);
    assert_eq!(HOB.warming_s(f64::NAN, 34.0), None);
    assert_eq!(BOILER.warming_s(4.0, f64::NAN), None);
    assert_eq!(BOILER.warming_s(f64::NAN, 34.0), None);
}

/// Without losses C ΔT = P t, by hand; with endless steam only the wall counts, `C/UA ln((T_s − T₀)/(T_s − T₁))`.
#[test]
fn at_the_limits_the_closed_forms_are_the_textbooks() {
    let lossless = Hob { loss_w_k: 0.0, ..HOB };
    near(lossless.warming_s(4.0, 34.0).unwrap(), 32_000.0 * 30.0 / 800.0, 1e-9);
    near(lossless.milk_c(4.0, 1200.0), 34.0, 1e-9);
    let endless = DoubleBoiler { most_w: 1e9, loss_w_k: 0.0, ..BOILER };
    near(endless.warming_s(4.0, 34.0).unwrap(), 32_000.0 / 33.0 * (96.0_f64 / 66.0).ln(), 1e-9);
    assert_eq!(HOB.milk_c(4.0, 0.0), 4.0);
    assert_eq!(BOILER.milk_c(4.0, 0.0), 4.0);
}

/// The hot spot takes twice the mean flux (our own judgement): 10 °C + 2·800/(0.05·400) = 90 °C.
#[test]
fn the_wall_of_a_hob_is_hot_by_its_flux() {
    near(HOB.wall_c(10.0), 90.0, 1e-12);
    // Twice the mean flux makes 80 K: one and a half times under stirred milk a quarter and an eighth of that, four times more than boiling allows.
    let (least, most) = HOB.likely_wall_c(10.0);
    near(least, 40.0, 1e-12);
    near(most, 110.0, 1e-12);
}

/// Milk boils on a hotter wall and carries the heat away (our own judgement): no power makes it hotter than 110 °C.
#[test]
fn no_wall_under_milk_is_much_hotter_than_boiling() {
    for power_w in [2000.0, 4000.0, 1e6] {
        assert_eq!(Hob { power_w, ..HOB }.wall_c(30.0), 110.0);
    }
}

proptest! {
    #[test]
    fn the_time_and_the_temperature_are_inverse(from in 1.0..30.0_f64, by in 0.1..60.0_f64, watt in 300.0..4000.0_f64) {
        let boiler = DoubleBoiler { most_w: watt, ..BOILER };
        let hob = Hob { power_w: watt, ..HOB };
        let (boiled_s, heated_s) = (boiler.warming_s(from, from + by), hob.warming_s(from, from + by));
        prop_assert!(boiled_s.is_some_and(|t| (boiler.milk_c(from, t) - from - by).abs() < 1e-8));
        prop_assert!(heated_s.is_some_and(|t| (hob.milk_c(from, t) - from - by).abs() < 1e-8));
    }
}
