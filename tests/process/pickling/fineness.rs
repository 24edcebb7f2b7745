//! How far the soak that is shown lies from the fine one.

use super::{cheese, vinegar};
use vatsketch::process::{Fineness, PH_TARGETS, PickledCheese, Soak, SoakRun, VinegarBath, pickle};

/// Hours at which they are compared.
const HOURS: [f64; 8] = [2.0, 6.0, 12.0, 24.0, 72.0, 168.0, 264.0, 408.0];

fn cases() -> [(&'static str, PickledCheese, VinegarBath); 4] {
    let cold = |volume_ml: f64| VinegarBath { acid_g_per_100ml: 6.0, volume_ml, temperature_c: 4.0 };
    [
        ("dried", cheese(50.5, 15.2, 1074.0, 0.26, 0.352), vinegar(60.0)),
        ("cold", cheese(62.0, 22.0, 1070.0, 0.24, 0.42), cold(225.0)),
        ("thin", cheese(33.5, 8.5, 1074.0, 0.26, 0.352), vinegar(25.0)),
        ("thick", cheese(80.0, 35.0, 1060.0, 0.22, 0.45), cold(600.0)),
    ]
}

/// 0.02 of a pH, but 0.05 while the front passes the centre: its pH falls by a unit within hours there, which a wide ring smears.
#[test]
fn the_soak_that_is_shown_is_close_to_the_fine_one() {
    let mut wrong = Vec::new();
    for (name, cheese, bath) in cases() {
        let states = |fineness: Fineness| {
            let soak = Soak::with(&cheese, &bath, fineness).unwrap();
            let mut run = SoakRun::new(&soak);
            HOURS.map(|hour| {
                run.advance(3600.0 * hour, &mut |_| ()).unwrap();
                run.state()
            })
        };
        let (fine, shown) = (states(Fineness::SOAK_FINE), states(Fineness::SOAK_SHOWN));
        for ((hour, fine), shown) in HOURS.iter().zip(fine).zip(shown) {
            let passing = 5.2 < fine.centre_ph && fine.centre_ph < 6.495;
            for (what, fine, shown, allowed) in [
                ("centre", fine.centre_ph, shown.centre_ph, if passing { 0.05 } else { 0.02 }),
                ("slurry", fine.slurry_ph, shown.slurry_ph, 0.02),
                ("surface", fine.surface_ph, shown.surface_ph, 0.02),
                ("bath", fine.bath_ph, shown.bath_ph, 0.02),
            ] {
                let close = (shown - fine).abs() <= allowed;
                if !close {
                    wrong.push(format!("{name} at {hour} h: {what} {shown:.4}, fine {fine:.4}"));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Returns the hours at which a soak reaches the targets, in steps of which the very next is the answer: centre and blended of each.
fn first_hours(soak: &Soak) -> [[Option<f64>; 2]; 2] {
    let mut run = SoakRun::new(soak);
    let mut hours = [[None; 2]; 2];
    while run.at_s < 3600.0 * 700.0 {
        run.step(run.at_s * 1.004 + 60.0).unwrap();
        let (state, at_h) = (run.state(), run.at_s / 3600.0);
        for (target, hours) in PH_TARGETS.iter().zip(&mut hours) {
            for (ph, hour) in [state.centre_ph, state.slurry_ph].into_iter().zip(hours) {
                if hour.is_none() && ph <= *target {
                    *hour = Some(at_h);
                }
            }
        }
    }
    hours
}

/// Within 2 % as they are read from the coarse steps; within 4 % on the grid of the slow and the fast soak.
#[test]
fn the_hours_that_are_shown_are_those_of_the_fine_soak() {
    let mut compared = 0;
    for (name, cheese, bath) in cases() {
        let shown = pickle(&cheese, &bath, &[24.0]).unwrap().targets.map(|target| [target.centre_h, target.slurry_h]);
        let fine = first_hours(&Soak::new(&cheese, &bath).unwrap());
        let spread = first_hours(&Soak::with(&cheese, &bath, Fineness::SOAK_SPREAD).unwrap());
        for (what, coarse, allowed) in [("shown", shown, 0.02), ("spread", spread, 0.04)] {
            for (coarse, fine) in coarse.as_flattened().iter().zip(fine.as_flattened()) {
                if let Some(fine) = fine {
                    let coarse = coarse.unwrap();
                    assert!((coarse / fine - 1.0).abs() < allowed, "{name}, {what}: {coarse:.1} h, fine {fine:.1} h");
                    compared += 1;
                }
            }
        }
    }
    assert!(compared >= 20, "only {compared} hours were compared");
}
