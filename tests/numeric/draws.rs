//! Numbers as if by chance.

use proptest::prelude::*;
use vatsketch::numeric::{Draws, latin_hypercube, quantile};

/// The first five numbers that implementations of splitmix64 print for this seed (from memory); whole numbers, so exact.
#[test]
fn the_generator_gives_the_numbers_of_the_others() {
    let mut draws = Draws::new(1_234_567);
    let first: Vec<u64> = (0..5).map(|_| draws.whole()).collect();
    assert_eq!(
        first,
        [
            6_457_827_717_110_365_317,
            3_203_168_211_198_807_973,
            9_817_491_932_198_370_423,
            4_593_380_528_125_082_431,
            16_408_922_859_458_223_821
        ]
    );
}

/// The mean of n even shares is ½ within 4/√(12 n), four standard errors (textbook; variance of an even distribution 1/12).
#[test]
fn shares_are_even_between_nothing_and_one() {
    let mut draws = Draws::new(3);
    let shares: Vec<f64> = (0..10_000).map(|_| draws.share()).collect();
    assert!(shares.iter().all(|share| (0.0..1.0).contains(share)));
    let mean = shares.iter().sum::<f64>() / 1e4;
    assert!((mean - 0.5).abs() < 4.0 / 120_000.0_f64.sqrt(), "{mean}");
}

proptest! {
    /// What makes a Latin hypercube (McKay, Beckman and Conover 1979): of each quantity one draw in each part.
    #[test]
    fn every_part_of_every_quantity_has_one_draw(count in 1..60_usize, quantities in 1..9_usize, seed in any::<u64>()) {
        let draws = latin_hypercube(count, quantities, seed);
        prop_assert_eq!(&draws, &latin_hypercube(count, quantities, seed));
        prop_assert!(draws.len() == count && draws.iter().all(|draw| draw.len() == quantities));
        for quantity in 0..quantities {
            let mut parts: Vec<usize> = draws.iter().map(|draw| (draw[quantity] * count as f64) as usize).collect();
            parts.sort_unstable();
            prop_assert_eq!(parts, (0..count).collect::<Vec<_>>());
        }
    }

    #[test]
    fn a_quantile_lies_among_the_numbers_and_rises_with_its_share(
        mut numbers in prop::collection::vec(-1e3..1e3_f64, 1..40), one in 0.0..=1.0_f64, other in 0.0..=1.0_f64,
    ) {
        numbers.sort_by(f64::total_cmp);
        let (low, high) = (quantile(&numbers, one.min(other)).unwrap(), quantile(&numbers, one.max(other)).unwrap());
        prop_assert!(numbers[0] <= low && low <= high + 1e-9 && high <= *numbers.last().unwrap());
    }
}

/// Quantities are not tied to each other: the correlation of n draws is none within 4/√n, four standard errors (textbook).
#[test]
fn quantities_are_drawn_one_apart_from_the_other() {
    let draws = latin_hypercube(400, 4, 20_260);
    for (one, other) in [(0, 1), (0, 3), (1, 2), (2, 3)] {
        let tied: f64 = draws.iter().map(|draw| (draw[one] - 0.5) * (draw[other] - 0.5)).sum::<f64>() / 400.0 * 12.0;
        assert!(tied.abs() < 4.0 / 20.0, "{one} and {other}: {tied}");
    }
}

/// Definition 7 of Hyndman and Fan 1996 (from memory), as statistics programs print it: the first quarter of 1 to 10 is 3.25. Exact.
#[test]
fn quantiles_are_those_of_statistics_programs() {
    let numbers: Vec<f64> = (1..=10).map(f64::from).collect();
    for (share, want) in [(0.0, 1.0), (0.1, 1.9), (0.25, 3.25), (0.5, 5.5), (0.9, 9.1), (1.0, 10.0)] {
        let got = quantile(&numbers, share).unwrap();
        assert!((got - want).abs() < 1e-12, "{share}: {got}");
    }
}

#[test]
fn what_never_comes_stands_at_the_end() {
    assert_eq!(quantile(&[], 0.5), None);
    let some = [1.0, 2.0, f64::INFINITY, f64::INFINITY];
    assert_eq!(quantile(&some, 0.1), Some(1.3));
    assert_eq!(quantile(&some, 0.5), Some(f64::INFINITY), "between a number and never there is only never");
    assert_eq!(quantile(&some, 0.9), Some(f64::INFINITY));
}
