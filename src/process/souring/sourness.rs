//! What sours a milk or a curd, and how far it has come.

use crate::law::Matter;
use crate::law::acidity::ACETIC_MOLAR_MASS;
use crate::law::souring::{
    Acid, AcidAmounts, CITRIC_MOLAR_MASS, CultureLaw, LACTIC_MOLAR_MASS, LACTIC_PER_LACTOSE, LACTONE_MOLAR_MASS,
    LACTOSE_MOLAR_MASS, Sourable,
};

crate::constants! {
    /// From milk to curd.
    CURD_PH_FALL = { "Fall of pH from milk to its unsoured curd", 0.15, "pH", (0.05, 0.25), Ourselves, "milk of pH 6.65 gives curd of about 6.5: calcium chloride goes in, whey goes out", Judged }
    /// Where the culture goes.
    CELLS_KEPT = { "Share of the culture's cells that the curd keeps", 0.97, "1", (0.85, 0.99), Ourselves, "3 % of the germs of a brined cheese were lost to its whey, published in an abstract; taken for the culture too", Judged }
}

/// A culture at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CultureNow {
    /// Its law.
    pub law: CultureLaw,
    /// Its cells for each g.
    pub cells_per_g: f64,
    /// Its growth dose M so far, which ends its lag.
    pub dose: f64,
}

/// An acid beside acetic and lactic acid.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum OtherAcid {
    /// None.
    #[default]
    None,
    /// Citric acid.
    Citric,
    /// Glucono-delta-lactone, of which a share has split.
    Lactone,
}

/// What sours a milk or a curd, and how far it has come. How much acid there is stands in its [`Matter`].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sourness {
    /// pH that it would have without any acid.
    pub own_ph: f64,
    /// Its buffer over that of its groups.
    pub buffer_scale: f64,
    /// The culture that works in it.
    pub culture: Option<CultureNow>,
    /// What [`Matter::other_acid_kg`] is.
    pub other: OtherAcid,
    /// Share of the lactone that has split, 0 to 1.
    pub lactone_split: f64,
}

impl Sourness {
    /// Returns milk or curd of this pH in which nothing sours.
    #[must_use]
    pub fn unsoured(own_ph: f64) -> Self {
        Self { own_ph, buffer_scale: 1.0, ..Self::default() }
    }

    /// Returns the acids in a matter, mol/kg.
    #[must_use]
    pub fn acids(&self, matter: &Matter) -> AcidAmounts {
        let per_kg = 1.0 / matter.total_kg();
        let other = match self.other {
            OtherAcid::None => AcidAmounts::default(),
            OtherAcid::Citric => AcidAmounts::of(Acid::Citric, matter.other_acid_kg / CITRIC_MOLAR_MASS.value),
            OtherAcid::Lactone => {
                AcidAmounts::of(Acid::Gluconic, self.lactone_split * matter.other_acid_kg / LACTONE_MOLAR_MASS.value)
            }
        };
        let lactic = AcidAmounts::of(Acid::Lactic, matter.lactic_kg / LACTIC_MOLAR_MASS.value);
        let acetic = AcidAmounts::of(Acid::Acetic, matter.acid_kg / ACETIC_MOLAR_MASS.value);
        (lactic + acetic + other) * per_kg
    }

    /// Returns how a matter takes up acid.
    #[must_use]
    pub fn sourable(&self, matter: &Matter) -> Sourable {
        let per_kg = 1.0 / matter.total_kg();
        Sourable::new(per_kg * matter.protein_kg(), per_kg * matter.water_kg, self.own_ph, self.buffer_scale)
    }

    /// Returns the pH of a matter.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{law::Matter, process::Sourness};
    /// let curd = Matter { water_kg: 0.60, casein_kg: 0.16, fat_kg: 0.24, ..Matter::default() };
    /// assert_eq!(Sourness::unsoured(6.5).ph(&curd), 6.5);
    /// let soured = Matter { lactic_kg: 0.010, fat_kg: 0.23, ..curd };
    /// assert!((5.1..5.3).contains(&Sourness::unsoured(6.5).ph(&soured)));
    /// ```
    #[must_use]
    pub fn ph(&self, matter: &Matter) -> f64 {
        self.sourable(matter).ph_of(&self.acids(matter))
    }

    /// Returns the same in a matter that is at this pH, whatever left it before: its own pH follows.
    ///
    /// Whey that leaves is as sour as the curd and vapour takes no acid along, so neither changes the pH, though both change how much acid there
    /// is for each kilogram of protein.
    #[must_use]
    pub fn holding(&self, matter: &Matter, ph: f64) -> Self {
        let per_kg = 1.0 / matter.total_kg();
        let (protein, water) = (per_kg * matter.protein_kg(), per_kg * matter.water_kg);
        Self { own_ph: Sourable::own_ph_of(protein, water, self.buffer_scale, ph, &self.acids(matter)), ..*self }
    }

    /// Returns whether anything goes on souring by itself.
    #[must_use]
    pub fn goes_on(&self) -> bool {
        self.culture.is_some() || (self.other == OtherAcid::Lactone && self.lactone_split < 1.0)
    }

    /// Returns the same, and the matter with so much more or less lactic acid that its pH is what a meter said.
    ///
    /// Where no lactic acid from its lactose explains the pH, its own pH is taken to be another.
    #[must_use]
    pub fn measured(&self, matter: &Matter, ph: f64) -> (Self, Matter) {
        let without = Matter { lactic_kg: 0.0, ..*matter };
        let wanted = self.sourable(matter).acid_for_beside(ph, Acid::Lactic, &self.acids(&without));
        let wanted_kg = wanted * LACTIC_MOLAR_MASS.value * matter.total_kg();
        let lactose_kg = (wanted_kg - matter.lactic_kg) / LACTIC_FROM_LACTOSE;
        let soured = *matter + turned(lactose_kg.min(matter.carbohydrate_kg));
        (if (self.ph(&soured) - ph).abs() > LITTLE_PH { self.holding(&soured, ph) } else { *self }, soured)
    }
}

/// A difference in pH that is none.
const LITTLE_PH: f64 = 1e-6;
/// Lactic acid that a mass of lactose and its water become, kg/kg.
const LACTIC_FROM_LACTOSE: f64 = LACTIC_PER_LACTOSE.value * LACTIC_MOLAR_MASS.value / LACTOSE_MOLAR_MASS.value;

/// Returns what changes when so much lactose turns into lactic acid: C₁₂H₂₂O₁₁ + H₂O → 4 C₃H₆O₃, of no mass in all.
///
/// # Example
/// ```
/// let change = vatsketch::process::turned(0.3423);
/// assert!((change.lactic_kg - 0.36032).abs() < 1e-9 && change.total_kg().abs() < 1e-15);
/// ```
#[must_use]
pub fn turned(lactose_kg: f64) -> Matter {
    Matter {
        carbohydrate_kg: -lactose_kg,
        lactic_kg: LACTIC_FROM_LACTOSE * lactose_kg,
        water_kg: (1.0 - LACTIC_FROM_LACTOSE) * lactose_kg,
        ..Matter::default()
    }
}
