//! Milk or curd that takes up acid: its pH from the acids in it, and the acid that a pH wants.

use super::acids::{Acid, AcidAmounts};
use crate::law::buffering::Buffer;
use crate::numeric::quick_exp;
use std::f64::consts::LN_10;

crate::constants! {
    /// How much stronger or weaker milk and curd may buffer.
    SOURING_BUFFER_SCALE = { "Buffer of milk and curd on souring over that of its groups", 1.0, "1", (0.65, 1.2), Ourselves, "yoghurts and firm cheeses that were measured would be met by 0.64 to 0.76, a spoon rule and glucono-delta-lactone by about 1; too strong foresees slower souring", Judged }
}

/// The sourest pH that is looked for.
const LEAST_PH: f64 = 1.0;
/// The least sour pH that is looked for.
const GREATEST_PH: f64 = 9.0;
/// Where the search begins if nobody knows better.
const FIRST_GUESS: f64 = 5.2;
/// A step in pH after which no other is asked for; Newton's steps square their error, so what is left is rounding.
const LAST_STEP: f64 = 1e-8;

/// A milk or curd that can be soured, for each kg of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Sourable {
    buffer: Buffer,
    water: f64,
}

impl Sourable {
    /// Returns a milk or curd.
    ///
    /// # Arguments
    /// * `protein`, `water`: shares by mass, 0 to 1
    /// * `start_ph`: its own pH, before any acid
    /// * `scale`: of its buffer, [`SOURING_BUFFER_SCALE`] in its range; 0 is water
    ///
    /// # Source
    /// The groups of [`crate::law::buffering`].
    #[must_use]
    pub fn new(protein: f64, water: f64, start_ph: f64, scale: f64) -> Self {
        Self { buffer: Buffer::new(protein, water, start_ph, scale), water }
    }

    /// Returns its own pH, before any acid.
    #[must_use]
    pub const fn start_ph(&self) -> f64 {
        self.buffer.start_ph
    }

    /// Returns the hydrogen ions that bring it to a pH, mol/kg: taken up and free, B + w 10^−pH; what a strong acid would give.
    #[must_use]
    pub fn hydrogen_for(&self, ph: f64) -> f64 {
        self.buffer.taken_and_slope(ph).0 + self.water * quick_exp(-LN_10 * ph)
    }

    /// Returns the pH with some acids in it: Σ n z(pH) = B(pH) + w 10^−pH, between 1 and its own pH, which it keeps without acid.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::{Acid, AcidAmounts, Sourable};
    /// let milk = Sourable::new(0.0325, 0.880, 6.65, 1.0);
    /// assert!((milk.ph_of(&AcidAmounts::of(Acid::Lactic, 0.030_576)) - 5.3).abs() < 1e-4);
    /// assert_eq!(milk.ph_of(&AcidAmounts::default()), 6.65);
    /// ```
    #[must_use]
    pub fn ph_of(&self, acids: &AcidAmounts) -> f64 {
        self.ph_near(acids, FIRST_GUESS)
    }

    /// Returns the same as [`Sourable::ph_of`], sooner where the pH is near a guess.
    ///
    /// Newton's method, held between bounds that close in: where a step would leave them, they are halved.
    #[must_use]
    pub fn ph_near(&self, acids: &AcidAmounts, guess_ph: f64) -> f64 {
        if acids.is_none() {
            return self.start_ph();
        }
        let (mut low, mut high) = (LEAST_PH.min(self.start_ph()), self.start_ph());
        let mut ph = if low < guess_ph && guess_ph < high { guess_ph } else { 0.5 * (low + high) };
        for _ in 0..60 {
            let hydrogen = self.water * quick_exp(-LN_10 * ph);
            let (taken, fall) = self.buffer.taken_and_slope(ph);
            let (given, rise) = acids.given_off_and_rise(ph);
            let excess = given - taken - hydrogen;
            if excess.is_nan() {
                return f64::NAN;
            }
            if excess > 0.0 {
                high = ph;
            } else {
                low = ph;
            }
            let step = excess / (rise + fall + LN_10 * hydrogen);
            if step.abs() < LAST_STEP {
                return (ph - step).min(self.start_ph());
            }
            let next = ph - step;
            ph = if low < next && next < high { next } else { 0.5 * (low + high) };
        }
        ph
    }

    /// Returns the amount of one acid that brings it to a pH, mol/kg; none for a pH that is not below its own.
    ///
    /// n = (B(pH) + w 10^−pH)/z(pH).
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::{Acid, Sourable};
    /// let milk = Sourable::new(0.0325, 0.880, 6.65, 1.0);
    /// // 1.4 g of citric acid for each kg: the spoon rule of a curd that stretches.
    /// assert!((milk.acid_for(5.8, Acid::Citric) * Acid::Citric.g_per_mol() - 1.40).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn acid_for(&self, ph: f64, acid: Acid) -> f64 {
        self.acid_for_beside(ph, acid, &AcidAmounts::default())
    }

    /// Returns the amount of one acid that brings it to a pH together with the acids that are there already, mol/kg; none if they do alone.
    #[must_use]
    pub fn acid_for_beside(&self, ph: f64, acid: Acid, already: &AcidAmounts) -> f64 {
        if ph >= self.start_ph() {
            return 0.0;
        }
        let lacking = self.hydrogen_for(ph) - already.given_off_and_rise(ph).0;
        // Not a number stays one.
        if lacking <= 0.0 { 0.0 } else { lacking / acid.given_off(ph) }
    }

    /// Returns the own pH that a matter must have had, if it is at this pH with these acids in it.
    ///
    /// It is what [`Sourable::ph_of`] undoes: B(pH₀ → pH) = Σ n z(pH) − w 10^−pH, for pH₀. Newton's method, held between bounds that close in.
    ///
    /// # Arguments
    /// * `protein`, `water`, `scale`: as for [`Sourable::new`]
    /// * `ph`, `acids`: what it is now
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::{Acid, AcidAmounts, Sourable};
    /// let acids = AcidAmounts::of(Acid::Lactic, 0.030_576);
    /// assert!((Sourable::own_ph_of(0.0325, 0.880, 1.0, 5.3, &acids) - 6.65).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn own_ph_of(protein: f64, water: f64, scale: f64, ph: f64, acids: &AcidAmounts) -> f64 {
        let buffer = Buffer::new(protein, water, ph, scale);
        let held = acids.given_off_and_rise(ph).0 - water * quick_exp(-LN_10 * ph);
        // Without acid there is nothing to undo; what is no number stays so.
        if held <= 0.0 {
            return ph;
        }
        let (mut low, mut high) = (ph, GREATEST_PH);
        let mut own = ph;
        for _ in 0..60 {
            let (taken, slope) = buffer.taken_and_slope(own);
            let lacking = held + taken;
            if lacking > 0.0 {
                low = own;
            } else {
                high = own;
            }
            let next = own + lacking / slope;
            let next = if low < next && next < high { next } else { 0.5 * (low + high) };
            if (next - own).abs() < LAST_STEP {
                return next;
            }
            own = next;
        }
        own
    }
}
