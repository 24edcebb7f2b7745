//! Drying in a cabinet or in the open air.

mod air;
mod implicit;
mod look;
mod problem;
mod refine;
mod run;
mod solver;
mod trays;

pub use air::{AirNow, AirPlan, Place, cabinet_humidity_percent};
pub use problem::{OpenFaces, Problem, Surface};
pub use run::{Fineness, problem};
pub use solver::DiscRun;
pub use trays::{CONSTANTS as TRAY_CONSTANTS, TrayFit, fit as tray_fit, tray_holds};

use super::{SaltingOutcome, StageBalance, Stream};
use crate::design::{DryingDesign, DryingPlace};
use crate::law::moisture_diffusion::MOISTURE_DIFFUSIVITY;
use crate::law::{Matter, firmness};
use refine::Refinement;

/// One cheese as it comes to the air.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Cheese {
    /// What it is made of.
    pub matter: Matter,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
    /// Its temperature.
    pub temperature_c: f64,
    /// Share of the top that the air reaches, 0 to 1.
    pub top_open: f64,
    /// Share of the side that the air reaches, 0 to 1.
    pub side_open: f64,
}

/// One point of a drying curve, for one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DryingPoint {
    /// Hours from the start of drying.
    pub at_h: f64,
    /// Mass of the cheese.
    pub cheese_g: f64,
    /// Loss of mass since the start.
    pub loss_percent: f64,
    /// Mean moisture.
    pub moisture_percent: f64,
    /// Moisture at the centre.
    pub centre_moisture_percent: f64,
    /// Moisture of the middle of the top face.
    pub surface_moisture_percent: f64,
    /// Water activity that the mean composition would have.
    pub water_activity: f64,
    /// Water activity at the centre.
    pub centre_water_activity: f64,
    /// Temperature of the cheese.
    pub temperature_c: f64,
    /// Diameter, shrunk.
    pub diameter_mm: f64,
    /// Thickness, shrunk.
    pub thickness_mm: f64,
    /// Moisture on a fat-free basis.
    pub fat_free_moisture_percent: f64,
}

/// How the cheeses of one place dry.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TrayRun {
    /// Which cheeses: "middle tray", "first tray", "first tray, swapped" ...
    pub name: &'static str,
    /// Their curve.
    pub points: Vec<DryingPoint>,
}

