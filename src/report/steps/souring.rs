//! What sours the milk: acid into the cold milk, a culture on the way, a lactone before the rennet; and the meter, which alone tells whether it
//! works.

use super::{Step, measured};
use crate::batch::{Batch, culture_check};
use crate::design::{CultureBy, CultureKind, Design, DryingPlace, Heating, MilkAcid, MilkDesign, SouredBy, Stage, Unit};
use crate::law::growth::{COLD_ENOUGH, SOUR_BEFORE_DRYING_PH, WARM_DRYING};
use crate::law::kitchen::SCALE_LEAST;
use crate::law::souring::STIR_ACID_BELOW_C;
use crate::plan::{MeterTask, meter_task, task_after_cooling};
use crate::process::{DrainingOutcome, MilkOutcome, VatOutcome};
use crate::record::EntryKind;
use crate::report::facts::Facts;
use crate::report::hold::blanks_for;
use crate::report::{Amount, Hold, Target, kitchen_amount};

/// The acid for the cold milk, if one is stirred in: when it is measured, or when it was pasteurised and has cooled.
pub(super) fn acid(design: &MilkDesign, milk: &MilkOutcome, vat: Option<&VatOutcome>, facts: &Facts) -> Option<Step> {
    if milk.soured.acid.total_kg() <= 0.0 {
        return None;
    }
    let (task, stage, at_min) = match (&milk.pasteurising, vat) {
        (None, _) => ("measure", Stage::Milk, 0.0),
        (Some(_), Some(vat)) => (task_after_cooling(milk, vat), Stage::Vat, vat.heat_step?.cooled_min),
        (Some(_), None) => return None,
    };
    let (name, key, amount) = match design.milk_acid {
        MilkAcid::Citric => ("citric acid", "citric_acid_g", Amount::new(milk.soured.acid_g, Unit::Gram, 1)),
        MilkAcid::Vinegar => ("vinegar", "milk_vinegar_ml", Amount::new(milk.soured.acid_ml, Unit::Millilitre, 1)),
        MilkAcid::Lactic => ("lactic acid", "lactic_acid_ml", Amount::new(milk.soured.acid_ml, Unit::Millilitre, 1)),
    };
    let what = "in the acid, diluted in cool water, slowly, while the milk is cold.";
    let mut step = Step::once((task, "Acid"), stage, at_min, "Stir", what);
    let target = facts.target(key, name, amount);
    step.how = match design.milk_acid {
        MilkAcid::Citric => measured::dry(&target),
        MilkAcid::Vinegar | MilkAcid::Lactic => measured::liquid(name, &target, None),
    };
    step.targets.push(target);
    step.targets.push(Target::exact("milk no warmer than", Amount::new(STIR_ACID_BELOW_C.value, Unit::Celsius, 0)));
    step.targets.push(facts.target("cold_milk_ph", "pH by the model", Amount::new(milk.soured.cold_ph, Unit::One, 2)));
    "Flakes: stir until smooth, then pour more slowly. pH too high: add a little more acid and measure again (common practice, no source)."
        .clone_into(&mut step.if_off);
    step.write_down(EntryKind::ColdMilkPh);
    step.governed_by = &[
        "soured_by",
        "milk_acid",
        "acid_by",
        "soured_milk_ph",
        "milk_acid_g_l",
        "milk_vinegar_g_per_100ml",
        "lactic_acid_percent",
    ];
    Some(step)
}

