//! One cheese in vinegar: how acid comes in, and when it is sour all through.

mod course;
mod direction;
mod fill;
mod flows;
mod leach;
mod soak;
mod solver;
mod stage;
mod sweep;
mod swell;
mod words;

pub use leach::salt_left;
pub use soak::{CONSTANTS, Soak};
pub use solver::{SoakRun, SoakState};
pub use stage::{PicklingOutcome, pickling, pickling_given};
pub use swell::{Swelling, SwollenPoint};
pub use words::cautions;

use super::DryingError;
use crate::law::Matter;
use crate::law::buffering::BUFFER_SCALE;
use crate::law::growth::{ACIDIFIED_PH, TABLE_B_PH};
use crate::law::jar::JarError;
use crate::numeric::{Fineness, RootError};
use course::Course;

/// Hours after which no more is worked out.
pub const LONGEST_SOAK_H: f64 = 2000.0;
/// The pH below which acidified food must come, and the one that this food needs at its water activity.
pub const PH_TARGETS: [f64; 2] = [ACIDIFIED_PH.value, TABLE_B_PH.value];

/// How many times as much acid a cheese may take up as its groups say.
pub const STRONGEST_BUFFER: f64 = BUFFER_SCALE.range.1 / BUFFER_SCALE.value;

/// One cheese as it comes into the vinegar.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PickledCheese {
    /// What it is made of.
    pub matter: Matter,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
    /// Its pH.
    pub start_ph: f64,
    /// How much more acid it takes up than its composition says, as a factor; likely 0.7 to 1.8.
    pub buffer_scale: f64,
    /// How much faster acid moves in it than we judge, as a factor; likely 0.5 to 2.
    pub diffusivity_scale: f64,
}

/// The vinegar of one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct VinegarBath {
    /// Strength, g of acetic acid in 100 mL.
    pub acid_g_per_100ml: f64,
    /// Volume for each cheese.
    pub volume_ml: f64,
    /// Temperature of vinegar and cheese.
    pub temperature_c: f64,
}

/// Why a pickling cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum PicklingError {
    /// A figure is out of range.
    #[error("{what} must be {least} to {most}, but {given} was given")]
    OutOfRange {
        /// Which figure, with its unit.
        what: &'static str,
        /// What was given.
        given: f64,
        /// Least allowed.
        least: f64,
        /// Greatest allowed.
        most: f64,
    },
    /// Mass and size do not belong together.
    #[error(
        "mass and size of the cheese give a density of {cheese_kg_m3:.0} kg/m³ and {water_percent:.1} % of water by volume; give the mass that a cheese of this size has"
    )]
    MassAndSize {
        /// Density that follows.
        cheese_kg_m3: f64,
        /// Water by volume that follows.
        water_percent: f64,
    },
    /// The hours do not ascend.
    #[error("the hours to report must ascend, but {after} comes after {before}")]
    HoursNotAscending {
        /// The one before.
        before: f64,
        /// The one after.
        after: f64,
    },
    /// No pH fulfils the balance of acid and cheese.
    #[error("cheese and vinegar have no common pH between 0.5 and 9 ({0}); choose values nearer to a kitchen's")]
    NoBalance(#[from] RootError),
    /// Not a single cheese goes into the jar.
    #[error(transparent)]
    Jar(#[from] JarError),
    /// A cheese goes into the jar, but not with its vinegar.
    #[error(
        "a jar of {jar_ml:.0} mL does not hold a cheese of {cheese_ml:.0} mL with its {vinegar_ml:.0} mL of vinegar; take a larger jar, or less vinegar for each gram"
    )]
    NoRoom {
        /// What the jar holds.
        jar_ml: f64,
        /// Volume of a cheese.
        cheese_ml: f64,
        /// Vinegar for it.
        vinegar_ml: f64,
    },
    /// The cheese cannot take up water.
    #[error("how the cheese takes up water from the vinegar could not be worked out ({0})")]
    Uptake(#[from] DryingError),
    /// The solver gave up.
    #[error(
        "the pickling could not be worked out: the step became too small after {hours:.2} h; choose values nearer to a kitchen's"
    )]
    NoSolution {
        /// How far it came.
        hours: f64,
    },
}

