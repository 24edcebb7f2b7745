//! The cheese of the middle tray: the one that is shown.

use super::air::AirPlan;
use super::cheese::Cheese;
use super::curve::TrayRun;
use super::error::DryingError;
use super::place::Place;
use super::run::{follow, point, problem_given};
use super::section::SectionKeeper;
use super::solver::DiscRun;
use crate::design::DryingDesign;
use crate::numeric::Fineness;
use crate::process::UncertainParameters;

const MIDDLE_TRAY: &str = "middle tray";

/// Returns how one cheese dries in the middle of the air, at the hours asked for (or at every step where none are asked for).
///
/// # Arguments
/// * `cheese`: one cheese, with water, solids and protein
/// * `design`: the drying; its `drying_h` is the end where no hours are asked for
/// * `report_h`: hours to report, ascending, ≥ 0
///
/// # Errors
/// [`DryingError`].
///
/// # Example
/// ```
/// use vatsketch::{design::DryingDesign, law::Matter, process::{dry_cheese, Cheese}};
/// let matter = Matter { water_kg: 0.030, fat_kg: 0.010, casein_kg: 0.008, ash_kg: 0.001, ..Matter::default() };
/// let cheese = Cheese { matter, diameter_mm: 60.0, thickness_mm: 17.0, ..Cheese::default() };
/// let run = dry_cheese(&cheese, &DryingDesign::default(), &[6.0, 24.0])?;
/// assert!(run.points[1].moisture_percent < run.points[0].moisture_percent);
/// # Ok::<(), vatsketch::process::DryingError>(())
/// ```
pub fn dry_cheese(cheese: &Cheese, design: &DryingDesign, report_h: &[f64]) -> Result<TrayRun, DryingError> {
    dry_cheese_given(cheese, design, report_h, &UncertainParameters::default(), Fineness::SHOWN)
}

/// Returns the same as [`dry_cheese`] under other parameters, as finely cut and stepped as is asked for.
///
/// # Errors
/// As for [`dry_cheese`].
pub fn dry_cheese_given(
    cheese: &Cheese,
    design: &DryingDesign,
    report_h: &[f64],
    parameters: &UncertainParameters,
    fineness: Fineness,
) -> Result<TrayRun, DryingError> {
    if report_h.is_empty() {
        return Ok(middle_tray(cheese, design, parameters, fineness)?.0);
    }
    let problem = problem_given(cheese, design.underside_open_percent / 100.0, fineness, parameters)?;
    let plan = AirPlan::met_by(cheese, design, Place::MIDDLE, parameters);
    let mut disc = DiscRun::new(&problem);
    let mut points = Vec::new();
    for hour in report_h {
        follow(&mut disc, &plan, 3600.0 * hour, &mut |_| ())?;
        points.push(point(&disc, cheese));
    }
    Ok(TrayRun { name: MIDDLE_TRAY, points })
}

/// Returns how one cheese dries in the middle of the air, at every step, and what of its section is kept.
pub(super) fn middle_tray(
    cheese: &Cheese,
    design: &DryingDesign,
    parameters: &UncertainParameters,
    fineness: Fineness,
) -> Result<(TrayRun, SectionKeeper), DryingError> {
    let problem = problem_given(cheese, design.underside_open_percent / 100.0, fineness, parameters)?;
    let plan = AirPlan::met_by(cheese, design, Place::MIDDLE, parameters);
    let mut disc = DiscRun::new(&problem);
    let mut section = SectionKeeper::new(&problem.grid, design.drying_h);
    let mut points = Vec::new();
    let mut note = |disc: &DiscRun<'_>| {
        points.push(point(disc, cheese));
        section.keep(disc);
    };
    note(&disc);
    follow(&mut disc, &plan, 3600.0 * design.drying_h, &mut note)?;
    Ok((TrayRun { name: MIDDLE_TRAY, points }, section))
}
