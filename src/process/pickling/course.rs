//! A soak followed from the start until every pH that matters is reached, or never can be.

use super::soak::Soak;
use super::solver::SoakRun;
use super::{LONGEST_SOAK_H, PH_TARGETS, PicklePoint, PicklingError, TargetHours};
use crate::law::acidity::ACETIC_MOLAR_MASS;
use crate::numeric::{Bracket, brent, monotone};

/// What a soak came to.
#[derive(Clone, Debug)]
pub(super) struct Course {
    /// At the start and after each step, as far as it was followed.
    pub(super) points: Vec<PicklePoint>,
    /// At the hours asked for.
    pub(super) reported: Vec<PicklePoint>,
    /// When the targets are reached, in the order of [`PH_TARGETS`].
    pub(super) targets: [TargetHours; 2],
}

impl Course {
    /// Follows a soak through the hours asked for, and on until every target that can be reached is reached, or [`LONGEST_SOAK_H`].
    ///
    /// # Arguments
    /// * `balance_ph`: where the soak comes to rest; a target that does not lie above it is never reached
    /// * `report_h`: hours to report, ascending
    /// * `after_step`: called at the start and after each step
    pub(super) fn follow(
        soak: &Soak,
        balance_ph: f64,
        report_h: &[f64],
        after_step: &mut dyn FnMut(&SoakRun<'_>),
    ) -> Result<Self, PicklingError> {
        let mut run = SoakRun::new(soak);
        let (mut points, mut reported) = (vec![point(soak, &run)], Vec::new());
        after_step(&run);
        for hour in report_h {
            run.advance(3600.0 * hour, &mut |run| {
                points.push(point(soak, run));
                after_step(run);
            })?;
            reported.extend(points.last().copied());
        }
        let reachable = |ph: &f64| balance_ph < *ph;
        let waits = |points: &[PicklePoint]| {
            let above =
                |ph: f64| points.iter().all(|point| point.centre_ph > ph) || points.iter().all(|point| point.slurry_ph > ph);
            PH_TARGETS.iter().filter(|ph| reachable(ph)).any(|ph| above(*ph))
        };
        while run.at_s < 3600.0 * LONGEST_SOAK_H && waits(&points) {
            run.step(3600.0 * LONGEST_SOAK_H)?;
            points.push(point(soak, &run));
            after_step(&run);
        }
        let targets = PH_TARGETS.map(|ph| TargetHours {
            ph,
            centre_h: reached_h(&points, |point| point.centre_ph, ph),
            slurry_h: reached_h(&points, |point| point.slurry_ph, ph),
        });
        Ok(Self { points, reported, targets })
    }
}

/// Returns the hour at which a pH is first reached, on a curve through the steps.
fn reached_h(points: &[PicklePoint], of: impl Fn(&PicklePoint) -> f64, ph: f64) -> Option<f64> {
    let after = points.iter().position(|point| of(point) <= ph)?;
    let to = points.get(after)?.at_h;
    let Some(from) = after.checked_sub(1).and_then(|before| points.get(before)) else { return Some(to) };
    let curve: Vec<(f64, f64)> = points.iter().map(|point| (point.at_h, of(point))).collect();
    brent(|hour| monotone(&curve, hour) - ph, Bracket { from: from.at_h, to }, 1e-6).ok()
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
