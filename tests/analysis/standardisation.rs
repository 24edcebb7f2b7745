//! One batch's milk brought to another's.

use vatsketch::analysis::{MilkStandardisation, from_milk, standardisation};
use vatsketch::batch::batch;
use vatsketch::design::{Design, MilkKind, Value};
use vatsketch::law::standardisation::Standardised;
use vatsketch::units::Units;

fn between(from: MilkKind, to: MilkKind, change: &[(&str, f64)]) -> MilkStandardisation {
    let cow = from_milk(&Design::default(), from);
    let mut other = from_milk(&cow, to);
    for (key, value) in change {
        other.set(key, Value::Number(*value)).unwrap();
    }
    standardisation(&batch(&cow).unwrap(), &batch(&other).unwrap()).unwrap()
}

/// Cream cannot raise casein, and the casein of sheep's milk is beyond what dry milk may bring.
#[test]
fn cows_milk_comes_to_the_fat_of_sheeps_and_not_to_its_casein() {
    let got = between(MilkKind::Cow, MilkKind::Sheep, &[("fat_target_percent", 7.0)]);
    let said = got.in_words(Units::METRIC).join("\n");
    assert!(matches!(got.standardised, Ok(Standardised::Limited { .. })), "{said}");
    for word in
        ["cream alone reach the fat", "cream adds fat, hardly any casein", "not advised", "Nearest within that", "Still different"]
    {
        assert!(said.contains(word), "{word}: {said}");
    }
}

#[test]
fn sheeps_milk_cannot_be_brought_to_cows_by_adding() {
    let got = between(MilkKind::Sheep, MilkKind::Cow, &[]);
    let said = got.in_words(Units::METRIC).join("\n");
    assert!(got.standardised.is_err() && got.cream_alone.is_err(), "{said}");
    assert!(said.contains("Cream alone cannot") && said.contains("richer in both"), "{said}");
}

/// Goat's milk is near enough that both targets are met; what is said to be still apart is lactose and ash of the powder.
#[test]
fn cows_milk_comes_to_goats_in_both() {
    let got = between(MilkKind::Cow, MilkKind::Goat, &[("fat_target_percent", 4.2)]);
    let Ok(Standardised::Both(addition)) = got.standardised else { panic!("{:?}", got.standardised) };
    assert!((addition.blend.fat_percent() - got.wanted.fat_percent()).abs() < 1e-9);
    let casein = |matter: &vatsketch::law::Matter| matter.percent(matter.casein_kg);
    assert!((casein(&addition.blend) - casein(&got.wanted)).abs() < 1e-9);
    let said = got.in_words(Units::METRIC).join("\n");
    assert!(said.contains("For both fat and casein: ") && said.contains("carbohydrate"), "{said}");
}

#[test]
fn a_design_without_milk_has_nothing_to_standardise() {
    let cow = batch(&Design::default()).unwrap();
    let mut none = Design::default();
    none.set("fat_target_percent", Value::Number(12.0)).unwrap();
    none.set("cream_strength_percent", Value::Number(10.0)).unwrap();
    assert_eq!(standardisation(&cow, &batch(&none).unwrap()), None);
}
