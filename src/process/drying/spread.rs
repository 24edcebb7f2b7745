//! How far the trays dry apart, and how the middle one would dry with other diffusivities; all on a coarser grid.

use super::air::AirPlan;
use super::cheese::Cheese;
use super::curve::{DryingPoint, TrayRun};
use super::error::DryingError;
use super::place::{Place, first_and_last};
use super::refine::Refinement;
use super::run;
use super::solver::DiscRun;
use crate::design::DryingDesign;
use crate::numeric::Fineness;
use crate::process::UncertainParameters;

/// Returns how the cheese of the middle tray would dry with another diffusivity, on the coarser grid.
pub(super) fn with_diffusivity(
    cheese: &Cheese,
    design: &DryingDesign,
    name: &'static str,
    diffusivity_m2_s: f64,
    parameters: &UncertainParameters,
) -> Result<TrayRun, DryingError> {
    let mut problem = run::problem_given(cheese, design.underside_open_percent / 100.0, Fineness::SPREAD, parameters)?;
    problem.diffusion.diffusivity_m2_s = diffusivity_m2_s;
    let start = DiscRun::new(&problem);
    let plan = AirPlan::met_by(cheese, design, Place::MIDDLE, parameters);
    let (_, points) = follow_on(&start, cheese, &plan, 3600.0 * design.drying_h, &[run::point(&start, cheese)])?;
    Ok(TrayRun { name, points })
}

/// How far the trays dry apart, with and without a swap half way.
pub(super) struct TraySpread {
    pub(super) unswapped: (TrayRun, TrayRun),
    pub(super) swapped: (TrayRun, TrayRun),
    pub(super) unswapped_percent: f64,
    pub(super) swapped_percent: f64,
}

/// Returns the fastest and the slowest cheese, unswapped and swapped; both ways share their first half.
pub(super) fn spread(
    cheese: &Cheese,
    design: &DryingDesign,
    middle: &TrayRun,
    parameters: &UncertainParameters,
) -> Result<TraySpread, DryingError> {
    if design.tray_count < 2 {
        let only = (middle.clone(), middle.clone());
        return Ok(TraySpread { unswapped: only.clone(), swapped: only, unswapped_percent: 0.0, swapped_percent: 0.0 });
    }
    let problem = run::problem_given(cheese, design.underside_open_percent / 100.0, Fineness::SPREAD, parameters)?;
    let (first, last) = first_and_last(design.tray_count, parameters.tray_cooling);
    let plan = |place| AirPlan::met_by(cheese, design, place, parameters);
    let (first, last) = (plan(first), plan(last));
    let (half_s, end_s) = (1800.0 * design.drying_h, 3600.0 * design.drying_h);
    let start = DiscRun::new(&problem);
    let begin = [run::point(&start, cheese)];
    let (_, coarse) = follow_on(&start, cheese, &plan(Place::MIDDLE), end_s, &begin)?;
    let refinement = Refinement::new(middle, &coarse);
    let (first_half, first_points) = follow_on(&start, cheese, &first, half_s, &begin)?;
    let (last_half, last_points) = follow_on(&start, cheese, &last, half_s, &begin)?;
    let named = |name, points: Vec<_>| TrayRun { name, points: refinement.refine(&problem, cheese, &points) };
    let (_, stays_first) = follow_on(&first_half, cheese, &first, end_s, &first_points)?;
    let (_, stays_last) = follow_on(&last_half, cheese, &last, end_s, &last_points)?;
    let (_, first_to_last) = follow_on(&first_half, cheese, &last, end_s, &first_points)?;
    let (_, last_to_first) = follow_on(&last_half, cheese, &first, end_s, &last_points)?;
    let unswapped = in_order(named("first tray", stays_first), named("last tray", stays_last));
    let swapped = in_order(named("first tray, then last", first_to_last), named("last tray, then first", last_to_first));
    Ok(TraySpread { unswapped_percent: apart(&unswapped), swapped_percent: apart(&swapped), unswapped, swapped })
}

/// Returns a disc dried on from where another stands, and all its points so far.
fn follow_on<'a>(
    disc: &DiscRun<'a>,
    cheese: &Cheese,
    plan: &AirPlan,
    to_s: f64,
    points: &[DryingPoint],
) -> Result<(DiscRun<'a>, Vec<DryingPoint>), DryingError> {
    let mut disc = disc.clone();
    let mut points = points.to_vec();
    run::follow(&mut disc, plan, to_s, &mut |disc| points.push(run::point(disc, cheese)))?;
    Ok((disc, points))
}

/// Returns the drier of two runs first.
fn in_order(one: TrayRun, other: TrayRun) -> (TrayRun, TrayRun) {
    if one.end_moisture_percent() <= other.end_moisture_percent() { (one, other) } else { (other, one) }
}

/// Returns how far the final moistures of two runs lie apart, in per cent of the cheese.
fn apart((fastest, slowest): &(TrayRun, TrayRun)) -> f64 {
    slowest.end_moisture_percent() - fastest.end_moisture_percent()
}
