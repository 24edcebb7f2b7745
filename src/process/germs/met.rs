//! What germs meet at every place at every moment, kept so that it can be asked later how fast they could grow there.

use super::line::GermLine;
use crate::design::Stage;
use crate::law::growth::{GrowthLaw, HeldBackBy, Sour};
use std::f64::consts::LN_10;

/// One moment of a stage.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MetMoment {
    /// Hours from the start of warming.
    pub at_h: f64,
    /// Temperature, °C.
    pub temperature_c: f64,
    /// How crowded the culture is, 0 to 1.
    pub crowd: f64,
    /// Whether there is air.
    pub air: bool,
    /// How sour each place is; one where all are alike.
    pub sours: Vec<Sour>,
    /// Water activity of each place.
    pub water_activities: Vec<f32>,
}

/// What the places of a cheese met in one stage.
#[derive(Clone, Debug, PartialEq)]
pub struct MetInStage {
    /// The stage.
    pub stage: Stage,
    /// Its moments, in order.
    pub moments: Vec<MetMoment>,
    /// Index of the place at the centre.
    pub centre: usize,
    /// Index of the place at the rim, half-way up.
    pub rim: usize,
}

/// What holds the growth of a germ back most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GermHold {
    /// A factor of its law.
    Law(HeldBackBy),
    /// The culture, which leaves it little room.
    Culture,
    /// Air, which it does not bear.
    Air,
}

impl GermHold {
    /// Returns it in words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Law(factor) => factor.words(),
            Self::Culture => "the culture, grown dense",
            Self::Air => "air, in which it cannot grow",
        }
    }
}

/// How a germ could grow at one place at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GermsNow {
    /// Rate of growth, ln per hour.
    pub rate_per_h: f64,
    /// What holds it back most.
    pub held_back_by: GermHold,
}

impl GermsNow {
    /// Returns the hours in which the germ could multiply tenfold; none where no growth is foreseen.
    #[must_use]
    pub fn tenfold_h(&self) -> Option<f64> {
        (self.rate_per_h > 0.0).then(|| LN_10 / self.rate_per_h).filter(|hours| hours.is_finite())
    }
}

impl MetInStage {
    /// Returns how a germ could grow at a place, between the moments around an hour from the start of warming; at the ends beyond them.
    #[must_use]
    pub fn now(&self, line: GermLine, law: &GrowthLaw, at_h: f64, place: usize) -> Option<GermsNow> {
        let after = self.moments.partition_point(|moment| moment.at_h < at_h).min(self.moments.len().checked_sub(1)?);
        let (before, after) = (self.moments.get(after.saturating_sub(1))?, self.moments.get(after)?);
        let gap_h = after.at_h - before.at_h;
        let share = if gap_h > 0.0 { ((at_h - before.at_h) / gap_h).clamp(0.0, 1.0) } else { 1.0 };
        let mix = |of: &dyn Fn(&MetMoment) -> f64| of(before) + share * (of(after) - of(before));
        let sour = Sour {
            ph: mix(&|moment| moment.sour(place).ph),
            lactic_mm: mix(&|moment| moment.sour(place).lactic_mm),
            acetic_mm: mix(&|moment| moment.sour(place).acetic_mm),
        };
        let (temperature_c, water_activity) = (mix(&|moment| moment.temperature_c), mix(&|moment| moment.water_activity(place)));
        let alone = (1.0 - mix(&|moment| moment.crowd)).clamp(0.0, 1.0);
        if line.wants_no_air() && after.air {
            return Some(GermsNow { rate_per_h: 0.0, held_back_by: GermHold::Air });
        }
        let factors = law.factors_at(temperature_c, &sour, water_activity);
        let held_back_by = if alone < factors.least() { GermHold::Culture } else { GermHold::Law(factors.held_back_by()) };
        let rate_per_h = alone * law.warmed(temperature_c).at(&sour).rate_per_h(water_activity);
        Some(GermsNow { rate_per_h, held_back_by })
    }
}

impl MetMoment {
    fn sour(&self, place: usize) -> Sour {
        self.sours.get(place).or_else(|| self.sours.first()).copied().unwrap_or_default()
    }

    fn water_activity(&self, place: usize) -> f64 {
        self.water_activities.get(place).or_else(|| self.water_activities.first()).map_or(0.0, |activity| f64::from(*activity))
    }
}
