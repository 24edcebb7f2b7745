//! What milk, cream and skimmed milk are made of.

use super::Matter;
use crate::source::Correlation;

crate::constants! {
    /// Casein in cow's milk protein.
    CASEIN_COW = { "Casein in the protein of cow's milk", 0.77, "1", (0.73, 0.79), GuelphNotes, "2.6 of 3.3 %; a survey has 73 to 77 %", Published }
    /// Casein in sheep's milk protein.
    CASEIN_SHEEP = { "Casein in the protein of sheep's milk", 0.755, "1", (0.74, 0.77), Ajas2016, "abstract", Secondhand }
    /// Casein in goat's milk protein.
    CASEIN_GOAT = { "Casein in the protein of goat's milk", 0.79, "1", (0.75, 0.83), Ourselves, "weak", Judged }
    /// Casein in buffalo's milk protein.
    CASEIN_BUFFALO = { "Casein in the protein of buffalo's milk", 0.80, "1", (0.76, 0.84), Ourselves, "weak", Judged }
    /// pH of cow's milk.
    PH_COW = { "pH of cow's milk", 6.65, "1", (6.55, 6.75), MahmoodUsman2010, "abstract", Secondhand }
    /// pH of sheep's milk.
    PH_SHEEP = { "pH of sheep's milk", 6.63, "1", (6.53, 6.73), MahmoodUsman2010, "abstract", Secondhand }
    /// pH of goat's milk.
    PH_GOAT = { "pH of goat's milk", 6.55, "1", (6.45, 6.65), MahmoodUsman2010, "abstract", Secondhand }
    /// pH of buffalo's milk.
    PH_BUFFALO = { "pH of buffalo's milk", 6.75, "1", (6.65, 6.85), MahmoodUsman2010, "abstract", Secondhand }
    /// Solids in the serum of cow's milk.
    SERUM_COW = { "Solids-not-fat in the fat-free part of cow's milk", 0.089, "1", (0.085, 0.093), UsdaStandardReference, "from the rows of milk and cream", Fitted }
    /// Solids in the serum of sheep's milk.
    SERUM_SHEEP = { "Solids-not-fat in the fat-free part of sheep's milk", 0.132, "1", (0.126, 0.138), UsdaStandardReference, "from the row of sheep's milk", Fitted }
    /// Solids in the serum of goat's milk.
    SERUM_GOAT = { "Solids-not-fat in the fat-free part of goat's milk", 0.092, "1", (0.088, 0.096), UsdaStandardReference, "from the row of goat's milk", Fitted }
    /// Solids in the serum of buffalo's milk.
    SERUM_BUFFALO = { "Solids-not-fat in the fat-free part of buffalo's milk", 0.104, "1", (0.100, 0.108), UsdaStandardReference, "from the row of buffalo's milk", Fitted }
    /// How much more or less protein a milk has.
    PROTEIN_SCALE = { "Protein of a milk over that of its table row", 1.0, "1", (0.92, 1.08), Ourselves, "season, feed and breed; about 2.9 to 3.4 % where a row has 3.15", Judged }
    /// Fat of skimmed milk.
    SKIM_FAT = { "Fat of skimmed milk", 0.08, "%", (0.05, 0.5), UsdaStandardReference, "row 01085", Published }
}

crate::correlations! {
    /// Cow's milk.
    COW_MILK = { "Cow's milk, whole", "water, protein, fat, ash, carbohydrate", [88.13, 3.15, 3.25, 0.67, 4.80], "g/100 g", (2.95, 3.55), "% fat", UsdaStandardReference, "row 01077", Published }
    /// Sheep's milk.
    SHEEP_MILK = { "Sheep's milk", "water, protein, fat, ash, carbohydrate", [80.70, 5.98, 7.00, 0.96, 5.36], "g/100 g", (5.5, 8.5), "% fat", UsdaStandardReference, "row 01109", Published }
    /// Goat's milk.
    GOAT_MILK = { "Goat's milk", "water, protein, fat, ash, carbohydrate", [87.03, 3.56, 4.14, 0.82, 4.45], "g/100 g", (3.0, 5.5), "% fat", UsdaStandardReference, "row 01106", Published }
    /// Buffalo's milk.
    BUFFALO_MILK = { "Buffalo's milk", "water, protein, fat, ash, carbohydrate", [83.39, 3.75, 6.89, 0.79, 5.18], "g/100 g", (6.0, 8.5), "% fat", UsdaStandardReference, "row 01108", Published }
    /// Non-fat dry milk.
    DRY_MILK = { "Non-fat dry milk", "water, protein, fat, ash, carbohydrate", [3.16, 36.16, 0.77, 7.93, 51.98], "g/100 g", (0.5, 1.25), "% fat", UsdaStandardReference, "row 01091", Published }
}

/// The animals whose milk we know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Animal {
    /// Cow.
    Cow,
    /// Sheep.
    Sheep,
    /// Goat.
    Goat,
    /// Buffalo.
    Buffalo,
}

impl Animal {
    /// Returns the share of casein in the protein.
    #[must_use]
    pub const fn casein_share(self) -> f64 {
        match self {
            Self::Cow => CASEIN_COW.value,
            Self::Sheep => CASEIN_SHEEP.value,
            Self::Goat => CASEIN_GOAT.value,
            Self::Buffalo => CASEIN_BUFFALO.value,
        }
    }

