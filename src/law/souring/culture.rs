//! The cultures that sour milk, and the law of one of them as plain numbers.

use super::cardinal::{Cardinal, ph_factor, warmth_factor};
use super::records::{
    CULTURE_LAG_WORK, CULTURE_YIELD, LACTIC_PER_LACTOSE, MESOPHILIC_MOST, MESOPHILIC_RATE, MESOPHILIC_SOURNESS, MESOPHILIC_STOP_PH,
    MESOPHILIC_UPKEEP, MESOPHILIC_WARMTH, MIXED_RATE, MIXED_WARMTH, SOURING_PH_LEAST, SOURING_WARMEST, THERMOPHILIC_MOST,
    THERMOPHILIC_RATE, THERMOPHILIC_SOURNESS, THERMOPHILIC_STOP_PH, THERMOPHILIC_UPKEEP, THERMOPHILIC_WARMTH,
};

/// A kind of culture.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Culture {
    /// Lactococci, which like 20 to 33 °C.
    #[default]
    Mesophilic,
    /// Three species together.
    Mixed,
    /// Streptococci and lactobacilli, which like 40 to 45 °C.
    Thermophilic,
}

impl Culture {
    /// Every culture.
    pub const ALL: [Self; 3] = [Self::Mesophilic, Self::Mixed, Self::Thermophilic];
}

/// Where a state lies that the law was not made for; the rate at the edge then stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beyond {
    /// Below [`SOURING_PH_LEAST`].
    TooSour,
    /// Above [`SOURING_WARMEST`].
    TooHot,
}

impl Beyond {
    /// Returns where a state lies, if beyond the law; too hot counts first.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::Beyond;
    /// assert_eq!([Beyond::at(45.0, 4.2), Beyond::at(21.0, 4.19), Beyond::at(45.1, 6.0)], [None, Some(Beyond::TooSour), Some(Beyond::TooHot)]);
    /// ```
    #[must_use]
    pub fn at(temperature_c: f64, ph: f64) -> Option<Self> {
        if temperature_c > SOURING_WARMEST.value {
            Some(Self::TooHot)
        } else if ph < SOURING_PH_LEAST.value {
            Some(Self::TooSour)
        } else {
            None
        }
    }
}

/// The law of one culture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CultureLaw {
    /// Least, best and greatest temperature, °C.
    pub warmth_c: Cardinal,
    /// Least, best and greatest pH.
    pub sourness: Cardinal,
    /// Growth at the best, ln units for each hour.
    pub rate_per_h: f64,
    /// pH at which the last acid is made.
    pub stop_ph: f64,
    /// Greatest density, cells for each g.
    pub most_per_g: f64,
    /// Lactic acid for each cell that grows, mol.
    pub yield_mol: f64,
    /// Lactic acid that a cell makes without growing, at the best, mol/h.
    pub upkeep_mol_h: f64,
    /// Work before growth: 0 for cells that grow already.
    pub h0: f64,
    /// Lactic acid from one molecule of lactose: 4, or 2 where the galactose is left.
    pub lactic_per_lactose: f64,
}

impl CultureLaw {
    /// Returns the law of a culture from its records.
    #[must_use]
    pub const fn of(culture: Culture) -> Self {
        let mesophilic = Self {
            warmth_c: MESOPHILIC_WARMTH.coefficients,
            sourness: MESOPHILIC_SOURNESS.coefficients,
            rate_per_h: MESOPHILIC_RATE.value,
            stop_ph: MESOPHILIC_STOP_PH.value,
            most_per_g: MESOPHILIC_MOST.value,
            yield_mol: CULTURE_YIELD.value,
            upkeep_mol_h: MESOPHILIC_UPKEEP.value,
            h0: CULTURE_LAG_WORK.value,
            lactic_per_lactose: LACTIC_PER_LACTOSE.value,
        };
        match culture {
            Culture::Mesophilic => mesophilic,
            Culture::Mixed => Self { warmth_c: MIXED_WARMTH.coefficients, rate_per_h: MIXED_RATE.value, ..mesophilic },
            Culture::Thermophilic => Self {
                warmth_c: THERMOPHILIC_WARMTH.coefficients,
                sourness: THERMOPHILIC_SOURNESS.coefficients,
                rate_per_h: THERMOPHILIC_RATE.value,
                stop_ph: THERMOPHILIC_STOP_PH.value,
                most_per_g: THERMOPHILIC_MOST.value,
                upkeep_mol_h: THERMOPHILIC_UPKEEP.value,
                ..mesophilic
            },
        }
    }

    /// Returns the law of one that grows and works `times` as fast.
    #[must_use]
    pub const fn faster(self, times: f64) -> Self {
        Self { rate_per_h: times * self.rate_per_h, upkeep_mol_h: times * self.upkeep_mol_h, ..self }
    }

    /// Returns how warmth slows it, 0 to 1: CM₂(T); above 45 °C that at 45 °C as long as it grows at all.
    #[must_use]
    pub fn warmth_factor(&self, temperature_c: f64) -> f64 {
        let [_, _, most] = self.warmth_c;
        // Beyond its greatest temperature nothing grows, whatever the edge of the law says.
        if temperature_c >= most { 0.0 } else { warmth_factor(self.warmth_c, temperature_c.min(SOURING_WARMEST.value)) }
    }

    /// Returns the growth rate, 1/h: μ CM₂(T) CM₁(pH), at the edge of the law where it does not hold.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::{Culture, CultureLaw};
    /// let law = CultureLaw::of(Culture::Mesophilic);
    /// assert!((law.growth_per_h(33.0, 6.3) - 1.15).abs() < 1e-12);
    /// assert_eq!(law.growth_per_h(41.0, 6.3), 0.0);
    /// ```
    #[must_use]
    pub fn growth_per_h(&self, temperature_c: f64, ph: f64) -> f64 {
        let [least, ..] = self.sourness;
        let sourness = if ph <= least { 0.0 } else { ph_factor(self.sourness, at_the_edge(ph)) };
        self.rate_per_h * self.warmth_factor(temperature_c) * sourness
    }

    /// Returns how far it still makes acid without growing, 0 to 1: (pH − stop)/(best − stop).
    pub(super) fn going(&self, ph: f64) -> f64 {
        let [_, best, _] = self.sourness;
        if ph <= self.stop_ph { 0.0 } else { ((at_the_edge(ph) - self.stop_ph) / (best - self.stop_ph)).clamp(0.0, 1.0) }
    }
}

/// Returns a pH, or the edge of the law if it lies below; what is no number stays so.
fn at_the_edge(ph: f64) -> f64 {
    if ph < SOURING_PH_LEAST.value { SOURING_PH_LEAST.value } else { ph }
}
