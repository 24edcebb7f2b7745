//! The tasks of a batch.

use proptest::prelude::*;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, KeptIn, Stage, Value};
use vatsketch::plan::{Tasks, tasks};

/// A soak that is long enough for oil to be planned.
const SOUR: (&str, Value) = ("pickling_h", Value::Number(2000.0));

/// Returns the design with some inputs changed; the amounts are invented.
fn design(changes: &[(&str, Value)]) -> Design {
    let mut design = Design::default();
    for (key, value) in changes {
        design.set(key, *value).unwrap();
    }
    design
}

fn made(changes: &[(&str, Value)]) -> (Batch, Tasks) {
    let batch = batch(&design(changes)).unwrap();
    let tasks = tasks(&batch);
    (batch, tasks)
}

fn keys(tasks: &Tasks) -> Vec<&str> {
    tasks.all.iter().map(|task| task.key.as_str()).collect()
}

/// Returns minutes from the start of one task to that of another, with every gap as usual.
fn usual_min(tasks: &Tasks, from: &str, to: &str) -> f64 {
    let (from, to) = (tasks.position(from).unwrap(), tasks.position(to).unwrap());
    tasks.all[from..to].iter().map(|task| task.handling.then.usual_from_min as f64).sum()
}

fn hands_min(tasks: &Tasks, key: &str) -> i64 {
    tasks.all[tasks.position(key).unwrap()].handling.hands_min
}

#[test]
fn the_tasks_stand_in_the_order_of_the_trade() {
    // Small trays: cheeses on one tray are not swapped.
    let trays = ("tray_width_mm", Value::Number(160.0));
    let (batch, tasks) = made(&[("kept_in", Value::Choice("oil")), ("keeping_days", Value::Number(11.0)), trays, SOUR]);
    let turns = batch.design.draining.turn_count;
    let mut wanted: Vec<String> = ["sanitise", "measure", "warm", "calcium", "rennet"].map(str::to_owned).into();
    wanted.extend((1..batch.vat.done().unwrap().tests).map(|test| format!("test_{test}")));
    wanted.extend(["cut", "ladle"].map(str::to_owned));
    wanted.extend((1..=turns).map(|turn| format!("turn_{turn}")));
    wanted.extend(["unmould", "swap", "weigh", "vinegar", "sour", "rest", "roll_1", "roll_2"].map(str::to_owned));
    assert_eq!(keys(&tasks), wanted);
    assert_eq!(tasks.until_finished, tasks.position("rest").unwrap());
    assert_eq!(tasks.ends_before, None);
}

/// A culture goes in on the way to the rennet, and is checked with a meter six hours later; what is printed names only tasks that there are.
#[test]
fn a_soured_vat_has_its_culture_its_ripening_and_its_meter() {
    let culture = ("soured_by", Value::Choice("culture"));
    let (batch, soured) = made(&[culture]);
    let at = |key: &str| soured.position(key).unwrap_or_else(|| panic!("{key} is missing: {:?}", keys(&soured)));
    assert!(at("warm") < at("calcium") && at("calcium") < at("culture") && at("culture") < at("warm_on"));
    assert!(at("warm_on") < at("rennet") && at("ladle") < at("unmould"));
    let near = |got: f64, want: f64, by: f64| assert!((got - want).abs() <= by, "{got} for {want}");
    near(usual_min(&soured, "warm", "rennet"), batch.vat.done().unwrap().to_rennet_min, 1.5);
    near(usual_min(&soured, "culture", "warm_on"), 60.0 * batch.design.milk.ripening_h, 1.0);
    near(usual_min(&soured, "ladle", "unmould"), 60.0 * batch.draining.done().unwrap().draining_h, 1.5);
    let meter = vatsketch::plan::meter_task(&batch).unwrap();
    near(usual_min(&soured, "culture", &meter.task), 360.0, 31.0);
    assert!(soured.all[at("unmould")].handling.name.contains("measure the pH"));
    let ways: [&[(&str, Value)]; 6] = [
        &[culture, ("ripening_h", Value::Number(0.0))],
        &[culture, ("ripening_temperature_c", Value::Number(14.0)), ("ripening_h", Value::Number(8.0))],
        &[culture, ("ripening_temperature_c", Value::Number(35.0))],
        &[culture, ("calcium_dose_percent", Value::Number(0.0))],
        &[("soured_by", Value::Choice("acid"))],
        &[("soured_by", Value::Choice("lactone"))],
    ];
    for changes in ways {
        let (batch, tasks) = made(changes);
        assert!(batch.draining.done().is_some(), "{changes:?}: {:?}", batch.ending(Stage::Vat).why_not());
        for step in vatsketch::report::plan(&batch).steps {
            for time in step.times {
                assert!(tasks.position(&time.task).is_some(), "{changes:?}: {} is no task", time.task);
            }
        }
    }
    assert!(vatsketch::plan::meter_task(&made(&[]).0).is_none());
}

