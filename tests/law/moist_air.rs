//! Moist air against two public libraries, printed saturation pressures, and its limits.

use super::outside::Outside;
use proptest::prelude::*;
use vatsketch::law::moist_air::{humidity_ratio, latent_heat_j_kg, saturation_pa, warmed_humidity};
use vatsketch::numeric::{Bracket, brent};

/// Returns the dew point by our saturation pressure, °C: the libraries give theirs as a figure of its own.
fn dew_point_c(temperature_c: f64, relative_humidity: f64) -> Option<f64> {
    let vapour_pa = relative_humidity * saturation_pa(temperature_c);
    brent(|t| saturation_pa(t).ln() - vapour_pa.ln(), Bracket { from: -5.0, to: 100.0 }, 1e-9).ok()
}

/// Returns the wet-bulb temperature by our humidity ratio, °C.
///
/// ASHRAE Handbook, Fundamentals, psychrometrics, adiabatic saturation: W = ((2501 − 2.326 t*) W*ₛ − 1.006 (t − t*)) / (2501 + 1.86 t − 4.186 t*).
fn wet_bulb_c(temperature_c: f64, relative_humidity: f64, pressure_pa: f64) -> Option<f64> {
    let wanted = humidity_ratio(temperature_c, relative_humidity, pressure_pa);
    let excess = |wet: f64| {
        let saturated = humidity_ratio(wet, 1.0, pressure_pa);
        ((2501.0 - 2.326 * wet) * saturated - 1.006 * (temperature_c - wet)) / (2501.0 + 1.86 * temperature_c - 4.186 * wet)
            - wanted
    };
    brent(excess, Bracket { from: -5.0, to: temperature_c }, 1e-10).ok()
}

#[derive(serde::Deserialize)]
struct State {
    air_c: f64,
    humidity: f64,
    pressure_pa: f64,
    ratio_ashrae: f64,
    ratio_real: f64,
    dew_ashrae_c: f64,
    dew_real_c: f64,
    wet_ashrae_c: f64,
    wet_real_c: f64,
}

#[derive(serde::Deserialize)]
struct Heating {
    from_c: f64,
    humidity: f64,
    to_c: f64,
    warmed_ashrae: f64,
    warmed_real: f64,
}

/// Hyland and Wexler's equation as psychrolib evaluates it, and IAPWS-95 as CoolProp does; Pa.
const SATURATION: [(f64, f64, f64); 7] = [
    (10.0, 1227.995, 1228.199),
    (20.0, 2338.804, 2339.318),
    (21.0, 2487.667, 2488.219),
    (30.0, 4246.030, 4246.971),
    (40.0, 7383.460, 7384.938),
    (50.0, 12349.856, 12351.946),
    (60.0, 19943.761, 19946.434),
];

/// Tolerance 1e-6: the printed values have seven digits. 0.03 %: how far the two formulations lie apart.
#[test]
fn saturation_pressure_is_that_of_hyland_and_wexler_and_near_the_steam_tables() {
    for (at_c, ashrae, steam) in SATURATION {
        let ours = saturation_pa(at_c);
        assert!((ours / ashrae - 1.0).abs() < 1e-6, "{at_c} °C: {ours}");
        assert!((ours / steam - 1.0).abs() < 3e-4, "{at_c} °C: {ours}");
    }
}

/// Water boils at 100 °C under 101 325 Pa by the old definition of the scale; the equation is within 0.1 % there.
#[test]
fn water_boils_at_a_hundred_degrees() {
    assert!((saturation_pa(100.0) / 101_325.0 - 1.0).abs() < 1e-3);
}

/// Steam tables, from memory: 2500.9, 2453.5, 2406.0, 2357.7 kJ/kg; the straight line claims 0.1 %.
#[test]
fn latent_heat_is_that_of_the_steam_tables() {
    for (at_c, kj_kg) in [(0.0, 2500.9), (20.0, 2453.5), (40.0, 2406.0), (60.0, 2357.7)] {
        assert!((latent_heat_j_kg(at_c) / (1000.0 * kj_kg) - 1.0).abs() < 1e-3, "{at_c} °C");
    }
}