/// What the drying stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DryingOutcome {
    /// The cheese of the middle tray, in full: the curve that is shown.
    pub middle: TrayRun,
    /// The cheese that dries fastest as the trays are chosen to be (swapped or not).
    pub fastest: TrayRun,
    /// The cheese that dries slowest as the trays are chosen to be.
    pub slowest: TrayRun,
    /// The middle tray if water moved in the cheese as slowly as the diffusivity's range allows.
    pub if_slow: TrayRun,
    /// The middle tray if it moved as fast as that.
    pub if_fast: TrayRun,
    /// Spread of the final moisture between fastest and slowest if the trays are not swapped.
    pub spread_unswapped_percent: f64,
    /// The same if they are swapped half way.
    pub spread_swapped_percent: f64,
    /// Hours at which the trays are swapped; none if they are not.
    pub swap_h: Option<f64>,
    /// The last point of the middle tray.
    pub end: DryingPoint,
    /// Codex firmness classes of that moisture on a fat-free basis (they overlap).
    pub firmness: Vec<&'static str>,
    /// All cheeses after drying.
    pub cheese: Matter,
    /// Cheeses.
    pub cheese_count: u32,
    /// Relative humidity of the warmed air (by day, in the open).
    pub air_humidity_percent: f64,
    /// Cheeses that a tray holds.
    pub tray_holds: u32,
    /// Trays that these cheeses need.
    pub trays_wanted: u32,
    /// Whether the chosen trays hold them, in width and in height.
    pub trays_fit: bool,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the cheeses cannot be dried.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DryingError {
    /// The air reaches no face.
    #[error("the air reaches no face of the cheese; open at least one of top, side and underside")]
    NoOpenFace,
    /// There is nothing to dry.
    #[error("the cheese must have water and solids to dry, but it has {moisture_percent:.1} % moisture")]
    NothingToDry {
        /// Moisture given.
        moisture_percent: f64,
    },
    /// The solver gave up.
    #[error(
        "the drying of this cheese could not be worked out: the step became too small after {hours:.2} h; choose values nearer to a kitchen's"
    )]
    NoSolution {
        /// How far it came.
        hours: f64,
    },
}

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
/// let cheese = Cheese { matter, diameter_mm: 60.0, thickness_mm: 17.0, temperature_c: 18.0, top_open: 1.0, side_open: 1.0 };
/// let run = dry_cheese(&cheese, &DryingDesign::default(), &[6.0, 24.0])?;
/// assert!(run.points[1].moisture_percent < run.points[0].moisture_percent);
/// # Ok::<(), vatsketch::process::DryingError>(())
/// ```
pub fn dry_cheese(cheese: &Cheese, design: &DryingDesign, report_h: &[f64]) -> Result<TrayRun, DryingError> {
    let problem = run::problem(cheese, design.underside_open_percent / 100.0, Fineness::SHOWN)?;
    let plan = AirPlan::of(design, Place::MIDDLE, 0.001 * cheese.diameter_mm);
    let mut disc = DiscRun::new(&problem);
    let mut points = Vec::new();
    if report_h.is_empty() {
        points.push(run::point(&disc, cheese));
        run::follow(&mut disc, &plan, 3600.0 * design.drying_h, &mut |disc| points.push(run::point(disc, cheese)))?;
    }
    for hour in report_h {
        run::follow(&mut disc, &plan, 3600.0 * hour, &mut |_| ())?;
        points.push(run::point(&disc, cheese));
    }
    Ok(TrayRun { name: "middle tray", points })
}

/// Returns how the cheeses dry: the middle tray in full, and the fastest and the slowest as the trays stand and are swapped.
///
/// # Arguments
/// * `draining_temperature_c`: temperature of the cheeses when they come to the air
///
/// # Errors
/// [`DryingError`].
pub fn drying(design: &DryingDesign, salted: &SaltingOutcome, draining_temperature_c: f64) -> Result<DryingOutcome, DryingError> {
    let count = f64::from(salted.cheese_count.max(1));
    let cheese = Cheese {
        matter: salted.cheese * (1.0 / count),
        diameter_mm: salted.diameter_mm,
        thickness_mm: salted.thickness_mm,
        temperature_c: draining_temperature_c,
        top_open: 1.0,
        side_open: 1.0,
    };
    let middle = dry_cheese(&cheese, design, &[])?;
    let end = middle.points.last().copied().unwrap_or_default();
    let spread = spread(&cheese, design, &middle)?;
    let dry_kg = 0.01 * end.moisture_percent / (1.0 - 0.01 * end.moisture_percent) * salted.cheese.solids_kg();
    let dried = Matter { water_kg: dry_kg, ..salted.cheese };
    // Damp air may give water instead of taking it.
    let lost_kg = salted.cheese.water_kg - dry_kg;
    let trays = trays::fit(design, salted.cheese_count, salted.diameter_mm, salted.thickness_mm);
    let (fastest, slowest) = if design.tray_swap { spread.swapped } else { spread.unswapped };
    let swap_h = (design.tray_swap && design.tray_count > 1).then_some(0.5 * design.drying_h);
    Ok(DryingOutcome {
        middle,
        fastest,
        slowest,
        if_slow: with_diffusivity(&cheese, design, "slow cheese", MOISTURE_DIFFUSIVITY.range.0)?,
        if_fast: with_diffusivity(&cheese, design, "fast cheese", MOISTURE_DIFFUSIVITY.range.1)?,
        spread_unswapped_percent: spread.unswapped_percent,
        spread_swapped_percent: spread.swapped_percent,
        swap_h,
        end,
        firmness: firmness::classes(end.fat_free_moisture_percent),
        cheese: dried,
        cheese_count: salted.cheese_count,
        air_humidity_percent: match design.drying_place {
            DryingPlace::Cabinet => cabinet_humidity_percent(design),
            DryingPlace::OpenAir => design.day_humidity_percent,
        },
        tray_holds: trays.holds,
        trays_wanted: trays.wanted,
        trays_fit: trays.fits,
        balance: StageBalance {
            came: salted.cheese,
            added: vec![Stream { name: "water from the air", matter: Matter::water((-lost_kg).max(0.0)) }],
            left: vec![Stream { name: "vapour", matter: Matter::water(lost_kg.max(0.0)) }],
            goes_on: dried,
        },
    })
}

