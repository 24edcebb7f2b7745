//! How fast a germ grows at one place: the rate where it grows best times a factor for each condition.

use super::best_rates::{BOTULINUM_RATE, CEREUS_RATE, COLI_RATE, LISTERIA_RATE, SALMONELLA_RATE, STAPHYLOCOCCUS_RATE};
use super::cardinal::{Distances, hindered};
use super::conditions::{Conditions, GrowthFactors};
use super::germ::Germ;
use super::inhibiting as acid;
use super::shape::{Moisture, Shape};
use crate::numeric::quick_exp;
use crate::source::Constant;
use std::f64::consts::LN_10;

/// The law of growth of one germ, plain data that may be changed for a spread or a second reading.
///
/// Potential growth compares designs; that this law foresees no growth is no proof. Not for use below pH 4.2 or above 45 °C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrowthLaw {
    /// Whose law it is.
    pub germ: Germ,
    /// Rate where it grows best, ln per hour.
    pub best_rate_per_h: f64,
    /// Undissociated lactic acid from which it does not grow, mmol per kg of water; none has no effect.
    pub lactic_mm: Option<f64>,
    /// Undissociated acetic acid from which it does not grow, mmol per kg of water; none has no effect.
    pub acetic_mm: Option<f64>,
    shape: Shape,
}

impl GrowthLaw {
    /// Returns the law of a germ as the records have it.
    ///
    /// # Source
    /// [`super::CARDINAL_CORRELATIONS`], [`super::BEST_RATE_CONSTANTS`], [`super::INHIBITING_CONSTANTS`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::growth::{Conditions, Germ, GrowthLaw};
    /// let cold = Conditions { temperature_c: 4.0, ph: 6.5, water_activity: 0.985, ..Conditions::default() };
    /// let rate = GrowthLaw::of(Germ::Listeria).rate_per_h(&cold);
    /// assert!((rate / 0.020_873_1 - 1.0).abs() < 1e-4);
    /// assert_eq!(GrowthLaw::of(Germ::Staphylococcus).rate_per_h(&cold), 0.0);
    /// ```
    #[must_use]
    pub const fn of(germ: Germ) -> Self {
        let (lactic, acetic): (Option<Constant>, Option<Constant>) = match germ {
            Germ::Listeria => (Some(acid::LISTERIA_LACTIC), Some(acid::LISTERIA_ACETIC)),
            Germ::Staphylococcus => (Some(acid::STAPHYLOCOCCUS_LACTIC), Some(acid::STAPHYLOCOCCUS_ACETIC)),
            Germ::Salmonella | Germ::Coli => (Some(acid::ENTERIC_LACTIC), Some(acid::ENTERIC_ACETIC)),
            Germ::Cereus => (Some(acid::CEREUS_LACTIC), Some(acid::CEREUS_ACETIC)),
            // Acids beside pH are not counted, to the cautious side.
            Germ::ColdBotulinum => (None, None),
        };
        Self {
            germ,
            best_rate_per_h: Self::rate_record(germ).value,
            lactic_mm: value(lactic),
            acetic_mm: value(acetic),
            shape: Shape::of(germ),
        }
    }

    /// Returns the record of a germ's rate where it grows best; its range is that of the spread.
    #[must_use]
    pub const fn rate_record(germ: Germ) -> Constant {
        match germ {
            Germ::Listeria => LISTERIA_RATE,
            Germ::Staphylococcus => STAPHYLOCOCCUS_RATE,
            Germ::Salmonella => SALMONELLA_RATE,
            Germ::Coli => COLI_RATE,
            Germ::Cereus => CEREUS_RATE,
            Germ::ColdBotulinum => BOTULINUM_RATE,
        }
    }

    /// Returns the law with a rate that is as many times as great.
    #[must_use]
    pub const fn faster(mut self, times: f64) -> Self {
        self.best_rate_per_h *= times;
        self
    }

    /// Returns the law with other inhibiting amounts of undissociated acid, mmol per kg of water, both > 0.
    #[must_use]
    pub const fn inhibited_at(mut self, lactic_mm: f64, acetic_mm: f64) -> Self {
        self.lactic_mm = Some(lactic_mm);
        self.acetic_mm = Some(acetic_mm);
        self
    }

    /// Returns the law without any effect of lactic acid beside pH.
    #[must_use]
    pub const fn without_lactic(mut self) -> Self {
        self.lactic_mm = None;
        self
    }

    /// Returns the factors at a place, each 0 to 1; a figure that is no number holds nothing back.
    #[must_use]
    pub fn factors(&self, at: &Conditions) -> GrowthFactors {
        self.factors_at(at.temperature_c, &Sour::of(at.ph, at.lactic_mm, at.acetic_mm), at.water_activity)
    }

    /// Returns the same where it is known already what of the acids is not split.
    #[must_use]
    pub fn factors_at(&self, temperature_c: f64, sour: &Sour, water_activity: f64) -> GrowthFactors {
        GrowthFactors {
            temperature: self.shape.warmth.factor(temperature_c),
            ph: self.shape.ph.factor(sour.ph, super::cardinal::Power::One),
            water: self.shape.moisture.factor(water_activity),
            acids: self.acids(sour),
            interaction: self.warmed(temperature_c).at(sour).interaction(water_activity),
        }
    }

    /// Returns the rate of growth at a place, ln per hour, never below zero.
    #[must_use]
    pub fn rate_per_h(&self, at: &Conditions) -> f64 {
        self.at(at.temperature_c, at.ph, at.lactic_mm, at.acetic_mm).rate_per_h(at.water_activity)
    }

