//! What must hold of salt and water in vinegar whatever the cheese; the acid has the same in `behaviour.rs` and `series.rs`.

use super::{cheese, dried, soak, vinegar};
use proptest::prelude::*;
use vatsketch::law::soaking::salt_in_vinegar_m2_s;
use vatsketch::numeric::{DiscGrid, Half};
use vatsketch::process::{Fineness, LeachRun, Soak, Swelling, salt_left};

const DAY_S: f64 = 86_400.0;

fn swelling(water: f64) -> Swelling<'static> {
    Swelling {
        fresh: dried().matter,
        fresh_diameter_mm: 50.5,
        fresh_thickness_mm: 15.2,
        moisture: None,
        water,
        protein_share: 0.40,
        salt_molality: 0.0,
        temperature_c: 21.0,
        diffusivity_scale: 1.0,
        energy_scale: 1.0,
        open_faces: 1.0,
    }
}

/// Infinite time is the equilibrium of the whole: as much in each litre of either water.
#[test]
fn in_the_end_the_salt_is_even_between_cheese_and_vinegar() {
    let soak = soak();
    let mut run = LeachRun::new(&soak, salt_in_vinegar_m2_s(0.379, 21.0));
    run.advance(400.0 * DAY_S, &mut |_| ()).unwrap();
    let water_m3 = 2.0 * soak.grid.volume_m3() * soak.water_share;
    let even = water_m3 / (water_m3 + soak.bath_m3);
    // What the tolerance of the steps leaves.
    assert!((run.bath() - even).abs() < 5e-6 && (run.left() - even).abs() < 5e-6, "{} {} {even}", run.bath(), run.left());
    assert!(run.rings().iter().all(|ring| (ring - even).abs() < 1e-4));
}

/// The same in space: half the rings, four times the error.
#[test]
fn salt_has_second_order_in_space() {
    let with = |nodes: usize| {
        let base = soak();
        let grid = DiscGrid::new(0.02525, 0.0152, nodes, nodes, 1.0, Half::Upper);
        salt_left(&Soak { grid, tolerance: 1e-5, ..base }, 1.8e-10, &[48.0]).unwrap()[0]
    };
    let [coarse, middle, fine] = [8, 16, 32].map(with);
    let order = ((coarse - middle) / (middle - fine)).abs().log2();
    assert!((1.6..2.6).contains(&order), "order {order} from {coarse}, {middle}, {fine}");
}

/// Water comes in without a swing, whether in or out.
#[test]
fn water_does_not_swing() {
    for (from, face) in [(0.5, 1.0), (1.2, 0.7)] {
        let points = swelling(from).follow(face, 24.0 * 20.0).unwrap();
        let towards: f64 = if face > from { 1.0 } else { -1.0 };
        assert!(points.windows(2).all(|pair| towards * (pair[1].water - pair[0].water) > -1e-9));
        let last = points.last().unwrap().water;
        assert!(towards * (face - last) > -1e-6, "{last} beyond {face}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// No ring goes beyond the salt of its cheese or below none, and from the axis outwards there is less: nothing swings, however thin or dry the cheese.
    #[test]
    fn salt_does_not_swing(
        (diameter_mm, thickness_mm) in (15.0..150.0_f64, 2.0..80.0_f64),
        water in 0.1..0.7_f64,
        (ml, temperature_c) in (5.0..400.0_f64, 2.0..30.0_f64),
    ) {
        let soak = Soak::with(&cheese(diameter_mm, thickness_mm, 1074.0, 0.26, water), &vinegar(ml), Fineness::SOAK_SHOWN).unwrap();
        let heights = soak.grid.heights_m.len();
        let mut run = LeachRun::new(&soak, salt_in_vinegar_m2_s(soak.water_share, temperature_c));
        let (mut least, mut most, mut rise, mut before) = (1.0_f64, 0.0_f64, 0.0_f64, f64::INFINITY);
        run.advance(7.0 * DAY_S, &mut |run| {
            for ring in run.rings() {
                (least, most) = (least.min(*ring), most.max(*ring));
            }
            let along = run.rings()[..heights].windows(2).map(|pair| pair[1] - pair[0]);
            rise = rise.max(along.fold(run.left() - before, f64::max));
            before = run.left();
        })
        .unwrap();
        // What the first steps leave in the outermost ring: the method takes two parts of a hundred too much where a step is as long as it answers in.
        prop_assert!(least > -0.02 && most < 1.0 + 5e-3 && rise < 5e-3, "{least} to {most}, {rise}");
    }

    /// What the cheese has lost the vinegar has, at every step, to rounding.
    #[test]
    fn no_salt_is_lost(ml in 5.0..200.0_f64, hours in 1.0..800.0_f64, tolerance in 1e-3..1e-2_f64) {
        let soak = Soak { tolerance, ..Soak::with(&dried(), &vinegar(ml), Fineness::SOAK_SHOWN).unwrap() };
        let water_m3 = 2.0 * soak.grid.volume_m3() * soak.water_share;
        let mut run = LeachRun::new(&soak, 1.8e-10);
        let mut worst = 0.0_f64;
        run.advance(3600.0 * hours, &mut |run| {
            worst = worst.max((run.left() + run.bath() * soak.bath_m3 / water_m3 - 1.0).abs());
        }).unwrap();
        prop_assert!(worst < 1e-9, "{worst:e}");
    }
}
