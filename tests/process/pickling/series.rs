//! Exact series: a body without buffer in a limited bath.

use super::{cheese, soak, vinegar};
use vatsketch::law::buffering::Buffer;
use vatsketch::process::{Soak, SoakRun};

/// Returns the share of what is taken up in the end, after Fo = D t/L² of the half thickness or the radius.
fn taken(top: bool, alpha: f64, fourier: f64) -> f64 {
    let (diameter_mm, thickness_mm) = (40.0, 20.0);
    let base = Soak::new(&cheese(diameter_mm, thickness_mm, 1050.0, 0.2, 0.5), &vinegar(50.0)).unwrap();
    let body_m3 = 2.0 * base.grid.volume_m3() * base.water_share;
    let (acid_m2_s, length_m) = (2e-10, if top { 0.0005 * thickness_mm } else { 0.0005 * diameter_mm });
    let soak = Soak {
        // No buffer, and acid and acetate alike: the acetate obeys the plain law of diffusion, whatever its pH.
        buffer: Buffer::new(0.2, 0.5, 7.0, 0.0),
        acetate_mobility: 1.0,
        acid_m2_s,
        // A film a thousand times quicker than the body.
        film_m_s: 1e-4,
        open: if top { (1.0, 0.0) } else { (0.0, 1.0) },
        bath_m3: alpha * body_m3,
        tolerance: 3e-4,
        ..base
    };
    let mut run = SoakRun::new(&soak);
    run.advance(fourier * length_m * length_m / acid_m2_s, &mut |_| ()).unwrap();
    run.state().acetate_mol_m3 / (soak.acid_mol_m3 * alpha / (1.0 + alpha))
}

/// J. Crank 1975, sections 4.3.5 (slab) and 5.3.3 (cylinder), recomputed with roots to 1e-15; alpha is the bath over the body.
/// Errors as an independent grid of 40 nodes has them: 5e-4; the first row of the smallest bath is steeper and has 2e-3.
#[test]
fn a_slab_and_a_cylinder_in_a_limited_bath_follow_cranks_series() {
    let checks: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string("tests/reference/pickling_checks.json").unwrap()).unwrap();
    let mut wrong = Vec::new();
    for (key, top) in [("slab_limited", true), ("cyl_limited", false)] {
        for row in checks[key].as_array().unwrap() {
            let of = |key: &str| row[key].as_f64().unwrap();
            let (alpha, fourier) = (of("alpha"), of("Fo"));
            let error = taken(top, alpha, fourier) - of("Mt_Minf");
            let allowed = if fourier < 0.02 { 2e-3 } else { 5e-4 };
            let met = error.abs() <= allowed;
            if !met {
                wrong.push(format!("{key} alpha {alpha} Fo {fourier}: off by {error:.1e}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Second order in time: each tenth of the tolerance should make the step √10 shorter and the error ten times smaller; on one grid.
#[test]
fn a_tighter_tolerance_closes_in_on_one_answer() {
    let with = |tolerance: f64| {
        let soak = Soak { tolerance, ..soak() };
        let mut run = SoakRun::new(&soak);
        run.advance(3600.0 * 72.0, &mut |_| ()).unwrap();
        (run.state().slurry_ph, f64::from(run.steps().0))
    };
    let ((loose, few), (middle, more), (tight, many)) = (with(4e-3), with(4e-4), with(4e-5));
    let ratio = ((loose - middle) / (middle - tight)).abs();
    // Error over steps: order = log(error ratio)/log(step ratio), between the means of the pairs.
    let order = ratio.ln() / ((many - more) / (more - few)).ln();
    assert!((1.6..2.6).contains(&order), "order {order} from {loose}, {middle}, {tight} in {few}, {more}, {many} steps");
}

#[test]
fn halving_the_grid_twice_shows_second_order_in_space() {
    use vatsketch::numeric::{DiscGrid, Half};
    let at_24_h = |nodes: usize| {
        let grid = DiscGrid::new(0.02525, 0.0152, nodes, nodes, 4.0, Half::Upper);
        let soak = Soak { grid, tolerance: 1e-4, ..soak() };
        let mut run = SoakRun::new(&soak);
        run.advance(3600.0 * 24.0, &mut |_| ()).unwrap();
        run.state().acetate_mol_m3
    };
    let (coarse, middle, fine) = (at_24_h(8), at_24_h(16), at_24_h(32));
    let order = ((coarse - middle) / (middle - fine)).abs().log2();
    assert!((1.6..2.5).contains(&order), "order {order} from {coarse}, {middle}, {fine}");
}
