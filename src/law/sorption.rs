//! Water activity of cheese from its water, its salt and its solids.

use super::Matter;
use super::brine::{self, SALT_MOLAR_MASS};
use crate::numeric::{Bracket, brent, quick_exp, quick_ln};

crate::constants! {
    /// Oswin's A for the non-fat, non-salt solids of cheese.
    OSWIN_A = { "Oswin's A, non-fat solids of cheese", 0.10, "kg/kg", (0.05, 0.35), CheeseSorption2011, "fitted to casein isotherm values from memory; the edge of a ripened cheese holds 0.11 to 0.17 kg in each kg at a water activity of 0.6, which is 2.1 to 3.5 times as much", Fitted }
    /// Oswin's B for the non-fat, non-salt solids of cheese.
    OSWIN_B = { "Oswin's B, non-fat solids of cheese", 0.375, "1", (0.30, 0.45), Ourselves, "fitted to casein isotherm values from memory", Fitted }
    /// Monolayer of the alternative isotherm.
    GAB_MONOLAYER = { "Monolayer moisture of the alternative isotherm", 0.0638, "kg/kg", (0.04, 0.09), Ourselves, "fitted to casein isotherm values from memory", Fitted }
    /// C of the alternative isotherm.
    GAB_C = { "C of the alternative isotherm", 10.0, "1", (5.0, 20.0), Ourselves, "fitted to casein isotherm values from memory", Fitted }
    /// K of the alternative isotherm.
    GAB_K = { "K of the alternative isotherm", 0.85, "1", (0.75, 0.95), Ourselves, "fitted to casein isotherm values from memory", Fitted }
}

/// Which isotherm describes the solids.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Isotherm {
    /// Oswin's: a = 1/(1 + (A/X)^(1/B)).
    #[default]
    Oswin,
    /// Guggenheim, Anderson and de Boer's, capped at 1.
    Gab,
}

/// How one cheese holds its water: what share of its dry solids is salt, and what share is neither fat nor salt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sorption {
    /// Protein, carbohydrate, what of it has turned into acid, and ash, kg per kg of dry solids.
    pub non_fat_share: f64,
    /// Salt, kg per kg of dry solids.
    pub salt_share: f64,
    /// The isotherm of the solids.
    pub isotherm: Isotherm,
}

/// Least water that is looked at, kg per kg of dry solids; below it the isotherms are meaningless.
const LEAST_WATER: f64 = 1e-9;

impl Sorption {
    /// Returns the sorption of a cheese by Oswin's isotherm.
    #[must_use]
    pub fn of(matter: &Matter) -> Self {
        let solids_kg = matter.solids_kg();
        let non_fat_kg = matter.protein_kg() + matter.carbohydrate_kg + matter.ash_kg + matter.lactic_kg + matter.other_acid_kg;
        Self { non_fat_share: non_fat_kg / solids_kg, salt_share: matter.salt_kg / solids_kg, isotherm: Isotherm::Oswin }
    }

