//! From clean ware to the cut curd.

use super::heat_step::{LEAST_LEG_MIN, heat_step, ready_min, task_after_cooling};
use super::meter::{IF_NOT_SOUR, MEASURE_PH, MeterTask};
use super::task::{Task, may_wait};
use crate::design::{Design, Heating, Stage};
use crate::law::rennet::TEST_AGAIN;
use crate::plan::Gap;
use crate::plan::hands::{
    CLEAN_WAITS, CURD_WAITS, CUT_LITRE, MEASURE_LITRE, METER, STEAMING, STIR_IN, TEST_BREAK, minutes_of, visit_min, whole,
};
use crate::process::{MilkOutcome, VatOutcome};

/// What is said of cleaning: what heat does, and what cold cannot do.
const CLEANING: &str = "Steam everything made of steel. Use a sanitiser, as its label says, on anything that heat would melt. A cold sanitiser is weaker than steam, vinegar is not enough, and neither kills spores.";

pub(super) fn tasks(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, meter: Option<&MeterTask>) -> Vec<Task> {
    let mut all = vec![sanitise(), measure(milk)];
    all.extend(heat_step(vat, design.vat.heating));
    all.extend(if milk.soured.sourness.culture.is_some() {
        warming_with_culture(design, milk, vat, meter)
    } else {
        warming(design, milk, vat)
    });
    all.extend(setting(design, milk, vat));
    all
}

fn sanitise() -> Task {
    let steam_min = whole(STEAMING.value);
    Task::new("sanitise", Stage::Milk, "Sanitise", steam_min, may_wait(steam_min, whole(CLEAN_WAITS.value))).saying(CLEANING)
}

fn measure(milk: &MilkOutcome) -> Task {
    let name = match (milk.cream_g > 0.0, milk.skim_kg > 0.0) {
        (true, _) => "Measure milk and cream",
        (false, true) => "Measure milk and skimmed milk",
        (false, false) => "Measure the milk",
    };
    let with_acid = milk.soured.acid.total_kg() > 0.0 && milk.pasteurising.is_none();
    let acid_s = if with_acid { STIR_IN.value } else { 0.0 };
    let name = if with_acid { format!("{name}, stir in the acid") } else { name.to_owned() };
    let hands_min = visit_min(MEASURE_LITRE.value * milk.vat_milk_l + acid_s);
    Task::new("measure", Stage::Milk, name, hands_min, may_wait(hands_min, whole(CLEAN_WAITS.value)))
}

const fn stirring(heating: Heating) -> &'static str {
    match heating {
        Heating::Bath => "Stir now and then, and watch the temperature.",
        Heating::DoubleBoiler | Heating::Hob => "Stir all the time, and watch the temperature.",
    }
}

/// Warming is watched from its start to the rennet: the temperature must be caught, not found.
fn warming(design: &Design, milk: &MilkOutcome, vat: &VatOutcome) -> Vec<Task> {
    let how = stirring(design.vat.heating);
    let (ready_min, calcium_min, rennet_min) = (whole(ready_min(vat)), whole(vat.to_calcium_min), whole(vat.to_rennet_min));
    let acid = milk.pasteurising.is_some() && milk.soured.acid.total_kg() > 0.0;
    // Milk that was cooled to the rennet is warm enough at once; stirring in takes hands all the same.
    let least_min = if milk.pasteurising.is_some() { minutes_of(STIR_IN.value) } else { 0 };
    let watched = |key: &'static str, name: &str, minutes: i64| {
        let name = if acid && key == task_after_cooling(milk, vat) {
            format!("Stir in the acid, then {}", name.to_lowercase())
        } else {
            name.to_owned()
        };
        Task::new(key, Stage::Vat, name, minutes.max(least_min), Gap::fixed(minutes)).saying(how)
    };
    if milk.calcium_g <= 0.0 {
        let warms = vat.to_rennet_min - self::ready_min(vat) >= LEAST_LEG_MIN;
        return if warms { vec![watched("warm", "Warm", rennet_min - ready_min)] } else { Vec::new() };
    }
    let calcium = calcium_words(vat.to_rennet_min - vat.to_calcium_min);
    // Milk that is warm enough already takes its calcium at once.
    if task_after_cooling(milk, vat) == "calcium" {
        return vec![watched("calcium", calcium, rennet_min - ready_min)];
    }
    vec![watched("warm", "Warm", calcium_min - ready_min), watched("calcium", calcium, rennet_min - calcium_min)]
}

/// Returns what is done with the calcium, of which the milk is warmed on for some minutes or not at all.
fn calcium_words(minutes: f64) -> &'static str {
    if minutes >= LEAST_LEG_MIN { "Stir in the calcium, go on warming" } else { "Stir in the calcium" }
}

