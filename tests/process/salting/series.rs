//! Exact series of a plane sheet.

use super::{DIFFUSIVITY, THICKNESS_MM, WATER, even, seconds};
use std::f64::consts::PI;
use vatsketch::law::salt::{even_days, saturated_kg_kg};
use vatsketch::numeric::graded_both;
use vatsketch::process::{Face, SaltColumn, SaltRun};

/// J. Crank 1975, The Mathematics of Diffusion, section 4.3.2 (from memory): a sheet of thickness L with both faces held at one strength
/// takes up 1 − Σ 8/((2n+1)² π²) e^(−(2n+1)² π² Fo) of all. Salt lies on both faces throughout. The grid's first interval is a hundredth
/// of the thickness: 0.5 % of all, 1 % in the first row, where the salt has come two millimetres.
#[test]
fn a_sheet_with_salt_on_both_faces_takes_it_up_as_cranks_series_says() {
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &even);
    run.sprinkle(Face::Underside, 1.0);
    run.sprinkle(Face::Top, 1.0);
    for (fourier, allowed) in [(0.01, 0.01), (0.03, 0.005), (0.1, 0.005), (0.3, 0.005), (1.0, 0.005)] {
        run.advance(seconds(fourier), &mut |_| ()).unwrap();
        let taken = (run.column.salt_in_all() - run.undissolved()) / (WATER * saturated_kg_kg());
        let term = |n: f64| 8.0 / (n * n * PI * PI) * (-n * n * PI * PI * fourier).exp();
        let series = 1.0 - (0..200).map(|n| term(f64::from(2 * n + 1))).sum::<f64>();
        assert!((taken - series).abs() < allowed, "Fo {fourier}: {taken}, series {series}");
        assert!(run.on_the_faces() > 0.0);
    }
}

/// The same book, section 2.2.3 with 4.3.4 (from memory): an amount given at once on one face of a sheet with closed faces,
/// c/c∞ = 1 + 2 Σ cos(nπz/L) e^(−n²π² Fo). It dissolves at once where the moisture dissolves without limit. 1 % of c∞, the steps
/// as long as in a batch.
#[test]
fn salt_given_to_one_face_at_once_spreads_as_the_series_of_a_closed_sheet_says() {
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &even);
    run.saturated = 1e3;
    run.sprinkle(Face::Underside, 0.03);
    for fourier in [0.03, 0.1, 0.2, 0.5] {
        run.advance(seconds(fourier), &mut |_| ()).unwrap();
        for (node, z) in run.column.heights.clone().into_iter().enumerate() {
            let term = |n: f64| (n * PI * z).cos() * (-n * n * PI * PI * fourier).exp();
            let series = 1.0 + 2.0 * (1..60).map(|n| term(f64::from(n))).sum::<f64>();
            let ours = run.salt_in_water(node) * WATER / 0.03;
            assert!((ours - series).abs() < 0.01 * series.max(1.0), "Fo {fourier}, z {z}: {ours}, series {series}");
        }
    }
}

/// Salt that is gone before it has come through lies for t = π/4 · (M/(ε c))²/D, from the uptake 2 ε c √(D t/π) of a half-space (Crank 1975,
/// section 3.2, from memory). 2 %: the first interval of the grid.
#[test]
fn a_little_salt_is_gone_when_a_half_space_has_taken_it() {
    let salt = 0.06;
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &even);
    run.sprinkle(Face::Top, salt);
    let mut gone_s = None;
    run.tolerance = 1e-3;
    run.advance(seconds(0.2), &mut |run| {
        if run.on_the_faces() == 0.0 {
            gone_s.get_or_insert(run.at_s);
        }
    })
    .unwrap();
    let deep_m = salt / (WATER * saturated_kg_kg()) * 0.001 * THICKNESS_MM;
    let by_hand = 0.25 * PI * deep_m * deep_m / DIFFUSIVITY;
    let gone_s = gone_s.unwrap();
    assert!((gone_s / by_hand - 1.0).abs() < 0.02, "{gone_s} s, by hand {by_hand} s");
}

/// The days by the slowest mode of a slab (Crank 1975, The Mathematics of Diffusion, chapter 4), ln 20 L²/(π² D): a twentieth of the slowest unevenness is left, and the middle has 1 − 2/20 of the mean.
#[test]
fn after_the_days_of_the_rule_the_middle_has_nine_tenths() {
    let mut run = SaltRun::new(SaltColumn::unsalted(THICKNESS_MM), 0.0, &even);
    run.saturated = 1e3;
    run.sprinkle(Face::Underside, 0.02);
    run.sprinkle(Face::Top, 0.02);
    run.advance(86_400.0 * even_days(0.5 * THICKNESS_MM, DIFFUSIVITY), &mut |_| ()).unwrap();
    let middle = run.at_the_centre() * WATER / 0.04;
    assert!((middle - 0.9).abs() < 0.003, "{middle}");
}

/// Returns the salt at the centre and at the salted face after a while on a grid of so many intervals.
fn with(intervals: usize, tolerance: f64) -> (f64, u32) {
    let column = SaltColumn::with_heights(graded_both(intervals, 1.0, 6.0), THICKNESS_MM);
    let mut run = SaltRun::new(column, 0.0, &even);
    run.saturated = 1e3;
    run.tolerance = tolerance;
    run.sprinkle(Face::Underside, 0.04);
    run.advance(seconds(0.08), &mut |_| ()).unwrap();
    (run.at_the_centre(), run.steps().0)
}

#[test]
fn halving_the_grid_twice_shows_second_order() {
    let [coarse, middle, fine] = [16, 32, 64].map(|intervals| with(intervals, 1e-5).0);
    let order = ((coarse - middle) / (middle - fine)).abs().log2();
    assert!((1.7..2.5).contains(&order), "order {order} from {coarse}, {middle}, {fine}");
}

/// Each tenth of the tolerance makes the step √10 shorter; the error should then be ten times smaller.
#[test]
fn tighter_steps_show_second_order() {
    let [(loose, few), (middle, more), (tight, many)] = [4e-3, 4e-4, 4e-5].map(|tolerance| with(32, tolerance));
    let ratio = ((loose - middle) / (middle - tight)).abs();
    let order = ratio.ln() / (f64::from(many - more) / f64::from(more - few)).ln();
    assert!((1.6..2.6).contains(&order), "order {order} from {loose}, {middle}, {tight} in {few}, {more}, {many} steps");
}