/// psychrolib shares our equations: 1e-6 for the ratio, and 0.001 K, which is where it stops its own searches.
#[test]
fn ratio_dew_point_and_wet_bulb_are_those_of_psychrolib() {
    for row in crate::law::rows::<State>("moist_air.csv") {
        let ratio = humidity_ratio(row.air_c, row.humidity, row.pressure_pa);
        assert!((ratio / row.ratio_ashrae - 1.0).abs() < 1e-6, "{} °C: {ratio}", row.air_c);
        let dew = dew_point_c(row.air_c, row.humidity).unwrap();
        assert!((dew - row.dew_ashrae_c).abs() < 1e-3, "{} °C: {dew}", row.air_c);
        let wet = wet_bulb_c(row.air_c, row.humidity, row.pressure_pa).unwrap();
        assert!((wet - row.wet_ashrae_c).abs() < 1e-3, "{} °C: {wet}", row.air_c);
    }
}

/// CoolProp's ratios, which are held below to be half a per cent higher, and its wet bulbs.
pub fn real_air_rows() -> Vec<Outside> {
    let states = crate::law::rows("moist_air.csv").into_iter().flat_map(|row: State| {
        let case = format!("{} °C, {} %, {} Pa", row.air_c, 100.0 * row.humidity, row.pressure_pa);
        let (ratio, real) = (humidity_ratio(row.air_c, row.humidity, row.pressure_pa), "CoolProp, humid air of IAPWS-95");
        let wet = wet_bulb_c(row.air_c, row.humidity, row.pressure_pa).unwrap();
        let more = "we leave out the enhancement factor of real air, 0.4 to 0.5 %";
        [
            Outside::new(
                "humidity ratio",
                case.clone(),
                "psychrolib, ASHRAE",
                (row.ratio_ashrae, ratio),
                Some(1e-6 * ratio),
                "the same equations",
            ),
            Outside::new("humidity ratio", case.clone(), real, (row.ratio_real, ratio), Some(0.0055 * ratio), more),
            Outside::new("wet bulb, °C", case, real, (row.wet_real_c, wet), Some(0.015), "as above"),
        ]
    });
    states.collect()
}

/// CoolProp counts the enhancement factor of real air, which we leave out: its ratio is 0.4 to 0.5 % higher, the temperatures differ by up to 0.014 K.
#[test]
fn real_air_holds_half_a_per_cent_more_water_than_ours() {
    for row in crate::law::rows::<State>("moist_air.csv") {
        let more = row.ratio_real / humidity_ratio(row.air_c, row.humidity, row.pressure_pa);
        assert!((1.0035..1.0055).contains(&more), "{} °C: {more}", row.air_c);
        assert!((dew_point_c(row.air_c, row.humidity).unwrap() - row.dew_real_c).abs() < 0.015, "{} °C", row.air_c);
        assert!((wet_bulb_c(row.air_c, row.humidity, row.pressure_pa).unwrap() - row.wet_real_c).abs() < 0.015, "{} °C", row.air_c);
    }
}

/// psychrolib shares our equations (1e-9); CoolProp differs by the enhancement factor, 0.14 % at most.
#[test]
fn warmed_air_is_as_dry_as_the_libraries_say() {
    for row in crate::law::rows::<Heating>("warmed_air.csv") {
        let ours = warmed_humidity(row.from_c, row.humidity, row.to_c);
        assert!((ours / row.warmed_ashrae - 1.0).abs() < 1e-9, "{} → {} °C: {ours}", row.from_c, row.to_c);
        assert!((ours / row.warmed_real - 1.0).abs() < 1.5e-3, "{} → {} °C: {ours}", row.from_c, row.to_c);
    }
}

#[test]
fn air_cooled_below_its_dew_point_stays_saturated() {
    assert_eq!(warmed_humidity(25.0, 0.8, 10.0), 1.0);
}

proptest! {
    #[test]
    fn dew_point_wet_bulb_and_air_stand_in_this_order(air_c in 20.0..60.0, humidity in 0.3..0.99) {
        let (dew, wet) = (dew_point_c(air_c, humidity).unwrap(), wet_bulb_c(air_c, humidity, 101_325.0).unwrap());
        prop_assert!(dew < wet && wet < air_c, "{dew} {wet} {air_c}");
        // What condenses at the dew point is what the air holds.
        prop_assert!((saturation_pa(dew) / (humidity * saturation_pa(air_c)) - 1.0).abs() < 1e-6);
    }
}
