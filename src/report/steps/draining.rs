//! Ladling, turning, salting and unmoulding.

use super::{Facts, Step};
use crate::batch::Batch;
use crate::design::{Design, DrainingDesign, Stage, Unit};
use crate::process::{DrainingOutcome, SaltingOutcome, VatOutcome};
use crate::record::EntryKind;
use crate::report::{Amount, StepTime, Target};

pub(super) fn ladle(design: &DrainingDesign, vat: &VatOutcome, draining: &DrainingOutcome) -> Step {
    let what = if draining.fits {
        "the curd evenly into the moulds, on a rack over a tray. Cover them."
    } else {
        "the curd evenly into the moulds, on a rack over a tray; top up as it sinks. Cover them."
    };
    let mut step = Step::once(("ladle", "Ladle"), Stage::Draining, vat.to_ladle_min, "Ladle", what);
    step.targets.push(Facts::plain("curd in each", draining.ladled_ml, Unit::Millilitre, 0));
    step.targets.push(Facts::plain("moulds", f64::from(design.mould_count), Unit::One, 0));
    step.targets.push(Facts::plain("drains at", design.draining_temperature_c, Unit::Celsius, 0));
    "Curd left over: fill up again after twenty minutes, or add a mould.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::MouldsFilled);
    "Then wash pot, tools and worktop.".clone_into(&mut step.how);
    step.governed_by = &[
        "mould_count",
        "mould_diameter_mm",
        "mould_height_mm",
        "drip_end_moisture_percent",
        "draining_temperature_c",
        "ladled_ph_from",
        "ladled_ph",
    ];
    step
}

/// What is done at a turn, with salt and without.
const TURN_AND_SALT: &str = "the cheeses with clean hands, pour off the whey, and salt the face now on top.";
const TURN: &str = "the cheeses in their moulds with clean hands, and pour off the whey.";

/// The turns, the salted ones first: salt goes on while the cheeses still drain.
pub(super) fn turns(batch: &Batch, vat: &VatOutcome, draining: &DrainingOutcome, facts: &Facts) -> Vec<Step> {
    let at_min: Vec<f64> = draining.turns_h.iter().map(|hour| vat.to_ladle_min + 60.0 * hour).collect();
    let salting = batch.salting.done().filter(|salting| salting.salt_g > 0.0);
    let salted = salting.map_or(0, |_| batch.design.salting.salted_turns as usize).min(at_min.len());
    let (salted_min, plain_min) = at_min.split_at(salted);
    let mut steps = Vec::new();
    if let (Some(first_min), Some(salting)) = (salted_min.first(), salting) {
        let mut step = Step::once(("turn_1", "Turn 1"), Stage::Salting, *first_min, "Turn", TURN_AND_SALT);
        let all = Amount::new(salting.salt_turn_g, Unit::Gram, 1);
        step.targets.push(facts.target("salt_turn_g", "salt for this turn, all cheeses", all));
        step.targets.push(Facts::plain("on each top face", salting.salt_each_turn_g, Unit::Gram, 1));
        step.times = turn_times(salted_min, 0);
        "Forgot the salt: add it at the next turn.".clone_into(&mut step.if_off);
        step.write_down(EntryKind::TurnSalt);
        step.governed_by = &["salt_percent", "salted_turns", "salt_run_off_percent"];
        steps.push(step);
    }
    if let Some(first_min) = plain_min.first() {
        let mut step = Step::once(("turn", "Turn"), Stage::Draining, *first_min, "Turn", TURN);
        step.targets.push(Facts::plain("time to the next turn", batch.design.draining.turn_gap_h, Unit::Hour, 1));
        step.times = turn_times(plain_min, salted);
        "Curd sticks or breaks: wait an hour and turn again.".clone_into(&mut step.if_off);
        step.write_down(EntryKind::TurnWhey);
        step.governed_by = &["turn_count", "turn_gap_h"];
        steps.push(step);
    }
    steps
}

/// Returns the times of some turns, counted on from those before them.
fn turn_times(at_min: &[f64], before: usize) -> Vec<StepTime> {
    let numbered = at_min.iter().zip(before + 1..);
    numbered.map(|(at_min, turn)| StepTime::counted(format!("turn_{turn}"), format!("Turn {turn}"), *at_min)).collect()
}

/// The weight of a cheese is that on the scale: with the salt that stays in it.
pub(super) fn unmould(vat: &VatOutcome, draining: &DrainingOutcome, salting: Option<&SaltingOutcome>, facts: &Facts) -> Step {
    let at_min = vat.to_ladle_min + 60.0 * draining.draining_h;
    let mut step = Step::once(("unmould", "Unmould"), Stage::Draining, at_min, "Unmould", "the cheeses and weigh one.");
    let drained = facts.target("drained_cheese_g", "one cheese", Amount::new(draining.cheese_g, Unit::Gram, 0));
    step.targets.push(drained.moved(salting.map_or(draining.cheese_g, |salting| salting.cheese_g)));
    let thick = Amount::new(draining.thickness_mm, Unit::Millimetre, 0);
    step.targets.push(facts.target("drained_thickness_mm", "thickness", thick));
    step.if_off = if draining.drip_has_stopped {
        "Heavier: drain longer, in the cold, and weigh again.".to_owned()
    } else {
        format!("The drip stops only {:.0}\u{a0}h after ladling: drain in the cold until it has stopped.", draining.drip_stops_h)
    };
    step.write_down(EntryKind::CheeseWeight);
    step.governed_by = &["turn_count", "turn_gap_h", "unmoulded_ph_from", "unmoulded_ph"];
    step
}

/// The rolling in pepper, before the cheeses go to the air.
pub(super) fn pepper(design: &Design, salting: &SaltingOutcome, at_min: f64, facts: &Facts) -> Option<Step> {
    if salting.pepper_g <= 0.0 {
        return None;
    }
    let what = if design.salting.pepper_treated { "the cheeses in the treated pepper." } else { "the cheeses in the pepper." };
    let mut step = Step::once(("unmould", "Pepper"), Stage::Salting, at_min, "Roll", what);
    step.targets.push(facts.target("pepper_g", "pepper for all", Amount::new(salting.pepper_g, Unit::Gram, 0)));
    step.targets.push(Facts::plain("on each cheese", salting.pepper_each_g, Unit::Gram, 1));
    let coated = Amount::new(salting.cheese_g + salting.pepper_each_g, Unit::Gram, 0);
    step.targets.push(Target::exact("one cheese with its pepper", coated));
    if design.drying.drying_h > 0.0 {
        "Mark one, and weigh it with its pepper: its drying is counted from this.".clone_into(&mut step.how);
    }
    "Pepper falls off: roll again while the cheese is damp.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::PepperLeft);
    step.governed_by = &["pepper_g_dm2", "pepper_treated"];
    Some(step)
}