/// One point of a pickling.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PicklePoint {
    /// Hours in the vinegar.
    pub at_h: f64,
    /// pH at the centre of the cheese.
    pub centre_ph: f64,
    /// pH that the whole cheese would have, blended.
    pub slurry_ph: f64,
    /// pH of the middle of the top face.
    pub surface_ph: f64,
    /// pH of the vinegar.
    pub bath_ph: f64,
    /// Acetic acid in the cheese, split or not, % of its mass at the start.
    pub acid_percent: f64,
}

/// Hours until the centre and the blended cheese have come down to a pH.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TargetHours {
    /// The pH.
    pub ph: f64,
    /// When the centre has it; none if it never comes there, or not within [`LONGEST_SOAK_H`].
    pub centre_h: Option<f64>,
    /// When the blended cheese has it; none as for the centre.
    pub slurry_h: Option<f64>,
}

/// How one cheese pickles.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PickleRun {
    /// At the hours asked for.
    pub points: Vec<PicklePoint>,
    /// pH at which cheese and vinegar come to rest.
    pub equilibrium_ph: f64,
    /// The same if the cheese takes up as much acid as the buffer's range allows, [`STRONGEST_BUFFER`] times as much.
    pub strong_equilibrium_ph: f64,
    /// When the two targets are reached, in the order of [`PH_TARGETS`].
    pub targets: [TargetHours; 2],
    /// Vinegar for each gram of cheese, mL/g.
    pub vinegar_ml_per_g: f64,
}

/// Returns how one cheese pickles in its share of the vinegar.
///
/// Acid and cheese are at rest with each other at each place; what moves is the acid, by diffusion, from a stirred bath of finite volume.
/// Swelling, the salt that leaves and the ions' own charges are not in it, and eggs in vinegar took twice as long as such a model says.
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
///     PickledCheese { matter, diameter_mm: 51.0, thickness_mm: 14.5, start_ph: 6.4, buffer_scale: 1.0, diffusivity_scale: 1.0 };
/// let run = pickle(&cheese, &VinegarBath { acid_g_per_100ml: 6.0, volume_ml: 70.0, temperature_c: 19.0 }, &[36.0])?;
/// assert!(run.points[0].centre_ph > run.points[0].slurry_ph && run.points[0].slurry_ph > run.equilibrium_ph);
/// # Ok::<(), vatsketch::process::PicklingError>(())
/// ```
pub fn pickle(cheese: &PickledCheese, bath: &VinegarBath, report_h: &[f64]) -> Result<PickleRun, PicklingError> {
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
    let soak = Soak::with(cheese, bath, Fineness::SOAK_SHOWN)?;
    let equilibrium_ph = soak.equilibrium_ph()?;
    let course = Course::follow(&soak, equilibrium_ph, report_h, &mut |_| ())?;
    Ok(PickleRun {
        points: course.reported,
        equilibrium_ph,
        strong_equilibrium_ph: soak.buffered(STRONGEST_BUFFER).equilibrium_ph()?,
        targets: course.targets,
        vinegar_ml_per_g: bath.volume_ml / (1000.0 * cheese.matter.total_kg()),
    })
}

/// Returns an error unless a figure lies in its range.
fn within(what: &'static str, given: f64, least: f64, most: f64) -> Result<(), PicklingError> {
    let inside = least <= given && given <= most;
    if inside { Ok(()) } else { Err(PicklingError::OutOfRange { what, given, least, most }) }
}

impl PickledCheese {
    fn check(&self) -> Result<(), PicklingError> {
        let percent = |kg: f64| 100.0 * kg / self.matter.total_kg();
        within("the diameter of the cheese, mm,", self.diameter_mm, 5.0, 300.0)?;
        within("the thickness of the cheese, mm,", self.thickness_mm, 2.0, 200.0)?;
        within("the moisture of the cheese, %,", percent(self.matter.water_kg), 5.0, 90.0)?;
        within("the protein of the cheese, %,", percent(self.matter.protein_kg()), 0.0, 70.0)?;
        within("the pH of the cheese", self.start_ph, 4.0, 7.5)?;
        within("the buffer scale", self.buffer_scale, 0.0, 5.0)?;
        within("the diffusivity scale", self.diffusivity_scale, 0.05, 10.0)
    }
}

impl VinegarBath {
    fn check(&self) -> Result<(), PicklingError> {
        within("the acetic acid of the vinegar, g/100 mL,", self.acid_g_per_100ml, 0.5, 10.0)?;
        within("the vinegar for each cheese, mL,", self.volume_ml, 0.1, 100_000.0)?;
        within("the temperature of the vinegar, °C,", self.temperature_c, 0.0, 40.0)
    }
}
