//! Why a pickling cannot be calculated.

use crate::law::jar::JarError;
use crate::numeric::RootError;
use crate::process::DryingError;

/// Why a pickling cannot be calculated.
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
    /// No pH brings acid and cheese into equilibrium.
    #[error("cheese and vinegar have no common pH between 0.5 and 9 ({0}); choose values closer to those of a kitchen")]
    NoEquilibrium(#[from] RootError),
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
    #[error("the water that the cheese takes up from the vinegar could not be calculated ({0})")]
    Uptake(#[from] DryingError),
    /// The solver gave up.
    #[error(
        "the soak could not be calculated: the step became too small after {hours:.2} h; choose values closer to those of a kitchen"
    )]
    NoSolution {
        /// How far it came.
        hours: f64,
    },
}

/// Returns an error unless a figure lies in its range.
pub(super) fn within(what: &'static str, given: f64, least: f64, most: f64) -> Result<(), PicklingError> {
    let inside = least <= given && given <= most;
    if inside { Ok(()) } else { Err(PicklingError::OutOfRange { what, given, least, most }) }
}