    /// Returns everything but the water activity, worked out once for many places that differ in nothing else.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::growth::{Germ, GrowthLaw};
    /// let place = GrowthLaw::of(Germ::Staphylococcus).at(38.0, 6.45, 0.0, 0.0);
    /// assert!(place.rate_per_h(0.97) > place.rate_per_h(0.90));
    /// ```
    #[must_use]
    pub fn at(&self, temperature_c: f64, ph: f64, lactic_mm: f64, acetic_mm: f64) -> GrowthPlace {
        self.warmed(temperature_c).at(&Sour::of(ph, lactic_mm, acetic_mm))
    }

    /// Returns everything that follows from the temperature, worked out once for many places that are as warm.
    #[must_use]
    pub fn warmed(&self, temperature_c: f64) -> WarmGrowth {
        let warmth = self.shape.warmth;
        WarmGrowth { law: *self, factor: warmth.factor(temperature_c), distance: warmth.values().distance(temperature_c) }
    }

    /// Returns the factor of both acids, from what of them is not split.
    fn acids(&self, sour: &Sour) -> f64 {
        let one = |amount: f64, inhibiting: Option<f64>, alpha: &Constant| {
            inhibiting.map_or(1.0, |most| hindered(amount, most, alpha.value))
        };
        one(sour.lactic_mm, self.lactic_mm, &acid::LACTIC_ALPHA) * one(sour.acetic_mm, self.acetic_mm, &acid::ACETIC_ALPHA)
    }
}

const fn value(record: Option<Constant>) -> Option<f64> {
    match record {
        Some(record) => Some(record.value),
        None => None,
    }
}

/// How sour a place is, for any germ.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sour {
    /// pH.
    pub ph: f64,
    /// Lactic acid that is not split, mmol per kg of water.
    pub lactic_mm: f64,
    /// Acetic acid that is not split, mmol per kg of water.
    pub acetic_mm: f64,
}

impl Sour {
    /// Returns how sour a place is, from all forms of its acids.
    #[must_use]
    pub fn of(ph: f64, lactic_mm: f64, acetic_mm: f64) -> Self {
        // As `undissociated` has it, with one power of the pH for both: this is asked at every place and moment.
        let splits = quick_exp(LN_10 * ph);
        let unsplit = |total: f64, pk: f64| {
            if total.abs() < f64::MIN_POSITIVE { total } else { total / (1.0 + splits * quick_exp(-LN_10 * pk)) }
        };
        Self { ph, lactic_mm: unsplit(lactic_mm, acid::LACTIC_PK.value), acetic_mm: unsplit(acetic_mm, acid::ACETIC_PK.value) }
    }
}

/// A germ at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WarmGrowth {
    law: GrowthLaw,
    factor: f64,
    distance: f64,
}

impl WarmGrowth {
    /// Returns whether anything grows at this temperature at all.
    #[must_use]
    pub fn grows(&self) -> bool {
        self.factor > 0.0
    }

    /// Returns everything but the water activity.
    #[must_use]
    pub fn at(&self, sour: &Sour) -> GrowthPlace {
        let Shape { ph: acidity, moisture, interacts, .. } = self.law.shape;
        let acids = self.law.acids(sour);
        let factors = self.factor * acidity.factor(sour.ph, super::cardinal::Power::One) * acids;
        let far = [self.distance, acidity.distance(sour.ph), (1.0 - acids) * (1.0 - acids)];
        GrowthPlace {
            rate_in_water_per_h: self.law.best_rate_per_h * factors,
            moisture,
            others: if interacts { Some(Distances::of(&far)) } else { None },
        }
    }
}

/// A place of which only the water activity is open; its rate costs a few products.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrowthPlace {
    rate_in_water_per_h: f64,
    moisture: Moisture,
    others: Option<Distances>,
}

impl GrowthPlace {
    /// Returns whether it grows there at all, were there water enough.
    #[must_use]
    pub fn grows(&self) -> bool {
        self.rate_in_water_per_h > 0.0
    }

    /// Returns the rate of growth at a water activity, ln per hour, never below zero.
    #[must_use]
    pub fn rate_per_h(&self, water_activity: f64) -> f64 {
        self.rate_in_water_per_h * self.moisture.factor(water_activity) * self.interaction(water_activity)
    }

    /// Fills in how fast it grows at each of many water activities, as [`Self::rate_per_h`], times a share.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::growth::{Germ, GrowthLaw};
    /// let place = GrowthLaw::of(Germ::Listeria).at(10.0, 5.5, 0.0, 0.0);
    /// let mut rates = [0.0; 2];
    /// place.fill_rates(&mut rates, &[0.98, 0.9], 0.5);
    /// assert!((rates[0] - 0.5 * place.rate_per_h(0.98)).abs() < 1e-15 && rates[1] == 0.0);
    /// ```
    pub fn fill_rates(&self, rates: &mut [f64], water_activities: &[f64], share: f64) {
        rates.fill(share * self.rate_in_water_per_h);
        self.moisture.hold_back(rates, water_activities);
        if self.others.is_some() {
            for (rate, water_activity) in rates.iter_mut().zip(water_activities) {
                *rate *= self.interaction(*water_activity);
            }
        }
    }

    fn interaction(&self, water_activity: f64) -> f64 {
        self.others.map_or(1.0, |others| others.interaction_with(self.moisture.distance(water_activity)))
    }
}
