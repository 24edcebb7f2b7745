//! Yields against published examples and balances.

use super::tables::near;
use proptest::prelude::*;
use vatsketch::law::Matter;
use vatsketch::law::firmness::classes;
use vatsketch::law::yields::{CASEIN_KEPT, FAT_KEPT, soft_curd_percent, van_slyke_percent};

/// Returns the yield of ladled curd, which keeps 0.88 of the fat and 0.95 of the casein.
fn ladled(fat_percent: f64, casein_percent: f64, moisture_percent: f64) -> f64 {
    soft_curd_percent(fat_percent, casein_percent, 0.88, 0.95, moisture_percent)
}

/// University of Guelph notes print 9.945; then values worked from the formula, ±0.02.
#[test]
fn the_pressed_yield_is_the_published_example() {
    near(van_slyke_percent(3.6, 2.5, 37.0), 9.945, 0.005);
    for (fat, casein, want) in [(3.0, 2.10, 8.29), (4.0, 2.50, 10.59), (5.0, 2.90, 12.89)] {
        near(van_slyke_percent(fat, casein, 37.0), want, 0.02);
    }
}

/// Our own computation, to the digits printed.
#[test]
fn the_soft_yield_is_what_was_worked_out_by_hand() {
    near(ladled(3.25, 2.43, 55.0), 12.61, 0.01);
    near(ladled(3.25, 2.43, 60.0), 14.44, 0.01);
    near(soft_curd_percent(7.0, 4.6, 0.93, 0.95, 55.0), 26.49, 0.01);
}

/// Principles of Cheese Technology, figure 10.5: 1000 of milk (fat 3.7, casein 2.4) → 95 of cheese (water 37, fat 34, casein 24 %).
/// It keeps 0.873 of the fat and, by those whole per cents, 0.95 of the casein; ours are within the ranges of their records.
/// Our form is without salt: 1.7 % of it, usual for pressed cheese (from memory), is taken off first. Tolerance 1 %, the whole per cents.
#[test]
fn the_published_balance_of_a_pressed_cheese_is_near() {
    let (fat, casein) = (95.0 * 0.34 / 37.0, 95.0 * 0.24 / 24.0);
    near(fat, 0.873, 0.0005);
    near(casein, 0.95, 0.0005);
    for (kept, record) in [(fat, FAT_KEPT), (casein, CASEIN_KEPT)] {
        assert!((record.range.0..=record.range.1).contains(&kept), "{}: {kept}", record.name);
    }
    let (unsalted, moisture_percent) = (9.5 * 0.983, 37.0 / 0.983);
    near(soft_curd_percent(3.7, 2.4, fat, casein, moisture_percent) / unsalted, 1.0, 0.01);
}

/// Guelph notes, table 17.1: milk 3.3/3.2/12.4 (fat, protein, solids), cheese 31/25/60, whey 0.22/0.61/7.0. By fat 10.01, by solids 10.19.
#[test]
fn the_published_yields_by_difference_hold() {
    let by = |milk: f64, cheese: f64, whey: f64| 100.0 * (milk - whey) / (cheese - whey);
    near(by(3.3, 31.0, 0.22), 10.01, 0.005);
    near(by(12.4, 60.0, 7.0), 10.19, 0.005);
}

/// Guinee 1999, abstract: one per cent of fat more gives 1.16 ± 0.15 kg more of pressed cheese.
/// Our soft form at that moisture gives 0.88/(1 − 0.39·1.0594) = 1.50, beyond it: water is held in proportion, which pressed cheese does not do.
/// Held here as it stands: ours is greater, by no more than half.
#[test]
fn more_fat_gives_more_curd_though_more_than_a_pressed_cheese_would() {
    let more = ladled(4.3, 2.5, 39.0) - ladled(3.3, 2.5, 39.0);
    assert!(more > 1.16 - 0.15 && more < 1.5 * 1.16, "{more}");
}

/// University of Guelph notes.
#[test]
fn fat_in_dry_matter_and_moisture_without_fat_are_the_published_examples() {
    let cheese = Matter { water_kg: 0.40, fat_kg: 0.27, casein_kg: 0.33, ..Matter::default() };
    near(cheese.fat_in_dry_matter_percent(), 45.0, 0.05);
    let fresh = Matter { water_kg: 0.54, fat_kg: 0.23, casein_kg: 0.23, ..Matter::default() };
    near(fresh.moisture_on_fat_free_basis_percent(), 70.1, 0.05);
}

/// Codex 283: below 51 extra hard, 49 to 56 hard, 54 to 69 firm or semi-hard, above 67 soft; the classes overlap.
#[test]
fn firmness_follows_the_standard_and_overlaps_where_it_does() {
    assert_eq!(classes(45.0), ["extra hard"]);
    assert_eq!(classes(50.0), ["extra hard", "hard"]);
    assert_eq!(classes(55.0).len(), 2);
    assert!(classes(68.0).contains(&"soft") && classes(68.0).len() == 2);
    assert_eq!(classes(70.1), ["soft"]);
}

#[test]
fn a_milk_without_fat_and_casein_gives_no_curd_and_not_a_number_stays_so() {
    assert_eq!(ladled(0.0, 0.0, 60.0), 0.0);
    assert!(ladled(f64::NAN, 2.5, 60.0).is_nan());
}

proptest! {
    #[test]
    fn the_soft_yield_is_its_own_parts(fat in 0.1..8.0, casein in 1.5..5.0, moisture in 30.0..75.0) {
        let y = ladled(fat, casein, moisture);
        let water = y * moisture / 100.0;
        let sum = 0.88 * fat + 0.95 * casein * 1.04 + water * (1.0 + 0.9 * 0.066);
        prop_assert!((sum - y).abs() < 1e-9 * y);
        prop_assert!(ladled(fat, casein, moisture + 0.5) > y);
    }
}
