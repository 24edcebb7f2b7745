//! How the air of one place differs from the middle of it.

use super::trays::{TRAY_COOLING, TRAY_SLOWING};

/// How one place in the air differs from the middle of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// How much warmer.
    pub warmer_k: f64,
    /// Speed relative to the middle.
    pub speed: f64,
}

impl Place {
    /// The middle.
    pub const MIDDLE: Self = Self { warmer_k: 0.0, speed: 1.0 };
}

/// Returns how the air of the first and of the last tray differs from the middle; no difference for a single tray.
///
/// # Arguments
/// * `cooling`: how many times as much cooler the last tray is as its record says
#[must_use]
pub fn first_and_last(tray_count: u32, cooling: f64) -> (Place, Place) {
    if tray_count < 2 {
        return (Place::MIDDLE, Place::MIDDLE);
    }
    let half_k = 0.5 * (cooling * TRAY_COOLING.value);
    let slow = TRAY_SLOWING.value.sqrt();
    (Place { warmer_k: half_k, speed: 1.0 / slow }, Place { warmer_k: -half_k, speed: slow })
}
