//! Why the cheeses cannot be dried.

use crate::process::SaltStuck;

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
        "the drying of this cheese could not be calculated: the step became too small after {hours:.2} h; choose values closer to those of a kitchen"
    )]
    NoSolution {
        /// How far it came.
        hours: f64,
    },
    /// The salt's way inwards cannot be calculated.
    #[error(transparent)]
    Salt(#[from] SaltStuck),
}
