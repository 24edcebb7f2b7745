//! The acids that sour milk: how much of each splits at a pH, and amounts of them side by side.

use crate::law::acidity::ACETIC_MOLAR_MASS;
use crate::numeric::quick_exp;
use crate::source::Correlation;
use std::f64::consts::LN_10;
use std::ops::{Add, Mul};

crate::constants! {
    /// Molar mass of lactic acid.
    LACTIC_MOLAR_MASS = { "Molar mass of lactic acid", 0.090_08, "kg/mol", (0.0900, 0.0901), Textbook, "sum of atomic masses", FromMemory }
    /// Molar mass of citric acid.
    CITRIC_MOLAR_MASS = { "Molar mass of citric acid, anhydrous", 0.192_12, "kg/mol", (0.1921, 0.1922), Textbook, "sum of atomic masses", FromMemory }
    /// Molar mass of gluconic acid.
    GLUCONIC_MOLAR_MASS = { "Molar mass of gluconic acid", 0.196_16, "kg/mol", (0.1961, 0.1962), Textbook, "sum of atomic masses", FromMemory }
}

/// What each record of pK says.
const FORM: &str = "pK of each step";

crate::correlations! {
    /// pK of lactic acid.
    LACTIC_PK = { "pK of lactic acid", FORM, [3.86], "1", (0.0, 14.0), "pH", Textbook, "that with which the inhibiting amounts of the acid were worked out", FromMemory }
    /// pK of acetic acid.
    ACETIC_PK = { "pK of acetic acid in milk", FORM, [4.76], "1", (0.0, 14.0), "pH", HarnedEhlers1933, "in water; that with which the inhibiting amounts of the acid were worked out", FromMemory }
    /// pKs of citric acid.
    CITRIC_PK = { "pKs of citric acid", FORM, [3.13, 4.76, 6.40], "1", (0.0, 14.0), "pH", Textbook, "in water", FromMemory }
    /// pK of gluconic acid.
    GLUCONIC_PK = { "pK of gluconic acid", FORM, [3.86], "1", (0.0, 14.0), "pH", Textbook, "in water", FromMemory }
}

/// An acid that is stirred into milk or made in it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Acid {
    /// Made by cultures of lactic acid bacteria.
    #[default]
    Lactic,
    /// The acid of vinegar.
    Acetic,
    /// The acid of lemons, anhydrous.
    Citric,
    /// What glucono-delta-lactone turns into.
    Gluconic,
}

impl Acid {
    /// Every acid.
    pub const ALL: [Self; 4] = [Self::Lactic, Self::Acetic, Self::Citric, Self::Gluconic];

    /// Returns its molar mass, g/mol.
    #[must_use]
    pub const fn g_per_mol(self) -> f64 {
        1000.0
            * match self {
                Self::Lactic => LACTIC_MOLAR_MASS.value,
                Self::Acetic => ACETIC_MOLAR_MASS.value,
                Self::Citric => CITRIC_MOLAR_MASS.value,
                Self::Gluconic => GLUCONIC_MOLAR_MASS.value,
            }
    }

    /// Returns the pK of each step.
    #[must_use]
    pub const fn pks(self) -> &'static [f64] {
        const fn of<const N: usize>(record: &'static Correlation<N>) -> &'static [f64] {
            &record.coefficients
        }
        match self {
            Self::Lactic => of(&LACTIC_PK),
            Self::Acetic => of(&ACETIC_PK),
            Self::Citric => of(&CITRIC_PK),
            Self::Gluconic => of(&GLUCONIC_PK),
        }
    }