/// The same with a culture on the way: the milk ripens by itself, and the calcium goes in when it is warm enough, before or after.
fn warming_with_culture(design: &Design, milk: &MilkOutcome, vat: &VatOutcome, meter: Option<&MeterTask>) -> Vec<Task> {
    let ripened_min = vat.to_culture_min + 60.0 * milk.soured.ripening_h;
    let ripens = ripened_min > vat.to_culture_min;
    let with_calcium = milk.calcium_g > 0.0;
    let calcium_first = vat.to_calcium_min <= vat.to_culture_min;
    let then_min = if calcium_first { vat.to_culture_min } else { vat.to_rennet_min };
    let calcium = ("calcium", calcium_words(then_min - vat.to_calcium_min), vat.to_calcium_min);
    let mut all = vec![("warm", "Warm", ready_min(vat))];
    all.extend((with_calcium && calcium_first).then_some(calcium));
    let then_min = if with_calcium && !calcium_first { vat.to_calcium_min } else { vat.to_rennet_min };
    let culture = if ripens {
        "Stir in the culture, let the milk ripen"
    } else if then_min - vat.to_culture_min >= LEAST_LEG_MIN {
        "Stir in the culture, go on warming"
    } else {
        "Stir in the culture"
    };
    all.push(("culture", culture, vat.to_culture_min));
    let in_the_milk = meter.filter(|meter| meter.is_alone() && meter.at_min < ripened_min);
    all.extend(in_the_milk.map(|meter| (MeterTask::ALONE, MEASURE_PH, meter.at_min)));
    all.extend(ripens.then_some(("warm_on", "Warm on", ripened_min)));
    all.extend((with_calcium && !calcium_first).then_some(calcium));
    let ends_min = all.iter().skip(1).map(|(_, _, at_min)| *at_min).chain([vat.to_rennet_min]);
    let tasks = all.iter().zip(ends_min).filter_map(|((key, name, from_min), to_min)| {
        let minutes = whole(to_min) - whole(*from_min);
        let (hands_min, said) = match *key {
            "culture" if ripens => (minutes_of(STIR_IN.value).min(minutes), "Keep the milk at the temperature of the culture."),
            MeterTask::ALONE => (visit_min(METER.value).min(minutes), IF_NOT_SOUR),
            // Stirring in takes hands even where nothing is warmed.
            "calcium" | "culture" => (minutes.max(minutes_of(STIR_IN.value)), stirring(design.vat.heating)),
            _ => (minutes, stirring(design.vat.heating)),
        };
        let goes_without_saying = minutes == 0 && to_min - from_min < LEAST_LEG_MIN && matches!(*key, "warm" | "warm_on");
        (!goes_without_saying).then(|| Task::new(*key, Stage::Vat, *name, hands_min, Gap::fixed(minutes)).saying(said))
    });
    tasks.collect()
}

/// Rennet, tests and cut hang together to the minute; the curd sets when it will.
fn setting(design: &Design, milk: &MilkOutcome, vat: &VatOutcome) -> Vec<Task> {
    let test_min = |test: u32| whole(design.vat.first_test_min + f64::from(test) * TEST_AGAIN.value);
    let with_lactone = milk.soured.lactone.total_kg() > 0.0;
    let (name, stirs) = if with_lactone { ("Stir in the GDL, then the rennet", 2.0) } else { ("Stir in the rennet", 1.0) };
    let hands_min = minutes_of(stirs * STIR_IN.value);
    let mut all = vec![Task::new("rennet", Stage::Vat, name, hands_min, Gap::fixed(test_min(0)))];
    let last = vat.tests.saturating_sub(1);
    for test in 0..last {
        let gap = Gap::fixed(test_min(test + 1) - test_min(test));
        let name = format!("Test {} for a clean break", test + 1);
        all.push(Task::new(format!("test_{}", test + 1), Stage::Vat, name, minutes_of(TEST_BREAK.value), gap));
    }
    let hands_min = minutes_of(TEST_BREAK.value + CUT_LITRE.value * milk.vat_milk_l);
    let name = if last == 0 { "Test for a clean break, cut".to_owned() } else { format!("Test {}, cut", last + 1) };
    let rest = may_wait(whole(design.vat.whey_rest_min).max(hands_min), whole(CURD_WAITS.value));
    all.push(Task::new("cut", Stage::Vat, name, hands_min, rest).saying(format!(
        "Not clean: wait {:.0} min, test again, and plan on from there (common practice, no source).",
        TEST_AGAIN.value
    )));
    all
}
