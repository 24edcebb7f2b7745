//! What a serious warning forbids: the plan ends at the last step that stands.

use super::cautions::{CASES, with};
use std::collections::BTreeSet;
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{FORBIDS, ForbiddenStep, PlanEnd, Severity, SourAfter, cautions, forbidden_steps, plan_end};
use vatsketch::design::{Good, KeptIn};
use vatsketch::plan::{kept_plan, needs, tasks};
use vatsketch::report::plan;
use vatsketch::session::EXAMPLES;

/// Under oil, and taken out of the vinegar after a day.
const OIL_TOO_SOON: [&str; 3] = ["kept_in=oil", "pickling_h=24", "keeping_days=3"];

fn oil_tasks(batch: &Batch) -> Vec<String> {
    let is_oil = |key: &str| key == "oil" || key == "rest" || key.starts_with("roll_");
    let oil = |name: &str| name.contains("oil");
    tasks(batch).all.into_iter().filter(|task| is_oil(&task.key) || oil(&task.handling.name)).map(|task| task.key).collect()
}

#[test]
fn every_serious_warning_stands_in_the_table_once() {
    let table: BTreeSet<&str> = FORBIDS.iter().map(|(key, _)| *key).collect();
    assert_eq!(table.len(), FORBIDS.len());
    let mut seen: BTreeSet<&str> = CASES.iter().filter(|case| case.1 == Severity::Stop).map(|case| case.0).collect();
    for example in EXAMPLES {
        let all = cautions(&batch(&example.design().unwrap()).unwrap());
        seen.extend(all.iter().filter(|caution| caution.severity == Severity::Stop).map(|caution| caution.key));
    }
    assert!(seen.is_subset(&table), "{:?}", seen.difference(&table));
}

/// "Do not put it under oil": no oil among the tasks, on the list or in the steps, no rolling, and what lets it go on.
#[test]
fn with_no_acid_there_is_no_oil_anywhere_in_the_plan() {
    let batch = with(&OIL_TOO_SOON);
    assert_eq!(
        forbidden_steps(&batch).first().map(|(step, caution)| (*step, caution.key)),
        Some((ForbiddenStep::Oil, "oil_before_acid"))
    );
    assert!(oil_tasks(&batch).is_empty(), "{:?}", oil_tasks(&batch));
    assert!(needs(&batch).iter().all(|need| need.good != Good::Oil));
    let paper = plan(&batch);
    assert!(paper.shopping.iter().all(|row| row.what != "Oil"));
    let last = paper.steps.last().unwrap();
    assert!(last.what.contains("The plan ends here: add no oil.") && last.what.contains("less than pH 4.2"), "{}", last.what);
    // The design keeps what was chosen.
    assert_eq!(batch.design.keeping.kept_in, KeptIn::Oil);
    let sour = with(&["kept_in=oil", "pickling_h=2000", "keeping_days=3"]);
    assert!(!oil_tasks(&sour).is_empty() && !kept_plan(&sour).without_oil);
}

/// Seven days in the cold without acid, the record of the rule.
#[test]
fn no_plan_keeps_a_moist_cheese_longer_than_rules_allow() {
    let bare = kept_plan(&with(&["pickled=no", "kept_in=bare", "keeping_days=365"]));
    assert_eq!((bare.keeping.keeping_days, bare.fewer_days), (7.0, true));
    // The soak counts: two days of it leave five, ten leave none.
    let after = |hours: &str| kept_plan(&with(&["pickled=yes", hours, "keeping_days=365", "vinegar_ml_per_g=0.5"]));
    assert_eq!((after("pickling_h=48").keeping.keeping_days, after("pickling_h=240").keeping.keeping_days), (5.0, 0.0));
    let last = plan(&with(&["pickled=yes", "pickling_h=240", "vinegar_ml_per_g=0.5"])).steps.last().unwrap().clone();
    assert!(last.lasts.is_none() && last.what.contains("The plan ends here: not sour"), "{}", last.what);
    let vinegar = kept_plan(&batch(&crate::example("first-vat")).unwrap());
    assert!(!vinegar.fewer_days && !vinegar.without_oil);
}

/// A soak is called finished where its slow cheese is sour too, and nowhere else.
#[test]
fn a_plan_is_finished_only_when_a_slow_cheese_is_sour() {
    let day = |settings: &[&str]| plan_end(&with(settings)).unwrap();
    let PlanEnd::NotSour { at_h, middle: SourAfter::Hours(middle_h), slow } = day(&["pickling_h=96"]) else { panic!("four days") };
    assert!(at_h < middle_h);
    match slow {
        SourAfter::Hours(slow_h) => assert!(slow_h > middle_h),
        SourAfter::Beyond(_) | SourAfter::Never => {}
    }
    assert!(matches!(day(&["pickling_h=96", "vinegar_ml_per_g=0.5"]), PlanEnd::NotSour { slow: SourAfter::Never, .. }));
    assert!(matches!(day(&["pickled=no"]), PlanEnd::WithoutVinegar { .. }));
    let sour = batch(&crate::example("first-vat")).unwrap();
    assert!(matches!(plan_end(&sour), Some(PlanEnd::Finished { .. })));
    assert!(plan_end(&with(&["mould_count=1"])).is_none());
}
