//! What milk, cream and skimmed milk are made of.

use super::Matter;
use crate::source::{Constant, Correlation};

crate::correlations! {
    /// Composition of cow's milk.
    COW_COMPOSITION = { "Composition of whole cow's milk", "water, protein, fat, ash, carbohydrate", [88.13, 3.15, 3.25, 0.67, 4.80], "g/100 g", (0.0, 100.0), "%", UsdaStandardReference, "row 01077", Published }
    /// Composition of sheep's milk.
    SHEEP_COMPOSITION = { "Composition of sheep's milk", "water, protein, fat, ash, carbohydrate", [80.70, 5.98, 7.00, 0.96, 5.36], "g/100 g", (0.0, 100.0), "%", UsdaStandardReference, "row 01109", Published }
    /// Composition of goat's milk.
    GOAT_COMPOSITION = { "Composition of goat's milk", "water, protein, fat, ash, carbohydrate", [87.03, 3.56, 4.14, 0.82, 4.45], "g/100 g", (0.0, 100.0), "%", UsdaStandardReference, "row 01106", Published }
    /// Composition of buffalo's milk.
    BUFFALO_COMPOSITION = { "Composition of buffalo's milk", "water, protein, fat, ash, carbohydrate", [83.39, 3.75, 6.89, 0.79, 5.18], "g/100 g", (0.0, 100.0), "%", UsdaStandardReference, "row 01108", Published }
    /// Casein of cow's milk from its fat.
    CASEIN_FROM_FAT = { "Casein of cow's milk from its fat, ±0.2", "a + b F", [0.9, 0.4], "%", (3.0, 5.0), "% fat", VanSlyke1914, "0.4 (F − 3) + 2.1", Published }
}

crate::constants! {
    /// Casein in the protein of cow's milk.
    COW_CASEIN_SHARE = { "Casein in the crude protein of cow's milk", 0.77, "1", (0.73, 0.79), GuelphNotes, "cheese notes, 2.6 of 3.3; a survey has 0.73 to 0.77", Published }
    /// Casein in the protein of sheep's milk.
    SHEEP_CASEIN_SHARE = { "Casein in the crude protein of sheep's milk", 0.755, "1", (0.74, 0.77), Ajas2016, "abstract", Secondhand }
    /// Casein in the protein of goat's milk.
    GOAT_CASEIN_SHARE = { "Casein in the crude protein of goat's milk", 0.79, "1", (0.75, 0.83), Ourselves, "weak; between published notes", Judged }
    /// Casein in the protein of buffalo's milk.
    BUFFALO_CASEIN_SHARE = { "Casein in the crude protein of buffalo's milk", 0.80, "1", (0.76, 0.84), Ourselves, "weak; between published notes", Judged }
    /// pH of cow's milk.
    COW_PH = { "pH of fresh cow's milk", 6.65, "1", (6.55, 6.75), MahmoodUsman2010, "abstract, 6.64 to 6.65", Secondhand }
    /// pH of sheep's milk.
    SHEEP_PH = { "pH of fresh sheep's milk", 6.63, "1", (6.53, 6.73), MahmoodUsman2010, "abstract", Secondhand }
    /// pH of goat's milk.
    GOAT_PH = { "pH of fresh goat's milk", 6.55, "1", (6.45, 6.65), MahmoodUsman2010, "abstract", Secondhand }
    /// pH of buffalo's milk.
    BUFFALO_PH = { "pH of fresh buffalo's milk", 6.75, "1", (6.65, 6.85), MahmoodUsman2010, "abstract", Secondhand }
    /// Solids in the serum of cow's milk.
    COW_SERUM_SOLIDS = { "Solids-not-fat in the fat-free part of cow's milk and cream", 0.089, "1", (0.085, 0.093), UsdaStandardReference, "fitted to rows 01077, 01078, 01049 to 01053", Fitted }
    /// Solids in the serum of sheep's milk.
    SHEEP_SERUM_SOLIDS = { "Solids-not-fat in the fat-free part of sheep's milk", 0.132, "1", (0.124, 0.140), UsdaStandardReference, "computed from row 01109", Fitted }
    /// Solids in the serum of goat's milk.
    GOAT_SERUM_SOLIDS = { "Solids-not-fat in the fat-free part of goat's milk", 0.092, "1", (0.088, 0.096), UsdaStandardReference, "computed from row 01106", Fitted }
    /// Solids in the serum of buffalo's milk.
    BUFFALO_SERUM_SOLIDS = { "Solids-not-fat in the fat-free part of buffalo's milk", 0.104, "1", (0.098, 0.110), UsdaStandardReference, "computed from row 01108", Fitted }
    /// Fat left in skimmed milk.
    SKIMMED_FAT = { "Fat of skimmed milk", 0.08, "%", (0.02, 0.2), UsdaStandardReference, "row 01085", Published }
    /// Spread of the fat of cow's milk.
    COW_FAT_SPREAD = { "Spread of the fat of retail cow's milk, either way", 0.3, "%", (0.1, 0.5), Ourselves, "retail milk", Judged }
    /// Spread of the protein of cow's milk.
    COW_PROTEIN_SPREAD = { "Spread of the protein of retail cow's milk, either way", 0.15, "%", (0.05, 0.3), Ourselves, "retail milk", Judged }
    /// Spread of the fat of sheep's milk.
    SHEEP_FAT_SPREAD = { "Spread of the fat of sheep's milk, either way", 1.5, "%", (0.5, 2.0), Ourselves, "farm to farm and over the season", Judged }
    /// Spread of the protein of sheep's milk.
    SHEEP_PROTEIN_SPREAD = { "Spread of the protein of sheep's milk, either way", 0.6, "%", (0.2, 1.0), Ourselves, "farm to farm and over the season", Judged }
}

