//! A soak followed from the start until every pH that matters is reached, or never can be.

use super::error::PicklingError;
use super::point::{LONGEST_SOAK_H, PH_TARGETS, PicklePoint, TargetHours};
use super::soak::Soak;
use super::solver::SoakRun;
use crate::law::acidity::ACETIC_MOLAR_MASS;
use crate::numeric::{Bracket, brent};

/// Longest step, as a share of the time so far after [`EARLY_H`]: a curve through the steps is then good enough to read an hour from it.
const LONGEST_STEP: f64 = 0.25;
/// Hours before which no step is too long.
const EARLY_H: f64 = 6.0;

/// What a soak came to.
#[derive(Clone, Debug)]
pub(super) struct SoakCourse {
    /// From the start to the last hour asked for, after each step.
    pub(super) soak: Vec<PicklePoint>,
    /// At the hours asked for.
    pub(super) reported: Vec<PicklePoint>,
    /// When the targets are reached, in the order of [`PH_TARGETS`], soaking on if need be.
    pub(super) targets: [TargetHours; 2],
}

impl SoakCourse {
    /// Follows a soak through the hours asked for, and on until every target that can be reached is reached, or to [`LONGEST_SOAK_H`].
    ///
    /// # Arguments
    /// * `equilibrium_ph`: of this soak; a target that is not above it is never reached
    /// * `report_h`: ascending, 0 to [`LONGEST_SOAK_H`]
    /// * `after_step`: called at the start and after each step
    pub(super) fn follow(
        soak: &Soak,
        equilibrium_ph: f64,
        report_h: &[f64],
        after_step: &mut dyn FnMut(&SoakRun<'_>),
    ) -> Result<Self, PicklingError> {
        let mut run = SoakRun::new(soak);
        let mut points = Vec::new();
        let mut note = |run: &SoakRun<'_>, points: &mut Vec<PicklePoint>| {
            points.push(point(soak, run));
            after_step(run);
        };
        note(&run, &mut points);
        let mut reported = Vec::new();
        for hour in report_h {
            while run.at_s < 3600.0 * hour {
                step(&mut run, *hour)?;
                note(&run, &mut points);
            }
            reported.extend(points.last().copied());
        }
        let in_soak = points.len();
        while run.at_s < 3600.0 * LONGEST_SOAK_H && waits(&points, equilibrium_ph) {
            step(&mut run, LONGEST_SOAK_H)?;
            note(&run, &mut points);
        }
        let targets = targets(&points);
        points.truncate(in_soak);
        Ok(Self { soak: points, reported, targets })
    }
}

/// Takes one step.
fn step(run: &mut SoakRun<'_>, end_h: f64) -> Result<(), PicklingError> {
    let longest_s = LONGEST_STEP * run.at_s.max(3600.0 * EARLY_H);
    run.step((run.at_s + longest_s).min(3600.0 * end_h))
}

/// Returns whether a target that can be reached is not reached yet.
fn waits(points: &[PicklePoint], equilibrium_ph: f64) -> bool {
    let above = |ph: f64| points.last().is_some_and(|point| point.centre_ph > ph || point.slurry_ph > ph);
    PH_TARGETS.iter().any(|ph| equilibrium_ph < *ph && above(*ph))
}

/// Returns when the targets are reached on a curve of points.
fn targets(points: &[PicklePoint]) -> [TargetHours; 2] {
    PH_TARGETS.map(|ph| TargetHours {
        ph,
        centre_h: reached_h(points, |point| point.centre_ph, ph),
        slurry_h: reached_h(points, |point| point.slurry_ph, ph),
    })
}

/// Returns the hour at which a pH is first reached, on the cubic in the logarithm of time through the two points before and the two after.
fn reached_h(points: &[PicklePoint], of: impl Fn(&PicklePoint) -> f64, ph: f64) -> Option<f64> {
    let after = points.iter().position(|point| of(point) <= ph)?;
    let Some(before) = after.checked_sub(1) else { return Some(0.0) };
    // Shifted by an hour, for there is none of zero.
    let log = |hour: f64| (1.0 + hour).ln();
    let from = after.saturating_sub(2);
    let near: Vec<(f64, f64)> = points.iter().skip(from).take(4).map(|point| (log(point.at_h), of(point))).collect();
    let bracket = Bracket { from: log(points.get(before)?.at_h), to: log(points.get(after)?.at_h) };
    let reached = brent(|log_h| through(&near, log_h) - ph, bracket, 1e-9).ok()?;
    Some(reached.exp() - 1.0)
}

/// Returns the value at `x` of the polynomial through a few points (Lagrange).
fn through(points: &[(f64, f64)], x: f64) -> f64 {
    let weight = |at: f64, other: f64| if at.to_bits() == other.to_bits() { 1.0 } else { (x - other) / (at - other) };
    points.iter().map(|(at, value)| value * points.iter().map(|(other, _)| weight(*at, *other)).product::<f64>()).sum()
}

/// Returns what a run shows at this moment.
fn point(soak: &Soak, run: &SoakRun<'_>) -> PicklePoint {
    let state = run.state();
    PicklePoint {
        at_h: run.at_s / 3600.0,
        centre_ph: state.centre_ph,
        slurry_ph: state.slurry_ph,
        surface_ph: state.surface_ph,
        bath_ph: state.bath_ph,
        acid_percent: 100.0 * state.acetate_mol_m3 * soak.water_share * ACETIC_MOLAR_MASS.value / soak.cheese_kg_m3,
    }
}