/// Heat, hold and cool stand before anything is stirred in, and take together what the stage calculates; paper names the same tasks.
#[test]
fn raw_milk_has_its_heat_step_before_it_is_warmed() {
    let raw = [("milk_treatment", Value::Choice("raw")), ("pasteurised_in_vat", Value::Switch(true))];
    let cold = [("cooling_water_l", Value::Number(100.0)), ("cooling_water_temperature_c", Value::Number(1.0))];
    let culture = ("soured_by", Value::Choice("culture"));
    let acid = ("soured_by", Value::Choice("acid"));
    let ways: [&[(&str, Value)]; 7] = [
        &[],
        &[("pasteurising_temperature_c", Value::Number(72.0)), ("pasteurising_bath_temperature_c", Value::Number(80.0))],
        &[("calcium_dose_percent", Value::Number(0.0))],
        &[culture],
        &[culture, ("ripening_h", Value::Number(0.0))],
        &[acid],
        &[acid, ("calcium_temperature_c", Value::Number(8.0))],
    ];
    for more in ways {
        let changes: Vec<_> = raw.iter().chain(&cold).chain(more).copied().collect();
        let (batch, tasks) = made(&changes);
        let step =
            batch.vat.done().unwrap_or_else(|| panic!("{more:?}: {:?}", batch.ending(Stage::Vat).why_not())).heat_step.unwrap();
        let at = |key: &str| tasks.position(key).unwrap_or_else(|| panic!("{key} is missing: {:?}", keys(&tasks)));
        assert_eq!(
            (at("measure") + 1, at("pasteurise") + 1, at("hold") + 1),
            (at("pasteurise"), at("hold"), at("cool")),
            "{more:?}"
        );
        let next = tasks.all[at("cool") + 1].key.clone();
        let whole = usual_min(&tasks, "pasteurise", &next);
        assert!((whole - step.cooled_min).abs() <= 0.5, "{more:?}: {whole} for {}", step.cooled_min);
        let acid_in = tasks.all.iter().filter(|task| task.handling.name.contains("acid"));
        let acid_keys: Vec<_> = acid_in.map(|task| task.key.clone()).collect();
        assert_eq!(acid_keys, if more.contains(&acid) { vec![next] } else { Vec::new() }, "{more:?}");
        for key in ["pasteurise", "hold", "cool"] {
            // Nobody may leave the pot.
            assert_eq!(hands_min(&tasks, key), tasks.all[at(key)].handling.then.usual_from_min, "{key}");
        }
        // The bath is hot from the hold; it is brought to the milk before the pot goes back.
        let bath = format!("bring the bath to {:.1} °C", step.cooled_c);
        assert!(tasks.all[at("cool")].what.contains(&bath), "{}", tasks.all[at("cool")].what);
        // Milk that has cooled to more than the calcium wants is not warmed for it.
        if let Some(calcium) = tasks.position("calcium") {
            let warms = more.contains(&acid);
            assert_eq!(
                tasks.all[calcium].handling.name.contains("warming"),
                warms,
                "{more:?}: {}",
                tasks.all[calcium].handling.name
            );
        }
        assert!(tasks.all.iter().filter(|task| task.key == "warm").all(|task| task.handling.then.usual_from_min > 0), "{more:?}");
        let plan = vatsketch::report::plan(&batch);
        for time in plan.steps.iter().flat_map(|step| &step.times) {
            assert!(tasks.position(&time.task).is_some(), "{more:?}: {} is no task", time.task);
        }
        let verbs: Vec<_> = plan.steps.iter().map(|step| step.verb).collect();
        let heat = verbs.iter().position(|verb| *verb == "Heat").unwrap();
        assert_eq!(verbs[heat..heat + 3], ["Heat", "Keep", "Cool"], "{more:?}");
        let hold = &plan.steps[heat + 1];
        assert!(hold.if_off.contains("raw milk still") && hold.what.contains("coldest place") && !hold.write_down.is_empty());
        assert_eq!(plan.steps[heat].cautions.first().map(|caution| caution.key), Some("pasteurised_in_vat"));
    }
}

