//! What is shown at a station: its curve, and its cut through a cheese.

use crate::curve::{CurveKey, SectionKey};
use crate::design::Stage;

/// Which cut through a cheese is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutView {
    /// The quantity.
    pub key: SectionKey,
    /// The moment, as a share of the time that the quantity is known for.
    pub share: f64,
}

/// Returns the quantity that the cut through a cheese shows at a station; none where the last one stays.
#[must_use]
pub const fn station_cut(stage: Stage) -> Option<SectionKey> {
    match stage {
        Stage::Milk | Stage::Vat | Stage::Draining | Stage::Keeping => None,
        Stage::Salting => Some(SectionKey::Salt),
        Stage::Drying => Some(SectionKey::Moisture),
        Stage::Pickling => Some(SectionKey::Ph),
    }
}

/// Returns the curve that belongs to a station, below the two that are always in sight.
#[must_use]
pub const fn station_curve(stage: Stage) -> CurveKey {
    match stage {
        Stage::Milk | Stage::Vat => CurveKey::WheyDrip,
        Stage::Draining => CurveKey::CurdSouring,
        Stage::Salting => CurveKey::Salt,
        Stage::Drying => CurveKey::Moisture,
        Stage::Pickling => CurveKey::Souring,
        Stage::Keeping => CurveKey::WaterActivity,
    }
}
