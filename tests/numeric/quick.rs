//! Logarithm and exponential against those of the standard library, which the C library beneath it rounds to the last place or next to it.

use vatsketch::numeric::{quick_exp, quick_ln};

/// Numbers from the least to the greatest that a law asks for, evenly by their logarithm, and on both sides of the powers of two and of √½.
fn numbers() -> impl Iterator<Item = f64> {
    let even = (-3000..=3000).map(|step| (f64::from(step) * 0.05).exp());
    let near = [1.0, 2.0, 0.5, std::f64::consts::FRAC_1_SQRT_2, std::f64::consts::SQRT_2];
    even.chain(near.into_iter().flat_map(|x| [x * (1.0 - 1e-15), x, x * (1.0 + 1e-15), x * (1.0 + 1e-8)]))
}

#[test]
fn the_logarithm_is_that_of_the_library_within_a_few_last_places() {
    for x in numbers() {
        let (quick, library) = (quick_ln(x), x.ln());
        assert!((quick - library).abs() <= 4e-16 * library.abs().max(1.0), "ln {x}: {quick}, the library has {library}");
    }
    assert_eq!(quick_ln(1.0), 0.0);
}

#[test]
fn the_exponential_is_that_of_the_library_within_a_few_last_places() {
    for step in -7000..=7000 {
        let power = f64::from(step) * 0.1 + 1e-3;
        let (quick, library) = (quick_exp(power), power.clamp(-700.0, 700.0).exp());
        assert!((quick / library - 1.0).abs() < 1e-15, "exp {power}: {quick}, the library has {library}");
    }
    assert_eq!(quick_exp(0.0), 1.0);
}

#[test]
fn far_beyond_it_stays_at_the_ends_and_what_is_no_number_stays_so() {
    assert_eq!((quick_exp(1e9), quick_exp(-1e9)), (quick_exp(700.0), quick_exp(-700.0)));
    assert!(quick_exp(f64::NAN).is_nan());
}
