//! How fast salt leaves a cheese in vinegar.

use vatsketch::law::soaking::{SALT_OBSTRUCTION, SWELLING_WATER, salt_in_vinegar_m2_s};

/// The diffusivity with which the salt of the reference table leaves (0.33 of 0.379 of that in water, 1.446e-9 m²/s at 21 °C by
/// Stokes and Einstein), to the three digits of its figures.
#[test]
fn salt_moves_as_the_table_took_it() {
    let d = salt_in_vinegar_m2_s(0.379, 21.0);
    assert!((d / (0.33 * 0.379 * 1.446e-9) - 1.0).abs() < 1e-3, "{d}");
}

/// Floury et al. 2010: salt in cheeses at 10 to 15 °C has 1.0e-10 to 5.3e-10 m²/s; a cheese with half its volume water is among them.
#[test]
fn a_moist_cheese_lies_among_the_published_ones() {
    for obstruction in [SALT_OBSTRUCTION.range.0, SALT_OBSTRUCTION.value, SALT_OBSTRUCTION.range.1] {
        let d = salt_in_vinegar_m2_s(0.5, 13.0) * obstruction / SALT_OBSTRUCTION.value;
        assert!((1.0e-10..5.3e-10).contains(&d), "{d}");
    }
}

#[test]
fn without_water_nothing_moves_and_warmth_speeds_it() {
    assert_eq!(salt_in_vinegar_m2_s(0.0, 20.0), 0.0);
    assert!(salt_in_vinegar_m2_s(0.4, 21.0) > 1.5 * salt_in_vinegar_m2_s(0.4, 4.0));
    assert!(SWELLING_WATER.range.0 < SWELLING_WATER.value && SWELLING_WATER.value < SWELLING_WATER.range.1);
}
