//! Where a function of one choice comes to zero, though it may be flat, jump, turn round or have no value in places.

use super::{Bracket, brent};
use std::cell::RefCell;

/// Where and how closely to look.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Search {
    /// Least argument.
    pub least: f64,
    /// Greatest argument.
    pub most: f64,
    /// Where to begin; of several roots the one near it is taken.
    pub start: f64,
    /// The first step away from there; each further one is twice as wide.
    pub step: f64,
    /// Whether only whole arguments count.
    pub whole: bool,
    /// How far from zero still counts as zero.
    pub tolerance: f64,
}

/// What was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Sought {
    /// The function is zero here, to the tolerance.
    Met {
        /// The argument.
        at: f64,
        /// The function there.
        value: f64,
    },
    /// It is nowhere zero as far as was seen; here it comes nearest.
    Nearest {
        /// The argument.
        at: f64,
        /// The function there.
        value: f64,
    },
    /// It has no value anywhere.
    Nowhere,
}

/// Points of the even scan that follows when no step outwards met a root.
const SCAN_POINTS: u32 = 32;
/// Whole arguments that are tried one by one at most.
const MOST_WHOLE: f64 = 256.0;
/// Halvings that look for the edge of where the function has a value.
const EDGE_HALVINGS: usize = 12;
/// Steps that look for the point of a turn that comes nearest.
const TURN_STEPS: usize = 14;
/// A root is narrowed to this share of the tolerance, so that what is found is well inside.
const FINE: f64 = 0.02;
/// A root is narrowed to this share of the range at most: at a jump there is nothing finer to find.
const NARROWEST: f64 = 1e-9;

/// Returns where a function comes to zero, or where it comes nearest.
///
/// Steps outwards from the start, each twice as wide, until the sign changes, then [`brent()`]; if no root is met that way, an even scan,
/// and last a golden-section search about the best point, which finds where a function that turns round comes nearest.
///
/// # Arguments
/// * `function`: `None` where it has no value
/// * `search`: `least <= start <= most`, `step > 0`, `tolerance >= 0`
///
/// # Example
/// ```
/// use vatsketch::numeric::{seek, Search, Sought};
/// let search = Search { least: 0.0, most: 9.0, start: 1.0, step: 0.1, whole: false, tolerance: 1e-6 };
/// let Sought::Met { at, .. } = seek(&|x| Some(x * x - 2.0), &search) else { unreachable!() };
/// assert!((at * at - 2.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn seek(function: &dyn Fn(f64) -> Option<f64>, search: &Search) -> Sought {
    let probe = Probe { function, search, seen: RefCell::new(Vec::new()) };
    probe.at(search.start);
    for look in [Probe::outwards, Probe::scan, Probe::turn] {
        if probe.met() {
            break;
        }
        look(&probe);
    }
    match probe.best() {
        Some((at, value)) if probe.met() => Sought::Met { at, value },
        Some((at, value)) => Sought::Nearest { at, value },
        None => Sought::Nowhere,
    }
}

type Sample = (f64, Option<f64>);

/// The function and everything that was seen of it.
struct Probe<'a> {
    function: &'a dyn Fn(f64) -> Option<f64>,
    search: &'a Search,
    seen: RefCell<Vec<Sample>>,
}