/// The times are those of the stages, each rounded to a minute.
#[test]
fn the_usual_times_between_tasks_are_those_that_the_batch_worked_out() {
    let (batch, tasks) = made(&[]);
    let (vat, drained) = (batch.vat.done().unwrap(), batch.draining.done().unwrap());
    let near = |got: f64, want: f64| assert!((got - want).abs() <= 1.5, "{got} for {want}");
    near(usual_min(&tasks, "warm", "rennet"), vat.to_rennet_min);
    near(usual_min(&tasks, "warm", "calcium"), vat.to_calcium_min);
    near(usual_min(&tasks, "rennet", "cut"), vat.cut_min);
    near(usual_min(&tasks, "warm", "ladle"), vat.to_ladle_min);
    near(usual_min(&tasks, "ladle", "turn_1"), 60.0 * drained.turns_h[0]);
    near(usual_min(&tasks, "ladle", "unmould"), 60.0 * drained.draining_h);
    near(usual_min(&tasks, "unmould", "weigh"), 60.0 * batch.design.drying.drying_h);
    near(usual_min(&tasks, "vinegar", "sour"), 60.0 * batch.design.pickling.pickling_h);
}

#[test]
fn more_power_shortens_the_warming_and_more_rennet_the_wait_for_the_cut() {
    let long = |changes: &[(&str, Value)], from, to| usual_min(&made(changes).1, from, to);
    let power = |watt| long(&[("heater_power_w", Value::Number(watt))], "warm", "rennet");
    assert!(power(1800.0) < power(700.0));
    let rennet =
        |dose| long(&[("rennet_dose_imcu_kg", Value::Number(dose)), ("first_test_min", Value::Number(15.0))], "rennet", "cut");
    assert!(rennet(80.0) < rennet(25.0));
}

#[test]
fn twice_the_cheeses_take_more_hands_at_every_task_that_touches_each_of_them() {
    let (_, few) = made(&[("mould_count", Value::Number(12.0))]);
    let (_, many) = made(&[("mould_count", Value::Number(24.0))]);
    for key in ["ladle", "turn_1", "turn_5", "unmould", "vinegar"] {
        assert!(hands_min(&many, key) > hands_min(&few, key), "{key}");
    }
    assert_eq!(hands_min(&many, "cut"), hands_min(&few, "cut"));
    // Salt takes hands as well.
    assert!(hands_min(&few, "turn_1") > hands_min(&few, "turn_5"));
}

#[test]
fn as_many_turns_are_salted_as_are_chosen() {
    let (_, tasks) = made(&[("salted_turns", Value::Number(3.0))]);
    let salted: Vec<&str> = tasks.all.iter().filter(|task| task.stage == Stage::Salting).map(|task| task.key.as_str()).collect();
    assert_eq!(salted, ["turn_1", "turn_2", "turn_3"]);
    let (_, without) = made(&[("salt_percent", Value::Number(0.0))]);
    assert!(without.all.iter().all(|task| task.stage != Stage::Salting));
}

#[test]
fn what_is_not_done_makes_no_task() {
    let (_, bare) = made(&[
        ("calcium_dose_percent", Value::Number(0.0)),
        ("turn_count", Value::Number(0.0)),
        ("salt_percent", Value::Number(0.0)),
        ("drying_h", Value::Number(0.0)),
        ("pickled", Value::Switch(false)),
        ("kept_in", Value::Choice("bare")),
        ("first_test_min", Value::Number(240.0)),
    ]);
    assert_eq!(keys(&bare), ["sanitise", "measure", "warm", "rennet", "cut", "ladle", "unmould"]);
    let (_, plain) = made(&[("tray_swap", Value::Switch(false))]);
    assert_eq!(plain.position("swap"), None);
    // Without vinegar it is not sour, so it does not go under oil either.
    let (_, oil) = made(&[("pickled", Value::Switch(false)), ("kept_in", Value::Choice("oil"))]);
    assert!(["oil", "vinegar", "sour"].into_iter().all(|key| oil.position(key).is_none()));
}

