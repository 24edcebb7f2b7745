//! How a slow cheese sours, by the draws themselves instead of the one run that stands in for them.

use super::outcome::PicklingOutcome;
use super::point::{PicklePoint, TargetHours};

/// What nine of ten draws stay on the better side of.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SlowSoak {
    /// pH at the centre when the soak ends.
    pub centre_ph: f64,
    /// pH of the blended cheese then.
    pub slurry_ph: f64,
    /// Equilibrium pH of cheese and vinegar.
    pub equilibrium_ph: f64,
    /// When centre and blended cheese come down to each of [`super::PH_TARGETS`].
    pub targets: [TargetHours; 2],
}

impl PicklingOutcome {
    /// Returns the same soak, its slow cheese as the draws have it; the course on the way to the end stays that of the slow run.
    #[must_use]
    pub fn judged_by(&self, slow: &SlowSoak) -> Self {
        let mut judged = self.clone();
        let before = judged.if_slow.pop().unwrap_or(self.end);
        judged.if_slow.push(PicklePoint { centre_ph: slow.centre_ph, slurry_ph: slow.slurry_ph, ..before });
        judged.targets_if_slow = slow.targets;
        let (least, _) = self.likely_equilibrium_ph;
        judged.likely_equilibrium_ph = (least, slow.equilibrium_ph.max(self.equilibrium_ph));
        judged
    }
}
