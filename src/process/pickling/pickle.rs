//! How one cheese pickles, without the rest of a batch.

use super::cheese::{PickledCheese, VinegarBath};
use super::course::SoakCourse;
use super::error::{PicklingError, within};
use super::point::{LONGEST_SOAK_H, PicklePoint, TargetHours};
use super::soak::Soak;
use crate::law::buffering::BUFFER_SCALE;
use crate::numeric::Fineness;
use crate::process::UncertainParameters;

/// How many times as much acid a cheese may take up as its groups say.
pub const STRONGEST_BUFFER: f64 = BUFFER_SCALE.range.1 / BUFFER_SCALE.value;

/// How one cheese pickles.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PickleRun {
    /// At the hours asked for.
    pub points: Vec<PicklePoint>,
    /// Equilibrium pH of cheese and vinegar.
    pub equilibrium_ph: f64,
    /// The same if the cheese takes up as much acid as the buffer's range allows, [`STRONGEST_BUFFER`] times as much.
    pub strong_equilibrium_ph: f64,
    /// When the two targets are reached, in the order of [`super::PH_TARGETS`].
    pub targets: [TargetHours; 2],
    /// Vinegar for each gram of cheese, mL/g.
    pub vinegar_ml_per_g: f64,
}

/// Returns how one cheese pickles in its share of the vinegar.
///
/// Acid and cheese are in equilibrium at each place; what moves is the acid, by diffusion, from a stirred bath of finite volume.
/// Swelling, the salt that leaves and the ions' own charges are not in it, and of four published trials with eggs this model meets three and is late in one.
///
/// # Arguments
/// * `cheese`: one cheese whose mass and size belong together
/// * `bath`: the vinegar that belongs to it
/// * `report_h`: hours to report, ascending, 0 to [`LONGEST_SOAK_H`]
///
/// # Errors
/// [`PicklingError`].
///
/// # Example
/// ```
/// use vatsketch::{law::Matter, process::{pickle, PickledCheese, VinegarBath}};
/// let matter = Matter { water_kg: 0.0115, fat_kg: 0.011, casein_kg: 0.0085, ash_kg: 0.001, ..Matter::default() };
/// let cheese =
///     PickledCheese { matter, diameter_mm: 51.0, thickness_mm: 14.5, start_ph: 6.4, buffer_scale: 1.0, diffusivity_scale: 1.0, ..PickledCheese::default() };
/// let run = pickle(&cheese, &VinegarBath { acid_g_per_100ml: 6.0, volume_ml: 70.0, temperature_c: 19.0 }, &[36.0])?;
/// assert!(run.points[0].centre_ph > run.points[0].slurry_ph && run.points[0].slurry_ph > run.equilibrium_ph);
/// # Ok::<(), vatsketch::process::PicklingError>(())
/// ```
pub fn pickle(cheese: &PickledCheese, bath: &VinegarBath, report_h: &[f64]) -> Result<PickleRun, PicklingError> {
    pickle_given(cheese, bath, report_h, &UncertainParameters::default(), Fineness::SOAK_SHOWN)
}

/// Returns the same as [`pickle`] under other parameters, as finely cut and stepped as is asked for; those of the buffer and of the acid's speed
/// multiply the scales of the cheese.
///
/// # Errors
/// As for [`pickle`].
pub fn pickle_given(
    cheese: &PickledCheese,
    bath: &VinegarBath,
    report_h: &[f64],
    parameters: &UncertainParameters,
    fineness: Fineness,
) -> Result<PickleRun, PicklingError> {
    for hour in report_h {
        within("an hour to report, h,", *hour, 0.0, LONGEST_SOAK_H)?;
    }
    for pair in report_h.windows(2) {
        if let [before, after] = pair
            && before >= after
        {
            return Err(PicklingError::HoursNotAscending { before: *before, after: *after });
        }
    }
    let scaled = PickledCheese {
        buffer_scale: parameters.buffer * cheese.buffer_scale,
        diffusivity_scale: parameters.acid_obstruction * cheese.diffusivity_scale,
        ..*cheese
    };
    let soak = Soak::with(&scaled, bath, fineness)?.under(parameters);
    let equilibrium_ph = soak.equilibrium_ph()?;
    let course = SoakCourse::follow(&soak, equilibrium_ph, report_h, &mut |_| ())?;
    Ok(PickleRun {
        points: course.reported,
        equilibrium_ph,
        strong_equilibrium_ph: soak.buffered(STRONGEST_BUFFER).equilibrium_ph()?,
        targets: course.targets,
        vinegar_ml_per_g: bath.volume_ml / (1000.0 * cheese.matter.total_kg()),
    })
}
