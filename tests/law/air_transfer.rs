//! Heat and vapour between air and a cheese.

use proptest::prelude::*;
use vatsketch::law::air_transfer::{AIR_HEAT, air, heat_w_m2_k, vapour_m_s};

#[derive(serde::Deserialize)]
struct Row {
    speed_m_s: f64,
    air_c: f64,
    length_m: f64,
    reynolds: f64,
    prandtl: f64,
    schmidt: f64,
    heat_w_m2_k: f64,
    vapour_m_s: f64,
    lewis: f64,
}

/// Rounded as printed: half a unit of the last digit, and a little of the one before for the vapour, whose last digit is the sixth.
#[test]
fn the_independent_computation_is_met_to_its_last_digit() {
    let rows: Vec<Row> = crate::law::rows("air_transfer.csv");
    assert_eq!(rows.len(), 24);
    for row in rows {
        let at = format!("{} m/s, {} °C", row.speed_m_s, row.air_c);
        let now = air(row.air_c);
        assert!((row.speed_m_s * row.length_m / now.viscosity_m2_s - row.reynolds).abs() < 0.06, "{at}");
        assert!((now.prandtl - row.prandtl).abs() < 6e-5, "{at}");
        assert!((now.schmidt - row.schmidt).abs() < 6e-5, "{at}");
        assert!((now.schmidt / now.prandtl - row.lewis).abs() < 6e-5, "{at}");
        let heat = heat_w_m2_k(row.speed_m_s, row.length_m, row.air_c);
        assert!((heat - row.heat_w_m2_k).abs() < 6e-5, "{at}: {heat}");
        assert!((vapour_m_s(heat, row.air_c) - row.vapour_m_s).abs() < 6e-7, "{at}");
    }
}

/// U.S. Standard Atmosphere 1976 at sea level (15 °C), from memory, five digits: viscosity, kinematic viscosity, conductivity, density.
#[test]
fn air_at_sea_level_is_that_of_the_standard_atmosphere() {
    let air = air(15.0);
    assert!((air.density_kg_m3 / 1.2250 - 1.0).abs() < 1e-4);
    assert!((air.viscosity_m2_s / 1.4607e-5 - 1.0).abs() < 1e-4);
    assert!((air.viscosity_m2_s * air.density_kg_m3 / 1.7894e-5 - 1.0).abs() < 1e-4);
    assert!((air.conductivity_w_m_k / 2.5326e-2 - 1.0).abs() < 1e-4);
}

/// Perry's handbook, from memory: water vapour in air, 2.56e-5 m²/s at 25 °C; tables differ by 3 %.
#[test]
fn vapour_spreads_in_air_as_the_handbook_says() {
    let air = air(25.0);
    assert!((air.viscosity_m2_s / air.schmidt / 2.56e-5 - 1.0).abs() < 0.03);
}

#[test]
fn still_air_brings_nothing() {
    assert_eq!(heat_w_m2_k(0.0, 0.06, 40.0), 0.0);
    assert_eq!(vapour_m_s(0.0, 40.0), 0.0);
    assert!(heat_w_m2_k(f64::NAN, 0.06, 40.0).is_nan());
}

proptest! {
    /// A laminar plate: four times the speed, or a quarter of the length, doubles the transfer; the analogy ties vapour to heat.
    #[test]
    fn heat_grows_with_the_root_of_speed_over_length(speed in 0.05..3.0_f64, length in 0.02..0.25_f64, air_c in 0.0..60.0_f64) {
        let heat = heat_w_m2_k(speed, length, air_c);
        prop_assert!((heat_w_m2_k(4.0 * speed, length, air_c) / heat - 2.0).abs() < 1e-9);
        prop_assert!((heat_w_m2_k(speed, 0.25 * length, air_c) / heat - 2.0).abs() < 1e-9);
        let air = air(air_c);
        let lewis = heat / (air.density_kg_m3 * AIR_HEAT.value * vapour_m_s(heat, air_c));
        prop_assert!((lewis.powf(1.5) - air.schmidt / air.prandtl).abs() < 1e-9);
    }
}