/// What is known of the milk of one animal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kind {
    /// Water, protein, fat, ash and carbohydrate, g per 100 g.
    pub composition: Correlation,
    /// Casein as a share of crude protein.
    pub casein_share: Constant,
    /// Usual pH.
    pub ph: Constant,
    /// Solids-not-fat as a share of all that is not fat; the same in its milk and its cream.
    pub serum_solids: Constant,
    /// Spread of the fat; the cow's where no other is known.
    pub fat_spread: Constant,
    /// Spread of the protein; the cow's where no other is known.
    pub protein_spread: Constant,
}

/// Cow's milk.
pub const COW: Kind = Kind {
    composition: COW_COMPOSITION,
    casein_share: COW_CASEIN_SHARE,
    ph: COW_PH,
    serum_solids: COW_SERUM_SOLIDS,
    fat_spread: COW_FAT_SPREAD,
    protein_spread: COW_PROTEIN_SPREAD,
};

/// Sheep's milk.
pub const SHEEP: Kind = Kind {
    composition: SHEEP_COMPOSITION,
    casein_share: SHEEP_CASEIN_SHARE,
    ph: SHEEP_PH,
    serum_solids: SHEEP_SERUM_SOLIDS,
    fat_spread: SHEEP_FAT_SPREAD,
    protein_spread: SHEEP_PROTEIN_SPREAD,
};

/// Goat's milk.
pub const GOAT: Kind = Kind {
    composition: GOAT_COMPOSITION,
    casein_share: GOAT_CASEIN_SHARE,
    ph: GOAT_PH,
    serum_solids: GOAT_SERUM_SOLIDS,
    fat_spread: COW_FAT_SPREAD,
    protein_spread: COW_PROTEIN_SPREAD,
};

/// Buffalo's milk.
pub const BUFFALO: Kind = Kind {
    composition: BUFFALO_COMPOSITION,
    casein_share: BUFFALO_CASEIN_SHARE,
    ph: BUFFALO_PH,
    serum_solids: BUFFALO_SERUM_SOLIDS,
    fat_spread: COW_FAT_SPREAD,
    protein_spread: COW_PROTEIN_SPREAD,
};

/// Protein, fat, ash and carbohydrate, per cent by mass; water is the rest.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Analysis {
    protein: f64,
    fat: f64,
    ash: f64,
    carbohydrate: f64,
}

