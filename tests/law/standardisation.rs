//! One milk brought to another's fat and casein.

use super::tables::{Standardising, near, rows};
use proptest::prelude::*;
use vatsketch::law::Matter;
use vatsketch::law::composition::{Animal, dry_milk};
use vatsketch::law::standardisation::{Addition, SKIM_SOLIDS_LIMIT, StandardisationError, Standardised, cream_alone, standardised};

fn fat_and_water(fat_percent: f64) -> Matter {
    Matter { fat_kg: 0.01 * fat_percent, water_kg: 1.0 - 0.01 * fat_percent, ..Matter::default() }
}

fn casein_percent(matter: &Matter) -> f64 {
    matter.percent(matter.casein_kg)
}

/// Sources in the table (Goff; Erf): those rows in which cream is added to milk; tolerance 0.1 %, the rounding of the examples.
#[test]
fn cream_alone_meets_the_published_examples() {
    let rows: Vec<Standardising> = rows("standardising");
    let creamed: Vec<&Standardising> = rows.iter().filter(|row| row.add_fat > row.base_fat).collect();
    assert_eq!(creamed.len(), 2);
    for row in creamed {
        let got = cream_alone(&(fat_and_water(row.base_fat) * row.base), &fat_and_water(row.add_fat), row.target).unwrap();
        assert!((got.cream_kg / row.expected_add - 1.0).abs() <= 0.001, "{}: {}", row.source, got.cream_kg);
        near(got.blend.fat_percent(), row.target, 1e-9);
    }
}

/// University of Guelph, general guidelines for standardization: no more than 11 % of skim solids in cheese milk; milk has about 9 %, so
/// about 2 % may be added. The words are rounded to whole per cents, so half a per cent of tolerance.
#[test]
fn about_two_per_cent_of_solids_may_be_added_as_the_guideline_says() {
    let milk = Animal::Cow.milk() * 10.0;
    near(milk.solids_not_fat_percent(), 9.0, 0.5);
    let fat_percent = milk.fat_percent();
    let Ok(Standardised::Limited { addition, .. }) = standardised(&milk, &Animal::Cow.cream(30.0), &dry_milk(), fat_percent, 4.0)
    else {
        panic!("4 % of casein takes too much dry milk")
    };
    near(addition.blend.solids_not_fat_percent(), SKIM_SOLIDS_LIMIT.value, 1e-9);
    near(addition.blend.solids_not_fat_percent() - milk.solids_not_fat_percent(), 2.0, 0.5);
}

/// USDA row 01091, non-fat dry milk; casein 0.77 of its protein.
#[test]
fn dry_milk_has_the_composition_of_its_table() {
    let powder = dry_milk();
    near(powder.total_kg(), 1.0, 1e-12);
    near(powder.percent(powder.protein_kg()), 36.16, 0.01);
    near(powder.moisture_percent(), 3.16, 0.01);
    near(powder.fat_percent(), 0.77, 0.01);
    near(casein_percent(&powder), 27.84, 0.01);
}

const HAND_CREAM: f64 = 0.173123860;
const HAND_DRY: f64 = 0.044833379;

/// Worked by hand from the USDA rows on another way, the cream put into the balance of the casein and that halved down to zero: 8 kg of cow's milk, cream of 30 %, to 3.8 % of fat and 2.55 % of casein.
#[test]
fn both_targets_of_an_example_worked_by_hand_are_met() {
    let Ok(Standardised::Both(Addition { cream_kg, dry_milk_kg, blend })) =
        standardised(&(Animal::Cow.milk() * 8.0), &Animal::Cow.cream(30.0), &dry_milk(), 3.8, 2.55)
    else {
        panic!("both are within reach")
    };
    near(cream_kg, HAND_CREAM, 1e-6);
    near(dry_milk_kg, HAND_DRY, 1e-6);
    near(blend.total_kg(), 8.0 + HAND_CREAM + HAND_DRY, 1e-6);
}

