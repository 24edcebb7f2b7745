//! What is shown at a station: its curve, and its cut through a cheese.

use crate::curve::{CurveKey, SectionKey};
use crate::design::Stage;
use crate::process::GermLine;

/// Which cut through a cheese is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutView {
    /// The quantity.
    pub key: SectionKey,
    /// The moment, as a share of the time that the quantity is known for; none is the moment that tells most.
    pub share: Option<f64>,
    /// Whether the hours run.
    pub runs: bool,
    /// Whose growth a cut with germs shows; none is the germ that could grow furthest.
    pub germ: Option<GermLine>,
}

/// Seconds in which the hours of a cut run from the first to the last.
const RUN_S: f64 = 8.0;

impl CutView {
    /// Returns the cut a little later, if its hours run: from the beginning once more where they have come to the end, and stopped at the end.
    ///
    /// # Arguments
    /// * `passed_s`: since the last drawing, s
    ///
    /// # Example
    /// ```
    /// use vatsketch::{curve::SectionKey, ui::CutView};
    /// let cut = CutView { key: SectionKey::Ph, share: Some(0.5), runs: true, germ: None };
    /// assert!(cut.later(0.1).share > cut.share);
    /// assert!(!cut.later(60.0).runs);
    /// ```
    #[must_use]
    pub fn later(self, passed_s: f64) -> Self {
        let Some(share) = self.share.filter(|_| self.runs) else { return self };
        let from = if share >= 1.0 { 0.0 } else { share };
        let to = from + passed_s / RUN_S;
        Self { share: Some(to.min(1.0)), runs: to < 1.0, ..self }
    }
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
        Stage::Pickling => &[CurveKey::Souring, CurveKey::SoakMoisture, CurveKey::SoakSalt],
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
