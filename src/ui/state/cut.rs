//! What is shown at a station: its curve, and its cut through a cheese.

use crate::curve::{CurveKey, SectionKey};
use crate::design::Stage;
use crate::process::GermLine;

/// Which cut through a cheese is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutView {
    /// The quantity.
    pub key: SectionKey,
    /// The moment, as a share of the time that the quantity is known for.
    pub share: f64,
    /// Whose growth a cut with germs shows; none is the germ that could grow furthest.
    pub germ: Option<GermLine>,
}

/// Returns the quantity that the cut through a cheese shows at a station; none where the last one stays.
#[must_use]
pub const fn station_cut(stage: Stage) -> Option<SectionKey> {
    match stage {
        Stage::Milk | Stage::Vat | Stage::Draining => None,
        Stage::Salting => Some(SectionKey::Salt),
        Stage::Drying => Some(SectionKey::Moisture),
        Stage::Pickling => Some(SectionKey::Ph),
        Stage::Keeping => Some(SectionKey::Germs),
    }
}

/// Returns the curves that belong to a station: the first is shown large, the others can be chosen.
#[must_use]
pub const fn station_curves(stage: Stage) -> &'static [CurveKey] {
    match stage {
        Stage::Milk | Stage::Vat => &[CurveKey::Warming, CurveKey::WheyDrip],
        Stage::Draining => &[CurveKey::CurdSouring, CurveKey::WheyDrip],
        Stage::Salting => &[CurveKey::Salt],
        Stage::Drying => &[CurveKey::Moisture, CurveKey::WaterActivity, CurveKey::DryingLoss],
        Stage::Pickling => &[CurveKey::Souring],
        Stage::Keeping => &[CurveKey::Germs, CurveKey::WaterActivity],
    }
}

/// Returns the curve of a station that is shown: the chosen one where it belongs there, otherwise the first; none where there is none.
#[must_use]
pub fn shown_curve(stage: Stage, chosen: Option<CurveKey>) -> Option<CurveKey> {
    let all = station_curves(stage);
    chosen.filter(|key| all.contains(key)).or_else(|| all.first().copied())
}

/// Returns the two curves that are in sight above the chosen one: warming and drying loss, and in the place of one that is shown large itself what
/// comes of it.
#[must_use]
pub const fn always_shown(large: Option<CurveKey>) -> [CurveKey; 2] {
    match large {
        Some(CurveKey::Warming) => [CurveKey::WheyDrip, CurveKey::DryingLoss],
        Some(CurveKey::DryingLoss) => [CurveKey::Warming, CurveKey::Moisture],
        _ => [CurveKey::Warming, CurveKey::DryingLoss],
    }
}

/// Returns the curve that comes after one at a station, if there is another.
#[must_use]
pub fn next_curve(stage: Stage, shown: CurveKey) -> Option<CurveKey> {
    let all = station_curves(stage);
    let at = all.iter().position(|key| *key == shown)?;
    all.get((at + 1) % all.len()).copied().filter(|key| *key != shown)
}
