//! The records: units, ranges and coefficients that can be used, and the polynomial of a correlation.

use proptest::prelude::*;
use std::collections::BTreeSet;
use vatsketch::analysis::{constant_lists, correlation_lists};
use vatsketch::source::{Correlation, SourceId, Standing};

#[test]
fn no_record_is_listed_twice() {
    let constants = constant_lists().into_iter().flat_map(|(_, list)| list.iter().map(|record| record.name));
    let correlations = correlation_lists().into_iter().flat_map(|(_, list)| list.iter().map(|record| record.name));
    let names: Vec<&str> = constants.chain(correlations).collect();
    let mut seen = BTreeSet::new();
    let twice: Vec<&&str> = names.iter().filter(|name| !seen.insert(**name)).collect();
    assert!(twice.is_empty(), "{twice:?}");
}

#[test]
fn every_correlation_has_finite_coefficients_and_holds_somewhere() {
    for record in correlation_lists().into_iter().flat_map(|(_, list)| list) {
        let (least, most) = record.valid;
        assert!(!record.coefficients.is_empty() && record.coefficients.iter().all(|c| c.is_finite()), "{}", record.name);
        assert!(least.is_finite() && most.is_finite() && least <= most, "{}: {least} to {most}", record.name);
        for text in [record.name, record.form, record.unit, record.valid_in] {
            assert!(!text.is_empty(), "{record:?}");
        }
        assert!(!record.locator.is_empty() || record.standing == Standing::FromMemory, "{}", record.name);
    }
}

#[test]
fn every_standing_has_words_of_its_own() {
    let all = [Standing::Published, Standing::Secondhand, Standing::FromMemory, Standing::Fitted, Standing::Judged];
    assert_eq!(all.map(Standing::words).into_iter().collect::<BTreeSet<_>>().len(), all.len());
}

const fn cubic(coefficients: [f64; 4]) -> Correlation<4> {
    Correlation {
        name: "a cubic",
        form: "a + b t + c t² + d t³",
        coefficients,
        unit: "1",
        valid: (-9.0, 9.0),
        valid_in: "1",
        source: SourceId::Textbook,
        locator: "",
        standing: Standing::Published,
    }
}

/// (2 − t)³ = 8 − 12 t + 6 t² − t³, calculated by hand.
#[test]
fn a_polynomial_meets_a_cube() {
    let cube = cubic([8.0, -12.0, 6.0, -1.0]);
    assert_eq!([-1.0, 0.0, 2.0, 5.0].map(|t| cube.polynomial(t)), [27.0, 8.0, 0.0, -27.0]);
    assert!(cube.polynomial(f64::NAN).is_nan());
}

proptest! {
    /// The definition, Σ cᵢ tⁱ, with each power taken by itself.
    #[test]
    fn a_polynomial_is_the_sum_of_its_powers(coefficients in prop::array::uniform4(-1e3..1e3), t in -9.0..9.0) {
        let coefficients: [f64; 4] = coefficients;
        let terms: Vec<f64> = (0..).zip(coefficients).map(|(power, c)| c * f64::powi(t, power)).collect();
        let scale: f64 = terms.iter().map(|term| term.abs()).sum();
        prop_assert!((cubic(coefficients).polynomial(t) - terms.iter().sum::<f64>()).abs() <= 1e-12 * scale + 1e-12);
    }
}