/// The culture, and the hours in which the milk ripens.
pub(super) fn culture(whole: &Design, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Step {
    let design = &whole.milk;
    let what = match (design.culture_kind, design.ripening_h > 0.0) {
        (CultureKind::Mesophilic, true) => "in the mesophilic culture and let the milk ripen, kept at this temperature.",
        (CultureKind::Mixed, true) => "in the mixed culture and let the milk ripen, kept at this temperature.",
        (CultureKind::Thermophilic, true) => "in the thermophilic culture and let the milk ripen, kept at this temperature.",
        (CultureKind::Mesophilic, false) => "in the mesophilic culture.",
        (CultureKind::Mixed, false) => "in the mixed culture.",
        (CultureKind::Thermophilic, false) => "in the thermophilic culture.",
    };
    let mut step = Step::once(("culture", "Culture"), Stage::Vat, vat.to_culture_min, "Stir", what);
    step.targets.push(match design.culture_by {
        CultureBy::Packet => Target::exact("packets", packets(design.culture_packets)),
        CultureBy::Bulk => facts.target("bulk_starter_g", "bulk starter", Amount::new(milk.soured.bulk_g, Unit::Gram, 0)),
        CultureBy::Cells => Facts::plain("living cells in the milk", design.culture_cells_million_g, Unit::MillionPerGram, 1),
    });
    step.targets.push(Facts::milk_at(design.ripening_temperature_c));
    step.lasts = (design.ripening_h > 0.0).then(|| ripening(design.ripening_h));
    if design.ripening_h > 0.0 && whole.vat.heating == Heating::Bath {
        "Bring the bath to the same temperature, with cold or hot water. Set it as before when the hours are over."
            .clone_into(&mut step.how);
    }
    "Cooler: it works more slowly. Much warmer: it may die; cool the milk first.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::CultureAdded);
    step.governed_by = &[
        "soured_by",
        "culture_kind",
        "culture_by",
        "culture_packet_l",
        "culture_packets",
        "culture_bulk_percent",
        "culture_cells_million_g",
        "ripening_temperature_c",
        "ripening_h",
    ];
    step
}

/// Returns a number of packets as it is counted.
fn packets(count: f64) -> Amount {
    let Amount { value, decimals, .. } = kitchen_amount(count, Unit::Packet);
    Amount::new(value, Unit::One, decimals)
}

/// Returns the time of ripening, in hours where it comes out even.
fn ripening(hours: f64) -> Target {
    let halves = 2.0 * hours;
    if (halves - halves.round()).abs() < 1e-9 {
        Facts::plain("for", hours, Unit::Hour, 1)
    } else {
        Facts::plain("for", 60.0 * hours, Unit::Minute, 0)
    }
}

/// The lactone, if one is stirred in before the rennet.
pub(super) fn lactone(design: &MilkDesign, milk: &MilkOutcome, vat: &VatOutcome, facts: &Facts) -> Option<Step> {
    if design.soured_by != SouredBy::Lactone {
        return None;
    }
    let what = "in the GDL, just dissolved in cool water, right before the rennet.";
    let mut step = Step::once(("rennet", "GDL"), Stage::Vat, vat.to_rennet_min, "Stir", what);
    let grams = facts.target("lactone_g", "GDL", Amount::new(milk.soured.acid_g, Unit::Gram, 1));
    if grams.kitchen.is_none() && grams.amount.value < SCALE_LEAST.value {
        // Dissolved beforehand it would be acid already, so no solution of it is kept.
        "It takes a scale that shows tenths of a gram.".clone_into(&mut step.how);
    }
    step.targets.push(grams);
    step.targets.push(facts.target("rennet_ph", "pH before the GDL", Amount::new(vat.rennet_ph, Unit::One, 2)));
    "Dissolved too early: it is acid already; weigh out fresh.".clone_into(&mut step.if_off);
    step.write_down(EntryKind::LactoneAdded);
    step.governed_by = &["soured_by", "lactone_g_l"];
    Some(step)
}

/// The check of the culture with a meter; what falls on the unmoulding is measured there anyway.
pub(super) fn meter(batch: &Batch, facts: &Facts) -> Option<Step> {
    let (check, meter) = (culture_check(batch)?, meter_task(batch).filter(|meter| meter.task != "unmould")?);
    let place = if check.stage == Stage::Vat { "milk" } else { "curd" };
    let what = format!("the pH of the {place} with a meter, about {:.0}\u{a0}h after the culture.", check.after_h);
    let stage = if meter.is_alone() { check.stage } else { Stage::Draining };
    let mut step = Step::once((&meter.task, "pH of the curd"), stage, meter.at_min, "Measure", what);
    measured::CALIBRATE.clone_into(&mut step.how);
    step.targets.push(Facts::plain("at or below", check.in_time_ph, Unit::One, 1));
    step.targets.push(facts.target("culture_check_ph", "pH by the model", Amount::new(check.ph, Unit::One, 2)));
    step.if_off = format!(
        "Above {:.1}: the culture is slow or dead. Keep the {place} at {:.0}\u{a0}°C and measure again after an hour. No lower: it has failed. Discard it, or count it as cheese without acid: {} or colder at once, no warm drying.",
        check.in_time_ph,
        batch.design.milk.ripening_temperature_c,
        cold()
    );
    step.write_down(EntryKind::CurdPh);
    Some(step)
}

/// Puts the check of the culture where it is done, and leaves the rest in order.
pub(super) fn with_meter(mut steps: Vec<Step>, batch: &Batch, facts: &Facts) -> Vec<Step> {
    if let Some(step) = meter(batch, facts) {
        // What belongs to the same task comes first.
        let later = |other: &Step| other.at_min > step.at_min && !of_task(other, &step);
        let at = steps.iter().position(later).unwrap_or(steps.len());
        steps.insert(at, step);
    }
    steps
}

fn of_task(one: &Step, other: &Step) -> bool {
    one.times.iter().any(|time| time.task != MeterTask::ALONE && other.times.iter().any(|also| also.task == time.task))
}

/// The pH of a cheese at unmoulding, before it goes to the air, where anything was to sour it.
pub(super) fn unmoulded(batch: &Batch, vat: &VatOutcome, draining: &DrainingOutcome, facts: &Facts) -> Option<Step> {
    let milk = batch.milk.done().filter(|milk| milk.soured.is_soured())?;
    let at_min = vat.to_ladle_min + 60.0 * draining.draining_h;
    let ph = draining.souring.last()?.ph;
    let drying = &batch.design.drying;
    let air_c = match drying.drying_place {
        DryingPlace::Cabinet => drying.cabinet_temperature_c,
        DryingPlace::OpenAir => drying.day_temperature_c,
    };
    let warm = drying.drying_h > 0.0 && air_c > WARM_DRYING.value;
    let limit = SOUR_BEFORE_DRYING_PH.value;
    let what = if drying.drying_h > 0.0 {
        "the pH of two cheeses with a meter, before they go to the air."
    } else {
        "the pH of two cheeses with a meter."
    };
    let mut step = Step::once(("unmould", "pH at unmoulding"), Stage::Draining, at_min, "Measure", what);
    measured::CALIBRATE.clone_into(&mut step.how);
    if warm {
        step.targets.push(Facts::plain("at or below", limit, Unit::One, 1));
        step.hold = Some(Hold {
            ask: "Do both read no more than pH",
            aim: Some(Facts::plain("pH", limit, Unit::One, 1)),
            then: "Only then to the air.".to_owned(),
            if_not: String::new(),
            blanks: blanks_for(&[EntryKind::UnmouldedPh, EntryKind::UnmouldedSecondPh]),
            records: vec![EntryKind::UnmouldedPh, EntryKind::UnmouldedSecondPh],
        });
    }
    step.targets.push(facts.target("unmoulded_cheese_ph", "pH by the model", Amount::new(ph, Unit::One, 2)));
    let above = if warm { format!("Above {limit:.1}") } else { "Clearly higher".to_owned() };
    let wait = if milk.soured.sourness.goes_on() {
        "wait an hour and measure again, as long as it falls. If it stops above that:"
    } else {
        "it sours no further by itself:"
    };
    let warm_c = format!("{:.0}\u{a0}°C", WARM_DRYING.value);
    step.if_off =
        format!("{above}: {wait} no drying above {warm_c}; keep it at {} or colder as cheese without acid, or discard it.", cold());
    step.write_down(EntryKind::UnmouldedPh);
    Some(step)
}

/// Returns how cold cheeses are kept whose culture has failed.
fn cold() -> String {
    format!("{:.0}\u{a0}°C", COLD_ENOUGH.value)
}
