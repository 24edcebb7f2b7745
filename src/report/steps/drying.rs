//! Drying.

use super::{Facts, Step};
use crate::batch::Batch;
use crate::design::{DryingDesign, DryingPlace, Stage, Unit};
use crate::law::kitchen::THERMOMETER_SPREAD;
use crate::plan::Stretch;
use crate::process::{DryingOutcome, TrayRun};
use crate::record::EntryKind;
use crate::report::{Amount, Target, duration};
use crate::units::Units;

/// What is weighed, where there is no pepper on it and where there is.
const ONE_CHEESE: &str = "one cheese";
const WITH_PEPPER: &str = "one cheese with its pepper";

/// The weights are those on the scale: with salt and pepper.
pub(super) fn drying(
    design: &DryingDesign,
    (drying, pepper_each_g): (&DryingOutcome, f64),
    start_min: f64,
    facts: &Facts,
) -> Vec<Step> {
    if design.drying_h <= 0.0 {
        return Vec::new();
    }
    let mut steps = vec![lay(design, drying, start_min)];
    if let Some(swap_h) = drying.swap_h {
        let mut swap = Step::once(
            ("swap", "Swap"),
            Stage::Drying,
            start_min + 60.0 * swap_h,
            "Swap",
            "the trays: move those that dry fastest to where drying is slowest.",
        );
        swap.targets.push(Facts::plain("moisture gap between trays at the end", drying.spread_swapped_percent, Unit::Percent, 1));
        swap.if_off = format!(
            "Forgot to swap: the moisture gap is {:.1} percentage points; sort the cheeses by weight.",
            drying.spread_unswapped_percent
        );
        swap.write_down(EntryKind::CheeseWeight);
        steps.push(swap);
    }
    steps.push(weigh(design, (drying, pepper_each_g), start_min, facts));
    steps
}

fn lay(design: &DryingDesign, drying: &DryingOutcome, start_min: f64) -> Step {
    let what = match design.drying_place {
        DryingPlace::Cabinet => "the cheeses on clean trays, apart, in the cabinet.",
        DryingPlace::OpenAir => "the cheeses on clean trays, apart, in the open, under a net.",
    };
    let mut step = Step::once(("unmould", "Lay out"), Stage::Drying, start_min, "Lay", what);
    let air = |label, temperature| Target::near(label, Amount::new(temperature, Unit::Celsius, 1), 2.0 * THERMOMETER_SPREAD.value);
    match design.drying_place {
        DryingPlace::Cabinet => step.targets.push(air("air", design.cabinet_temperature_c)),
        DryingPlace::OpenAir => {
            step.targets.extend([air("by day", design.day_temperature_c), air("by night", design.night_temperature_c)]);
        }
    }
    step.targets.push(Facts::plain("humidity", drying.air_humidity_percent, Unit::Percent, 0));
    step.targets.push(Facts::plain("trays", f64::from(drying.trays_wanted.max(1)), Unit::One, 0));
    step.lasts = Some(Facts::plain("for", design.drying_h, Unit::Hour, 0));
    "Still wet: give them more air.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::AirTemperature);
    step.governed_by = &[
        "drying_place",
        "cabinet_temperature_c",
        "room_air_temperature_c",
        "room_humidity_percent",
        "day_temperature_c",
        "day_humidity_percent",
        "night_temperature_c",
        "night_humidity_percent",
        "day_h",
        "air_speed_m_s",
        "underside_open_percent",
        "tray_count",
        "tray_width_mm",
        "tray_depth_mm",
        "tray_clearance_mm",
        "tray_swap",
    ];
    step
}

fn weigh(design: &DryingDesign, (drying, pepper_each_g): (&DryingOutcome, f64), start_min: f64, facts: &Facts) -> Step {
    let at_min = start_min + 60.0 * design.drying_h;
    let what = if drying.trays_wanted > 1 { "one cheese from each tray; chill them all." } else { "one cheese; chill them all." };
    let mut step = Step::once(("weigh", "Weigh"), Stage::Drying, at_min, "Weigh", what);
    let label = if pepper_each_g > 0.0 { WITH_PEPPER } else { ONE_CHEESE };
    let bare = facts.target("dried_cheese_g", label, Amount::new(drying.end.cheese_g, Unit::Gram, 0));
    step.targets.push(bare.moved(drying.end.cheese_g + pepper_each_g));
    // Pepper loses next to nothing: on the scale the loss is a smaller share of more.
    let share = drying.end.cheese_g / (drying.end.cheese_g + pepper_each_g * (1.0 - 0.01 * drying.end.loss_percent));
    let lost = facts.target("drying_loss_percent", "weight lost", Amount::new(drying.end.loss_percent, Unit::Percent, 0));
    step.targets.push(lost.scaled(share));
    let (_, most) = bare.within.unwrap_or((bare.amount.value, bare.amount.value));
    let heaviest = Amount { value: most + pepper_each_g, ..bare.amount };
    step.if_off = match hours_per_gram(&drying.middle) {
        Some(hours) => {
            format!("Above {heaviest}: dry on, {} for each gram, and weigh again.", duration(60.0 * hours, Units::METRIC))
        }
        None => format!("Above {heaviest}: dry on and weigh again."),
    };
    step.write_down(EntryKind::CheeseWeight);
    step.governed_by = &["drying_h"];
    step
}

/// Brings the steps of drying to the time that a week gives it: how long, and what the cheeses weigh then, off the same curve.
pub(super) fn stretched(steps: &mut [Step], stretch: &Stretch, batch: &Batch) {
    let (Stage::Drying, Some(drying), Some(loss_percent)) = (stretch.stage, batch.drying.done(), stretch.loss_percent) else {
        return;
    };
    let left = (1.0 - 0.01 * loss_percent) / (1.0 - 0.01 * drying.end.loss_percent);
    for step in steps.iter_mut().filter(|step| step.stage == Stage::Drying) {
        match step.verb {
            "Lay" => step.lasts = Some(Facts::plain("for", stretch.planned_min as f64 / 60.0, Unit::Hour, 0)),
            "Weigh" => {
                for target in &mut step.targets {
                    *target = match target.label.as_str() {
                        ONE_CHEESE => target.moved(target.amount.value * left),
                        // Only what is cheese dries on.
                        WITH_PEPPER => target.moved(target.amount.value + drying.end.cheese_g * (left - 1.0)),
                        _ if drying.end.loss_percent.abs() > f64::EPSILON => {
                            target.moved(target.amount.value * loss_percent / drying.end.loss_percent)
                        }
                        _ => target.moved(loss_percent),
                    };
                }
            }
            _ => {}
        }
    }
}

/// Returns the hours that the last gram took, from the end of the curve.
fn hours_per_gram(run: &TrayRun) -> Option<f64> {
    let last = run.points.last()?;
    let before = run.points.iter().rev().find(|point| point.cheese_g > last.cheese_g + 1.0)?;
    Some((last.at_h - before.at_h) / (before.cheese_g - last.cheese_g)).filter(|hours| hours.is_finite())
}