    /// Returns the same with solids that hold `times` as much water at every water activity: a factor on Oswin's A, or on the monolayer of
    /// the other isotherm, for in both only water over solids times that counts.
    ///
    /// # Arguments
    /// * `times`: > 0
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::sorption::{Isotherm, Sorption};
    /// let cheese = Sorption { non_fat_share: 0.475, salt_share: 0.0, isotherm: Isotherm::Oswin };
    /// let held = cheese.equilibrium_water(0.7).unwrap();
    /// assert!((cheese.holding(1.3).equilibrium_water(0.7).unwrap() / held - 1.3).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn holding(self, times: f64) -> Self {
        Self { non_fat_share: times * self.non_fat_share, ..self }
    }

    /// Returns the water activity, 0 to 1: the product (Ross) of that of the brine and that of the solids, each in all the water.
    ///
    /// # Arguments
    /// * `water`: kg of water per kg of dry solids, salt included
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::sorption::{Isotherm, Sorption};
    /// let cheese = Sorption { non_fat_share: 0.475, salt_share: 0.05, isotherm: Isotherm::Oswin };
    /// assert!((cheese.water_activity(0.5) - 0.94028).abs() < 1e-5);
    /// ```
    #[must_use]
    pub fn water_activity(&self, water: f64) -> f64 {
        self.activity_and_slope(water).0
    }

    /// Returns the water activity and its slope against the water content.
    #[must_use]
    pub fn activity_and_slope(&self, water: f64) -> (f64, f64) {
        match self.isotherm {
            Isotherm::Oswin => self.with(water, oswin),
            Isotherm::Gab => self.with(water, gab),
        }
    }

    /// Fills in the same for many waters, several at a time.
    ///
    /// # Arguments
    /// * `water`: as for [`Sorption::water_activity`]; the others as long
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::sorption::{Isotherm, Sorption};
    /// let cheese = Sorption { non_fat_share: 0.475, salt_share: 0.05, isotherm: Isotherm::Oswin };
    /// let (mut activities, mut slopes) = ([0.0; 2], [0.0; 2]);
    /// cheese.fill(&[0.5, 1.0], &mut activities, &mut slopes);
    /// assert_eq!((activities[1], slopes[1]), cheese.activity_and_slope(1.0));
    /// ```
    #[inline(always)]
    #[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]
    pub fn fill(&self, water: &[f64], activities: &mut [f64], slopes: &mut [f64]) {
        match self.isotherm {
            Isotherm::Oswin => self.fill_with(water, activities, slopes, oswin),
            Isotherm::Gab => self.fill_with(water, activities, slopes, gab),
        }
    }

    #[inline(always)]
    #[expect(clippy::inline_always, reason = "as above")]
    fn fill_with(&self, water: &[f64], activities: &mut [f64], slopes: &mut [f64], solids: impl Fn(f64) -> (f64, f64) + Copy) {
        for ((water, activity), slope) in water.iter().zip(activities).zip(slopes) {
            (*activity, *slope) = self.with(*water, solids);
        }
    }

    /// Returns the water activity and its slope with those of the solids alone, for kg of water per kg of non-fat solids.
    #[inline(always)]
    #[expect(clippy::inline_always, reason = "as above")]
    fn with(&self, water: f64, solids: impl Fn(f64) -> (f64, f64)) -> (f64, f64) {
        let water = water.max(LEAST_WATER);
        let molality = self.salt_share / (SALT_MOLAR_MASS.value * water);
        let (brine, log_slope) = brine::activity_and_log_slope(molality);
        let brine_log_slope = -log_slope * molality / water;
        let (solids, solids_slope) = solids(water / self.non_fat_share);
        (brine * solids, brine * (solids_slope / self.non_fat_share + solids * brine_log_slope))
    }

    /// Returns the water, kg per kg of dry solids, at which the cheese neither gains nor loses in air of this humidity (0 to 1).
    #[must_use]
    pub fn equilibrium_water(&self, relative_humidity: f64) -> Option<f64> {
        brent(|water| self.water_activity(water) - relative_humidity, Bracket { from: LEAST_WATER, to: 50.0 }, 1e-12).ok()
    }
}

/// Returns Oswin's water activity and its slope.
#[inline(always)]
#[expect(clippy::inline_always, reason = "as above")]
fn oswin(water: f64) -> (f64, f64) {
    let ratio = quick_exp(quick_ln(OSWIN_A.value / water) / OSWIN_B.value);
    let activity = 1.0 / (1.0 + ratio);
    (activity, activity * activity * ratio / (OSWIN_B.value * water))
}

/// Returns the alternative isotherm's water activity and its slope.
fn gab(water: f64) -> (f64, f64) {
    let activity = gab_inverse(water);
    if activity >= 1.0 {
        return (1.0, 0.0);
    }
    let step = 1e-6 * water.max(1e-4);
    (activity, (gab_inverse(water + step) - gab_inverse(water - step)) / (2.0 * step))
}

/// Returns the activity at which the alternative isotherm holds this much water; may exceed 1.
///
/// X = Xm C a/((1 − a)(1 − a + C a)) with a = K·activity, solved for a without cancellation.
fn gab_inverse(water: f64) -> f64 {
    let (monolayer, c, k) = (GAB_MONOLAYER.value, GAB_C.value, GAB_K.value);
    let b = monolayer * c - water * (c - 2.0);
    2.0 * water / (k * (b + (b * b + 4.0 * (c - 1.0) * water * water).sqrt()))
}
