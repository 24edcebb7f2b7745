//! The steps of a week: every task stands on paper, and nothing on paper is without its time.

use jiff::civil::{DateTime, date};
use jiff::tz::TimeZone;
use proptest::prelude::*;
use std::collections::BTreeSet;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Reached, Value, Wish};
use vatsketch::plan::{KitchenWeek, Now, kitchen_week};
use vatsketch::report::{Plan, StepTime, agenda, plan_at, week_plan};
use vatsketch::session::EXAMPLES;
use vatsketch::units::Units;
use vatsketch::words::alarm_words;

/// An invented Friday.
fn friday() -> DateTime {
    date(2031, 5, 9).at(8, 0, 0, 0)
}

fn now() -> Now {
    Now { at: date(2031, 5, 5).at(7, 0, 0, 0), zone: TimeZone::UTC }
}

fn timed(mut design: Design) -> (Batch, KitchenWeek) {
    design.week.wish = Wish::SoonAfter(friday());
    let batch = batch(&design).unwrap();
    let week = kitchen_week(&batch, &now()).unwrap().unwrap();
    (batch, week)
}

fn times(plan: &Plan) -> Vec<&StepTime> {
    plan.steps.iter().flat_map(|step| &step.times).collect()
}

/// Says what a plan owes the week that it was made of.
fn owes(plan: &Plan, week: &KitchenWeek) {
    let on_paper: BTreeSet<&str> = times(plan).iter().map(|time| time.task.as_str()).collect();
    let tasks: BTreeSet<&str> = week.tasks.iter().map(|task| task.key.as_str()).collect();
    assert_eq!(on_paper, tasks);
    for time in times(plan) {
        let task = week.tasks.iter().find(|task| task.key == time.task).unwrap();
        assert_eq!(time.clock, Some(task.start), "{time:?}");
    }
    let clocks: Vec<_> = plan.steps.iter().map(|step| step.times[0].clock).collect();
    assert!(clocks.is_sorted(), "{clocks:?}");
    // Each time is ticked once, and only what belongs to one task shares its time.
    let lines: usize = agenda(&plan.steps).iter().flat_map(|day| &day.lines).map(|line| line.times.len()).sum();
    assert_eq!(lines, times(plan).len());
}

#[test]
fn every_task_of_the_week_is_on_paper_and_nothing_on_paper_has_no_time() {
    for example in EXAMPLES {
        let (batch, week) = timed(example.design().unwrap());
        owes(&week_plan(&batch, Some(&week)), &week);
    }
}

#[test]
fn turns_tests_and_rollings_have_each_their_own_time() {
    let mut design = Design::default();
    design.set("kept_in", Value::Choice("oil")).unwrap();
    design.set("keeping_days", Value::Number(16.0)).unwrap();
    design.set("pickling_h", Value::Number(2000.0)).unwrap();
    let (batch, week) = timed(design);
    let plan = week_plan(&batch, Some(&week));
    let named = |name: &str| times(&plan).iter().filter(|time| time.name.starts_with(name)).count();
    assert_eq!(named("Turn "), batch.design.draining.turn_count as usize);
    assert_eq!(named("Test"), batch.vat.done().unwrap().tests as usize);
    // Sixteen days at five days from one rolling to the next: common practice, no source.
    assert_eq!(named("Roll "), 3);
    assert_eq!((named("Sanitise"), named("Last day"), named("Jars rest")), (1, 1, 1));
}

#[test]
fn there_is_a_day_over_the_steps_wherever_the_date_changes() {
    for example in EXAMPLES {
        let (batch, week) = timed(example.design().unwrap());
        let plan = week_plan(&batch, Some(&week));
        let days = agenda(&plan.steps);
        let dates: Vec<_> = days.iter().map(|day| day.date).collect();
        let mut wanted: Vec<_> = week.tasks.iter().map(|task| Some(task.start.date())).collect();
        // Rollings weeks apart stand together, each with its own date.
        wanted.dedup();
        let rolled = |date: &Option<_>| {
            week.tasks.iter().filter(|task| Some(task.start.date()) == *date).all(|task| task.key.starts_with("roll_"))
        };
        let wanted: Vec<_> = wanted.iter().filter(|date| !rolled(date)).collect();
        assert_eq!(dates.iter().filter(|date| !rolled(date)).collect::<Vec<_>>(), wanted, "{}", example.name);
        for day in days {
            let own =
                |line: &vatsketch::report::Line<'_>| line.step.by_date || line.times.iter().all(|time| time.day() == day.date);
            assert!(day.lines.iter().all(own), "{}: {day:?}", example.name);
        }
    }
}

