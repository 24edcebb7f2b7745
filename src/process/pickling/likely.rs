//! A soak next to the one that is shown: as slow, or as fast, as one draw of ten is.

use super::cheese::{PickledCheese, VinegarBath};
use super::course::SoakCourse;
use super::error::PicklingError;
use super::point::{PicklePoint, TargetHours};
use super::soak::Soak;
use crate::law::acidity::{ACETATE_MOBILITY, ACID_OBSTRUCTION, CONDITIONAL_PK};
use crate::law::buffering::BUFFER_SCALE;
use crate::numeric::Fineness;
use crate::process::{Factors, Given, UncertainParameters};
use crate::source::Constant;

crate::constants! {
    /// Speed of the acid in a slow soak.
    SLOW_ACID = { "Share of the draws in which acid moves more slowly than in the slow soak, where the pH at the centre falls by 1 while the time grows by a factor of e", 0.18, "1", (0.1, 0.3), Ourselves, "with those below, to 140 random designs: in 200 others the pH at the centre that nine of ten draws stay below is met within 0.1; of those 140, two whose centre was just falling missed it by 0.16", Fitted }
    /// How that share changes with the fall.
    SLOW_ACID_STEEPER = { "How much less that share is where the pH at the centre falls by one more: the more steeply it falls, the more it is the speed that decides", 0.05, "1", (0.0, 0.08), Ourselves, "as above", Fitted }
    /// What a slow cheese comes with.
    SLOW_START = { "pH by which a soured cheese of calculated pH comes to the vinegar less sour in a slow soak", 0.07, "1", (0.05, 0.1), Ourselves, "as above", Fitted }
    /// Where that ends.
    STEEPEST_FALL = { "Fall of the pH at the centre above which that share changes no more", 2.5, "1", (2.0, 3.0), Ourselves, "as above", Fitted }
    /// From where the fall is read.
    FALL_FROM = { "Share of the soak from whose end the fall is read", 0.8, "1", (0.6, 0.9), Ourselves, "as above", Fitted }
    /// What counts as soured.
    SOURED_BY = { "pH by which a cheese is sourer than it was made, where it counts as soured in full", 1.0, "1", (0.5, 1.5), Ourselves, "below it in proportion, so that nothing jumps", Judged }
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
    fn factor(self, (known, record): (Option<Factors>, &Constant), slow: f64, fast: &Constant) -> f64 {
        let share = match self {
            Self::Slow => slow,
            Self::Fast => fast.value,
        };
        Factors::known_or(known, record).at_share(record, share)
    }
}

/// What is known of a soak before its slow and its fast neighbour are calculated.
#[derive(Clone, Copy)]
pub(super) struct Middle {
    /// How steeply the pH at the centre falls when the soak ends, for each factor of e in time.
    fall: f64,
    /// How much of what a slow cheese comes less sour with belongs to this one: none where its pH is measured or it was not soured.
    soured: f64,
}

impl Middle {
    /// `own_ph`: of the cheese, had nothing soured it; none where the pH that it comes with is measured
    pub(super) fn of(soak: &[PicklePoint], own_ph: Option<f64>) -> Self {
        let begins_ph = soak.first().map_or(0.0, |point| point.centre_ph);
        let soured = own_ph.map_or(0.0, |own_ph| ((own_ph - begins_ph) / SOURED_BY.value).clamp(0.0, 1.0));
        let fall = soak.last().and_then(|last| {
            let before = soak.iter().rev().find(|point| point.at_h < FALL_FROM.value * last.at_h && point.at_h > 0.0)?;
            Some((before.centre_ph - last.centre_ph) / (last.at_h / before.at_h).ln())
        });
        Self { fall: fall.unwrap_or(0.0).clamp(0.0, STEEPEST_FALL.value), soured }
    }

    /// Returns the share of the draws in which acid moves more slowly than in the slow soak.
    fn slow_acid(self) -> f64 {
        SLOW_ACID.value - SLOW_ACID_STEEPER.value * (self.fall - 1.0)
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
    /// * `middle`: what is known of the soak between the two ends
    ///
    /// # Errors
    /// As for [`super::pickle`].
    pub(super) fn of(
        cheese: &PickledCheese,
        bath: &VinegarBath,
        soak_h: f64,
        (pace, middle): (Pace, Middle),
        given: &Given,
    ) -> Result<Self, PicklingError> {
        let known = &given.known;
        let less_sour = if pace == Pace::Slow { middle.soured * SLOW_START.value } else { 0.0 };
        let cheese = PickledCheese {
            start_ph: cheese.start_ph + less_sour,
            buffer_scale: pace.factor((known.buffer, &BUFFER_SCALE), SLOW_BUFFER.value, &FAST_BUFFER),
            diffusivity_scale: pace.factor((known.acid_obstruction, &ACID_OBSTRUCTION), middle.slow_acid(), &FAST_ACID),
            ..*cheese
        };
        let parameters = UncertainParameters {
            acetate_mobility: pace.factor((known.acetate_mobility, &ACETATE_MOBILITY), SLOW_ACETATE.value, &FAST_ACETATE),
            acid_pk: pace.factor((known.acid_pk, &CONDITIONAL_PK), SLOW_PK.value, &FAST_PK),
            ..given.parameters
        };
        let soak = Soak::with(&cheese, bath, Fineness::SOAK_SPREAD)?.under(&parameters);
        let equilibrium_ph = soak.equilibrium_ph()?;
        let SoakCourse { soak, targets, .. } = SoakCourse::follow(&soak, equilibrium_ph, &[soak_h], &mut |_| ())?;
        Ok(Self { soak, targets, equilibrium_ph })
    }
}
