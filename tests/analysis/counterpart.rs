//! The same vat from another milk, like in one respect.

use vatsketch::analysis::{Alike, alike_from};
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, MilkKind};

fn cow() -> Batch {
    batch(&Design::default()).unwrap()
}

fn sheep(alike: Alike) -> Batch {
    batch(&alike_from(&cow(), MilkKind::Sheep, alike).unwrap()).unwrap()
}

fn curd_kg(batch: &Batch) -> f64 {
    batch.draining.done().unwrap().curd.total_kg()
}

#[test]
fn the_milk_alone_is_as_it_comes() {
    let batch = sheep(Alike::Milk);
    let milk = batch.milk.done().unwrap();
    assert_eq!((milk.cream_g, milk.skim_kg), (0.0, 0.0));
    assert_eq!(batch.design.milk.milk_l, cow().design.milk.milk_l);
}

/// The fat target stays: fat milk is thinned with skimmed milk, and that is what is asked for here.
#[test]
fn the_same_fat_adds_what_it_takes() {
    let batch = sheep(Alike::Fat);
    assert!(batch.milk.done().unwrap().skim_kg > 0.0);
    assert_eq!(batch.design.milk.fat_target_percent, cow().design.milk.fat_target_percent);
}

/// Within half a step of the litres, which is a tenth of a litre of about six.
#[test]
fn the_same_curd_comes_of_other_litres() {
    let batch = sheep(Alike::Curd);
    assert!(batch.design.milk.milk_l < cow().design.milk.milk_l, "sheep's milk gives more");
    assert!((curd_kg(&batch) / curd_kg(&cow()) - 1.0).abs() < 0.02, "{} and {}", curd_kg(&batch), curd_kg(&cow()));
    assert_eq!(batch.design.draining, cow().design.draining);
}

/// Within half a mould of those that there are.
#[test]
fn the_same_size_takes_other_moulds() {
    let batch = sheep(Alike::Size);
    let each_kg = |batch: &Batch| curd_kg(batch) / f64::from(batch.design.draining.mould_count);
    let half_a_mould = 0.5 / f64::from(batch.design.draining.mould_count);
    assert!((each_kg(&batch) / each_kg(&cow()) - 1.0).abs() <= half_a_mould, "{} and {}", each_kg(&batch), each_kg(&cow()));
    assert!(batch.design.draining.mould_count > cow().design.draining.mould_count);
}

#[test]
fn a_vat_that_gives_no_curd_keeps_its_litres_and_moulds() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let none = batch(&design).unwrap();
    for alike in Alike::ALL {
        let other = alike_from(&none, MilkKind::Goat, alike).unwrap();
        assert_eq!(other.milk.milk_kind, MilkKind::Goat);
        assert!(other.check().is_ok());
    }
}
