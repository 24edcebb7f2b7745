//! Warming and calcium, up to the rennet.

use super::{Facts, Step, measured};
use crate::design::{CalciumForm, Design, Heating, Stage, Unit};
use crate::law::kitchen::THERMOMETER_SPREAD;
use crate::plan::LEAST_LEG_MIN;
use crate::process::{MilkOutcome, VatOutcome, WarmingEvent};
use crate::record::EntryKind;
use crate::report::hold::blanks_for;
use crate::report::{Amount, Hold, Target};

/// The steps up to the rennet: legs of warming, and what is stirred in between them.
pub(super) fn until_rennet(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Vec<Step> {
    let calcium_into = (milk.calcium_g > 0.0).then(|| StirredIn {
        from: Leg { task: "calcium", at_min: vat.to_calcium_min },
        temperature_c: milk_c(vat, WarmingEvent::Calcium, design.vat.calcium_temperature_c),
        key: "to_calcium_min",
        step: calcium(design, milk, vat, facts),
    });
    let ripening_min = 60.0 * milk.soured.ripening_h;
    let culture_into = milk.soured.sourness.culture.map(|_| StirredIn {
        from: Leg { task: if ripening_min > 0.0 { "warm_on" } else { "culture" }, at_min: vat.to_culture_min + ripening_min },
        temperature_c: milk_c(vat, WarmingEvent::Culture, design.milk.ripening_temperature_c),
        key: "to_culture_min",
        step: super::souring::culture(design, milk, vat, facts),
    });
    let calcium_first = vat.to_calcium_min <= vat.to_culture_min;
    let in_order = if calcium_first { [calcium_into, culture_into] } else { [culture_into, calcium_into] };
    let mut steps = Vec::new();
    // Milk that is warm enough already takes what comes first at once, and is warmed in the same task.
    let ready_min = vat.heat_step.map_or(0.0, |step| step.cooled_min);
    let (mut leg, mut warmed) = (Leg { task: "warm", at_min: ready_min }, false);
    for stirred in in_order.into_iter().flatten() {
        let minutes = stirred.step.at_min - leg.at_min;
        if minutes >= LEAST_LEG_MIN {
            steps.push(leg.warming(design, minutes, stirred.temperature_c, facts, (!warmed).then_some(stirred.key)));
            warmed = true;
        }
        leg = stirred.from;
        steps.push(stirred.step);
    }
    let minutes = (vat.to_rennet_min - leg.at_min).max(0.0);
    // Milk that has ripened or was pasteurised may be warm enough for the rennet already.
    if minutes >= LEAST_LEG_MIN {
        steps.push(leg.warming(design, minutes, design.vat.rennet_temperature_c, facts, (!warmed).then_some("to_rennet_min")));
    }
    if let Some(last) = steps.last_mut() {
        last.hold = Some(at_the_rennet(milk_c(vat, WarmingEvent::Rennet, design.vat.rennet_temperature_c)));
    }
    steps
}

/// Returns the check of the thermometer before the rennet goes in.
fn at_the_rennet(temperature_c: f64) -> Hold {
    Hold {
        ask: "Is the milk at",
        aim: Some(Facts::milk_at(temperature_c)),
        then: "Only then the rennet.".to_owned(),
        if_not: "too hot, cool the milk first; too cool, wait.".to_owned(),
        blanks: blanks_for(&[EntryKind::MilkTemperature]),
        records: vec![EntryKind::MilkTemperature],
    }
}

/// Returns how warm the milk is when something goes in: as chosen, or warmer where it was so already, because nobody cools it for that.
fn milk_c(vat: &VatOutcome, event: WarmingEvent, chosen_c: f64) -> f64 {
    vat.events.iter().find(|mark| mark.event == event).map_or(chosen_c, |mark| mark.milk_c)
}

/// What is stirred in on the way to the rennet.
struct StirredIn {
    /// The leg of warming that follows.
    from: Leg,
    /// Temperature of the milk for it.
    temperature_c: f64,
    /// The figure of the minutes until then.
    key: &'static str,
    step: Step,
}

/// One leg of warming.
struct Leg {
    /// The task that it is part of.
    task: &'static str,
    /// When it begins.
    at_min: f64,
}

impl Leg {
    /// Returns its step: told in full if it is the first of all, for which there is a figure.
    fn warming(&self, design: &Design, minutes: f64, to_c: f64, facts: &Facts, first: Option<&str>) -> Step {
        if let Some(key) = first {
            let whole = facts.target(key, "for", Amount::new(minutes, Unit::Minute, 0));
            // The figure counts from the start; milk that is warm from the start may ripen before it is warmed.
            let lasts = if self.at_min < 0.5 { whole } else { Facts::plain("for", minutes, Unit::Minute, 0) };
            return warm((self.task, self.at_min), design, to_c, lasts);
        }
        let mut on = Step::once((self.task, "Warm on"), Stage::Vat, self.at_min, "Go on warming,", "stirring as before.");
        on.targets.push(Facts::milk_at(to_c));
        on.lasts = Some(Facts::plain("for", minutes, Unit::Minute, 0));
        "Too hot: cool the milk before you add rennet. Too cool: wait.".clone_into(&mut on.if_off);
        on.write_down(EntryKind::MilkTemperature);
        on.governed_by = &["rennet_temperature_c"];
        on
    }
}

fn warm((task, at_min): (&str, f64), design: &Design, to_c: f64, lasts: Target) -> Step {
    let how = match design.vat.heating {
        Heating::Bath => "the milk in the bath, stirring.",
        Heating::DoubleBoiler => "the milk over boiling water, stirring.",
        Heating::Hob => "the milk on a low hob, stirring.",
    };
    let mut step = Step::once((task, "Warm"), Stage::Vat, at_min, "Warm", how);
    step.targets.push(Facts::milk_at(to_c));
    if design.vat.heating == Heating::Bath {
        let bath = Amount::new(design.vat.bath_set_temperature_c, Unit::Celsius, 1);
        step.targets.push(Target::near("bath", bath, THERMOMETER_SPREAD.value));
    }
    step.lasts = Some(lasts);
    let if_off = match design.vat.heating {
        Heating::Bath | Heating::DoubleBoiler => "Slow: check the lids and the water. Fast: lift the pot out early.",
        Heating::Hob => "Slow: wait and keep stirring. Fast: take the pot off early.",
    };
    if_off.clone_into(&mut step.if_off);
    step.write_down(EntryKind::MilkTemperature);
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
        CalciumForm::Anhydrous => ("in the calcium chloride, dissolved in a small cup of cool water.", "anhydrous"),
        CalciumForm::Dihydrate => ("in the calcium chloride, dissolved in a small cup of cool water.", "dihydrate"),
    };
    let mut step = Step::once(("calcium", "Calcium"), Stage::Vat, vat.to_calcium_min, "Stir", what);
    let grams = facts.target("calcium_g", label, Amount::new(milk.calcium_g, Unit::Gram, 2));
    if milk.calcium_ml > 0.0 {
        let poured = facts.target("calcium_ml", "or", Amount::new(milk.calcium_ml, Unit::Millilitre, 1));
        let drops = milk.calcium_drops.map(|drops| (drops, design.milk.calcium_drops_in_ml));
        step.how = measured::liquid("the solution", &poured, drops);
        step.targets.extend([grams, poured]);
    } else {
        step.how = measured::dry(&grams);
        step.targets.push(grams);
    }
    step.targets.push(Facts::milk_at(milk_c(vat, WarmingEvent::Calcium, design.vat.calcium_temperature_c)));
    "Forgot it: add it before the rennet, never after.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::CalciumAdded);
    step.governed_by = &[
        "calcium_form",
        "calcium_solution_percent",
        "calcium_dose_percent",
        "calcium_temperature_c",
        "calcium_drops_counted",
        "calcium_drops_in_ml",
    ];
    step
}
