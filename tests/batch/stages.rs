//! A batch never fails as a whole.

use vatsketch::analysis::summary;
use vatsketch::batch::{Progress, batch};
use vatsketch::caution::cautions;
use vatsketch::curve::{CurveKey, curve, run, table};
use vatsketch::design::{Design, Stage, Value};
use vatsketch::figure::figures;

fn with(settings: &[(&str, Value)]) -> Design {
    let mut design = Design::default();
    for (key, value) in settings {
        design.set(key, *value).unwrap();
    }
    design
}

#[test]
fn the_default_is_worked_out_to_the_end() {
    let batch = batch(&Design::default()).unwrap();
    assert!(batch.drying.done().is_some());
    assert_eq!(batch.balance.stages.len(), 7);
    let summary = summary(&batch);
    assert_eq!(
        (summary.cheese_count, summary.cautions.iter().sum::<usize>()),
        (Some(12), cautions(&batch).iter().filter(|caution| !caution.always).count())
    );
}

#[test]
fn a_stage_that_fails_leaves_the_earlier_ones_and_stops_the_later() {
    let batch = batch(&with(&[("mould_count", Value::Number(1.0))])).unwrap();
    assert!(batch.milk.done().is_some() && batch.vat.done().is_some());
    assert!(batch.draining.failed().unwrap().to_string().contains("use at least"));
    assert_eq!(batch.salting, Progress::NotReached { waits_for: Stage::Draining });
    assert_eq!(batch.drying, Progress::NotReached { waits_for: Stage::Draining });
    assert!(figures(&batch).iter().all(|figure| figure.stage <= Stage::Vat));
    assert_eq!(batch.balance.stages.len(), 2);
    assert!(batch.balance.greatest_relative_residual() < 1e-9);
    let summary = summary(&batch);
    assert_eq!((summary.cheese_count, summary.dried_cheese_g, summary.end), (None, None, None));
}

#[test]
fn the_advice_of_a_refusal_works() {
    let first = batch(&with(&[("mould_count", Value::Number(1.0))])).unwrap();
    let Some(vatsketch::process::StageError::Draining(vatsketch::process::DrainingError::TooMuchCurd { moulds_wanted, .. })) =
        first.draining.failed()
    else {
        panic!("one mould must not do")
    };
    assert!(batch(&with(&[("mould_count", Value::Number(f64::from(*moulds_wanted)))])).unwrap().draining.done().is_some());
    assert!(batch(&with(&[("mould_count", Value::Number(f64::from(moulds_wanted - 1)))])).unwrap().draining.failed().is_some());
}

#[test]
fn figures_of_stages_that_were_not_worked_out_are_empty_and_say_why() {
    let batch = batch(&with(&[("mould_count", Value::Number(1.0))])).unwrap();
    assert!(curve(&batch, CurveKey::Warming).empty_because.is_none());
    let drip = curve(&batch, CurveKey::WheyDrip);
    assert!(drip.series.is_empty() && drip.empty_because.unwrap().contains("does not fit"));
    for key in [CurveKey::DryingLoss, CurveKey::Moisture, CurveKey::WaterActivity] {
        let empty = curve(&batch, key);
        assert!(empty.series.is_empty() && table(&empty, 8).rows.is_empty(), "{key:?}");
        assert!(empty.empty_because.as_ref().unwrap().contains("Moulds and draining"), "{key:?}");
        assert!(empty.in_words.contains("no curve"), "{key:?}");
    }
    let stations = run(&batch).stations;
    assert_eq!(stations.len(), Stage::ALL.len());
    assert!(stations[1].stopped_because.is_none() && stations[1].goes_on_kg.is_some());
    assert!(stations[2].stopped_because.is_some() && stations[4].stopped_because.is_some() && stations[4].goes_on_kg.is_none());
}

#[test]
fn a_milk_that_cannot_be_made_stops_everything_and_still_warns() {
    let design = with(&[
        ("fat_target_percent", Value::Number(12.0)),
        ("cream_strength_percent", Value::Number(10.0)),
        ("milk_treatment", Value::Choice("raw")),
    ]);
    let batch = batch(&design).unwrap();
    assert!(batch.milk.failed().unwrap().to_string().contains("12.0 %"));
    assert_eq!(batch.vat, Progress::NotReached { waits_for: Stage::Milk });
    assert!(figures(&batch).is_empty());
    for key in ["no_acid", "raw_milk"] {
        assert!(cautions(&batch).iter().any(|caution| caution.key == key), "{key}");
    }
}

/// Every list over the stages is this one method: done, failed with why, or waiting for the stage that failed.
#[test]
fn each_stage_says_how_it_ended() {
    let whole = batch(&Design::default()).unwrap();
    assert!(Stage::ALL.into_iter().all(|stage| whole.ending(stage).status() == "done" && whole.ending(stage).why_not().is_none()));
    assert_eq!(whole.first_missing(), None);
    let stopped = batch(&with(&[("mould_count", Value::Number(1.0))])).unwrap();
    assert_eq!(Stage::ALL.map(|stage| stopped.ending(stage).status())[1..4], ["done", "failed", "not_reached"]);
    assert_eq!(stopped.ending(Stage::Draining).failed(), stopped.draining.failed());
    assert_eq!(stopped.first_missing(), Some(Stage::Draining));
    let waits = "waits for “Moulds and draining”";
    assert_eq!(stopped.ending(Stage::Keeping).why_not().as_deref(), Some(waits));
    let station = &run(&stopped).stations[4];
    assert_eq!((station.stage, station.stopped_because.as_deref()), (Stage::Drying, Some(waits)));
    assert_eq!(curve(&stopped, CurveKey::DryingLoss).empty_because.as_deref(), Some(waits));
}
