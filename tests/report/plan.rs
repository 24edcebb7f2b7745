//! The plan follows from the batch and leaves nothing out.

use super::sample;
use proptest::prelude::*;
use std::collections::BTreeSet;
use vatsketch::batch::batch;
use vatsketch::design::{Design, MilkTreatment, PicklingDesign, SouredBy, Stage, Value, fields};
use vatsketch::report::{Plan, plan};
use vatsketch::source::{Constant, SourceId};
use vatsketch::units::Units;

fn default_plan() -> Plan {
    plan(&batch(&Design::default()).unwrap())
}

/// Says what every plan owes its reader, whatever the design.
fn owes(plan: &Plan) {
    for step in &plan.steps {
        assert!(step.verb.starts_with(char::is_uppercase), "{step:?} does not begin with its verb");
        assert!(step.at_min.is_finite() && step.at_min >= 0.0, "{step:?} has no time");
        assert!(!step.targets.is_empty(), "{step:?} has nothing to reach");
        let held = step.hold.as_ref().is_some_and(|hold| !hold.if_not.is_empty());
        assert!((held || !step.if_off.is_empty()) && !step.write_down.is_empty(), "{step:?} leaves the maker alone");
        for target in step.targets.iter().chain(&step.lasts) {
            assert!(target.amount.value.is_finite(), "{target:?} in {step:?}");
            let around = target.within.is_none_or(|(least, most)| least <= target.amount.value && target.amount.value <= most);
            assert!(around, "{target:?} lies outside its own tolerance");
        }
        assert!(!step.times.is_empty() && step.times.iter().all(|time| time.at_min.is_finite()), "{step:?}");
    }
    for row in &plan.shopping {
        assert!(row.amount.value.is_finite() && row.amount.value > 0.0, "{row:?}");
        // Jars are counted; everything else is weighed or measured.
        let has_unit = !row.amount.unit.symbol().is_empty() || row.what == "Jars";
        assert!(has_unit && !row.look_for.is_empty(), "{row:?}");
    }
    let times: Vec<f64> = plan.steps.iter().map(|step| step.at_min).collect();
    assert!(times.windows(2).all(|pair| pair[0] <= pair[1]), "the steps are not in order: {times:?}");
    let placed = plan.before_all.len() + plan.steps.iter().map(|step| step.cautions.len()).sum::<usize>();
    assert_eq!(placed, plan.cautions.len(), "a caution is printed twice or not at all");
}

#[test]
fn every_step_and_every_shopping_row_carries_numbers_and_units() {
    owes(&default_plan());
    owes(&plan(&sample::batch()));
    owes(&plan(&sample::failed()));
}

#[test]
fn the_steps_stand_in_the_order_of_the_trade() {
    let plan = plan(&sample::batch());
    let verbs: Vec<&str> = plan.steps.iter().map(|step| step.verb).collect();
    // Measure, warm, calcium, warm on, rennet, test, cut, rest, ladle, salted turns, other turns, unmould, roll in pepper, dry, swap, weigh, cover with vinegar, measure the pH, keep: common practice, no source.
    let wanted = [
        "Measure",
        "Warm",
        "Stir",
        "Go on warming,",
        "Stir",
        "Test",
        "Cut",
        "Rest",
        "Ladle",
        "Turn",
        "Turn",
        "Unmould",
        "Roll",
        "Lay",
        "Swap",
        "Weigh",
        "Cover",
        "Measure",
        "Keep",
    ];
    assert_eq!(verbs, wanted);
}

#[test]
fn shopping_names_what_the_stages_worked_out() {
    let batch = sample::batch();
    let plan = plan(&batch);
    let bought = |what: &str| plan.shopping.iter().find(|row| row.what == what).map(|row| row.amount.value);
    let milk = batch.milk.done().unwrap();
    assert_eq!(bought("Milk"), Some(batch.design.milk.milk_l));
    assert_eq!(bought("Cream"), Some(milk.cream_g));
    assert_eq!(bought("Calcium chloride"), Some(milk.calcium_g));
    assert_eq!(bought("Rennet"), Some(milk.rennet_ml));
    assert_eq!(bought("Water for the rennet"), Some(milk.rennet_water_ml));
    assert_eq!(bought("Salt"), Some(batch.salting.done().unwrap().salt_g));
    assert_eq!(bought("Skimmed milk"), None, "nothing of it is needed, so it is not on the list");
}

#[test]
fn a_caution_stands_before_the_step_whose_input_causes_it() {
    let plan = plan(&sample::batch());
    let ladle = plan.steps.iter().find(|step| step.verb == "Ladle").unwrap();
    assert_eq!(ladle.cautions.iter().map(|caution| caution.key).collect::<Vec<_>>(), ["warm_draining"]);
    assert_eq!(plan.before_all.iter().map(|caution| caution.key).collect::<Vec<_>>(), ["no_acid", "model_uncertainty"]);
}

#[test]
fn every_input_is_governed_by_a_step_so_that_its_caution_finds_its_place() {
    let mut governed: BTreeSet<&str> = BTreeSet::new();
    for soured_by in [SouredBy::Nothing, SouredBy::Culture, SouredBy::Acid, SouredBy::Lactone] {
        let mut design = sample::batch().design;
        design.milk.soured_by = soured_by;
        let plan = plan(&batch(&design).unwrap());
        governed.extend(plan.steps.iter().flat_map(|step| step.governed_by.iter().copied()));
    }
    let mut heated = sample::batch().design;
    (heated.milk.milk_treatment, heated.milk.pasteurised_in_vat) = (MilkTreatment::Raw, true);
    let heated = plan(&batch(&heated).unwrap());
    governed.extend(heated.steps.iter().flat_map(|step| step.governed_by.iter().copied()));
    let inputs: BTreeSet<&str> = fields().map(|field| field.key).collect();
    assert_eq!(governed, inputs);
}

