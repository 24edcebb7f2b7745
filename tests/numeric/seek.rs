//! Looking for a zero where the function need not be kind.

use proptest::prelude::*;
use std::cell::Cell;
use vatsketch::numeric::{Search, Sought, seek};

const PLAIN: Search = Search { least: 0.0, most: 100.0, start: 10.0, step: 0.5, whole: false, tolerance: 1e-6 };

fn met(sought: Sought) -> f64 {
    match sought {
        Sought::Met { at, .. } => at,
        other => panic!("{other:?}"),
    }
}

#[test]
fn of_several_roots_the_one_near_the_start_is_taken() {
    // Roots of sin(πx/10) are the tens.
    let wave = |x: f64| Some((std::f64::consts::PI * x / 10.0).sin());
    for (start, root) in [(11.0, 10.0), (58.0, 60.0), (99.0, 100.0)] {
        assert!((met(seek(&wave, &Search { start, ..PLAIN })) - root).abs() < 1e-5, "{start}");
    }
}

#[test]
fn a_start_that_meets_the_goal_stays() {
    assert_eq!(met(seek(&|_| Some(0.0), &PLAIN)), 10.0);
}

#[test]
fn a_flat_function_that_is_never_zero_stays_where_it_is_and_says_so() {
    assert_eq!(seek(&|_| Some(3.0), &PLAIN), Sought::Nearest { at: 10.0, value: 3.0 });
}

#[test]
fn a_function_without_a_value_is_met_nowhere() {
    assert_eq!(seek(&|_| None, &PLAIN), Sought::Nowhere);
    assert_eq!(seek(&|_| Some(f64::NAN), &PLAIN), Sought::Nowhere);
}

/// The root lies between the last step with a value and the first without, and is found all the same.
#[test]
fn a_root_close_to_where_the_function_ends_is_found() {
    let ends = |x: f64| (x <= 30.0).then_some(x - 29.9);
    assert!((met(seek(&ends, &PLAIN)) - 29.9).abs() < 1e-5);
    let begins = |x: f64| (x >= 30.0).then_some(x - 30.1);
    assert!((met(seek(&begins, &PLAIN)) - 30.1).abs() < 1e-5, "and if there is none at the start");
}

#[test]
fn a_jump_over_zero_is_no_root_and_the_nearer_side_is_told() {
    let step = |x: f64| Some(if x < 40.0 { -1.0 } else { 2.0 });
    assert_eq!(seek(&step, &PLAIN), Sought::Nearest { at: 10.0, value: -1.0 });
    // Behind the jump stands a root.
    let step = |x: f64| Some(if x < 40.0 { -1.0 } else { 52.5 - x });
    assert!((met(seek(&step, &PLAIN)) - 52.5).abs() < 1e-5);
}

#[test]
fn a_function_that_turns_round_before_zero_is_told_at_its_turn() {
    let Sought::Nearest { at, value } = seek(&|x: f64| Some((x - 43.7).powi(2) + 5.0), &PLAIN) else { panic!("no root") };
    assert!((at - 43.7).abs() < 0.05 && (value - 5.0).abs() < 0.01, "{at} {value}");
}

#[test]
fn a_goal_beyond_an_end_is_nearest_at_that_end() {
    assert_eq!(seek(&|x| Some(x - 200.0), &PLAIN), Sought::Nearest { at: 100.0, value: -100.0 });
    assert_eq!(seek(&|x| Some(x + 1.0), &PLAIN), Sought::Nearest { at: 0.0, value: 1.0 });
}

/// Half a thousand arguments would do it blindly; a plain function asks for a few dozen, and none twice.
#[test]
fn few_arguments_are_asked_for_and_none_twice() {
    let asked = Cell::new(0);
    let seen = std::cell::RefCell::new(std::collections::HashSet::new());
    let function = |x: f64| {
        asked.set(asked.get() + 1);
        assert!(seen.borrow_mut().insert(x.to_bits()), "{x} was asked for twice");
        Some(x.ln_1p() - 4.0)
    };
    met(seek(&function, &PLAIN));
    assert!(asked.get() < 30, "{}", asked.get());
}

proptest! {
    #[test]
    fn a_line_is_met_wherever_it_crosses(root in 0.0..100.0_f64, slope in prop_oneof![-50.0..-0.01_f64, 0.01..50.0_f64], start in 0.0..100.0_f64) {
        let search = Search { start, tolerance: 1e-3, ..PLAIN };
        let at = met(seek(&|x| Some(slope * (x - root)), &search));
        prop_assert!(f64::abs(slope * (at - root)) <= 1e-3);
    }

    #[test]
    fn whole_arguments_stay_whole_and_a_root_among_them_is_found(root in 0_u32..=100, start in 0_u32..=100, fall in any::<bool>()) {
        let root = f64::from(root);
        let sign = if fall { -1.0 } else { 1.0 };
        let search = Search { start: f64::from(start), step: 1.0, whole: true, tolerance: 0.0, ..PLAIN };
        let function = |x: f64| { assert_eq!(x.fract(), 0.0); Some(sign * (x.powi(2) - root.powi(2))) };
        prop_assert_eq!(met(seek(&function, &search)), root);
        // Between two whole numbers there is none; the nearer one is told.
        let Sought::Nearest { at, .. } = seek(&|x| Some(x - root - 0.4), &search) else { panic!("no whole root") };
        prop_assert_eq!(at, root);
    }
}
