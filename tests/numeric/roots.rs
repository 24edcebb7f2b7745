//! Brent's method against printed roots.

use proptest::prelude::*;
use std::cell::Cell;
use vatsketch::numeric::{Bracket, RootError, brent};

fn root(function: impl Fn(f64) -> f64, from: f64, to: f64) -> f64 {
    brent(function, Bracket { from, to }, 0.0).unwrap()
}

/// Wallis 1685: x³ − 2x − 5 = 0 at 2.094551481542327; OEIS A060006, x³ = x + 1 at 1.324717957244746; OEIS A003957, cos x = x at
/// 0.7390851332151607; OEIS A030178, x eˣ = 1 at 0.5671432904097838. A few units in the last place.
#[test]
fn printed_roots_are_found_to_the_last_digits() {
    let found = [
        (root(|x| x * x * x - 2.0 * x - 5.0, 2.0, 3.0), 2.094551481542327),
        (root(|x| x * x * x - x - 1.0, 1.0, 2.0), 1.324717957244746),
        (root(|x| x.cos() - x, 0.0, 2.0), 0.7390851332151607),
        (root(|x| x * x.exp() - 1.0, 0.0, 1.0), 0.5671432904097838),
    ];
    for (got, wanted) in found {
        assert!((got - wanted).abs() < 2e-15 * wanted.max(1.0), "got {got}, printed {wanted}");
    }
}

/// A root of ninth order is flat: the method falls back on bisection and still ends near it. The function is below 1e-150 within 2e-17.
#[test]
fn a_flat_root_is_found_too() {
    assert!(root(|x| x.powi(9), -1.0, 1.5).abs() < 1e-15);
}

#[test]
fn a_root_at_a_bound_is_that_bound() {
    assert_eq!(root(|x| x - 1.0, 1.0, 5.0), 1.0);
    assert_eq!(root(|x| x - 5.0, 1.0, 5.0), 5.0);
    assert_eq!(root(|x| x - 2.0, 3.0, 1.0), 2.0, "the bounds may be given either way round");
}

#[test]
fn bounds_with_the_same_sign_are_refused_with_what_was_found_there() {
    let refused = brent(|x| x * x + 1.0, Bracket { from: -1.0, to: 2.0 }, 1e-9);
    assert_eq!(refused, Err(RootError::NotBracketed { from: -1.0, to: 2.0, at_from: 2.0, at_to: 5.0 }));
    let words = refused.unwrap_err().to_string();
    assert!(words.contains("-1 (2)") && words.contains("2 (5)"), "{words}");
}

#[test]
fn a_function_that_is_not_a_number_at_a_bound_is_refused() {
    for function in [|x: f64| x.ln(), |x: f64| (-x).ln()] {
        assert!(brent(function, Bracket { from: -2.0, to: 2.0 }, 1e-9).is_err());
    }
    assert!(brent(|x| x, Bracket { from: f64::NAN, to: 2.0 }, 1e-9).is_err());
}

/// Its order is 1.6 to 1.8 on a smooth function: bisection would need 53 evaluations for as many digits, this fewer than a third of it.
#[test]
fn a_smooth_root_takes_few_evaluations() {
    for smooth in [|x: f64| x * x - 2.0, |x: f64| x.exp() - 4.0, |x: f64| x.sin() - 0.9] {
        let evaluations = Cell::new(0);
        let counted = |x: f64| {
            evaluations.set(evaluations.get() + 1);
            smooth(x)
        };
        assert!(brent(counted, Bracket { from: 0.0, to: 2.0 }, 1e-15).is_ok());
        assert!(evaluations.get() < 17, "{}", evaluations.get());
    }
}

proptest! {
    /// (x − r)(x² + p x + q) without other real roots.
    #[test]
    fn the_only_root_of_a_cubic_is_found(r in -9.0..9.0_f64, p in -3.0..3.0_f64, above in 0.1..5.0_f64) {
        let q = 0.25 * p * p + above;
        let found = brent(|x| (x - r) * (x * x + p * x + q), Bracket { from: -10.0, to: 10.0 }, 1e-12);
        prop_assert!(found.is_ok_and(|x| (x - r).abs() < 2e-12), "{:?} for {}", found, r);
    }

    /// A coarse tolerance is kept, and not overdone by more than the step before.
    #[test]
    fn the_tolerance_is_kept(r in 0.1..9.9_f64, tolerance in 1e-9..1e-2_f64) {
        let found = brent(|x| (x / r).ln(), Bracket { from: 0.01, to: 10.0 }, tolerance);
        prop_assert!(found.is_ok_and(|x| (x - r).abs() <= tolerance));
    }
}
