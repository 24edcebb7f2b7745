//! A soak next to the one that is shown: as slow, or as fast, as one draw of ten is.

use super::cheese::{PickledCheese, VinegarBath};
use super::course::SoakCourse;
use super::error::PicklingError;
use super::point::{PicklePoint, TargetHours};
use super::soak::Soak;
use crate::law::acidity::{ACETATE_MOBILITY, ACID_OBSTRUCTION, CONDITIONAL_PK};
use crate::law::buffering::BUFFER_SCALE;
use crate::numeric::Fineness;
use crate::process::{Distribution, UncertainParameters};
use crate::source::Constant;

crate::constants! {
    /// Speed of the acid in a slow soak.
    SLOW_ACID = { "Share of the draws in which acid moves more slowly than in the slow soak", 0.15, "1", (0.1, 0.3), Ourselves, "with the three below: of 200 random designs that it was not fitted to, the pH at the centre that nine of ten draws stay below is met within 0.1 in 187 and within 0.15 in all", Fitted }
    /// Speed of acetate in a slow soak.
    SLOW_ACETATE = { "Share of the draws in which acetate moves more slowly than in the slow soak", 0.27, "1", (0.15, 0.35), Ourselves, "as above", Fitted }
    /// Strength of the acid in a slow soak.
    SLOW_PK = { "Share of the draws in which the acid is stronger than in the slow soak", 0.75, "1", (0.65, 0.9), Ourselves, "as above", Fitted }
    /// Buffer in a slow soak.
    SLOW_BUFFER = { "Share of the draws in which the cheese takes up less acid than in the slow soak", 0.85, "1", (0.75, 0.9), Ourselves, "as above", Fitted }
    /// Speed of the acid in a fast soak.
    FAST_ACID = { "Share of the draws in which acid moves more slowly than in the fast soak", 0.77, "1", (0.65, 0.8), Ourselves, "with the three below: draws lie within the range from the fast to the slow soak that stands beside the figures", Fitted }
    /// Speed of acetate in a fast soak.
    FAST_ACETATE = { "Share of the draws in which acetate moves more slowly than in the fast soak", 0.75, "1", (0.65, 0.85), Ourselves, "as above", Fitted }
    /// Strength of the acid in a fast soak.
    FAST_PK = { "Share of the draws in which the acid is stronger than in the fast soak", 0.2, "1", (0.1, 0.3), Ourselves, "as above", Fitted }
    /// Buffer in a fast soak.
    FAST_BUFFER = { "Share of the draws in which the cheese takes up less acid than in the fast soak", 0.15, "1", (0.1, 0.25), Ourselves, "as above", Fitted }
}

/// Which end of what is likely.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Pace {
    /// Slower than nine draws of ten.
    Slow,
    /// Faster than nine draws of ten.
    Fast,
}

impl Pace {
    /// Returns the factor on a record at this end: that of a share of its draws.
    fn factor(self, record: &Constant, slow: &Constant, fast: &Constant) -> f64 {
        let (least, most) = (record.range.0 / record.value, record.range.1 / record.value);
        let share = match self {
            Self::Slow => slow.value,
            Self::Fast => fast.value,
        };
        Distribution::between(least, most).at_share(least, most, share)
    }
}

/// A soak next to the one that is shown.
pub(super) struct LikelySoak {
    pub(super) soak: Vec<PicklePoint>,
    pub(super) targets: [TargetHours; 2],
    pub(super) equilibrium_ph: f64,
}

impl LikelySoak {
    /// Returns the soak of a cheese at one end of what is likely.
    ///
    /// # Errors
    /// As for [`super::pickle`].
    pub(super) fn of(
        cheese: &PickledCheese,
        bath: &VinegarBath,
        soak_h: f64,
        pace: Pace,
        parameters: &UncertainParameters,
    ) -> Result<Self, PicklingError> {
        let cheese = PickledCheese {
            buffer_scale: pace.factor(&BUFFER_SCALE, &SLOW_BUFFER, &FAST_BUFFER),
            diffusivity_scale: pace.factor(&ACID_OBSTRUCTION, &SLOW_ACID, &FAST_ACID),
            ..*cheese
        };
        let parameters = UncertainParameters {
            acetate_mobility: pace.factor(&ACETATE_MOBILITY, &SLOW_ACETATE, &FAST_ACETATE),
            acid_pk: pace.factor(&CONDITIONAL_PK, &SLOW_PK, &FAST_PK),
            ..*parameters
        };
        let soak = Soak::with(&cheese, bath, Fineness::SOAK_SPREAD)?.under(&parameters);
        let equilibrium_ph = soak.equilibrium_ph()?;
        let SoakCourse { soak, targets, .. } = SoakCourse::follow(&soak, equilibrium_ph, &[soak_h], &mut |_| ())?;
        Ok(Self { soak, targets, equilibrium_ph })
    }
}
