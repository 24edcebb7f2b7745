//! Measuring out.

use super::{Facts, Step};
use crate::design::{MilkDesign, Stage, Unit};
use crate::law::kitchen::JUG_SPREAD;
use crate::process::MilkOutcome;
use crate::record::EntryKind;
use crate::report::Amount;

pub(super) fn measure(design: &MilkDesign, milk: &MilkOutcome, facts: &Facts) -> Step {
    let with = if milk.cream_g > 0.0 {
        "milk and cream into the pot, fridge-cold."
    } else if milk.skim_kg > 0.0 {
        "milk and skimmed milk into the pot, fridge-cold."
    } else {
        "the milk into the pot, fridge-cold."
    };
    let mut step = Step::once(("measure", "Measure"), Stage::Milk, 0.0, "Measure", with);
    let litres = Amount::new(design.milk_l, Unit::Litre, 2);
    step.targets.push(crate::report::Target::near("milk", litres, JUG_SPREAD.value * design.milk_l));
    if milk.cream_g > 0.0 {
        step.targets.push(facts.target("cream_g", "cream", Amount::new(milk.cream_g, Unit::Gram, 0)));
    }
    if milk.skim_kg > 0.0 {
        step.targets.push(facts.target("skim_kg", "skimmed milk", Amount::new(milk.skim_kg, Unit::Kilogram, 2)));
    }
    let mass_kg = milk.vat_milk.total_kg();
    if mass_kg > 0.0 {
        let fat_percent = 100.0 * milk.vat_milk.fat_kg / mass_kg;
        step.targets.push(Facts::plain("fat", fat_percent, Unit::Percent, 1));
    }
    step.if_off = if mass_kg > 0.0 && milk.cream_g > 0.0 {
        let fat_percent = 100.0 * milk.vat_milk.fat_kg / mass_kg;
        // A small addition x of strength s to m of strength f moves the fat by x (s − f) / m.
        let moved = 0.01 * (design.cream_strength_percent - fat_percent) / mass_kg;
        format!("10\u{a0}g of cream shifts fat by {moved:.2} percentage points.")
    } else {
        "Weigh again: volume changes with temperature.".to_owned()
    };
    step.write_down(if milk.cream_g > 0.0 { EntryKind::CreamPoured } else { EntryKind::MilkPoured });
    step.governed_by = &[
        "milk_l",
        "milk_kind",
        "label_fat_percent",
        "label_protein_percent",
        "milk_treatment",
        "cream_by",
        "fat_target_percent",
        "cream_on_hand_ml",
        "cream_strength_percent",
        "fridge_temperature_c",
        "ph_known",
        "milk_ph",
        "soured_by",
    ];
    step
}
