//! Packages: the reference cases, a slow look at every basket, the refusals.

use proptest::prelude::*;
use serde::Deserialize;
use std::collections::BTreeMap;
use vatsketch::plan::{Aim, Package, PackageError, Want, choose};

#[derive(Deserialize)]
struct Table {
    source: String,
    cases: BTreeMap<String, Case>,
}

#[derive(Deserialize)]
struct Case {
    req: i64,
    packs: Vec<(i64, i64, Option<i64>)>,
    lam: i64,
    stretch: i64,
    result: Option<Wanted>,
}

#[derive(Deserialize)]
struct Wanted {
    total_ml: i64,
    price: i64,
    waste_ml: i64,
    short_ml: i64,
    packages: i64,
    counts: Vec<i64>,
    key: i64,
}

fn package((size, price, at_most): (i64, i64, Option<i64>)) -> Package {
    Package { size, price, at_most }
}

/// Whole numbers, so no tolerance.
#[test]
fn every_reference_basket_is_the_one_that_the_independent_solvers_found() {
    let text = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/packages.json")).unwrap();
    let table: Table = serde_json::from_str(&text).unwrap();
    assert!(table.source.starts_with("Computed by an independent program"));
    assert_eq!(table.cases.len(), 10);
    for (name, case) in &table.cases {
        let packages: Vec<Package> = case.packs.iter().copied().map(package).collect();
        let aim = Aim::LeastCost { waste_price: case.lam };
        let got = choose(&Want { need: case.req, stretch: case.stretch, at_home: 0, aim }, &packages);
        match &case.result {
            Some(wanted) => {
                let got = got.unwrap();
                assert_eq!(got.counts, wanted.counts, "{name}");
                assert_eq!((got.bought, got.price, got.packs), (wanted.total_ml, wanted.price, wanted.packages), "{name}");
                assert_eq!((got.left_over, got.short), (wanted.waste_ml, wanted.short_ml), "{name}");
                assert_eq!(1000 * got.price + case.lam * got.left_over, wanted.key, "{name}");
            }
            None => assert!(matches!(got, Err(PackageError::NotEnough { .. })), "{name}"),
        }
    }
}

/// Returns the best of all baskets with at most so many of each package, by the rules written down plainly.
fn slow(want: &Want, packages: &[Package]) -> Option<Vec<i64>> {
    let wanted = (want.need - want.at_home).max(0);
    let least = (wanted - want.stretch).max(0);
    let mut all: Vec<Vec<i64>> = vec![Vec::new()];
    for package in packages {
        let enough = (least + package.size - 1) / package.size;
        let most = package.at_most.unwrap_or(enough).min(enough);
        all = all.into_iter().flat_map(|counts| (0..=most).map(move |count| [counts.clone(), vec![count]].concat())).collect();
    }
    let mut order: Vec<usize> = (0..packages.len()).collect();
    order.sort_by_key(|at| -packages[*at].size);
    let key = |counts: &Vec<i64>| {
        let sum = |of: fn(&Package) -> i64| packages.iter().zip(counts).map(|(package, count)| of(package) * count).sum::<i64>();
        let waste = (sum(|package| package.size) - wanted).max(0);
        let price = sum(|package| package.price);
        let first = match want.aim {
            Aim::LeastCost { waste_price } => (1000 * price + waste_price * waste, waste),
            Aim::LeastWaste => (waste, price),
        };
        (first, counts.iter().sum::<i64>(), order.iter().map(|at| -counts[*at]).collect::<Vec<_>>())
    };
    let enough = |counts: &Vec<i64>| packages.iter().zip(counts).map(|(package, count)| package.size * count).sum::<i64>() >= least;
    all.into_iter().filter(enough).min_by_key(key)
}

