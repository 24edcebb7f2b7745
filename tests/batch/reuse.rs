//! Stages whose inputs did not change are taken over, and nothing else is.

use vatsketch::batch::{batch, batch_after};
use vatsketch::design::{Design, Kind, Stage, Value, fields};

/// Returns another value that the input may have.
fn another(kind: Kind, now: Value) -> Value {
    match (kind, now) {
        (Kind::Number { least, most, step, .. }, Value::Number(number)) => {
            Value::Number(if number + step <= most { number + step } else { (number - step).max(least) })
        }
        (Kind::Choice(choices), Value::Choice(key)) => Value::Choice(choices.iter().find(|choice| choice.key != key).unwrap().key),
        (_, Value::Switch(on)) => Value::Switch(!on),
        _ => panic!("a value of another kind"),
    }
}

#[test]
fn a_batch_with_stages_taken_over_is_the_batch_worked_out_anew() {
    let design = Design::default();
    let before = batch(&design).unwrap();
    for field in fields() {
        let mut changed = design.clone();
        field.set(&mut changed, another(field.kind, field.get(&design))).unwrap();
        let (after, anew) = batch_after(&changed, Some(&before)).unwrap();
        assert!(after == batch(&changed).unwrap(), "{}", field.key);
        // The drip's end moisture is the one choice that an earlier stage looks ahead to.
        let first = if field.key == "drip_end_moisture_percent" { Stage::Vat } else { field.stage };
        assert!(anew.iter().all(|stage| *stage >= first), "{}: {anew:?}", field.key);
    }
}

#[test]
fn a_change_at_the_jar_leaves_everything_before_it_alone() {
    let before = batch(&Design::default()).unwrap();
    let anew = |change: &dyn Fn(&mut Design)| {
        let mut design = before.design.clone();
        change(&mut design);
        batch_after(&design, Some(&before)).unwrap().1
    };
    assert_eq!(anew(&|design| design.pickling.acid_g_per_100ml = 5.5), [Stage::Pickling, Stage::Keeping]);
    assert_eq!(anew(&|design| design.keeping.keeping_days = 5.0), [Stage::Keeping]);
    assert_eq!(anew(&|design| design.drying.drying_h = 20.0), [Stage::Drying, Stage::Pickling, Stage::Keeping]);
}

/// A choice without effect on what comes after stops where it stands: how the pepper was treated moves no cheese.
#[test]
fn what_comes_out_as_before_is_passed_on_as_before() {
    let before = batch(&Design::default()).unwrap();
    let mut design = before.design.clone();
    design.salting.pepper_treated = !design.salting.pepper_treated;
    let (_, anew) = batch_after(&design, Some(&before)).unwrap();
    assert_eq!(anew, [Stage::Salting, Stage::Keeping]);
}

#[test]
fn a_failed_stage_and_what_waits_for_it_are_worked_out_when_it_can_be() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let failed = batch(&design).unwrap();
    assert!(failed.drying.done().is_none());
    let (corrected, anew) = batch_after(&Design::default(), Some(&failed)).unwrap();
    assert_eq!(anew, [Stage::Draining, Stage::Salting, Stage::Drying, Stage::Pickling, Stage::Keeping]);
    assert!(corrected == batch(&Design::default()).unwrap());
}
