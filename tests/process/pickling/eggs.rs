//! Another food in vinegar, timed by others: what the model says of it, and where it is early or late.

use crate::law::outside::Outside;
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

/// A trial with eggs.
#[derive(serde::Deserialize)]
struct Trial {
    case: String,
    acid_percent: f64,
    temperature_c: f64,
    observed_h: f64,
    reading: String,
}

/// Returns the trials next to our hours.
pub fn egg_rows() -> Vec<Outside> {
    let trials: Vec<Trial> = crate::law::rows("eggs.csv");
    trials
        .into_iter()
        .map(|trial| {
            let pair = (trial.observed_h, hours(trial.acid_percent, trial.temperature_c));
            let tolerance = ((pair.1 / pair.0).ln().abs() < 0.2).then_some(0.2 * pair.0);
            let why = if tolerance.is_some() { "another food, its size and capacity assumed" } else { "the model is not met here" };
            let case = format!("{}, read {}: centre at pH 4.6, h", trial.case, trial.reading);
            Outside::new("acid in eggs", case, "IAFP 2012, abstracts", pair, tolerance, why)
        })
        .collect()
}

/// IAFP 2012, two abstracts: the centre had pH 4.6 after 5 days (5 %, 7 °C) and 9 days (2.5 %, 7 °C), eggs read every 24 to 48 h; and after 23.5 h
/// (7.5 %) to 220.3 h (2.5 %), the ends of a range over four packings of which "only the eggs … kept refrigerated showed a significantly slower
/// time", read to 144 h and on by a straight line.
///
/// So the longest was very likely the packing at 2 °C; that is an inference, and its other reading, 25 °C, stays as a row. Read in the first way the
/// model meets three and is late in one; in the second it meets two, is late in one and early in one. The third column is what the same model gave
/// when it was worked out apart from this program, with a tenth for its other grid and steps.
#[test]
fn of_four_trials_with_eggs_the_model_meets_three_and_is_late_in_one() {
    let found = |acid_percent: f64, temperature_c: f64, apart_h: f64, observed_h: f64, met: bool| {
        let hours = hours(acid_percent, temperature_c);
        assert!((hours / apart_h - 1.0).abs() < 0.1, "{acid_percent} % at {temperature_c} °C: {hours:.0} h");
        let found = observed_h / hours;
        assert_eq!((found - 1.0).abs() < 0.2, met, "{acid_percent} % at {temperature_c} °C: {hours:.0} h, {found:.2} times");
        assert!((EGG_HOURS.range.0 - 0.05..=EGG_HOURS.range.1 + 0.05).contains(&found), "{found:.2} is said to the maker");
        found
    };
    let four = [
        found(5.0, 7.0, 117.0, 120.0, true),
        found(2.5, 7.0, 207.0, 216.0, true),
        found(7.5, 25.0, 54.0, 23.5, false),
        found(2.5, 2.0, 241.0, 220.3, true),
    ];
    // The geometric mean of the four is what the record has.
    let mean = (four.iter().map(|found| found.ln()).sum::<f64>() / 4.0).exp();
    assert!((mean - EGG_HOURS.value).abs() < 0.05, "{mean:.2}");
    // The other reading is the end of what the maker is told, to a digit.
    let if_warm = found(2.5, 25.0, 122.0, 220.3, false);
    assert!((if_warm - EGG_HOURS.range.1).abs() < 0.1, "{if_warm:.2}");
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