fn any_aim() -> impl Strategy<Value = Aim> {
    prop_oneof![(0_i64..400).prop_map(|waste_price| Aim::LeastCost { waste_price }), Just(Aim::LeastWaste)]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn no_basket_of_a_small_shop_is_better(
        need in 0_i64..60,
        stretch in 0_i64..8,
        at_home in 0_i64..30,
        aim in any_aim(),
        packs in prop::collection::vec((4_i64..30, 1_i64..12, prop::option::of(0_i64..4)), 1..4),
    ) {
        let packages: Vec<Package> = packs.into_iter().map(package).collect();
        let want = Want { need, stretch, at_home, aim };
        match choose(&want, &packages) {
            Ok(basket) => {
                prop_assert_eq!(Some(basket.counts), slow(&want, &packages));
                prop_assert!(basket.short <= stretch);
                prop_assert_eq!(basket.left_over - basket.short, at_home + basket.bought - need);
            }
            Err(error) => {
                prop_assert!(matches!(error, PackageError::NotEnough { .. }), "{error}");
                prop_assert_eq!(slow(&want, &packages), None);
            }
        }
    }

    /// Sizes in another unit change nothing but the unit.
    #[test]
    fn a_tenfold_unit_gives_the_same_basket(need in 1_i64..60, packs in prop::collection::vec((4_i64..30, 1_i64..12), 1..4)) {
        let shop = |unit: i64| packs.iter().map(|(size, price)| package((unit * size, *price, None))).collect::<Vec<_>>();
        let want = |unit: i64| Want { need: unit * need, stretch: 0, at_home: 0, aim: Aim::LeastWaste };
        prop_assert_eq!(choose(&want(1), &shop(1)).unwrap().counts, choose(&want(10), &shop(10)).unwrap().counts);
    }
}

#[test]
fn least_waste_pays_more_to_throw_away_less() {
    let packages = [package((700, 120, None)), package((2500, 260, None))];
    let want = |aim| Want { need: 2700, stretch: 0, at_home: 0, aim };
    let cheap = choose(&want(Aim::LeastCost { waste_price: 0 }), &packages).unwrap();
    let spare = choose(&want(Aim::LeastWaste), &packages).unwrap();
    assert_eq!((cheap.counts, cheap.price, cheap.left_over), (vec![1, 1], 380, 500));
    assert_eq!((spare.counts, spare.price, spare.left_over), (vec![4, 0], 480, 100));
}

#[test]
fn what_is_at_home_is_used_first() {
    let packages = [package((1000, 130, None))];
    let want = |at_home| Want { need: 3000, stretch: 0, at_home, aim: Aim::LeastCost { waste_price: 0 } };
    assert_eq!(choose(&want(1200), &packages).unwrap().counts, [2]);
    let enough = choose(&want(3400), &packages).unwrap();
    assert_eq!((enough.packs, enough.price, enough.left_over), (0, 0, 400));
    assert_eq!(choose(&want(3000), &[]).unwrap().packs, 0);
}

#[test]
fn packages_of_no_size_or_price_are_refused_by_number() {
    let want = Want { need: 500, stretch: 0, at_home: 0, aim: Aim::LeastCost { waste_price: 0 } };
    let good = package((300, 50, None));
    for size in [0, -300, i64::MAX] {
        assert_eq!(choose(&want, &[good, package((size, 50, None))]), Err(PackageError::WrongSize { number: 2, size }));
    }
    for price in [0, -50, i64::MAX] {
        let error = choose(&want, &[package((300, price, None)), good]).unwrap_err();
        assert_eq!(error, PackageError::WrongPrice { number: 1, price });
        assert!(error.to_string().contains("above 0"), "{error}");
    }
}

#[test]
fn nothing_to_choose_from_and_numbers_below_zero_are_refused() {
    let want = Want { need: 500, stretch: 20, at_home: 0, aim: Aim::LeastWaste };
    let shop = [package((300, 50, None))];
    assert_eq!(choose(&want, &[]), Err(PackageError::NothingToChooseFrom { need: 480 }));
    assert!(matches!(choose(&Want { need: -1, ..want }, &shop), Err(PackageError::BelowZero { what: "the need", value: -1 })));
    assert!(matches!(choose(&Want { stretch: -1, ..want }, &shop), Err(PackageError::BelowZero { .. })));
    assert!(matches!(choose(&Want { at_home: -1, ..want }, &shop), Err(PackageError::BelowZero { .. })));
    assert!(matches!(choose(&Want { need: i64::MAX, ..want }, &shop), Err(PackageError::TooFine { .. })));
    assert!(choose(&Want { need: 999_983, ..want }, &[package((7, 1, None))]).is_ok());
    let fine = [package((999_983, 1, None)), package((1, 1, None))];
    assert!(matches!(choose(&want, &fine), Err(PackageError::TooFine { .. })));
    assert_eq!(choose(&want, &[package((300, 50, Some(1)))]), Err(PackageError::NotEnough { need: 480, most: 300 }));
}
