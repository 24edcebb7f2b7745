//! One moment of a pickling, and the hours at which the two pH that matter are reached.

use crate::law::growth::{ACIDIFIED_PH, TABLE_B_PH};

/// Hours after which nothing more is calculated.
pub const LONGEST_SOAK_H: f64 = 2000.0;
/// The pH below which acidified food must come, and the one that this food needs at its water activity.
pub const PH_TARGETS: [f64; 2] = [ACIDIFIED_PH.value, TABLE_B_PH.value];

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