    /// Returns the hydrogen ions that each molecule gives off at a pH, from 0 to the number of its steps.
    ///
    /// z = Σ i tᵢ / Σ tᵢ, tᵢ = 10^(i pH − pK₁ − … − pKᵢ), t₀ = 1.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::Acid;
    /// assert!((Acid::Lactic.given_off(3.86) - 0.5).abs() < 1e-12);
    /// assert!((Acid::Citric.given_off(9.0) - 3.0).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn given_off(self, ph: f64) -> f64 {
        self.given_off_and_rise(ph).0
    }

    /// Returns the hydrogen ions given off for each molecule, and how they rise with pH.
    pub(super) fn given_off_and_rise(self, ph: f64) -> (f64, f64) {
        // Sums of the terms, of each times its step, and of each times the square of its step; the rise is their variance.
        let (mut term, mut step) = (1.0, 0.0);
        let (mut all, mut first, mut second) = (1.0, 0.0, 0.0);
        for pk in self.pks() {
            term *= quick_exp(LN_10 * (ph - pk));
            step += 1.0;
            all += term;
            first += step * term;
            second += step * step * term;
        }
        let mean = first / all;
        (mean, LN_10 * (second / all - mean * mean))
    }
}

/// Amounts of acids side by side, all forms of each together, mol for each kg of milk or curd.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AcidAmounts {
    /// Lactic acid.
    pub lactic: f64,
    /// Acetic acid.
    pub acetic: f64,
    /// Citric acid that was added; that of the milk itself is in its buffer.
    pub citric: f64,
    /// Gluconic acid.
    pub gluconic: f64,
}

impl AcidAmounts {
    /// Returns an amount of one acid alone, mol/kg.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::souring::{Acid, AcidAmounts};
    /// let both = AcidAmounts::of(Acid::Lactic, 0.02) + AcidAmounts::of(Acid::Citric, 0.001);
    /// assert_eq!((both.lactic, both.citric, both.acetic), (0.02, 0.001, 0.0));
    /// ```
    #[must_use]
    pub fn of(acid: Acid, mol_kg: f64) -> Self {
        let mut amounts = Self::default();
        *amounts.amount_mut(acid) = mol_kg;
        amounts
    }

    /// Returns the amount of one acid, mol/kg.
    #[must_use]
    pub const fn amount(&self, acid: Acid) -> f64 {
        match acid {
            Acid::Lactic => self.lactic,
            Acid::Acetic => self.acetic,
            Acid::Citric => self.citric,
            Acid::Gluconic => self.gluconic,
        }
    }

    const fn amount_mut(&mut self, acid: Acid) -> &mut f64 {
        match acid {
            Acid::Lactic => &mut self.lactic,
            Acid::Acetic => &mut self.acetic,
            Acid::Citric => &mut self.citric,
            Acid::Gluconic => &mut self.gluconic,
        }
    }

    /// Returns whether there is no acid at all.
    #[must_use]
    pub fn is_none(&self) -> bool {
        Acid::ALL.into_iter().all(|acid| self.amount(acid) <= 0.0)
    }

    /// Returns the hydrogen ions that all of them give off at a pH, mol/kg, and how they rise with it.
    pub(super) fn given_off_and_rise(&self, ph: f64) -> (f64, f64) {
        let mut sum = (0.0, 0.0);
        for acid in Acid::ALL {
            let amount = self.amount(acid);
            // What is not there costs nothing; what is no number is there.
            if amount.abs().to_bits() != 0 {
                let (given, rise) = acid.given_off_and_rise(ph);
                sum = (sum.0 + amount * given, sum.1 + amount * rise);
            }
        }
        sum
    }
}

impl Add for AcidAmounts {
    type Output = Self;

    fn add(self, more: Self) -> Self {
        Self {
            lactic: self.lactic + more.lactic,
            acetic: self.acetic + more.acetic,
            citric: self.citric + more.citric,
            gluconic: self.gluconic + more.gluconic,
        }
    }
}

impl Mul<f64> for AcidAmounts {
    type Output = Self;

    fn mul(self, times: f64) -> Self {
        Self {
            lactic: times * self.lactic,
            acetic: times * self.acetic,
            citric: times * self.citric,
            gluconic: times * self.gluconic,
        }
    }
}
