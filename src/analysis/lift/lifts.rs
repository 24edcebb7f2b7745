//! What lifts one warning: every choice that causes it alone, then a few together.

use super::causes::ways;
use super::cost::cost;
use super::lifted::{Change, Lift, Lifted, WhyNot};
use super::sets::{ANOTHER_VALUE, set_for};
use super::single::moved_alone;
use super::together::moved_together;
use super::trial::{Trial, Trials};
use crate::batch::Batch;
use crate::caution::{Caution, CautionKind, Severity};
use crate::design::{Design, Field, Kind, Value, field, fields};
use std::cmp::Ordering;
use std::collections::BTreeSet;

/// Most batches that are calculated for choices alone.
const MOST_TRIALS_ALONE: usize = 28;
/// Most batches that are calculated for choices together.
const MOST_TRIALS_TOGETHER: usize = 36;
/// Most lifts of one warning.
const MOST_LIFTS: usize = 2;

/// Returns what lifts a warning of a batch: the one or two choices that lift it when they are moved least, or a few together where one alone does
/// not or where that lifts more. A choice that is pinned or has no effect is left alone.
///
/// # Arguments
/// * `pins`: keys of choices that are left alone
/// * `warning`: one of the cautions of the batch
///
/// # Example
/// ```
/// use std::collections::BTreeSet;
/// use vatsketch::{analysis::lifts, batch::batch, caution::cautions, design::{Design, Value}};
/// let mut design = Design::default();
/// design.milk.calcium_dose_percent = 0.03;
/// let batch = batch(&design)?;
/// let warning = cautions(&batch).into_iter().find(|caution| caution.key == "calcium_above_limit").unwrap();
/// let lifted = lifts(&batch, &BTreeSet::new(), &warning);
/// let change = lifted.lifts[0].changes[0];
/// assert_eq!((change.field.key, change.to), ("calcium_dose_percent", Value::Number(0.02)));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn lifts(batch: &Batch, pins: &BTreeSet<&'static str>, warning: &Caution) -> Lifted {
    let mut lifted = Lifted { warning: warning.clone(), lifts: Vec::new(), tried: Vec::new(), pinned: Vec::new(), why_not: None };
    lifted.why_not = if warning.always {
        Some(WhyNot::AlwaysTrue)
    } else if batch.first_missing().is_some() && !matches!(warning.kind, CautionKind::Stopped(_)) {
        Some(WhyNot::StageFailed)
    } else {
        lifted.lifts = nearest(batch, pins, &mut lifted);
        let why_not = if lifted.tried.is_empty() { WhyNot::NothingToMove } else { WhyNot::OutOfReach };
        lifted.lifts.is_empty().then_some(why_not)
    };
    lifted
}

/// Returns the lifts of a warning, at most two; choices that were moved and those that are pinned are written down.
fn nearest(batch: &Batch, pins: &BTreeSet<&'static str>, lifted: &mut Lifted) -> Vec<Lift> {
    let warning = lifted.warning.clone();
    let trials = Trials::of(batch, &warning);
    let mut found = alone(&trials, pins, lifted);
    found.sort_by(nearer);
    let clean = found.iter().filter(|lift| lift.is_clean());
    let left = clean.map(|lift| lift.serious_left).min();
    // A few together are only looked for where one alone does not do, or where they may lift more.
    let set = set_for(&warning, &batch.design).filter(|_| left.is_none_or(|left| left > 0 && warning.severity == Severity::Stop));
    trials.allow(MOST_TRIALS_TOGETHER);
    let ways_together = set.map(|set| moved_together(&trials, set, pins)).unwrap_or_default();
    let together = ways_together.into_iter().map(|trial| lift(batch, trial)).min_by(nearer);
    let lifts_more = |lift: &Lift| left.is_none_or(|left| lift.serious_left < left && lift.is_clean());
    let together = together.filter(lifts_more);
    found.truncate(MOST_LIFTS - usize::from(together.is_some()));
    found.extend(together);
    found.sort_by(nearer);
    found
}

/// Returns the lifts by one choice alone.
fn alone(trials: &Trials, pins: &BTreeSet<&'static str>, lifted: &mut Lifted) -> Vec<Lift> {
    trials.allow(MOST_TRIALS_ALONE);
    let mut found: Vec<Lift> = Vec::new();
    for way in ways(trials.warning) {
        let key = way.key();
        let Some(field) = field(key).ok().filter(|field| (field.used)(&trials.batch.design)) else { continue };
        let asked = if pins.contains(key) { &mut lifted.pinned } else { &mut lifted.tried };
        if !asked.iter().any(|known| known.key == key) {
            asked.push(field);
        }
        if !pins.contains(key) {
            let trial = moved_alone(trials, field, way, bound(&found));
            found.extend(trial.map(|trial| lift(trials.batch, trial)));
        }
    }
    found
}

/// Compares lifts: those that bring serious warnings come last, before them those that leave a less grave one, else the nearest first.
fn nearer(one: &Lift, other: &Lift) -> Ordering {
    let gravity = |lift: &Lift| (lift.serious_brought(), lift.stays.is_some());
    gravity(one).cmp(&gravity(other)).then(one.moved.total_cmp(&other.moved))
}

/// Returns how far a choice need be moved at most: as far as the last of those that are kept.
fn bound(found: &[Lift]) -> f64 {
    let mut moved: Vec<f64> = found.iter().filter(|lift| lift.is_clean()).map(|lift| lift.moved).collect();
    moved.sort_by(f64::total_cmp);
    moved.get(MOST_LIFTS - 1).copied().unwrap_or(1.0)
}

/// Returns what a design in which a warning is lifted changes and costs.
fn lift(before: &Batch, trial: Trial) -> Lift {
    let changes = changes(&before.design, &trial.batch.design);
    Lift {
        moved: changes.iter().map(moved).sum(),
        cost: cost(before, &trial.batch),
        serious_left: trial.serious,
        stays: trial.stays,
        changes,
        batch: trial.batch,
    }
}

/// Returns the choices that differ and have an effect after the change.
fn changes(before: &Design, after: &Design) -> Vec<Change> {
    let differs = |field: &&'static Field| (field.used)(after) && field.get(before) != field.get(after);
    let change =
        |field: &'static Field| Change { field, from: field.get(before), was_used: (field.used)(before), to: field.get(after) };
    fields().filter(differs).map(change).collect()
}

/// Returns how far a choice is moved.
fn moved(change: &Change) -> f64 {
    match (change.field.kind, change.from, change.to) {
        (Kind::Number { least, most, .. }, Value::Number(from), Value::Number(to)) => (to - from).abs() / (most - least),
        _ => ANOTHER_VALUE.value,
    }
}