impl Kind {
    /// Returns a kilogram of this milk: the analysis of the table, casein as its share of the protein, water by difference.
    ///
    /// # Source
    /// [`Kind::composition`] and [`Kind::casein_share`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::composition::COW;
    /// let milk = COW.milk();
    /// assert!((milk.total_kg() - 1.0).abs() < 1e-12);
    /// assert!((milk.fat_percent() - 3.25).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn milk(&self) -> Matter {
        self.of(self.analysis())
    }

    /// Returns a kilogram of cream of this milk: solids-not-fat N = k (100 − F), divided as in the milk.
    ///
    /// # Arguments
    /// * `fat_percent`: fat of the cream, 0 to 60 % by mass
    ///
    /// # Source
    /// [`Kind::serum_solids`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::composition::COW;
    /// assert!((COW.cream(30.0).solids_not_fat_percent() - 6.23).abs() < 0.005);
    /// ```
    #[must_use]
    pub fn cream(&self, fat_percent: f64) -> Matter {
        let milk = self.analysis();
        let solids_not_fat = milk.protein + milk.ash + milk.carbohydrate;
        let share = self.serum_solids.value * (100.0 - fat_percent) / solids_not_fat;
        self.of(Analysis {
            protein: share * milk.protein,
            fat: fat_percent,
            ash: share * milk.ash,
            carbohydrate: share * milk.carbohydrate,
        })
    }

    /// Returns a kilogram of skimmed milk: the serum of this milk with the fat that a separator leaves.
    ///
    /// # Source
    /// [`SKIMMED_FAT`].
    #[must_use]
    pub fn skimmed(&self) -> Matter {
        self.cream(SKIMMED_FAT.value)
    }

    fn analysis(&self) -> Analysis {
        match self.composition.coefficients {
            [_, protein, fat, ash, carbohydrate] => {
                Analysis { protein: *protein, fat: *fat, ash: *ash, carbohydrate: *carbohydrate }
            }
            _ => Analysis { protein: f64::NAN, fat: f64::NAN, ash: f64::NAN, carbohydrate: f64::NAN },
        }
    }

    fn of(&self, analysis: Analysis) -> Matter {
        let Analysis { protein, fat, ash, carbohydrate } = analysis;
        let casein = self.casein_share.value * protein;
        Matter {
            water_kg: (100.0 - protein - fat - ash - carbohydrate) / 100.0,
            fat_kg: fat / 100.0,
            casein_kg: casein / 100.0,
            whey_protein_kg: (protein - casein) / 100.0,
            carbohydrate_kg: carbohydrate / 100.0,
            ash_kg: ash / 100.0,
            salt_kg: 0.0,
        }
    }
}

/// Returns a kilogram of milk with the fat and protein of its label; ash and carbohydrate as in the fat-free part of cow's milk.
///
/// # Arguments
/// * `fat_percent`: 0 to 12 % by mass
/// * `protein_percent`: 2 to 8 % by mass
///
/// # Source
/// [`COW_COMPOSITION`] and [`COW_CASEIN_SHARE`].
///
/// # Example
/// ```
/// use vatsketch::law::composition::labelled;
/// let milk = labelled(3.8, 3.4);
/// assert!((milk.protein_kg() - 0.034).abs() < 1e-12);
/// assert!((milk.carbohydrate_kg - 0.0480 * 96.2 / 96.75).abs() < 1e-12);
/// ```
#[must_use]
pub fn labelled(fat_percent: f64, protein_percent: f64) -> Matter {
    let cow = COW.analysis();
    let serum = (100.0 - fat_percent) / (100.0 - cow.fat);
    COW.of(Analysis { protein: protein_percent, fat: fat_percent, ash: serum * cow.ash, carbohydrate: serum * cow.carbohydrate })
}

/// Returns the casein of cow's milk from its fat alone, per cent: C = 0.4 (F − 3) + 2.1; for milk whose protein nobody knows.
///
/// # Arguments
/// * `fat_percent`: 3 to 5 % by mass
///
/// # Source
/// [`CASEIN_FROM_FAT`].
#[must_use]
pub fn casein_from_fat_percent(fat_percent: f64) -> f64 {
    CASEIN_FROM_FAT.polynomial(fat_percent)
}
