//! The records with the unknowns that may move, and the way downhill.

use super::linear::inverse;
use super::misfit::Laid;
use super::{KitchenConstants, LearnError, Unknown};
use crate::design::Design;
use crate::record::BatchRecord;

/// Length of the step from which slopes are taken, in standard deviations of the belief before.
const SLOPE_STEP: f64 = 0.1;
/// An unknown that moves no reading by more than this many of its standard deviations is not looked for.
const MOVES_NOTHING: f64 = 1e-6;

/// The records with the unknowns that may move.
pub(super) struct Problem<'a> {
    pub(super) records: &'a [BatchRecord],
    pub(super) unknowns: Vec<Unknown>,
    /// Whether anybody still wants to know.
    pub(super) goes_on: &'a (dyn Fn() -> bool + Sync),
}

/// One point on the way: where, and what the records say there.
pub(super) struct Point {
    pub(super) places: Vec<f64>,
    pub(super) laid: Vec<Laid>,
}

impl Point {
    /// Returns how far each measurement is off; nothing where the model says nothing.
    pub(super) fn off(&self) -> Vec<f64> {
        self.laid.iter().flat_map(|record| &record.misfits).map(|misfit| misfit.off.unwrap_or(0.0)).collect()
    }

    /// Returns how many times as far as a reading scatters each may be off, by what is done near it.
    pub(super) fn blurred(&self) -> Vec<f64> {
        self.laid.iter().flat_map(|record| &record.misfits).map(|misfit| misfit.blurred).collect()
    }

    /// Returns how many measurements the model says anything of.
    pub(super) fn counted(&self) -> usize {
        self.laid.iter().flat_map(|record| &record.misfits).filter(|misfit| misfit.off.is_some()).count()
    }
}

impl Problem<'_> {
    /// Returns the design whose records of constants are meant: that of the latest batch.
    pub(super) fn design(&self) -> Option<&Design> {
        self.records.last().map(|record| &record.design)
    }

    /// Returns what a batch is made with at some places; of what has another record in its design nothing is said.
    pub(super) fn constants(&self, places: &[f64], of: &Design) -> KitchenConstants {
        let Some(design) = self.design() else { return KitchenConstants::default() };
        let own = self.unknowns.iter().zip(places).filter(|(unknown, _)| unknown.same_in(of, design));
        own.fold(KitchenConstants::default(), |all, (unknown, place)| all.set(*unknown, unknown.factor(design, *place)))
    }

    /// Returns what the records say at some places; stages are taken over from another point.
    pub(super) fn at(&self, places: Vec<f64>, near: Option<&Point>) -> Result<Point, LearnError> {
        let of = |(record, number): (&BatchRecord, usize)| {
            if !(self.goes_on)() {
                return Err(LearnError::Stopped);
            }
            let before = near.and_then(|near| near.laid.get(number)).map(|laid| &laid.batch);
            Laid::of(record, &self.constants(&places, &record.design), before)
        };
        let laid = self.records.iter().zip(0..).map(of).collect::<Result<_, _>>()?;
        Ok(Point { places, laid })
    }

    /// Returns how each misfit moves with each unknown; one that comes or goes moves with none.
    pub(super) fn slopes(&self, here: &Point) -> Result<Vec<Vec<f64>>, LearnError> {
        let moved = |at: usize, place: f64| {
            let step = slope_step(place);
            let mut there = here.places.clone();
            if let Some(own) = there.get_mut(at) {
                *own += step;
            }
            let there = self.at(there, Some(here))?;
            let pairs =
                here.laid.iter().flat_map(|record| &record.misfits).zip(there.laid.iter().flat_map(|record| &record.misfits));
            Ok(pairs.map(|(here, there)| here.off.zip(there.off).map_or(0.0, |(here, there)| (there - here) / step)).collect())
        };
        here.places.iter().enumerate().map(|(at, place)| moved(at, *place)).collect()
    }

    /// Leaves out the unknowns that move nothing here; returns the slopes of the others.
    pub(super) fn keep_moving(&mut self, slopes: Vec<Vec<f64>>) -> Vec<Vec<f64>> {
        let moves = |slope: &[f64]| slope.iter().any(|by| by.abs() > MOVES_NOTHING);
        let (unknowns, slopes) = self.unknowns.iter().zip(slopes).filter(|(_, slope)| moves(slope)).unzip();
        self.unknowns = unknowns;
        slopes
    }
}

/// Returns the step from a place from which slopes are taken: towards the middle, where there is room.
pub(super) const fn slope_step(place: f64) -> f64 {
    if place > 0.0 { -SLOPE_STEP } else { SLOPE_STEP }
}

/// What is least at the most likely places: squares of independent misfits and of places.
pub(super) fn cost(off: &[f64], places: &[f64]) -> f64 {
    off.iter().chain(places).map(|own| own * own).sum()
}

/// Returns how far each two of the places may be off together, as a normal distribution has it; none only where numbers are not finite.
///
/// `slopes`: how each independent misfit moves with each place
pub(super) fn covariance(slopes: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    let own = |row: usize, column: usize| if row == column { 1.0 } else { 0.0 };
    let row = |(at, one): (usize, &Vec<f64>)| -> Vec<f64> {
        slopes.iter().enumerate().map(|(to, other)| dot(one, other) + own(at, to)).collect()
    };
    inverse(&slopes.iter().enumerate().map(row).collect::<Vec<_>>())
}

/// Returns the share of each misfit that the unknowns explain whatever it is.
pub(super) fn taken(slopes: &[Vec<f64>], covariance: &[Vec<f64>], count: usize) -> Vec<f64> {
    let of = |at: usize| {
        let own: Vec<f64> = slopes.iter().map(|slope| slope.get(at).copied().unwrap_or(0.0)).collect();
        covariance.iter().zip(&own).map(|(row, by)| by * dot(row, &own)).sum::<f64>()
    };
    (0..count).map(of).collect()
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}