#[test]
fn a_failed_stage_still_gives_a_plan_that_says_why() {
    let plan = plan(&sample::failed());
    assert!(plan.steps.is_empty(), "nothing can be done without milk");
    assert_eq!(plan.stopped.len(), Stage::ALL.len());
    assert_eq!(plan.stopped[0].stage, Stage::Milk);
    assert!(plan.stopped[0].why.contains("6.5"), "{}", plan.stopped[0].why);
    assert!(!plan.cautions.is_empty() && !plan.sources.is_empty());
}

#[test]
fn a_stage_that_fails_late_keeps_the_steps_before_it() {
    // Salt at no turn at all cannot be sprinkled on; milk, vat and draining are done.
    let mut design = Design::default();
    design.set("salted_turns", Value::Number(0.0)).unwrap();
    let plan = plan(&batch(&design).unwrap());
    owes(&plan);
    assert_eq!(
        plan.stopped.iter().map(|halt| halt.stage).collect::<Vec<_>>(),
        [Stage::Salting, Stage::Drying, Stage::Pickling, Stage::Keeping]
    );
    assert_eq!(plan.steps.last().unwrap().verb, "Unmould");
}

#[test]
fn the_plan_says_that_it_is_no_measurement_and_that_local_rules_come_first() {
    let plan = default_plan();
    assert!(plan.subtitle.contains("not a measurement") && plan.subtitle.contains("Local food rules"));
    assert_eq!(plan.title, Plan::UNTITLED);
}

#[test]
fn the_sources_are_those_of_the_constants_and_of_the_cautions() {
    let plan = default_plan();
    let rows = vatsketch::source::ledger().unwrap();
    let (other, own): (Vec<_>, Vec<_>) =
        vatsketch::analysis::constants().into_iter().partition(|record| record.source == SourceId::WeightsAndMeasures1985);
    let title = |record: &Constant| &rows.iter().find(|row| row.id == record.source).unwrap().title;
    let names = |plan: &Plan, record: &Constant| plan.sources.iter().any(|source| source.title == *title(record));
    // What milk is soured with enters no number of a plan in which nothing sours.
    let souring = [SourceId::Niki2000, SourceId::YoghurtCurves, SourceId::Fermentation2019, SourceId::CultureTables];
    for record in &own {
        assert_eq!(names(&plan, record), !souring.contains(&record.source), "{}", title(record));
    }
    let mut soured = Design::default();
    soured.milk.soured_by = vatsketch::design::SouredBy::Culture;
    let soured = vatsketch::report::plan(&batch(&soured).unwrap());
    assert!(own.iter().all(|record| names(&soured, record)));
    // A measure that nothing is shown in enters no plan.
    let shown = plan.clone().shown_in(Units::IMPERIAL);
    assert!(!other.is_empty() && other.iter().all(|record| !names(&plan, record) && names(&shown, record)));
    let titles: BTreeSet<&str> = plan.sources.iter().map(|source| source.title.as_str()).collect();
    assert_eq!(titles.len(), plan.sources.len(), "a source stands twice");
}

#[test]
fn warming_drying_and_where_there_is_vinegar_its_ph_are_on_the_plan() {
    let plan = default_plan();
    assert_eq!(plan.curves.len(), 3);
    let bare = Design { pickling: PicklingDesign { pickled: false, ..PicklingDesign::default() }, ..Design::default() };
    assert_eq!(vatsketch::report::plan(&batch(&bare).unwrap()).curves.len(), 2);
    assert!(plan.curves.iter().all(|curve| !curve.series.is_empty() && !curve.in_words.is_empty()));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]
    #[test]
    fn any_design_gives_a_plan_that_owes_nothing(
        milk_l in 1.0_f64..20.0,
        moulds in 1_u32..60,
        turns in 0_u32..8,
        salted in 0_u32..3,
        drying_h in 0.0_f64..60.0,
        fat in 1.0_f64..7.0,
        first_test in 5.0_f64..200.0,
    ) {
        let mut design = Design::default();
        let numbers = [
            ("milk_l", milk_l), ("mould_count", f64::from(moulds)), ("turn_count", f64::from(turns)),
            ("salted_turns", f64::from(salted)), ("drying_h", drying_h), ("fat_target_percent", fat), ("first_test_min", first_test),
        ];
        for (key, value) in numbers {
            design.set(key, Value::Number(value)).unwrap();
        }
        owes(&plan(&batch(&design).unwrap()));
    }
}

/// Common practice, no source: cut curd is left alone for some minutes, so that the cut faces close.
#[test]
fn the_cut_curd_is_left_alone_before_it_is_moved() {
    let rest = |minutes: f64| {
        let mut design = Design::default();
        design.vat.whey_rest_min = minutes;
        let steps = plan(&batch(&design).unwrap()).steps;
        steps.into_iter().find(|step| step.verb == "Rest").map(|step| step.what.replace('\u{a0}', " "))
    };
    let healing = vatsketch::law::kitchen::HEALING.value;
    let long = rest(4.0 * healing).unwrap();
    assert!(long.contains(&format!("{healing:.0} min unmoved")) && long.contains("then moved gently"), "{long}");
    let short = rest(healing).unwrap();
    assert!(short.contains("covered: unmoved") && !short.contains("moved gently"), "{short}");
    assert_eq!(rest(0.0), None);
}
