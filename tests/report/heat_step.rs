//! The steps of raw milk that is pasteurised in the vat: what they say of the milk is what the milk has.

use vatsketch::batch::batch;
use vatsketch::design::{Design, Heating, MilkTreatment, SouredBy, Stage};
use vatsketch::process::VatOutcome;
use vatsketch::report::{Plan, Step, plan};

/// Invented: raw milk over every kind of heat, with what goes into it afterwards; the cold water is cold enough for an acid.
fn designs() -> Vec<Design> {
    let mut all = Vec::new();
    for heating in [Heating::Bath, Heating::DoubleBoiler, Heating::Hob] {
        for soured_by in [SouredBy::Nothing, SouredBy::Culture, SouredBy::Acid] {
            for (calcium_dose_percent, ripening_h) in [(0.014, 1.0), (0.0, 0.0)] {
                let mut design = Design::default();
                (design.milk.milk_treatment, design.milk.pasteurised_in_vat) = (MilkTreatment::Raw, true);
                (design.milk.cooling_water_l, design.milk.cooling_water_temperature_c) = (100.0, 1.0);
                (design.milk.soured_by, design.milk.ripening_h) = (soured_by, ripening_h);
                (design.milk.calcium_dose_percent, design.vat.heating) = (calcium_dose_percent, heating);
                all.push(design);
            }
        }
    }
    all
}

fn planned(design: &Design) -> (VatOutcome, Plan) {
    let batch = batch(design).unwrap();
    (batch.vat.done().unwrap().clone(), plan(&batch))
}

/// Returns the milk on its curve, between the two points beside a minute.
fn milk_c(vat: &VatOutcome, at_min: f64) -> f64 {
    let after = vat.curve.partition_point(|point| point.at_min < at_min).clamp(1, vat.curve.len() - 1);
    let (before, after) = (vat.curve[after - 1], vat.curve[after]);
    let share = ((at_min - before.at_min) / (after.at_min - before.at_min).max(1e-9)).clamp(0.0, 1.0);
    before.milk_c + share * (after.milk_c - before.milk_c)
}

fn said(step: &Step, label: &str) -> Option<f64> {
    step.targets.iter().find(|target| target.label == label).map(|target| target.amount.value)
}

#[test]
fn each_step_names_the_temperature_that_the_milk_has() {
    let mut seen = 0;
    for design in designs() {
        let (vat, plan) = planned(&design);
        for step in plan.steps.iter().filter(|step| step.stage == Stage::Vat && step.at_min <= vat.to_rennet_min) {
            let Some(milk) = said(step, "milk") else { continue };
            // What is stirred in finds the milk so; warming and cooling bring it there.
            let lasts_min = step.lasts.as_ref().filter(|_| step.verb != "Stir").map_or(0.0, |lasts| lasts.amount.value);
            let has = milk_c(&vat, step.at_min + lasts_min);
            assert!((milk - has).abs() < 0.3, "{} {}: {milk} °C, and the milk has {has}", step.verb, step.what);
            seen += 1;
        }
    }
    assert!(seen > 40, "only {seen} steps");
}

#[test]
fn nothing_is_warmed_for_less_than_half_a_minute() {
    let mut without = 0;
    for design in designs() {
        let (_, plan) = planned(&design);
        let warms: Vec<_> = plan.steps.iter().filter(|step| step.verb == "Warm" || step.verb == "Go on warming,").collect();
        assert!(warms.iter().all(|step| step.lasts.as_ref().is_some_and(|lasts| lasts.amount.value >= 0.5)), "{warms:?}");
        without += usize::from(warms.is_empty());
    }
    assert!(without > 0, "milk that is cooled to the rennet is not warmed at all");
}

#[test]
fn the_bath_is_brought_to_the_milk_before_the_pot_goes_back() {
    for design in designs() {
        let (vat, plan) = planned(&design);
        let cool = plan.steps.iter().find(|step| step.verb == "Cool").unwrap();
        let in_bath = design.vat.heating == Heating::Bath;
        let bath_c = said(cool, "bath for the pot to go back");
        assert_eq!(bath_c, in_bath.then_some(vat.heat_step.unwrap().cooled_c));
        assert_eq!(cool.what.contains("pour off hot water"), in_bath, "{}", cool.what);
        assert_eq!(said(cool, "cold water at most"), Some(1.0));
    }
}

#[test]
fn the_plain_text_says_that_the_hold_is_the_least() {
    let (_, plan) = planned(&designs()[0]);
    let text = vatsketch::export::text(&plan).replace('\u{a0}', " ").split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains("stay in the hot milk. For at least 30 min."), "{text}");
}
