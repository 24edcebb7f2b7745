//! Acetic acid against handbook values and an independent computation.

#![allow(non_snake_case, reason = "the members are the columns of the table")]

use super::tables::{near, rows};
use proptest::prelude::*;
use vatsketch::law::acidity::{
    acid_diffusivity_m2_s, acid_g_per_100ml, acid_mol_m3, split_share, vinegar_density_g_ml, vinegar_mass_percent,
    water_viscosity_pa_s,
};
use vatsketch::law::buffering::local_equilibrium;

/// pKa of acetic acid in water at 25 °C by the equation of Harned and Ehlers 1933; they measured 4.756 (both from memory).
const PKA_25: f64 = 4.7558;

/// Returns the pH of acid alone in water.
fn acid_ph(mol_m3: f64, pk: f64) -> f64 {
    local_equilibrium(mol_m3, mol_m3, None, pk, 3.0).ph
}

#[derive(serde::Deserialize)]
struct Vinegar {
    g_per_100mL: f64,
    mol_L: f64,
    mass_pct: f64,
    density: f64,
    pH_ideal: f64,
}

/// CRC handbook, densities of acetic acid in water; the table's figures are rounded to the last digit, and it lies straight between its rows.
#[test]
fn strength_density_and_ph_are_those_of_the_table() {
    let rows: Vec<Vinegar> = rows("vinegar");
    assert_eq!(rows.len(), 5);
    for row in rows {
        near(acid_mol_m3(row.g_per_100mL), 1000.0 * row.mol_L, 0.06);
        near(acid_g_per_100ml(1000.0 * row.mol_L), row.g_per_100mL, 4e-4);
        let percent = vinegar_mass_percent(row.g_per_100mL);
        near(percent, row.mass_pct, 0.002);
        near(vinegar_density_g_ml(percent), row.density, 2e-4);
        near(acid_ph(1000.0 * row.mol_L, PKA_25), row.pH_ideal, 0.001);
    }
}

/// CRC handbook (from memory): viscosity of water 1.0016 mPa·s at 20 °C and 0.8903 at 25 °C; Vogel's form is good to 0.3 %.
/// The diffusivities at 21 and 4 °C are an independent computation by the same rule, printed to three digits.
#[test]
fn acid_moves_slower_in_cold_water() {
    near(water_viscosity_pa_s(20.0), 1.0016e-3, 3e-6);
    near(water_viscosity_pa_s(25.0), 0.8903e-3, 3e-6);
    near(acid_diffusivity_m2_s(21.0), 1.087e-9, 1e-12);
    near(acid_diffusivity_m2_s(4.0), 6.47e-10, 1e-12);
    assert_eq!(acid_diffusivity_m2_s(25.0), 1.21e-9);
}

#[test]
fn far_from_its_pk_the_acid_is_whole_or_split_and_what_is_not_a_number_stays_so() {
    near(split_share(4.65, 4.65), 0.5, 1e-15);
    near(split_share(12.0, 4.65), 1.0, 1e-7);
    near(split_share(1.0, 4.65), 0.0, 3e-4);
    near(vinegar_mass_percent(0.0), 0.0, 0.0);
    near(vinegar_density_g_ml(0.0), 0.9982, 0.0);
    assert!(vinegar_mass_percent(f64::NAN).is_nan());
}

proptest! {
    /// h²/(C − h) = K, and strength there and back.
    #[test]
    fn the_ph_of_acid_alone_fulfils_the_law_of_mass_action(g in 0.1..10.0_f64, pk in 4.5..4.9_f64) {
        let strength = 0.001 * acid_mol_m3(g);
        let hydrogen = 10.0_f64.powf(-acid_ph(1000.0 * strength, pk));
        prop_assert!((hydrogen * hydrogen / (strength - hydrogen) / 10.0_f64.powf(-pk) - 1.0).abs() < 1e-9);
        prop_assert!((acid_g_per_100ml(acid_mol_m3(g)) - g).abs() < 1e-12);
        let percent = vinegar_mass_percent(g);
        prop_assert!((percent * vinegar_density_g_ml(percent) - g).abs() < 1e-9);
    }
}
