//! The heat step of raw milk: heat, hold, cool.

use super::Step;
use crate::design::{Design, Heating, Stage, Unit};
use crate::law::kitchen::THERMOMETER_SPREAD;
use crate::law::pasteurising::in_seconds;
use crate::process::{HeatStep, MilkOutcome, Pasteurising, VatOutcome};
use crate::record::EntryKind;
use crate::report::facts::Facts;
use crate::report::{Amount, Target};

/// Returns the steps in which raw milk is pasteurised in the vat; none where it is not.
pub(super) fn heat_step(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Vec<Step> {
    let (Some(asked), Some(went)) = (&milk.pasteurising, &vat.heat_step) else { return Vec::new() };
    vec![heat(design, asked, went, facts), hold(asked, went), cool(design, asked, went, facts)]
}

fn heat(design: &Design, asked: &Pasteurising, went: &HeatStep, facts: &Facts) -> Step {
    let how = match design.vat.heating {
        Heating::Bath => "the raw milk in the bath until its coldest place is hot enough, stirring so that every drop gets there.",
        Heating::DoubleBoiler => {
            "the raw milk over boiling water until its coldest place is hot enough, stirring so that every drop gets there."
        }
        Heating::Hob => {
            "the raw milk on the hob until its coldest place is hot enough, stirring so that every drop gets there and none burns."
        }
    };
    let mut step = Step::once(("pasteurise", "Heat"), Stage::Vat, 0.0, "Heat", how);
    step.targets.push(Target::exact("coldest place at least", Amount::new(asked.hold_c, Unit::Celsius, 1)));
    if design.vat.heating == Heating::Bath {
        step.targets.push(Target::near("bath", Amount::new(asked.bath_c, Unit::Celsius, 1), THERMOMETER_SPREAD.value));
    }
    step.lasts = Some(facts.target("to_pasteurising_min", "for", Amount::new(went.to_hold_min, Unit::Minute, 0)));
    "Not there yet: go on heating, lids on. The time counts only from when the coldest place is there."
        .clone_into(&mut step.if_off);
    step.write_down(EntryKind::HeatedMilk);
    step.governed_by = &["pasteurised_in_vat", "pasteurising_temperature_c", "pasteurising_bath_temperature_c"];
    step
}

fn hold(asked: &Pasteurising, went: &HeatStep) -> Step {
    let what = "the milk that hot: stir and read its coldest place, lid on in between. Spoon and thermometer stay in the hot milk.";
    let mut step = Step::once(("hold", "Kept hot"), Stage::Vat, went.to_hold_min, "Keep", what);
    step.targets.push(Target::exact("always at least", Amount::new(asked.hold_c, Unit::Celsius, 1)));
    let seconds = 60.0 * asked.hold_min;
    step.lasts = Some(if in_seconds(seconds) {
        Facts::plain("for at least", seconds, Unit::Second, 0)
    } else {
        Facts::plain("for at least", asked.hold_min, Unit::Minute, 0)
    });
    "Cooler once: heat it again and count the whole time anew. Not reached: it is raw milk still; do not go on as if it were pasteurised."
        .clone_into(&mut step.if_off);
    step.write_down(EntryKind::HeldMilk);
    step.governed_by = &["pasteurising_extra_min"];
    step
}

fn cool(design: &Design, asked: &Pasteurising, went: &HeatStep, facts: &Facts) -> Step {
    let in_bath = design.vat.heating == Heating::Bath;
    let what = if in_bath {
        "the covered pot quickly in cold water, stirring with a clean spoon. Meanwhile cool the bath: pour off hot water, add cold."
    } else {
        "the covered pot quickly in cold water, stirring with a clean spoon."
    };
    let mut step = Step::once(("cool", "Cool"), Stage::Vat, went.hold_ends_min, "Cool", what);
    step.targets.push(Facts::milk_at(went.cooled_c));
    step.targets.push(Facts::plain("cold water", asked.cold_water_l, Unit::Litre, 0));
    step.targets.push(Facts::plain("cold water at most", asked.cold_water_c, Unit::Celsius, 1));
    if in_bath {
        // The calculation goes on from a bath as warm as the milk.
        step.targets.push(Target::near(
            "bath for the pot to go back",
            Amount::new(went.cooled_c, Unit::Celsius, 1),
            THERMOMETER_SPREAD.value,
        ));
    }
    step.lasts = Some(facts.target("cooling_min", "for", Amount::new(went.cooling_min(), Unit::Minute, 0)));
    "Slow: change the water, or add ice. Only clean things touch the milk from now on.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::MilkTemperature);
    step.governed_by = &["cooling_water_l", "cooling_water_temperature_c"];
    step
}
