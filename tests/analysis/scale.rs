//! The whole design scaled.

use crate::design::any::any_design;
use proptest::prelude::*;
use std::collections::BTreeMap;
use vatsketch::analysis::{Kept, POT_FILLED, ScaleError, ScaleGoal, ScaleTo, Scaled, Scaling, amount_now, scale, scaling_of};
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Kind, Unit, Value, fields};
use vatsketch::units::Units;

fn to(to: ScaleTo, amount: f64) -> ScaleGoal {
    ScaleGoal { to, amount }
}

fn example(name: &str) -> Batch {
    batch(&crate::example(name)).unwrap()
}

fn number(design: &Design, key: &str) -> f64 {
    let Ok(Value::Number(number)) = design.get(key) else { panic!("{key} is no number") };
    number
}

/// A new input must be put into one of the groups of `src/analysis/scale/choices.rs`: here it is found, by its key alone.
#[test]
fn every_input_is_marked_as_growing_or_kept_and_no_mark_is_of_another() {
    let unmarked: Vec<&str> = fields().map(|field| field.key).filter(|key| scaling_of(key).is_none()).collect();
    assert!(unmarked.is_empty(), "say in src/analysis/scale/choices.rs what becomes of {unmarked:?} when a design is scaled");
    let sources = crate::house::texts("src/analysis/scale", ".rs");
    let (_, source) = sources.iter().find(|(path, _)| path.ends_with("choices.rs")).unwrap();
    let listed = source.split_once("const GROUPS").unwrap().1.split_once("\n];").unwrap().0;
    let named: Vec<&str> = listed.split('"').skip(1).step_by(2).collect();
    let mut times: BTreeMap<&str, usize> = BTreeMap::new();
    for key in &named {
        *times.entry(key).or_default() += 1;
    }
    assert!(times.values().all(|count| *count == 1), "marked twice: {times:?}");
    assert_eq!(named.len(), fields().count(), "a mark is of no input");
}

/// What grows is an amount in all or a count; what its unit calls a dose, a strength, a temperature, a time or a length is none.
#[test]
fn only_amounts_and_counts_grow() {
    for field in fields() {
        let grows = !matches!(scaling_of(field.key).unwrap(), Scaling::Kept(_));
        let amount = matches!(field.unit, Unit::Litre | Unit::Millilitre | Unit::One);
        assert!(!grows || (amount && matches!(field.kind, Kind::Number { .. })), "{}", field.key);
        let is_kind = scaling_of(field.key) == Some(Scaling::Kept(Kept::Kind));
        assert_eq!(is_kind, !matches!(field.kind, Kind::Number { .. }), "{}", field.key);
    }
}

/// By hand: every amount of the example times wanted milk over its own, counts rounded up, amounts to three digits.
#[test]
fn each_example_scales_as_it_does_by_hand() {
    for (name, goal, wanted) in [
        // 6 L, 12 moulds, 3 trays, 8 L of bath; times 4/3.
        (
            "warm-cabinet",
            to(ScaleTo::Milk, 8.0),
            &[("milk_l", 8.0), ("mould_count", 16.0), ("tray_count", 4.0), ("bath_l", 10.7), ("heater_power_w", 900.0)][..],
        ),
        // Times 5/12.
        ("warm-cabinet", to(ScaleTo::Moulds, 5.0), &[("milk_l", 2.5), ("mould_count", 5.0), ("tray_count", 2.0), ("bath_l", 3.33)]),
        // 5 L, 9 moulds, 3 trays, 7 L of bath, 2 packets; doubled.
        (
            "first-vat",
            to(ScaleTo::Moulds, 18.0),
            &[("milk_l", 10.0), ("mould_count", 18.0), ("tray_count", 6.0), ("bath_l", 14.0), ("culture_packets", 4.0)],
        ),
    ] {
        let scaled = scale(&example(name), goal).unwrap();
        for (key, value) in wanted {
            assert!((number(&scaled.design, key) - value).abs() < 1e-9, "{name}: {key} {}", number(&scaled.design, key));
        }
    }
}

#[test]
fn the_culture_grows_with_the_milk_and_keeps_its_dose() {
    let before = example("first-vat");
    let scaled = scale(&before, to(ScaleTo::Milk, 2.0 * before.design.milk.milk_l)).unwrap();
    let was = before.design.milk.culture_packets;
    assert!((scaled.design.milk.culture_packets - 2.0 * was).abs() < 1e-9);
    assert_eq!(scaled.design.milk.culture_packet_l, before.design.milk.culture_packet_l);
    let cells = |batch: &Batch| batch.milk.done().unwrap().soured.cells_per_g;
    assert!((cells(&batch(&scaled.design).unwrap()) / cells(&before) - 1.0).abs() < 0.01);
}