#[test]
fn what_lies_behind_the_maker_is_not_on_the_paper_but_its_cautions_are() {
    let mut design = Design::default();
    design.set("milk_treatment", Value::Choice("raw")).unwrap();
    design.week.wish = Wish::StartAt(friday());
    design.week.reached = Some(Reached { task: "ladle".to_owned(), began: date(2031, 5, 9).at(11, 20, 0, 0) });
    let batch = batch(&design).unwrap();
    let now = Now { at: date(2031, 5, 9).at(11, 40, 0, 0), zone: TimeZone::UTC };
    let week = kitchen_week(&batch, &now).unwrap().unwrap();
    let plan = plan_at(&batch, &now);
    owes(&plan, &week);
    assert_eq!((plan.steps[0].verb, plan.steps[0].times[0].words().as_str()), ("Ladle", "11:20"));
    assert!(plan.before_all.iter().any(|caution| caution.key == "raw_milk"), "its step is done, its danger is not");
}

#[test]
fn a_week_that_cannot_be_is_said_and_the_plan_counts_its_times() {
    let mut design = Design::default();
    design.week.wish = Wish::FinishedBy(now().at);
    let made = batch(&design).unwrap();
    let plan = plan_at(&made, &now());
    assert!(plan.no_week.as_ref().is_some_and(|why| why.contains("at the earliest")), "{:?}", plan.no_week);
    assert!(plan.timing.is_none() && times(&plan).iter().all(|time| time.clock.is_none()));
    assert_eq!(Plan { no_week: None, ..plan }, vatsketch::report::plan(&made));
}

#[test]
fn no_wish_is_no_trouble() {
    let made = batch(&Design::default()).unwrap();
    assert_eq!(plan_at(&made, &now()), vatsketch::report::plan(&made));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(6))]
    #[test]
    fn any_vat_has_all_its_tasks_on_paper(
        milk_l in 1.0_f64..20.0,
        turns in 0_u32..8,
        drying_h in prop_oneof![Just(0.0), 1.0_f64..60.0],
        calcium_c in 3.0_f64..30.0,
        pickled: bool,
        oil: bool,
        days in 0.0_f64..40.0,
        calcium in prop_oneof![Just(0.0), 0.005_f64..0.02],
    ) {
        let mut design = Design::default();
        let numbers = [
            ("milk_l", milk_l), ("turn_count", f64::from(turns)), ("drying_h", drying_h), ("calcium_temperature_c", calcium_c),
            ("calcium_dose_percent", calcium), ("keeping_days", days),
        ];
        for (key, value) in numbers {
            design.set(key, Value::Number(value)).unwrap();
        }
        design.set("pickled", Value::Switch(pickled)).unwrap();
        design.set("kept_in", Value::Choice(if oil { "oil" } else { "bare" })).unwrap();
        let (batch, week) = timed(design);
        owes(&week_plan(&batch, Some(&week)), &week);
    }
}

#[test]
fn the_alarms_of_a_night_stand_first_among_what_the_week_costs_and_only_once() {
    let mut design = Design::default();
    design.set("turn_count", Value::Number(10.0)).unwrap();
    design.set("turn_gap_h", Value::Number(3.0)).unwrap();
    let (batch, week) = timed(design);
    assert!(week.wakes());
    let remarks = week_plan(&batch, Some(&week)).timing.unwrap().remarks;
    let alarms = alarm_words(&week, Units::METRIC).unwrap();
    assert_eq!(remarks[0].to_lowercase(), format!("{alarms}.").to_lowercase());
    assert!(remarks.iter().skip(1).all(|remark| !remark.contains("alarm")), "{remarks:?}");
}