impl Probe<'_> {
    /// Returns the function at an argument, brought into the range; each argument is calculated once.
    fn at(&self, argument: f64) -> Option<f64> {
        let whole = if self.search.whole { argument.round() } else { argument };
        let argument = whole.clamp(self.search.least, self.search.most);
        let known = self.seen.borrow().iter().find(|(seen, _)| seen.to_bits() == argument.to_bits()).map(|(_, value)| *value);
        known.unwrap_or_else(|| {
            let value = (self.function)(argument).filter(|value| value.is_finite());
            self.seen.borrow_mut().push((argument, value));
            value
        })
    }

    /// Returns the best point so far; of equal ones the nearest to the start.
    fn best(&self) -> Option<(f64, f64)> {
        let away = |at: f64| (at - self.search.start).abs();
        let seen = self.seen.borrow();
        seen.iter()
            .filter_map(|(at, value)| Some((*at, (*value)?)))
            .min_by(|one, other| one.1.abs().total_cmp(&other.1.abs()).then(away(one.0).total_cmp(&away(other.0))))
    }

    fn met(&self) -> bool {
        self.best().is_some_and(|(_, value)| value.abs() <= self.search.tolerance)
    }

    /// Steps away from the start on both sides in turn, each step twice as wide as the last.
    fn outwards(&self) {
        let Search { start, step, .. } = *self.search;
        let mut sides = [(start, self.at(start), step), (start, self.at(start), -step)];
        loop {
            let mut moved = false;
            for side in &mut sides {
                let (from, value, step) = *side;
                let to = (from + step).clamp(self.search.least, self.search.most);
                if to.to_bits() == from.to_bits() {
                    continue;
                }
                moved = true;
                let next = (to, self.at(to));
                self.between((from, value), next);
                if self.met() {
                    return;
                }
                *side = (next.0, next.1, 2.0 * step);
            }
            if !moved {
                return;
            }
        }
    }

    /// Looks at evenly spaced arguments, or at every whole one, and between neighbours, those near the start first.
    fn scan(&self) {
        let Search { least, most, start, whole, .. } = *self.search;
        let pieces = if whole && most - least <= MOST_WHOLE { (most - least).max(1.0) } else { f64::from(SCAN_POINTS) };
        for piece in 0..=pieces as u32 {
            self.at(least + (most - least) * f64::from(piece) / pieces);
        }
        let mut pairs: Vec<(Sample, Sample)> = self.in_order().windows(2).filter_map(pair).collect();
        let away = |pair: &(Sample, Sample)| (pair.0.0 - start).abs().min((pair.1.0 - start).abs());
        pairs.sort_by(|one, other| away(one).total_cmp(&away(other)));
        for (one, other) in pairs {
            self.between(one, other);
            if self.met() {
                return;
            }
        }
    }

    fn in_order(&self) -> Vec<Sample> {
        let mut seen = self.seen.borrow().clone();
        seen.sort_by(|one, other| one.0.total_cmp(&other.0));
        seen
    }

    /// Looks between two arguments, if something is to be found there: a change of sign, or an edge of where there is a value.
    fn between(&self, (one, at_one): Sample, (other, at_other): Sample) {
        match (at_one, at_other) {
            (Some(left), Some(right)) if left * right < 0.0 => self.narrow(one, other),
            (Some(value), None) => self.edge(one, value, other),
            (None, Some(value)) => self.edge(other, value, one),
            _ => {}
        }
    }

    /// Narrows a change of sign; what is found is among what was seen.
    fn narrow(&self, one: f64, other: f64) {
        if self.search.whole {
            self.narrow_whole(one, other);
            return;
        }
        let fine = FINE * self.search.tolerance;
        // Zero ends the search: where it is met well enough, and where it leaves what has a value.
        let function = |at: f64| self.at(at).filter(|value| value.abs() > fine).unwrap_or(0.0);
        let narrowest = NARROWEST * (self.search.most - self.search.least);
        // The two ends have different signs, so there is no error to be told.
        let _ = brent(function, Bracket { from: one, to: other }, narrowest);
    }

    fn narrow_whole(&self, one: f64, other: f64) {
        let (mut from, mut to) = (one, other);
        let side = self.at(from).map(f64::is_sign_positive);
        while (to - from).abs() > 1.5 {
            let middle = (0.5 * (from + to)).round();
            let Some(value) = self.at(middle) else { return };
            if Some(value.is_sign_positive()) == side { from = middle } else { to = middle }
        }
    }

    /// Looks for the last argument with a value, and on the way for a change of sign.
    fn edge(&self, with: f64, value: f64, without: f64) {
        let (mut with, mut without) = (with, without);
        for _ in 0..EDGE_HALVINGS {
            if self.search.whole && (with - without).abs() < 1.5 {
                return;
            }
            let middle = 0.5 * (with + without);
            let middle = if self.search.whole { middle.round() } else { middle };
            match self.at(middle) {
                Some(there) if there * value < 0.0 => return self.narrow(with, middle),
                Some(_) => with = middle,
                None => without = middle,
            }
            if self.met() {
                return;
            }
        }
    }

    /// Looks about the best point for one that comes nearer still: golden section between its neighbours.
    fn turn(&self) {
        let Some((best, _)) = self.best() else { return };
        if self.search.whole {
            return;
        }
        let seen = self.in_order();
        let below = seen.iter().rev().find(|(at, _)| *at < best).map_or(best, |(at, _)| *at);
        let above = seen.iter().find(|(at, _)| *at > best).map_or(best, |(at, _)| *at);
        let (mut low, mut high) = (below, above);
        let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
        let distance = |at: f64| self.at(at).map_or(f64::INFINITY, f64::abs);
        for _ in 0..TURN_STEPS {
            let (left, right) = (high - golden * (high - low), low + golden * (high - low));
            if distance(left) < distance(right) { high = right } else { low = left }
        }
    }
}

fn pair(two: &[Sample]) -> Option<(Sample, Sample)> {
    match two {
        [one, other] => Some((*one, *other)),
        _ => None,
    }
}
