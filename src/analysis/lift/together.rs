//! A few choices moved together, each as little as lifts a warning.

use super::causes::Toward;
use super::grid::Grid;
use super::sets::{Reach, Set};
use super::single::narrowed;
use super::trial::{Trial, Trials};
use crate::design::{Design, Field, Value, field};
use std::collections::BTreeSet;

/// Shares of the way to their farthest values at which the numbers of a set are looked at: more of everything is not always better.
const SHARES: [f64; 4] = [0.25, 0.5, 0.75, 1.0];

/// Returns the designs in which a set of choices has lifted the warning, each choice moved back as far as that leaves it so: once in the order of
/// the set, once the other way round, since what is moved back last stays farthest away. None if the set does not lift it. Where the whole set
/// lifts other serious warnings too, they are not let come back.
pub(super) fn moved_together(trials: &Trials, set: &Set, pins: &BTreeSet<&'static str>) -> Vec<Trial> {
    let now = &trials.batch.design;
    let Some(taken) = taken(now, set, pins) else { return Vec::new() };
    // Of equals the first, which moves the least.
    let looked_at = SHARES.iter().filter_map(|share| trials.of_design(&moved(&taken, set, pins, *share)));
    let Some(best) = looked_at.min_by_key(Trial::gravity) else { return Vec::new() };
    let (mut forwards, mut backwards) = (best.clone(), best);
    for number in set.moved {
        forwards = back(trials, number, forwards);
    }
    for number in set.moved.iter().rev() {
        backwards = back(trials, number, backwards);
    }
    vec![forwards, backwards].into_iter().map(|best| lists_back(trials, set, best)).collect()
}

/// Returns a design with the lists of a set at the values that they had, as far as it stays as good.
fn lists_back(trials: &Trials, set: &Set, mut best: Trial) -> Trial {
    for (key, _) in set.taken.iter().rev() {
        let was = field(key).ok().map(|field| field.get(&trials.batch.design));
        let design = was.and_then(|was| with(&best.batch.design, key, was)).filter(|design| *design != best.batch.design);
        let trial = design.and_then(|design| trials.of_design(&design)).filter(|trial| trial.is_as_good_as(best.gravity()));
        best = trial.unwrap_or(best);
    }
    best
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
    let ahead = if number.toward == Toward::More { farthest > start } else { farthest < start };
    if !ahead {
        return None;
    }
    Some((field, Grid::up_to(field, start, farthest)?))
}

/// Returns the best design so far with one number moved back as far as it stays as good.
fn back(trials: &Trials, number: &Reach, best: Trial) -> Trial {
    let Ok(field) = field(number.key) else { return best };
    let (Value::Number(was), Value::Number(is)) = (field.get(&trials.batch.design), field.get(&best.batch.design)) else {
        return best;
    };
    let Some(grid) = Grid::up_to(field, was, is).filter(|grid| grid.steps() > 0) else { return best };
    let (gravity, design) = (best.gravity(), best.batch.design.clone());
    let at = |steps: u32| {
        let trial = trials.of_design(&with(&design, field.key, Value::Number(grid.at(steps)))?)?;
        trial.is_as_good_as(gravity).then_some(trial)
    };
    if let Some(trial) = at(0) {
        return trial;
    }
    let (steps, trial) = narrowed((0, grid.steps()), best.clone(), at);
    // On the edge of a knife nothing is lifted: one step further it must be so too.
    let stays = steps == grid.steps() || at(steps + 1).is_some();
    if stays { trial } else { best }
}

fn with(design: &Design, key: &str, value: Value) -> Option<Design> {
    let mut design = design.clone();
    design.set(key, value).ok()?;
    Some(design)
}
