//! The belief after some records: the most likely constants and how far they may be off, with the ranges of the records of constants as what
//! was believed before.

use super::belief::{Belief, EIGHT_OF_TEN};
use super::groups::Groups;
use super::made::as_made;
use super::problem::{Point, Problem};
use super::seek::{Found, found};
use super::{KitchenConstants, LearnError, Unknown};
use crate::design::Design;
use crate::record::{BatchRecord, LEARNED_FROM, LEARNED_RANGES_WIDER, TOLD_FROM};

/// One unknown after the records.
#[derive(Clone, Copy, Debug)]
pub struct Learned {
    /// Which.
    pub unknown: Unknown,
    /// What is believed of it now.
    pub belief: Belief,
}

impl Learned {
    /// Returns whether the records tell it: its range is at most seven tenths as wide as before. Of all others what was believed before holds,
    /// in the middle and in width.
    #[must_use]
    pub fn is_told(&self) -> bool {
        self.belief.width <= TOLD_FROM.value
    }
}

/// A kitchen as far as records tell.
#[derive(Clone, Debug)]
pub struct LearnedKitchen {
    /// Every unknown that the records move, those first of which they tell most.
    pub learned: Vec<Learned>,
    /// What batches are made with here: what is told, and the records' values of all else.
    pub constants: KitchenConstants,
    /// The design whose records of constants are meant: that of the latest batch.
    pub design: Design,
    /// Measurements that count.
    pub measurements: usize,
    /// How many times as far as readings scatter they were from the model before (the root of the mean square).
    pub before: f64,
    /// The same now.
    pub after: f64,
}

impl LearnedKitchen {
    /// Returns what the records tell.
    pub fn told(&self) -> impl Iterator<Item = &Learned> {
        self.learned.iter().filter(|learned| learned.is_told())
    }
}

/// Returns what records say about their kitchen.
///
/// The belief about the unknowns given the records: each measurement is believed to lie about the model with the standard deviation of a
/// kitchen's reading, those of one instrument also with one that they have in common, each unknown as the draws of a spread have it. Where the
/// model meets a kind of measurement worse than they scatter, they count for less. All unknowns move at once, so that what two explain alike
/// narrows neither.
///
/// A kitchen that the designs of the records used already is left out of account: nothing counts twice.
///
/// # Errors
/// [`LearnError`].
pub fn learn(records: &[&BatchRecord]) -> Result<LearnedKitchen, LearnError> {
    learn_while(records, &|| true)
}

/// Returns the same as [`learn`], unless it is told to stop.
///
/// # Arguments
/// * `goes_on`: asked before each batch that is calculated; once it says no, nothing more is begun
///
/// # Errors
/// [`LearnError`]; [`LearnError::Stopped`] where it was told to stop.
pub fn learn_while(records: &[&BatchRecord], goes_on: &(dyn Fn() -> bool + Sync)) -> Result<LearnedKitchen, LearnError> {
    let records: Vec<BatchRecord> = records.iter().copied().map(as_made).collect();
    let mut problem = Problem { records: &records, unknowns: Unknown::all(), goes_on };
    let Some(design) = problem.design().cloned() else { return Err(LearnError::NothingMeasured) };
    let start = problem.at(vec![0.0; problem.unknowns.len()], None)?;
    if start.counted() == 0 {
        return Err(LearnError::NothingMeasured);
    }
    let slopes = problem.slopes(&start)?;
    let slopes = problem.keep_moving(slopes);
    let start = Point { places: vec![0.0; problem.unknowns.len()], laid: start.laid };
    let groups = Groups::of(&start.laid);
    let before = nearness(&start, &groups);
    let Found { end, drawn } = found(&problem, start, slopes, (&groups, &design))?;
    let learned = |(at, unknown): (usize, &Unknown)| {
        let middle = end.places.get(at).copied().unwrap_or_default();
        let (low, high) = drawn.tenths(at);
        let wider = |to: f64| middle + LEARNED_RANGES_WIDER.value * (to - middle);
        let (low, high) = (wider(low), wider(high));
        let width = (high - low) / (2.0 * EIGHT_OF_TEN);
        let place = |place: f64| unknown.factor(&design, place);
        let factor = place(middle);
        let belief = Belief { factor, likely: (place(low), place(high)), width };
        // Of what is not told nothing is said.
        let told = width <= TOLD_FROM.value;
        Learned { unknown: *unknown, belief: if told { belief } else { Belief::before(*unknown, &design) } }
    };
    let mut learned: Vec<Learned> = problem.unknowns.iter().enumerate().map(learned).collect();
    let told = learned.iter().zip(&end.places).map(|(one, place)| if one.is_told() { *place } else { 0.0 });
    let used = problem.at(told.collect(), Some(&end))?;
    learned.sort_by(|one, other| one.belief.width.total_cmp(&other.belief.width));
    Ok(LearnedKitchen {
        learned,
        constants: problem.constants(&used.places, &design),
        measurements: end.counted(),
        before,
        after: nearness(&used, &groups),
        design,
    })
}

/// Returns the batches of a log that tell of the kitchen as it is now: the newest, as many as [`LEARNED_FROM`] says.
///
/// # Example
/// ```
/// assert!(vatsketch::kitchen::newest(&[]).is_empty());
/// ```
#[must_use]
pub fn newest(batches: &[BatchRecord]) -> &[BatchRecord] {
    let from = batches.len().saturating_sub(LEARNED_FROM.value as usize);
    batches.get(from..).unwrap_or_default()
}

/// Returns the root of the mean square by which measurements lie from the model, in what readings scatter.
fn nearness(point: &Point, groups: &Groups) -> f64 {
    let squares: f64 = groups.independent(&point.off(), &point.blurred()).iter().map(|off| off * off).sum();
    (squares / point.counted().max(1) as f64).sqrt()
}
