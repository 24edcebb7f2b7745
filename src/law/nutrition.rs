//! What a cheese feeds: energy, fat, protein, carbohydrate and salt as a label counts them.

use super::Matter;

crate::constants! {
    /// Energy of fat.
    FAT_ENERGY = { "Energy of fat on a label", 37.0, "kJ/g", (37.0, 37.0), FoodInformation, "annex XIV", Published }
    /// Energy of protein.
    PROTEIN_ENERGY = { "Energy of protein on a label", 17.0, "kJ/g", (17.0, 17.0), FoodInformation, "annex XIV", Published }
    /// Energy of carbohydrate.
    CARBOHYDRATE_ENERGY = { "Energy of carbohydrate on a label", 17.0, "kJ/g", (17.0, 17.0), FoodInformation, "annex XIV, without polyols", Published }
    /// Energy of organic acids.
    ACID_ENERGY = { "Energy of organic acids on a label", 13.0, "kJ/g", (13.0, 13.0), FoodInformation, "annex XIV", Published }
    /// Energy of fat in the older unit.
    FAT_KILOCALORIES = { "Energy of fat on a label, in kilocalories", 9.0, "kcal/g", (9.0, 9.0), FoodInformation, "annex XIV", Published }
    /// Energy of protein in the older unit.
    PROTEIN_KILOCALORIES = { "Energy of protein on a label, in kilocalories", 4.0, "kcal/g", (4.0, 4.0), FoodInformation, "annex XIV", Published }
    /// Energy of carbohydrate in the older unit.
    CARBOHYDRATE_KILOCALORIES = { "Energy of carbohydrate on a label, in kilocalories", 4.0, "kcal/g", (4.0, 4.0), FoodInformation, "annex XIV, without polyols", Published }
    /// Energy of organic acids in the older unit.
    ACID_KILOCALORIES = { "Energy of organic acids on a label, in kilocalories", 3.0, "kcal/g", (3.0, 3.0), FoodInformation, "annex XIV", Published }
    /// Salt of a label from its sodium.
    SALT_FROM_SODIUM = { "Salt of a label for each gram of sodium", 2.5, "g/g", (2.5, 2.5), FoodInformation, "annex I, as quoted", Secondhand }
    /// Sodium in common salt.
    SODIUM_IN_SALT = { "Sodium in common salt", 0.3934, "g/g", (0.393, 0.394), Textbook, "atomic masses 22.99 and 35.45", FromMemory }
}

/// What an amount of cheese feeds.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Nutrients {
    /// Its mass.
    pub mass_g: f64,
    /// Energy.
    pub energy_kj: f64,
    /// Energy in the older unit; by its own factors, as the rule has it, not converted.
    pub energy_kcal: f64,
    /// Fat.
    pub fat_g: f64,
    /// Protein, crude.
    pub protein_g: f64,
    /// Carbohydrate, nearly all lactose.
    pub carbohydrate_g: f64,
    /// Organic acids; they give energy and stand on no line of a label.
    pub acid_g: f64,
    /// Salt as a label counts it: sodium × 2.5.
    pub salt_g: f64,
}

impl Nutrients {
    /// Returns what an amount of cheese feeds.
    ///
    /// Energy = 37 fat + 17 protein + 17 carbohydrate + 13 organic acid, kJ; 9, 4, 4 and 3 in kcal. Salt = 2.5 × the sodium of the
    /// salt that was sprinkled on; the sodium of the milk itself, which would add some 0.1 g for 100 g of the cheese's water (from memory), is not counted.
    ///
    /// # Source
    /// [`crate::source::SourceId::FoodInformation`], annexes I and XIV.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::{nutrition::Nutrients, Matter};
    /// let cheese = Matter { water_kg: 0.045, fat_kg: 0.028, casein_kg: 0.022, carbohydrate_kg: 0.002, ..Matter::default() };
    /// let each = Nutrients::of(&cheese);
    /// // 37·28 + 17·22 + 17·2 = 1444 kJ.
    /// assert!((each.energy_kj - 1444.0).abs() < 1e-9);
    /// assert!((each.in_100_g().fat_g - 100.0 * 28.0 / 97.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn of(matter: &Matter) -> Self {
        let grams = 1000.0;
        let (fat_g, protein_g) = (grams * matter.fat_kg, grams * matter.protein_kg());
        let (carbohydrate_g, acid_g) = (grams * matter.carbohydrate_kg, grams * matter.acids_kg());
        let energy = |fat: f64, protein: f64, carbohydrate: f64, acid: f64| {
            fat * fat_g + protein * protein_g + carbohydrate * carbohydrate_g + acid * acid_g
        };
        Self {
            mass_g: grams * matter.total_kg(),
            energy_kj: energy(FAT_ENERGY.value, PROTEIN_ENERGY.value, CARBOHYDRATE_ENERGY.value, ACID_ENERGY.value),
            energy_kcal: energy(
                FAT_KILOCALORIES.value,
                PROTEIN_KILOCALORIES.value,
                CARBOHYDRATE_KILOCALORIES.value,
                ACID_KILOCALORIES.value,
            ),
            fat_g,
            protein_g,
            carbohydrate_g,
            acid_g,
            salt_g: SALT_FROM_SODIUM.value * SODIUM_IN_SALT.value * grams * matter.salt_kg,
        }
    }

    /// Returns the same for 100 g; nothing of nothing.
    #[must_use]
    pub fn in_100_g(&self) -> Self {
        let share = if self.mass_g > 0.0 { 100.0 / self.mass_g } else { 0.0 };
        Self {
            mass_g: share * self.mass_g,
            energy_kj: share * self.energy_kj,
            energy_kcal: share * self.energy_kcal,
            fat_g: share * self.fat_g,
            protein_g: share * self.protein_g,
            carbohydrate_g: share * self.carbohydrate_g,
            acid_g: share * self.acid_g,
            salt_g: share * self.salt_g,
        }
    }
}
