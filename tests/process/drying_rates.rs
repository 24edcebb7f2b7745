//! The right-hand side of drying as other solvers see it, against the solver's own steps.

use vatsketch::law::Matter;
use vatsketch::process::{AirNow, Cheese, DiscRun, Fineness, Problem, problem};

fn disc() -> (Problem, AirNow) {
    let matter = Matter { water_kg: 0.034, fat_kg: 0.011, casein_kg: 0.009, ash_kg: 0.001, salt_kg: 0.001, ..Matter::default() };
    let cheese = Cheese { matter, diameter_mm: 52.0, thickness_mm: 16.0, temperature_c: 19.0, ..Cheese::default() };
    // Some of the underside is covered, so that every face has its own share.
    (problem(&cheese, 0.4, Fineness { tolerance: 1e-5, ..Fineness::SPREAD }).unwrap(), AirNow::new(37.0, 0.2, 0.7, 0.052))
}

/// The classical method of Runge and Kutta (fourth order, from memory), 10 s a step: far below what the grid allows, and nothing in it
/// is shared with the solver but the rates. 1e-4 of the water and 0.01 K: the solver's own steps are good to about 1e-5 of each.
#[test]
fn an_explicit_method_on_the_same_rates_arrives_where_the_solver_does() {
    let (problem, air) = disc();
    let mut run = DiscRun::new(&problem);
    let mut state = run.state();
    let mut slopes = vec![vec![0.0; state.len()]; 4];
    let step_s = 10.0;
    for _ in 0..720 {
        for (stage, reach) in [0.0, 0.5, 0.5, 1.0].into_iter().enumerate() {
            let before = slopes[stage.saturating_sub(1)].clone();
            let at: Vec<f64> = state.iter().zip(&before).map(|(x, slope)| x + reach * step_s * slope).collect();
            run.rates(&at, &air, &mut slopes[stage]);
        }
        for (at, x) in state.iter_mut().enumerate() {
            *x += step_s / 6.0 * (slopes[0][at] + 2.0 * slopes[1][at] + 2.0 * slopes[2][at] + slopes[3][at]);
        }
    }
    run.advance(7200.0, &|_| air, &mut |_| ()).unwrap();
    let ours = run.state();
    let (temperature_c, water) = state.split_last().unwrap();
    assert!((run.temperature_c - temperature_c).abs() < 0.01, "{} and {temperature_c} °C", run.temperature_c);
    let furthest = water.iter().zip(&ours).map(|(theirs, ours)| (ours / theirs - 1.0).abs()).fold(0.0, f64::max);
    assert!(furthest < 1e-4, "{furthest}");
    assert!(run.mean_water() < 0.9 * problem.start_water, "it has dried at all");
}

#[test]
fn asking_for_rates_leaves_the_run_where_it_is() {
    let (problem, air) = disc();
    let (mut asked, mut alone) = (DiscRun::new(&problem), DiscRun::new(&problem));
    for hour in [0.5, 1.0] {
        let mut rates = asked.state();
        let elsewhere: Vec<f64> = asked.state().iter().map(|x| 0.7 * x).collect();
        asked.rates(&elsewhere, &air, &mut rates);
        asked.advance(3600.0 * hour, &|_| air, &mut |_| ()).unwrap();
        alone.advance(3600.0 * hour, &|_| air, &mut |_| ()).unwrap();
    }
    assert_eq!(asked.state(), alone.state());
}

#[test]
fn rates_of_a_state_of_another_length_are_not_numbers() {
    let (problem, air) = disc();
    let mut run = DiscRun::new(&problem);
    let state = run.state();
    for (given, wanted) in [(state.len() - 1, state.len()), (state.len(), state.len() + 1), (0, 3)] {
        let mut rates = vec![0.0; wanted];
        run.rates(&state[..given], &air, &mut rates);
        assert!(rates.iter().all(|rate| rate.is_nan()));
    }
}
