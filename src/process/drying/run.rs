//! One cheese in the air of one place, from the start to the end.

use super::air::{AirNow, AirPlan};
use super::cheese::Cheese;
use super::curve::DryingPoint;
use super::error::DryingError;
use super::problem::{OpenFaces, Problem, Surface};
use super::solver::DiscRun;
use crate::law::Matter;
use crate::law::air_transfer::RADIATION;
use crate::law::food_density::solids_density_kg_m3;
use crate::law::heat::solids_heat_j_kg_k;
use crate::law::moisture_diffusion::MoistureDiffusion;
use crate::law::sorption::Sorption;
use crate::numeric::{DiscGrid, Fineness, Half};
use crate::process::UncertainParameters;

/// Returns the equations of one cheese.
///
/// # Errors
/// [`DryingError::NoOpenFace`], [`DryingError::NothingToDry`].
pub fn problem(cheese: &Cheese, underside_open: f64, fineness: Fineness) -> Result<Problem, DryingError> {
    let matter = &cheese.matter;
    let open = OpenFaces { top: cheese.top_open, side: cheese.side_open, underside: underside_open };
    if open.top + open.side + open.underside <= 0.0 {
        return Err(DryingError::NoOpenFace);
    }
    let dries = matter.water_kg > 0.0 && matter.solids_kg() > 0.0 && matter.protein_kg() > 0.0;
    if !dries {
        return Err(DryingError::NothingToDry { moisture_percent: matter.moisture_percent() });
    }
    let alike = (open.top - open.underside).abs() < f64::EPSILON;
    let (half, axial) = if alike { (Half::Upper, fineness.half_height) } else { (Half::Whole, 2 * fineness.half_height) };
    let (radius_m, height_m) = (0.0005 * cheese.diameter_mm, 0.001 * cheese.thickness_mm);
    Ok(Problem {
        grid: DiscGrid::new(radius_m, height_m, fineness.radial, axial, fineness.ratio, half),
        start_water: matter.water_kg / matter.solids_kg(),
        start_c: cheese.temperature_c,
        diffusion: MoistureDiffusion::of(matter),
        sorption: Sorption::of(matter),
        solids_density_kg_m3: solids_density_kg_m3(matter),
        solids_heat_j_kg_k: solids_heat_j_kg_k(matter, crate::law::food_density::SOLIDS_TEMPERATURE.value),
        open,
        radiation_w_m2_k: RADIATION.value,
        coat_s_m: cheese.coat_s_m,
        shrinks: true,
        warms: true,
        surface: Surface::Evaporation,
        tolerance: fineness.tolerance,
    })
}

/// Returns the same as [`problem`] under other parameters of how water moves and how the solids hold it.
///
/// # Errors
/// As for [`problem`].
pub fn problem_given(
    cheese: &Cheese,
    underside_open: f64,
    fineness: Fineness,
    parameters: &UncertainParameters,
) -> Result<Problem, DryingError> {
    let mut problem = problem(cheese, underside_open, fineness)?;
    problem.diffusion.diffusivity_m2_s *= parameters.moisture_diffusivity;
    problem.diffusion.energy_j_mol *= parameters.diffusion_energy;
    problem.radiation_w_m2_k *= parameters.radiation;
    problem.sorption = problem.sorption.holding(parameters.solids_hold);
    Ok(problem)
}

/// Dries on until `to_s` in the air of a plan, change by change, and notes a point after each step.
///
/// # Errors
/// [`DryingError::NoSolution`].
pub fn follow(run: &mut DiscRun<'_>, plan: &AirPlan, to_s: f64, note: &mut dyn FnMut(&DiscRun<'_>)) -> Result<(), DryingError> {
    while run.at_s < to_s {
        let (air, until_s) = plan.at(run.at_s);
        run.meet(air);
        let steady = move |_: f64| -> AirNow { air };
        run.advance(until_s.min(to_s), &steady, &mut |run| note(run))?;
    }
    Ok(())
}

/// Returns what a run shows at this moment, for a cheese of this matter and fresh size.
#[must_use]
pub fn point(run: &DiscRun<'_>, cheese: &Cheese) -> DryingPoint {
    let problem = run.problem();
    let places = DryingPoint {
        at_h: run.at_s / 3600.0,
        centre_moisture_percent: moisture_percent(run.centre_water()),
        surface_moisture_percent: moisture_percent(run.top_water()),
        centre_water_activity: problem.sorption.water_activity(run.centre_water()),
        temperature_c: run.temperature_c,
        ..DryingPoint::default()
    };
    with_mean_water(problem, cheese, run.mean_water(), places)
}

/// Returns a point with everything that follows from the mean water content, kg per kg of dry solids.
#[must_use]
pub fn with_mean_water(problem: &Problem, cheese: &Cheese, mean_water: f64, point: DryingPoint) -> DryingPoint {
    let matter = &cheese.matter;
    let now = dried(matter, mean_water);
    let lambda = problem.shrinkage(mean_water);
    DryingPoint {
        cheese_g: 1000.0 * now.total_kg(),
        loss_percent: 100.0 * (1.0 - now.total_kg() / matter.total_kg()),
        moisture_percent: moisture_percent(mean_water),
        water_activity: problem.sorption.water_activity(mean_water),
        diameter_mm: cheese.diameter_mm * lambda,
        thickness_mm: cheese.thickness_mm * lambda,
        fat_free_moisture_percent: now.moisture_on_fat_free_basis_percent(),
        ..point
    }
}

/// Returns the moisture in per cent from the water in kg per kg of dry solids.
pub(super) fn moisture_percent(water: f64) -> f64 {
    100.0 * water / (1.0 + water)
}

/// Returns a cheese with its water brought to `mean_water`, kg per kg of dry solids.
#[must_use]
pub fn dried(matter: &Matter, mean_water: f64) -> Matter {
    Matter { water_kg: mean_water * matter.solids_kg(), ..*matter }
}
