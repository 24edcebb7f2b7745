//! What tells unlike milk apart.

use vatsketch::analysis::{MilkComparison, compare_milk, from_milk};
use vatsketch::batch::batch;
use vatsketch::design::{Design, MilkKind, Value};
use vatsketch::units::Units;

fn beside(kind: MilkKind) -> Option<MilkComparison> {
    let cow = Design::default();
    compare_milk(&batch(&cow).unwrap(), &batch(&from_milk(&cow, kind)).unwrap())
}

/// USDA rows of milk: 3.25 % of fat in whole cow's milk (01077), 7.00 % in sheep's (01109), as the library has them.
#[test]
fn sheeps_milk_is_told_from_cows_by_what_it_holds_and_gives() {
    let compared = beside(MilkKind::Sheep).unwrap();
    let change = |key: &str| compared.figures.iter().find(|figure| figure.key == key).and_then(|figure| figure.change);
    assert!((change("bought_fat_percent").unwrap() - 3.75).abs() < 0.01, "7.00 less 3.25 % of fat");
    for key in ["casein_percent", "solids_percent", "casein_to_fat", "yield_percent", "drained_curd_kg"] {
        assert!(change(key).unwrap() > 0.0, "{key}");
    }
    let keys: Vec<&str> = compared.figures.iter().map(|figure| figure.key).collect();
    assert!(keys.contains(&"clotting_min") && keys.contains(&"clean_break_min") && keys.contains(&"firmness"), "{keys:?}");
}

#[test]
fn the_same_milk_or_none_has_nothing_to_compare() {
    assert_eq!(beside(MilkKind::Cow), None);
    let cow = Design::default();
    let mut none = from_milk(&cow, MilkKind::Sheep);
    none.set("fat_target_percent", Value::Number(12.0)).unwrap();
    none.set("cream_strength_percent", Value::Number(10.0)).unwrap();
    assert_eq!(compare_milk(&batch(&cow).unwrap(), &batch(&none).unwrap()), None);
}

/// Where a stage failed its figures are missing; the milk is compared all the same.
#[test]
fn a_vat_that_was_not_worked_out_leaves_the_milk_comparable() {
    let cow = Design::default();
    let mut cold = from_milk(&cow, MilkKind::Sheep);
    cold.set("bath_set_temperature_c", Value::Number(20.0)).unwrap();
    let compared = compare_milk(&batch(&cow).unwrap(), &batch(&cold).unwrap()).unwrap();
    let of = |key: &str| compared.figures.iter().find(|figure| figure.key == key).unwrap();
    assert!(of("casein_percent").change.is_some());
    assert_eq!(of("yield_percent").change_text(Units::METRIC), "only in A");
}