    /// Returns the usual pH of the milk, ± 0.1.
    #[must_use]
    pub const fn ph(self) -> f64 {
        match self {
            Self::Cow => PH_COW.value,
            Self::Sheep => PH_SHEEP.value,
            Self::Goat => PH_GOAT.value,
            Self::Buffalo => PH_BUFFALO.value,
        }
    }

    /// Returns the solids-not-fat per gram of the fat-free part.
    #[must_use]
    pub const fn serum_solids(self) -> f64 {
        match self {
            Self::Cow => SERUM_COW.value,
            Self::Sheep => SERUM_SHEEP.value,
            Self::Goat => SERUM_GOAT.value,
            Self::Buffalo => SERUM_BUFFALO.value,
        }
    }

    /// Returns a kilogram of the milk as it usually is.
    ///
    /// # Source
    /// [`COW_MILK`] and its neighbours; the rows add up to 100.00 ± 0.02 and are brought to 1 kg here.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::composition::Animal;
    /// assert!((Animal::Sheep.milk().fat_percent() - 7.0).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn milk(self) -> Matter {
        let row = match self {
            Self::Cow => COW_MILK,
            Self::Sheep => SHEEP_MILK,
            Self::Goat => GOAT_MILK,
            Self::Buffalo => BUFFALO_MILK,
        };
        of_row(&row, self.casein_share())
    }

    /// Returns a kilogram of cream or skimmed milk of this milk: its fat, and in the rest the serum of its milk.
    ///
    /// N = k (100 − F), split into protein, carbohydrate and ash as in the whole milk.
    ///
    /// # Arguments
    /// * `fat_percent`: 0 to 60 %
    ///
    /// # Source
    /// [`SERUM_COW`] and its neighbours.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::composition::Animal;
    /// let cream = Animal::Cow.cream(30.0);
    /// assert!((cream.solids_not_fat_percent() - 6.23).abs() < 0.005);
    /// ```
    #[must_use]
    pub fn cream(self, fat_percent: f64) -> Matter {
        let milk = self.milk();
        let solids = self.serum_solids() * (100.0 - fat_percent);
        let all = milk.protein_kg() + milk.carbohydrate_kg + milk.ash_kg;
        let part = |kg: f64| solids * kg / all;
        let water = 100.0 - fat_percent - solids;
        per_kilogram(
            water,
            fat_percent,
            part(milk.protein_kg()),
            part(milk.carbohydrate_kg),
            part(milk.ash_kg),
            self.casein_share(),
        )
    }
}

/// Returns a kilogram of milk with the fat and protein of a label; carbohydrate and ash as in the serum of cow's milk, water the rest.
///
/// # Arguments
/// * `fat_percent`, `protein_percent`: by mass
///
/// # Example
/// ```
/// let milk = vatsketch::law::composition::labelled(3.8, 3.4);
/// assert!((milk.percent(milk.protein_kg()) - 3.4).abs() < 1e-9);
/// ```
#[must_use]
pub fn labelled(fat_percent: f64, protein_percent: f64) -> Matter {
    let cow = Animal::Cow.milk();
    let serum_kg = cow.total_kg() - cow.fat_kg;
    let rest = 100.0 - fat_percent;
    let (carbohydrate, ash) = (rest * cow.carbohydrate_kg / serum_kg, rest * cow.ash_kg / serum_kg);
    let water = rest - protein_percent - carbohydrate - ash;
    per_kilogram(water, fat_percent, protein_percent, carbohydrate, ash, CASEIN_COW.value)
}

/// Returns a kilogram of low-heat non-fat dry milk of cow's milk, with the casein share of cow's milk.
///
/// # Source
/// [`DRY_MILK`] and [`CASEIN_COW`]; the row adds up to 100.00 and is brought to 1 kg here.
///
/// # Example
/// ```
/// let powder = vatsketch::law::composition::dry_milk();
/// assert!((powder.percent(powder.casein_kg) - 27.8).abs() < 0.1);
/// ```
#[must_use]
pub fn dry_milk() -> Matter {
    of_row(&DRY_MILK, CASEIN_COW.value)
}

/// Returns a kilogram of a row of water, protein, fat, ash and carbohydrate.
fn of_row(row: &Correlation<5>, casein_share: f64) -> Matter {
    let [water, protein, fat, ash, carbohydrate] = row.coefficients;
    per_kilogram(water, fat, protein, carbohydrate, ash, casein_share)
}

/// Returns a kilogram with these parts, brought to a sum of exactly one.
fn per_kilogram(water: f64, fat: f64, protein: f64, carbohydrate: f64, ash: f64, casein_share: f64) -> Matter {
    let sum = water + fat + protein + carbohydrate + ash;
    Matter {
        water_kg: water,
        fat_kg: fat,
        casein_kg: casein_share * protein,
        whey_protein_kg: (1.0 - casein_share) * protein,
        carbohydrate_kg: carbohydrate,
        ash_kg: ash,
        ..Matter::default()
    } * (1.0 / sum)
}
