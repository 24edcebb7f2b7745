//! Warming, calcium, rennet, setting and cutting.

use super::{Facts, Step};
use crate::design::{CalciumForm, Design, Heating, Stage, Unit};
use crate::law::kitchen::THERMOMETER_SPREAD;
use crate::process::{MilkOutcome, VatOutcome};
use crate::report::{Amount, StepTime, Target};

/// The steps up to the rennet.
pub(super) fn until_rennet(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Vec<Step> {
    let mut steps = Vec::new();
    let with_calcium = milk.calcium_g > 0.0;
    if with_calcium {
        if vat.to_calcium_min >= 0.5 {
            steps.push(warm("warm", design, vat.to_calcium_min, design.vat.calcium_temperature_c, facts, "to_calcium_min"));
        }
        steps.push(calcium(design, milk, vat, facts));
    }
    if steps.iter().any(|step| step.verb == "Warm") {
        let mut on = Step::once(("calcium", "Warm on"), Stage::Vat, vat.to_calcium_min, "Go on warming,", "stirring as before.");
        on.targets.push(milk_at(design.vat.rennet_temperature_c));
        on.lasts = Some(Facts::plain("for", (vat.to_rennet_min - vat.to_calcium_min).max(0.0), Unit::Minute, 0));
        "Too hot: cool the milk before you add rennet. Too cool: wait.".clone_into(&mut on.if_off);
        "milk, °C".clone_into(&mut on.write_down);
        on.governed_by = &["rennet_temperature_c"];
        steps.push(on);
    } else {
        // Milk that is warm enough already takes its calcium at once, and is warmed in the same task.
        let task = if with_calcium { "calcium" } else { "warm" };
        steps.push(warm(task, design, vat.to_rennet_min, design.vat.rennet_temperature_c, facts, "to_rennet_min"));
    }
    steps
}

fn milk_at(temperature_c: f64) -> Target {
    Target::near("milk", Amount::new(temperature_c, Unit::Celsius, 1), THERMOMETER_SPREAD.value)
}

fn warm(task: &str, design: &Design, lasts_min: f64, to_c: f64, facts: &Facts, key: &str) -> Step {
    let how = match design.vat.heating {
        Heating::Bath => "the milk in the bath, stirring.",
        Heating::DoubleBoiler => "the milk over boiling water, stirring.",
        Heating::Hob => "the milk on a low hob, stirring.",
    };
    let mut step = Step::once((task, "Warm"), Stage::Vat, 0.0, "Warm", how);
    step.targets.push(milk_at(to_c));
    if design.vat.heating == Heating::Bath {
        let bath = Amount::new(design.vat.bath_set_temperature_c, Unit::Celsius, 1);
        step.targets.push(Target::near("bath", bath, THERMOMETER_SPREAD.value));
    }
    step.lasts = Some(facts.target(key, "for", Amount::new(lasts_min, Unit::Minute, 0)));
    let if_off = match design.vat.heating {
        Heating::Bath | Heating::DoubleBoiler => "Slow: check the lids and the water. Fast: lift the pot out early.",
        Heating::Hob => "Slow: wait and keep stirring. Fast: take the pot off early.",
    };
    if_off.clone_into(&mut step.if_off);
    "milk, °C".clone_into(&mut step.write_down);
    step.governed_by = &[
        "heating",
        "bath_l",
        "bath_start_temperature_c",
        "bath_set_temperature_c",
        "heater_power_w",
        "room_temperature_c",
        "pot_rest",
        "pot_depth_percent",
        "bath_lid",
        "pot_lid",
    ];
    step
}

fn calcium(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Step {
    let (what, label) = match design.milk.calcium_form {
        CalciumForm::Solution => ("in the calcium chloride.", "solution"),
        CalciumForm::Anhydrous => ("in the calcium chloride in cool water.", "anhydrous"),
        CalciumForm::Dihydrate => ("in the calcium chloride in cool water.", "dihydrate"),
    };
    let mut step = Step::once(("calcium", "Calcium"), Stage::Vat, vat.to_calcium_min, "Stir", what);
    step.targets.push(facts.target("calcium_g", label, Amount::new(milk.calcium_g, Unit::Gram, 2)));
    if milk.calcium_ml > 0.0 {
        step.targets.push(facts.target("calcium_ml", "or", Amount::new(milk.calcium_ml, Unit::Millilitre, 1)));
    }
    step.targets.push(milk_at(design.vat.calcium_temperature_c));
    "Forgot it: add it before the rennet, never after.".clone_into(&mut step.if_off);
    "calcium, g".clone_into(&mut step.write_down);
    step.governed_by = &["calcium_form", "calcium_solution_percent", "calcium_dose_percent", "calcium_temperature_c"];
    step
}

/// The steps from the rennet to the end of the rest.
pub(super) fn from_rennet(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Vec<Step> {
    let mut steps = vec![rennet(milk, vat, facts), cut(design, vat, facts)];
    if design.vat.whey_rest_min > 0.0 {
        let at_min = vat.to_rennet_min + vat.cut_min;
        let mut rest = Step::once(("cut", "Rest"), Stage::Vat, at_min, "Rest", "the cut curd in its whey.");
        rest.targets.push(Facts::plain("whey in the vat", vat.whey.total_kg(), Unit::Kilogram, 1));
        rest.lasts = Some(Facts::plain("for", design.vat.whey_rest_min, Unit::Minute, 0));
        "Milky whey: it was cut too soft; ladle gently.".clone_into(&mut rest.if_off);
        "whey, kg".clone_into(&mut rest.write_down);
        rest.governed_by = &["whey_rest_min"];
        steps.push(rest);
    }
    steps
}

fn rennet(milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Step {
    let mut step = Step::once(
        ("rennet", "Rennet"),
        Stage::Vat,
        vat.to_rennet_min,
        "Stir",
        "in the rennet, just diluted; then stop the milk moving.",
    );
    step.targets.push(facts.target("rennet_ml", "rennet", Amount::new(milk.rennet_ml, Unit::Millilitre, 2)));
    step.targets.push(facts.target("rennet_water_ml", "water", Amount::new(milk.rennet_water_ml, Unit::Millilitre, 0)));
    "If it has stood, mix a new one.".clone_into(&mut step.if_off);
    "clock time".clone_into(&mut step.write_down);
    step.governed_by =
        &["rennet_label", "rennet_strength_imcu_ml", "rennet_ratio_parts", "rennet_dose_imcu_kg", "rennet_dilution_times"];
    step
}

fn cut(design: &Design, vat: &VatOutcome, facts: &Facts) -> Step {
    let first_min = vat.to_rennet_min + design.vat.first_test_min;
    let mut step = Step::once(("cut", "Test, cut"), Stage::Vat, first_min, "Test", "for a clean break, then cut the curd.");
    step.targets.push(facts.target("clean_break_min", "after the rennet", Amount::new(vat.clean_break_min, Unit::Minute, 0)));
    step.targets.push(Facts::plain("temperature", vat.setting_temperature_c, Unit::Celsius, 1));
    if vat.tests > 1 {
        let gap_min = (vat.cut_min - design.vat.first_test_min) / f64::from(vat.tests - 1);
        let at_min = |test: u32| first_min + f64::from(test - 1) * gap_min;
        let tests = (1..vat.tests).map(|test| StepTime::counted(format!("test_{test}"), format!("Test {test}"), at_min(test)));
        step.times = tests.chain([StepTime::counted("cut", "Test, cut", at_min(vat.tests))]).collect();
    }
    "Not clean: wait and test again (common practice, no source).".clone_into(&mut step.if_off);
    "min to cut".clone_into(&mut step.write_down);
    step.governed_by = &["heat_while_setting", "firmness_multiple", "first_test_min"];
    step
}