/// Returns how the cheese of the middle tray would dry with another diffusivity, on the coarser grid.
fn with_diffusivity(
    cheese: &Cheese,
    design: &DryingDesign,
    name: &'static str,
    diffusivity_m2_s: f64,
) -> Result<TrayRun, DryingError> {
    let mut problem = run::problem(cheese, design.underside_open_percent / 100.0, Fineness::SPREAD)?;
    problem.diffusion.diffusivity_m2_s = diffusivity_m2_s;
    let start = DiscRun::new(&problem);
    let plan = AirPlan::of(design, Place::MIDDLE, 0.001 * cheese.diameter_mm);
    let (_, points) = follow_on(&start, cheese, &plan, 3600.0 * design.drying_h, &[run::point(&start, cheese)])?;
    Ok(TrayRun { name, points })
}

/// How far the trays dry apart, with and without a swap half way.
struct Spread {
    unswapped: (TrayRun, TrayRun),
    swapped: (TrayRun, TrayRun),
    unswapped_percent: f64,
    swapped_percent: f64,
}

/// Returns the fastest and the slowest cheese, unswapped and swapped; both ways share their first half.
fn spread(cheese: &Cheese, design: &DryingDesign, middle: &TrayRun) -> Result<Spread, DryingError> {
    let problem = run::problem(cheese, design.underside_open_percent / 100.0, Fineness::SPREAD)?;
    let (first, last) = trays::first_and_last(design.tray_count);
    let plan = |place| AirPlan::of(design, place, 0.001 * cheese.diameter_mm);
    let (first, last) = (plan(first), plan(last));
    let (half_s, end_s) = (1800.0 * design.drying_h, 3600.0 * design.drying_h);
    let start = DiscRun::new(&problem);
    let begin = [run::point(&start, cheese)];
    let (_, coarse) = follow_on(&start, cheese, &plan(Place::MIDDLE), end_s, &begin)?;
    let refinement = Refinement::new(middle, &coarse);
    if design.tray_count < 2 {
        let only = (middle.clone(), middle.clone());
        return Ok(Spread { unswapped: only.clone(), swapped: only, unswapped_percent: 0.0, swapped_percent: 0.0 });
    }
    let (first_half, first_points) = follow_on(&start, cheese, &first, half_s, &begin)?;
    let (last_half, last_points) = follow_on(&start, cheese, &last, half_s, &begin)?;
    let named = |name, points: Vec<_>| TrayRun { name, points: refinement.refine(&problem, cheese, &points) };
    let (_, stays_first) = follow_on(&first_half, cheese, &first, end_s, &first_points)?;
    let (_, stays_last) = follow_on(&last_half, cheese, &last, end_s, &last_points)?;
    let (_, first_to_last) = follow_on(&first_half, cheese, &last, end_s, &first_points)?;
    let (_, last_to_first) = follow_on(&last_half, cheese, &first, end_s, &last_points)?;
    let unswapped = in_order(named("first tray", stays_first), named("last tray", stays_last));
    let swapped = in_order(named("first tray, then last", first_to_last), named("last tray, then first", last_to_first));
    Ok(Spread { unswapped_percent: apart(&unswapped), swapped_percent: apart(&swapped), unswapped, swapped })
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

impl TrayRun {
    /// Returns the moisture at the end.
    #[must_use]
    pub fn end_moisture_percent(&self) -> f64 {
        self.points.last().map_or(0.0, |point| point.moisture_percent)
    }
}