#[test]
fn a_pot_is_filled_as_far_as_leaves_room_and_never_further() {
    for name in ["first-vat", "small-vat", "ewes-milk", "own-carton", "open-air"] {
        for litres in [3.7, 5.0, 9.3, 14.0] {
            let scaled = scale(&example(name), to(ScaleTo::Pot, litres)).unwrap();
            let filled = batch(&scaled.design).unwrap().milk.done().unwrap().vat_milk_l / litres;
            let just_full = filled <= POT_FILLED.value + 1e-3 && filled > POT_FILLED.value - 0.02;
            assert!(just_full, "{name} in {litres} L: {filled}");
        }
    }
}

#[test]
fn full_jars_hold_as_many_cheeses_as_they_can() {
    for name in ["first-vat", "warm-cabinet", "open-air"] {
        for jars in [1.0, 2.0, 3.0] {
            let before = example(name);
            let each = before.pickling.done().unwrap().cheeses_per_jar;
            let Ok(scaled) = scale(&before, to(ScaleTo::Jars, jars)) else { continue };
            assert_eq!(scaled.design.draining.mould_count, each * jars as u32, "{name}");
            let after = batch(&scaled.design).unwrap();
            assert_eq!(after.pickling.done().unwrap().jars, jars as u32, "{name}");
        }
    }
    assert!(scale(&example("first-vat"), to(ScaleTo::Jars, 2.0)).is_ok());
}

#[test]
fn moulds_that_are_rounded_up_take_a_little_less_each() {
    let before = example("warm-cabinet");
    let scaled = scale(&before, to(ScaleTo::Milk, 6.2)).unwrap();
    let moulds = scaled.choices.iter().find(|choice| choice.field.key == "mould_count").unwrap();
    assert!((moulds.exact - 12.4).abs() < 1e-9 && moulds.to == 13.0 && moulds.is_rounded_up());
    let each = |batch: &Batch| batch.draining.done().unwrap().cheese_g;
    let share = each(&batch(&scaled.design).unwrap()) / each(&before);
    assert!((share / (12.4 / 13.0) - 1.0).abs() < 0.01, "{share}");
}

#[test]
fn what_has_no_effect_stays_as_it_is() {
    let mut design = crate::example("warm-cabinet");
    design.milk.culture_packets = 0.7;
    let scaled = scale(&batch(&design).unwrap(), to(ScaleTo::Milk, 12.0)).unwrap();
    assert_eq!(scaled.design.milk.culture_packets, 0.7);
    assert!(scaled.choices.iter().all(|choice| (choice.field.used)(&design) && choice.from != choice.to));
}

#[test]
fn the_week_the_supplies_the_title_and_the_note_stay() {
    let before = example("warm-cabinet");
    let scaled = scale(&before, to(ScaleTo::Milk, 9.0)).unwrap().design;
    let Design { title, note, week, supplies, .. } = before.design;
    assert_eq!((title, note, week, supplies), (scaled.title, scaled.note, scaled.week, scaled.supplies));
}

fn refused(batch: &Batch, goal: ScaleGoal) -> ScaleError {
    scale(batch, goal).unwrap_err()
}

#[test]
fn a_goal_that_is_no_amount_or_no_whole_number_is_refused() {
    let before = example("warm-cabinet");
    for amount in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        for goal in ScaleTo::ALL {
            assert!(matches!(refused(&before, to(goal, amount)), ScaleError::NotPositive { .. }), "{goal:?} {amount}");
        }
    }
    assert!(matches!(refused(&before, to(ScaleTo::Moulds, 2.5)), ScaleError::NotWhole { .. }));
}

#[test]
fn a_choice_that_would_leave_its_range_is_named_with_where_and_how_far_it_goes() {
    let before = example("warm-cabinet");
    // The bath of 8 L must keep 1 L, which is an eighth; there are 30 trays at most, ten times those of the example.
    let small = refused(&before, to(ScaleTo::Milk, 0.6)).to_string();
    assert!(small.starts_with("Water in the bath (at “Vat”) would have to be 0.8 L, and can be from 1 to 80 L"), "{small}");
    assert!(small.ends_with("choose 0.75 to 60 L of milk"), "{small}");
    let many = refused(&before, to(ScaleTo::Moulds, 121.0)).to_string();
    assert!(many.ends_with("choose 2 to 120 moulds"), "{many}");
    for edge in [0.75, 60.0] {
        assert!(scale(&before, to(ScaleTo::Milk, edge)).is_ok(), "{edge}");
    }
    let told = refused(&before, to(ScaleTo::Milk, 70.0)).in_words(Units::US);
    assert!(told.contains(" qt of milk") && !told.contains(" L "), "{told}");
}

