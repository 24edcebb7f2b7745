//! What is believed of one unknown.

use super::Unknown;
use crate::design::Design;

/// Standard deviations to either side that hold eight of ten of a normal distribution.
pub(super) const EIGHT_OF_TEN: f64 = 1.281_551_565_544_600_4;

/// What is believed of one unknown, as factors on what the design goes by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Belief {
    /// The estimate.
    pub factor: f64,
    /// Between what it lies in eight cases of ten.
    pub likely: (f64, f64),
    /// How wide that is over what was believed before any record, on the axis on which that is the standard normal distribution.
    pub width: f64,
}

impl Belief {
    /// Returns what is believed before any record.
    #[must_use]
    pub fn before(unknown: Unknown, design: &Design) -> Self {
        let at = |place: f64| unknown.factor(design, place);
        Self { factor: at(0.0), likely: (at(-EIGHT_OF_TEN), at(EIGHT_OF_TEN)), width: 1.0 }
    }

    /// Returns how wide the range is over that of another belief.
    #[must_use]
    pub fn width_over(&self, other: &Self) -> f64 {
        (self.likely.1 - self.likely.0) / (other.likely.1 - other.likely.0)
    }
}