#[test]
fn what_would_have_to_be_taken_away_is_refused_with_what_can_be_done() {
    let (cow, sheep) = (Animal::Cow.milk(), Animal::Sheep.milk());
    let to = |milk: &Matter, fat, casein| standardised(&(*milk * 5.0), &Animal::Cow.cream(30.0), &dry_milk(), fat, casein);
    let richer = to(&sheep, cow.fat_percent(), casein_percent(&cow)).unwrap_err();
    assert!(matches!(richer, StandardisationError::RicherInBoth { .. }) && richer.to_string().contains("skimmed milk"), "{richer}");
    let fat = to(&cow, 2.0, 2.8).unwrap_err();
    assert!(matches!(fat, StandardisationError::TooFat { cream_less_kg, .. } if cream_less_kg > 0.0), "{fat}");
    let casein = to(&cow, 5.0, 2.0).unwrap_err();
    assert!(matches!(casein, StandardisationError::TooMuchCasein { .. }) && casein.to_string().contains("2.00 %"), "{casein}");
    assert!(to(&cow, f64::NAN, 2.8).is_err() && to(&cow, 4.0, f64::NAN).is_err());
    assert!(
        cream_alone(&sheep, &Animal::Sheep.cream(30.0), 3.0).is_err() && cream_alone(&cow, &Animal::Cow.cream(30.0), 31.0).is_err()
    );
}

#[test]
fn a_milk_that_has_both_needs_nothing() {
    let milk = Animal::Cow.milk() * 5.0;
    let Ok(Standardised::Both(nothing)) =
        standardised(&milk, &Animal::Cow.cream(30.0), &dry_milk(), milk.fat_percent(), casein_percent(&milk))
    else {
        panic!("nothing is wanted")
    };
    near(nothing.cream_kg, 0.0, 1e-9);
    near(nothing.dry_milk_kg, 0.0, 1e-9);
}

/// Sheep's milk stands beyond the limit by itself: then no dry milk is advised at all.
#[test]
fn a_milk_beyond_the_limit_gets_cream_alone() {
    let sheep = Animal::Sheep.milk() * 5.0;
    assert!(sheep.solids_not_fat_percent() > SKIM_SOLIDS_LIMIT.value);
    let Ok(Standardised::Limited { addition, beyond }) = standardised(&sheep, &Animal::Sheep.cream(30.0), &dry_milk(), 7.5, 4.8)
    else {
        panic!("more casein takes dry milk")
    };
    near(addition.dry_milk_kg, 0.0, 1e-12);
    near(addition.blend.fat_percent(), 7.5, 1e-9);
    assert!(beyond.dry_milk_kg > 0.0);
}

proptest! {
    /// The targets are those of a mixture that was really made, so they can be met.
    #[test]
    fn what_is_added_really_makes_both_targets(milk_kg in 0.5..60.0_f64, strength in 12.0..48.0_f64, cream in 0.0..0.5_f64, dry in 0.0..0.2_f64) {
        let (milk, cream_kilogram, powder) = (Animal::Cow.milk() * milk_kg, Animal::Cow.cream(strength), dry_milk());
        let made = milk + cream_kilogram * (cream * milk_kg) + powder * (dry * milk_kg);
        let (fat_percent, casein) = (made.fat_percent(), casein_percent(&made));
        let got = standardised(&milk, &cream_kilogram, &powder, fat_percent, casein).unwrap();
        let (Standardised::Both(both) | Standardised::Limited { beyond: both, .. }) = got;
        prop_assert!((both.blend.fat_percent() - fat_percent).abs() < 1e-9 && (casein_percent(&both.blend) - casein).abs() < 1e-9);
        prop_assert!((both.cream_kg - cream * milk_kg).abs() < 1e-8 * milk_kg && (both.dry_milk_kg - dry * milk_kg).abs() < 1e-8 * milk_kg);
        match got {
            Standardised::Both(both) => prop_assert!(both.blend.solids_not_fat_percent() <= SKIM_SOLIDS_LIMIT.value),
            Standardised::Limited { addition, .. } => {
                // Without cream only ever more dry milk would thin it to that fat; with cream the fat is met.
                let met = (addition.blend.fat_percent() - fat_percent).abs() < 1e-9;
                prop_assert!(met || (addition.cream_kg == 0.0 && addition.blend.fat_percent() > fat_percent));
                prop_assert!(addition.blend.solids_not_fat_percent() <= SKIM_SOLIDS_LIMIT.value + 1e-9);
                prop_assert!(addition.cream_kg >= 0.0 && addition.dry_milk_kg >= 0.0);
                prop_assert!(addition.dry_milk_kg <= both.dry_milk_kg);
            }
        }
    }
}