#[test]
fn jars_that_take_no_cheese_cannot_be_filled() {
    let mut design = crate::example("warm-cabinet");
    design.pickling.jar_width_mm = 30.0;
    let error = refused(&batch(&design).unwrap(), to(ScaleTo::Jars, 2.0));
    assert!(matches!(error, ScaleError::NothingThere { to: ScaleTo::Jars, .. }), "{error}");
    assert!(error.to_string().contains("does not go into a jar"), "{error}");
}

/// Returns how far a choice may be off after there and back: by rounding an amount twice, or by a count rounded up twice.
fn is_back(before: &Design, there: &Scaled, back: &Scaled) -> Result<(), TestCaseError> {
    for field in fields() {
        let (Value::Number(was), Value::Number(is)) = (field.get(before), field.get(&back.design)) else {
            prop_assert_eq!(field.get(before), field.get(&back.design));
            continue;
        };
        let near = match scaling_of(field.key).unwrap() {
            // Each rounding moves the third digit by a half at most, one part in two hundred; a pot's milk by a whole one.
            Scaling::Amount => (is - was).abs() <= 0.011 * was + 1e-9,
            Scaling::Count => was <= is && is <= was + (1.0 / there.factor).ceil() + 1.0,
            Scaling::Kept(_) => is == was,
        };
        prop_assert!(near, "{}: {was}, then {is}", field.key);
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn there_and_back_is_the_same_design_within_rounding(design in any_design(0.15), k in 0.4..2.5_f64) {
        let before = batch(&design).unwrap();
        let there = scale(&before, to(ScaleTo::Milk, k * design.milk.milk_l));
        prop_assume!(there.is_ok());
        let there = there.unwrap();
        let back = scale(&batch(&there.design).unwrap(), to(ScaleTo::Milk, design.milk.milk_l));
        // Rounding up may carry a count out of its range on the way back.
        prop_assume!(back.is_ok());
        is_back(&design, &there, &back.unwrap())?;
    }

    /// Where counts divide, a cheese is the same cheese, and all of them together are so many times as much.
    #[test]
    fn masses_grow_by_the_factor_and_each_cheese_stays_the_same(index in 0..3_usize, times in 1..5_u32) {
        let before = example(["first-vat", "warm-cabinet", "open-air"][index]);
        let design = &before.design;
        let scaled = scale(&before, to(ScaleTo::Moulds, f64::from(times * design.draining.mould_count)));
        prop_assume!(scaled.is_ok());
        let scaled = scaled.unwrap();
        let after = batch(&scaled.design).unwrap();
        let k = f64::from(times);
        prop_assert!((scaled.factor - k).abs() < 1e-12);
        let same = |what: &str, was: f64, is: f64, share: f64| {
            prop_assert!((is / was - 1.0).abs() < share, "{what}: {was}, then {is}");
            Ok(())
        };
        let (milk, more_milk) = (before.milk.done().unwrap(), after.milk.done().unwrap());
        same("milk in the vat", k * milk.vat_milk_kg, more_milk.vat_milk_kg, 0.002)?;
        same("rennet", k * milk.rennet_ml, more_milk.rennet_ml, 0.002)?;
        same("calcium", k * milk.calcium_anhydrous_g, more_milk.calcium_anhydrous_g, 0.002)?;
        let (salt, more_salt) = (before.salting.done().unwrap(), after.salting.done().unwrap());
        // A larger vat warms more slowly, so its curd is a little sourer and its yield not quite the same.
        same("salt", k * salt.salt_g, more_salt.salt_g, 0.02)?;
        let (dried, more_dried) = (before.drying.done().unwrap(), after.drying.done().unwrap());
        same("dried cheese in all", k * dried.cheese.total_kg(), more_dried.cheese.total_kg(), 0.02)?;
        same("a dried cheese", dried.end.cheese_g, more_dried.end.cheese_g, 0.02)?;
        prop_assert!((dried.end.moisture_percent - more_dried.end.moisture_percent).abs() < 1.0);
        let (jar, more_jar) = (before.pickling.done().unwrap(), after.pickling.done().unwrap());
        same("vinegar", k * jar.vinegar_ml, more_jar.vinegar_ml, 0.02)?;
        prop_assert!((jar.end.slurry_ph - more_jar.end.slurry_ph).abs() < 0.05);
    }
}

#[test]
fn what_a_design_has_now_scales_to_itself() {
    let before = example("warm-cabinet");
    for goal in [ScaleTo::Milk, ScaleTo::Moulds] {
        let scaled = scale(&before, to(goal, amount_now(&before, goal).unwrap())).unwrap();
        assert!(scaled.choices.is_empty() && scaled.design == before.design, "{goal:?}");
    }
}