/// Common practice, no source: the jar is rolled every few days; here every four to six.
#[test]
fn a_jar_under_oil_is_rolled_every_few_days_and_one_under_vinegar_is_not() {
    let rolls = |kept_in: KeptIn, days: f64| {
        let (_, tasks) = made(&[("kept_in", Value::Choice(kept_in.key())), ("keeping_days", Value::Number(days)), SOUR]);
        tasks.all.iter().filter(|task| task.key.starts_with("roll_")).count()
    };
    assert_eq!(rolls(KeptIn::Oil, 21.0), 4);
    assert_eq!(rolls(KeptIn::Oil, 3.0), 0);
    assert_eq!(rolls(KeptIn::Vinegar, 21.0), 0);
}

#[test]
fn a_stage_that_fails_ends_the_tasks_before_it_and_is_named() {
    let (batch, none) = made(&[("fat_target_percent", Value::Number(12.0)), ("cream_strength_percent", Value::Number(10.0))]);
    assert!(batch.milk.done().is_none());
    assert_eq!((none.all.len(), none.ends_before), (0, Some(Stage::Milk)));
    let (_, some) = made(&[("mould_count", Value::Number(1.0))]);
    assert_eq!((some.all.last().unwrap().key.as_str(), some.ends_before), ("cut", Some(Stage::Draining)));
}

/// A cheese that still loses fast at the end gives less time than one that hardly loses any more.
#[test]
fn drying_gives_by_the_hours_in_which_the_loss_hardly_changes() {
    let gives_share = |hours: f64| {
        let (_, tasks) = made(&[("drying_h", Value::Number(hours)), ("tray_swap", Value::Switch(false))]);
        let gap = tasks.all[tasks.position("unmould").unwrap()].handling.then;
        ((gap.usual_from_min - gap.least_min) as f64 / 60.0, hours)
    };
    let (early, late) = (gives_share(10.0), gives_share(60.0));
    assert!(early.0 > 0.0 && early.0 < late.0, "{early:?} {late:?}");
    assert!(early.0 <= 0.25 * early.1 && late.0 <= 0.25 * late.1);
}

#[test]
fn hands_that_take_longer_than_the_gap_push_the_next_task_on_and_say_so() {
    let (_, tasks) = made(&[
        ("mould_count", Value::Number(150.0)),
        ("mould_diameter_mm", Value::Number(30.0)),
        ("turn_gap_h", Value::Number(0.5)),
    ]);
    let ladle = &tasks.all[tasks.position("ladle").unwrap()];
    assert!(ladle.handling.then.least_min >= ladle.handling.hands_min);
    assert!(ladle.note.as_ref().unwrap().contains("Ladle"), "{ladle:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn of_any_batch_no_task_begins_before_the_hands_are_free_and_every_key_stands_once(
        milk_l in 1.0_f64..40.0, moulds in 1_u32..80, turns in 0_u32..12, gap in 1.0_f64..12.0, drying_h in 0.0_f64..90.0, oil in any::<bool>(),
    ) {
        let (_, tasks) = made(&[
            ("milk_l", Value::Number(milk_l)),
            ("mould_count", Value::Number(f64::from(moulds))),
            ("turn_count", Value::Number(f64::from(turns))),
            ("turn_gap_h", Value::Number(gap)),
            ("drying_h", Value::Number(drying_h)),
            ("kept_in", Value::Choice(if oil { "oil" } else { "vinegar" })),
        ]);
        for task in &tasks.all[..tasks.all.len().saturating_sub(1)] {
            prop_assert!(task.handling.hands_min <= task.handling.then.least_min, "{task:?}");
        }
        let mut keys = keys(&tasks);
        keys.sort_unstable();
        let count = keys.len();
        keys.dedup();
        prop_assert_eq!(keys.len(), count);
    }
}
