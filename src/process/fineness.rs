//! How finely the stages cut up and step their cheeses.

use crate::numeric::Fineness;

impl Fineness {
    /// For the drying that is shown: moisture within 0.4 % of the reference table (relative), 0.3 % in most rows.
    pub const SHOWN: Self = Self { radial: 18, half_height: 16, ratio: 12.0, tolerance: 6e-3 };
    /// For checks of the drying from outside.
    pub const FINE: Self = Self { radial: 40, half_height: 36, ratio: 20.0, tolerance: 1e-3 };
    /// For the spread between trays, of which only differences are used.
    pub const SPREAD: Self = Self { radial: 8, half_height: 7, ratio: 8.0, tolerance: 1.2e-2 };
    /// For the reference cases of a cheese in vinegar.
    pub const SOAK_FINE: Self = Self { radial: 40, half_height: 40, ratio: 20.0, tolerance: 1e-3 };
    /// For the soak that is shown: from the second hour within 0.02 of the fine pH (0.05 while the front passes the centre), and the
    /// hours to a pH within 2 %.
    pub const SOAK_SHOWN: Self = Self { radial: 10, half_height: 16, ratio: 16.0, tolerance: 6e-2 };
    /// For the slow and the fast soak around it, which are far apart: the hours to a pH within 4 %.
    pub const SOAK_SPREAD: Self = Self { radial: 7, half_height: 9, ratio: 8.0, tolerance: 8e-2 };
}
