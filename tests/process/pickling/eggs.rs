//! Another food in vinegar, timed by others: what the model says of it, and how much too soon.

use vatsketch::law::Matter;
use vatsketch::law::acidity::{ACETIC_MOLAR_MASS, acid_diffusivity_m2_s};
use vatsketch::law::buffering::Buffer;
use vatsketch::numeric::{DiscGrid, Half};
use vatsketch::process::{Fineness, PickledCheese, Soak, SoakRun, VinegarBath};

/// Returns the hours until the centre of an egg has pH 4.6.
///
/// 50 g of egg as a disc as wide as it is high, three quarters of it water, in 40 parts of brine to 60; it takes up 0.10 mol/kg down to
/// pH 4. The diffusivity, 7·10⁻¹⁰ m²/s at 25 °C, is chosen for the warm egg in the strongest brine, so that only the others are tests.
fn hours(acid_percent: f64, temperature_c: f64) -> f64 {
    let (egg_kg, egg_kg_m3, brine_kg_m3) = (0.050, 1035.0, 1005.0);
    let side_m = (4.0 * egg_kg / egg_kg_m3 / std::f64::consts::PI).cbrt();
    let matter = Matter { water_kg: 0.75 * egg_kg, casein_kg: 0.25 * egg_kg, ..Matter::default() };
    let (diameter_mm, thickness_mm) = (1000.0 * side_m, 1000.0 * side_m);
    let egg = PickledCheese {
        matter,
        diameter_mm,
        thickness_mm,
        start_ph: 7.0,
        buffer_scale: 1.0,
        diffusivity_scale: 1.0,
        ..PickledCheese::default()
    };
    let brine_m3 = egg_kg * 0.4 / 0.6 / brine_kg_m3;
    let bath = VinegarBath { acid_g_per_100ml: 5.0, volume_ml: 1e6 * brine_m3, temperature_c };
    let unscaled = Buffer::new(0.1, 0.0, 7.0, 1.0).taken_and_slope(4.0).0;
    let fresh = Soak::with(&egg, &bath, Fineness::SOAK_FINE).unwrap();
    let soak = Soak {
        grid: DiscGrid::new(0.5 * side_m, side_m, 24, 24, 4.0, Half::Upper),
        acid_m2_s: 7e-10 * acid_diffusivity_m2_s(temperature_c) / acid_diffusivity_m2_s(25.0),
        acid_mol_m3: 0.01 * acid_percent * brine_kg_m3 / ACETIC_MOLAR_MASS.value,
        buffer: Buffer::new(0.1, 0.0, 7.0, 0.10 / unscaled),
        ..fresh
    };
    let mut run = SoakRun::new(&soak);
    while run.state().centre_ph > 4.6 {
        assert!(run.at_s < 3600.0 * 1000.0, "the egg never sours");
        run.advance(run.at_s + 1800.0, &mut |_| ()).unwrap();
    }
    run.at_s / 3600.0
}

/// IAFP 2012, abstracts: the centre had pH 4.6 after 23.5 h (7.5 %, warm), 220 h (2.5 %, warm), 5 days (5 %, 7 °C) and 9 days (2.5 %, 7 °C).
///
/// The source disagrees with the model, which is too quick: twice at 5 %, two to four times at 2.5 %. The rows stay, as what is said to the
/// maker rests on them; tolerance a quarter of the ratio, as the trials were read once or twice a day. The third column is what an
/// independent model gave with 5 to 7·10⁻¹⁰ m²/s, in hours, with a tenth for its other buffer.
#[test]
fn eggs_soured_two_to_four_times_as_slowly_as_the_model_says() {
    for (acid_percent, temperature_c, (least_h, most_h), observed_h, ratio) in [
        (7.5, 25.0, (23.0, 32.0), 23.5, 1.0),
        (2.5, 25.0, (51.0, 71.0), 220.0, 4.0),
        (5.0, 7.0, (48.0, 72.0), 120.0, 2.4),
        (2.5, 7.0, (86.4, 120.0), 216.0, 2.4),
    ] {
        let hours = hours(acid_percent, temperature_c);
        assert!((0.9 * least_h..=1.1 * most_h).contains(&hours), "{acid_percent} % at {temperature_c} °C: {hours:.0} h");
        let found = observed_h / hours;
        assert!((found / ratio - 1.0).abs() < 0.25, "{acid_percent} % at {temperature_c} °C: {hours:.0} h, {found:.2} times");
    }
}
