//! A few choices moved together, each as little as lifts a warning.

use super::grid::Grid;
use super::sets::{Reach, Set};
use super::single::narrowed;
use super::trial::{Trial, Trials};
use crate::design::{Design, Field, Value, field};
use std::collections::BTreeSet;

/// Shares of the way to their farthest values at which the numbers of a set are looked at: more of everything is not always better.
const SHARES: [f64; 4] = [0.25, 0.5, 0.75, 1.0];

/// Returns the design in which a set of choices has lifted the warning, each moved back as far as that leaves it so; nothing if they do not.
/// Where the whole set lifts other serious warnings too, they are not let come back.
pub(super) fn moved_together(trials: &Trials, set: &Set, pins: &BTreeSet<&'static str>) -> Option<Trial> {
    let now = &trials.batch.design;
    let taken = taken(now, set, pins)?;
    // Of equals the first, which moves the least.
    let looked_at = SHARES.iter().filter_map(|share| trials.of_design(&moved(&taken, set, pins, *share)));
    let mut best = looked_at.min_by_key(|trial| (!trial.clean, trial.serious))?;
    for number in set.moved {
        best = back(trials, number, best)?;
    }
    for (key, _) in set.taken.iter().rev() {
        let was = field(key).ok()?.get(now);
        best = with(&best.batch.design, key, was).and_then(|design| as_good(trials, &design, &best)).unwrap_or(best);
    }
    Some(best)
}

/// Returns a design with the values that a set takes of lists; nothing if one of them is pinned at another.
fn taken(now: &Design, set: &Set, pins: &BTreeSet<&'static str>) -> Option<Design> {
    set.taken.iter().try_fold(now.clone(), |design, (key, value)| {
        let field = field(key).ok()?;
        if field.get(&design) == *value {
            return Some(design);
        }
        if pins.contains(key) { None } else { with(&design, key, *value) }
    })
}

/// Returns a design with the numbers of a set moved by a share of the way to their farthest values.
fn moved(taken: &Design, set: &Set, pins: &BTreeSet<&'static str>, share: f64) -> Design {
    set.moved.iter().filter(|number| !pins.contains(number.key)).fold(taken.clone(), |design, number| {
        let to = grid(number, &design).map(|(field, grid)| (field, grid.at((share * f64::from(grid.steps())).ceil() as u32)));
        to.and_then(|(field, to)| with(&design, field.key, Value::Number(to))).unwrap_or(design)
    })
}

/// Returns a number of a set that the design uses, and its values on the way to the farthest, if that lies in its own direction.
fn grid(number: &Reach, design: &Design) -> Option<(&'static Field, Grid)> {
    let field = field(number.key).ok().filter(|field| (field.used)(design))?;
    let Value::Number(start) = field.get(design) else { return None };
    let farthest = (number.farthest)(design);
    // What is beyond the farthest already is left there; only the temperatures of a jar are brought down.
    let cools = COOLED.contains(&number.key);
    if cools == (farthest > start) {
        return None;
    }
    Some((field, Grid::up_to(field, start, farthest)?))
}

/// The numbers of sets that are made less.
const COOLED: [&str; 2] = ["keeping_temperature_c", "pickling_temperature_c"];

/// Returns the best design so far with one number moved back as far as it stays as good.
fn back(trials: &Trials, number: &Reach, best: Trial) -> Option<Trial> {
    let field = field(number.key).ok()?;
    let (Value::Number(was), Value::Number(is)) = (field.get(&trials.batch.design), field.get(&best.batch.design)) else {
        return None;
    };
    if was.to_bits() == is.to_bits() {
        return Some(best);
    }
    let grid = Grid::up_to(field, was, is)?;
    let (clean, serious) = (best.clean, best.serious);
    let design = best.batch.design.clone();
    let at = |steps: u32| {
        let trial = trials.of_design(&with(&design, field.key, Value::Number(grid.at(steps)))?)?;
        (trial.serious <= serious && trial.clean >= clean).then_some(trial)
    };
    if let Some(trial) = at(0) {
        return Some(trial);
    }
    let (steps, trial) = narrowed((0, grid.steps()), best, at);
    // On the edge of a knife nothing is lifted.
    let stays = steps == grid.steps() || at(steps + 1).is_some();
    if stays { Some(trial) } else { at(grid.steps()) }
}

/// Returns a changed design judged again, if it is as good as the best so far.
fn as_good(trials: &Trials, design: &Design, best: &Trial) -> Option<Trial> {
    let same = *design == best.batch.design;
    let trial = if same { None } else { trials.of_design(design) };
    trial.filter(|trial| trial.serious <= best.serious && trial.clean >= best.clean)
}

fn with(design: &Design, key: &str, value: Value) -> Option<Design> {
    let mut design = design.clone();
    design.set(key, value).ok()?;
    Some(design)
}
