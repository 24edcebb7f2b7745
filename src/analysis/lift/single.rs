//! One choice moved alone, as little as lifts a warning.

use super::causes::{Toward, Way};
use super::grid::Grid;
use super::sets::LEAST_LEFT;
use super::trial::{Trial, Trials};
use crate::design::{Design, Field, Kind, Value};

/// Parts of the way to the end of a range at which a number is looked at, the nearest first: what is lifted at the end may fail a stage, or
/// come back.
const PARTS: [u32; 4] = [16, 4, 2, 1];

/// Returns the design in which the choice, moved as little as lifts the warning, has lifted it; nothing if it lifts it nowhere that was seen.
///
/// # Arguments
/// * `field`, `way`: the choice and how it is moved
/// * `bound`: the greatest share of its range that a number is moved by
pub(super) fn moved_alone(trials: &Trials, field: &Field, way: Way, bound: f64) -> Option<Trial> {
    match way {
        Way::Less(_) => number(trials, field, |start| Grid::toward(field, start, Toward::Less), bound),
        Way::More(_) => number(trials, field, |start| Grid::toward(field, start, Toward::More), bound),
        Way::Shorter(_) => number(trials, field, |start| Grid::up_to(field, start, LEAST_LEFT.value * start), bound),
        Way::Other(_) => another(trials, field),
    }
}

/// Returns a design with one choice at another value, judged again.
fn judged(trials: &Trials, field: &Field, value: Value) -> Option<Trial> {
    let mut design: Design = trials.batch.design.clone();
    field.set(&mut design, value).ok()?;
    trials.of_design(&design)
}

/// Returns the best other value of a list: one that brings no serious warning, and of those the one that leaves fewest.
fn another(trials: &Trials, field: &Field) -> Option<Trial> {
    let now = field.get(&trials.batch.design);
    let values: Vec<Value> = match (field.kind, now) {
        (Kind::Choice(choices), _) => choices.iter().map(|choice| Value::Choice(choice.key)).collect(),
        (Kind::Switch, Value::Switch(on)) => vec![Value::Switch(!on)],
        _ => Vec::new(),
    };
    let others = values.into_iter().filter(|value| *value != now);
    others.filter_map(|value| judged(trials, field, value)).min_by_key(Trial::gravity)
}

/// Returns a number moved as little as lifts the warning: without a serious warning that comes with it, if there is such a value.
///
/// # Arguments
/// * `grid`: the values that it may take, from where it is
fn number(trials: &Trials, field: &Field, grid: impl Fn(f64) -> Option<Grid>, bound: f64) -> Option<Trial> {
    let Value::Number(start) = field.get(&trials.batch.design) else { return None };
    let grid = grid(start)?;
    let at = |steps: u32| judged(trials, field, Value::Number(grid.at(steps)));
    let most = grid.steps_within(bound);
    let mut from = 0;
    let mut lifted: Option<(u32, u32, Trial)> = None;
    for steps in PARTS.map(|part| most.div_ceil(part)) {
        if steps == from {
            continue;
        }
        match at(steps) {
            Some(trial) if trial.is_clean() => {
                lifted = Some((from, steps, trial));
                break;
            }
            Some(trial) if lifted.is_none() => lifted = Some((from, steps, trial)),
            Some(_) | None => {}
        }
        from = steps;
    }
    let (from, to, trial) = lifted?;
    let clean = trial.is_clean();
    let (steps, trial) = narrowed((from, to), trial, |steps| at(steps).filter(|trial| trial.is_clean() || !clean));
    // On the edge of a knife nothing is lifted: one step further it must be so too.
    let stays = steps == grid.steps() || at(steps + 1).is_some();
    stays.then_some(trial)
}

/// Returns the fewest steps at which something is found, and what is found there.
///
/// # Arguments
/// * `from`, `to`: steps at which nothing and at which something is found
/// * `found`: what was found there
pub(super) fn narrowed((mut from, mut to): (u32, u32), mut found: Trial, at: impl Fn(u32) -> Option<Trial>) -> (u32, Trial) {
    while to - from > 1 {
        let middle = from + (to - from) / 2;
        match at(middle) {
            Some(trial) => (to, found) = (middle, trial),
            None => from = middle,
        }
    }
    (to, found)
}
