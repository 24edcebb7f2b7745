//! Another food in vinegar, timed by others: what the model says of it, and where it is early or late.

use vatsketch::caution::EGG_HOURS;
use vatsketch::law::Matter;
use vatsketch::law::acidity::ACETIC_MOLAR_MASS;
use vatsketch::law::buffering::Buffer;
use vatsketch::numeric::{DiscGrid, Half};
use vatsketch::process::{Fineness, PickledCheese, Soak, SoakRun, VinegarBath};

const EGG_KG_M3: f64 = 1035.0;
const BRINE_KG_M3: f64 = 1005.0;

/// An egg as a disc in brine. Three quarters of it are water, and it takes up 0.10 mol/kg down to pH 4 (the capacity with which the balance meets
/// the published equilibrium pH); acid moves in it by the program's own rule.
fn egg((diameter_mm, thickness_mm): (f64, f64), brine_for_each_kg: f64, acid_percent: f64, temperature_c: f64) -> Soak {
    let egg_kg = EGG_KG_M3 * std::f64::consts::PI * (0.0005 * diameter_mm).powi(2) * 0.001 * thickness_mm;
    let matter = Matter { water_kg: 0.75 * egg_kg, casein_kg: 0.25 * egg_kg, ..Matter::default() };
    let egg = PickledCheese {
        matter,
        diameter_mm,
        thickness_mm,
        start_ph: 7.0,
        buffer_scale: 1.0,
        diffusivity_scale: 1.0,
        ..PickledCheese::default()
    };
    let brine_m3 = egg_kg * brine_for_each_kg / BRINE_KG_M3;
    let bath = VinegarBath { acid_g_per_100ml: 5.0, volume_ml: 1e6 * brine_m3, temperature_c };
    let unscaled = Buffer::new(0.1, 0.0, 7.0, 1.0).taken_and_slope(4.0).0;
    let fresh = Soak::with(&egg, &bath, Fineness::SOAK_FINE).unwrap();
    Soak {
        grid: DiscGrid::new(0.0005 * diameter_mm, 0.001 * thickness_mm, 24, 24, 4.0, Half::Upper),
        acid_mol_m3: 0.01 * acid_percent * BRINE_KG_M3 / ACETIC_MOLAR_MASS.value,
        buffer: Buffer::new(0.1, 0.0, 7.0, 0.10 / unscaled),
        ..fresh
    }
}

/// Returns the hours until the centre of an egg of 42 × 37 mm, 60 parts of it to 40 of brine, has pH 4.6.
fn hours(acid_percent: f64, temperature_c: f64) -> f64 {
    let soak = egg((42.0, 37.0), 40.0 / 60.0, acid_percent, temperature_c);
    let mut run = SoakRun::new(&soak);
    while run.state().centre_ph > 4.6 {
        assert!(run.at_s < 3600.0 * 1000.0, "the egg never sours");
        run.advance(run.at_s + 1800.0, &mut |_| ()).unwrap();
    }
    run.at_s / 3600.0
}

/// IAFP 2012, abstracts: the centre had pH 4.6 after 23.5 h (7.5 %, warm), 220 h (2.5 %, warm), 5 days (5 %, 7 °C) and 9 days (2.5 %, 7 °C); which
/// of them were warm is inferred.
///
/// The model meets two, is late in one and early in one; all rows stay. The third column is what the same model gave when it was worked out apart
/// from this program, with a tenth for its other grid and steps.
#[test]
fn of_four_trials_with_eggs_the_model_meets_two_is_early_in_one_and_late_in_one() {
    let mut logs = 0.0;
    for (acid_percent, temperature_c, apart_h, observed_h, met) in [
        (5.0, 7.0, 117.0, 120.0, true),
        (2.5, 7.0, 207.0, 216.0, true),
        (7.5, 25.0, 54.0, 23.5, false),
        (2.5, 25.0, 122.0, 220.0, false),
    ] {
        let hours = hours(acid_percent, temperature_c);
        assert!((hours / apart_h - 1.0).abs() < 0.1, "{acid_percent} % at {temperature_c} °C: {hours:.0} h");
        let found: f64 = observed_h / hours;
        assert_eq!((found - 1.0).abs() < 0.2, met, "{acid_percent} % at {temperature_c} °C: {hours:.0} h, {found:.2} times");
        assert!((EGG_HOURS.range.0 - 0.05..=EGG_HOURS.range.1 + 0.05).contains(&found), "{found:.2} is said to the maker");
        logs += found.ln();
    }
    // The geometric mean of the four is what the record has.
    assert!(((logs / 4.0).exp() - EGG_HOURS.value).abs() < 0.06, "{:.2}", (logs / 4.0).exp());
}

/// J. Appl. Poultry Res. 2025, 100531, abstract: quail eggs in vinegar of 5 % with 4.3 % salt had pH 3.9 in yolk and white after 24 h.
///
/// The source disagrees: the model, with as much brine as egg (assumed) and an egg of 10 g (from memory), has 3.9 in a blended egg then and 4.5 in
/// its yolk; worked out apart from this program it had 4.49. The row stays; being too slow at the centre shortens no soak.
#[test]
fn quail_eggs_soured_sooner_at_the_centre_than_the_model_says() {
    let soak = egg((24.1, 21.2), 1.0, 5.0, 21.0);
    let mut run = SoakRun::new(&soak);
    run.advance(24.0 * 3600.0, &mut |_| ()).unwrap();
    let state = run.state();
    assert!((state.slurry_ph - 3.9).abs() < 0.1, "{:.2}", state.slurry_ph);
    // A tenth for another grid and size.
    assert!((state.centre_ph - 4.49).abs() < 0.1, "{:.2}", state.centre_ph);
}
