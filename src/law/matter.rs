//! An amount of milk, curd, whey, cheese or anything else in the vat, by its components.

use std::ops::{Add, AddAssign, Mul, Sub};

/// Kilograms of each component; what the mass balance counts.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Matter {
    /// Water.
    pub water_kg: f64,
    /// Fat.
    pub fat_kg: f64,
    /// Casein.
    pub casein_kg: f64,
    /// All other protein (crude protein less casein).
    pub whey_protein_kg: f64,
    /// Carbohydrate, nearly all lactose.
    pub carbohydrate_kg: f64,
    /// Ash without common salt; calcium chloride is counted here.
    pub ash_kg: f64,
    /// Common salt.
    pub salt_kg: f64,
    /// Acetic acid, split or not.
    pub acid_kg: f64,
    /// Lactic acid, split or not.
    pub lactic_kg: f64,
    /// Citric acid that was added, or glucono-delta-lactone with the acid that it splits into; that of the milk itself is ash or carbohydrate.
    pub other_acid_kg: f64,
}

impl Matter {
    /// The components in the order of [`Matter::parts_kg`].
    pub const COMPONENTS: [&'static str; 10] = [
        "water",
        "fat",
        "casein",
        "whey protein",
        "carbohydrate",
        "ash",
        "salt",
        "acetic acid",
        "lactic acid",
        "citric acid or lactone",
    ];

    /// Returns the kilograms of each component, in the order of [`Matter::COMPONENTS`].
    #[must_use]
    pub const fn parts_kg(&self) -> [f64; 10] {
        [
            self.water_kg,
            self.fat_kg,
            self.casein_kg,
            self.whey_protein_kg,
            self.carbohydrate_kg,
            self.ash_kg,
            self.salt_kg,
            self.acid_kg,
            self.lactic_kg,
            self.other_acid_kg,
        ]
    }

    /// Returns pure water.
    #[must_use]
    pub fn water(water_kg: f64) -> Self {
        Self { water_kg, ..Self::default() }
    }

    /// Returns the whole mass, kg.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::Matter;
    /// let brine = Matter { water_kg: 0.9, salt_kg: 0.1, ..Matter::default() };
    /// assert!((brine.total_kg() - 1.0).abs() < 1e-15);
    /// ```
    #[must_use]
    pub fn total_kg(&self) -> f64 {
        self.parts_kg().iter().sum()
    }

    /// Returns everything but water, kg.
    #[must_use]
    pub fn solids_kg(&self) -> f64 {
        self.total_kg() - self.water_kg
    }

    /// Returns crude protein, kg.
    #[must_use]
    pub fn protein_kg(&self) -> f64 {
        self.casein_kg + self.whey_protein_kg
    }

    /// Returns all organic acids that were added or made, kg.
    #[must_use]
    pub fn acids_kg(&self) -> f64 {
        self.acid_kg + self.lactic_kg + self.other_acid_kg
    }

    /// Returns a part as per cent of the whole mass; 0 of nothing.
    #[must_use]
    pub fn percent(&self, part_kg: f64) -> f64 {
        let total_kg = self.total_kg();
        if total_kg > 0.0 { 100.0 * part_kg / total_kg } else { 0.0 }
    }

    /// Returns the moisture, per cent by mass.
    #[must_use]
    pub fn moisture_percent(&self) -> f64 {
        self.percent(self.water_kg)
    }

    /// Returns the fat, per cent by mass.
    #[must_use]
    pub fn fat_percent(&self) -> f64 {
        self.percent(self.fat_kg)
    }

    /// Returns the solids-not-fat, per cent by mass.
    #[must_use]
    pub fn solids_not_fat_percent(&self) -> f64 {
        self.percent(self.solids_kg() - self.fat_kg)
    }

    /// Returns fat in dry matter, per cent.
    #[must_use]
    pub fn fat_in_dry_matter_percent(&self) -> f64 {
        let solids_kg = self.solids_kg();
        if solids_kg > 0.0 { 100.0 * self.fat_kg / solids_kg } else { 0.0 }
    }

    /// Returns moisture on a fat-free basis, per cent.
    #[must_use]
    pub fn moisture_on_fat_free_basis_percent(&self) -> f64 {
        let fat_free_kg = self.total_kg() - self.fat_kg;
        if fat_free_kg > 0.0 { 100.0 * self.water_kg / fat_free_kg } else { 0.0 }
    }

    /// Returns salt in moisture, g per 100 g of water.
    #[must_use]
    pub fn salt_in_moisture_percent(&self) -> f64 {
        if self.water_kg > 0.0 { 100.0 * self.salt_kg / self.water_kg } else { 0.0 }
    }

    fn zip(self, other: Self, with: impl Fn(f64, f64) -> f64) -> Self {
        Self {
            water_kg: with(self.water_kg, other.water_kg),
            fat_kg: with(self.fat_kg, other.fat_kg),
            casein_kg: with(self.casein_kg, other.casein_kg),
            whey_protein_kg: with(self.whey_protein_kg, other.whey_protein_kg),
            carbohydrate_kg: with(self.carbohydrate_kg, other.carbohydrate_kg),
            ash_kg: with(self.ash_kg, other.ash_kg),
            salt_kg: with(self.salt_kg, other.salt_kg),
            acid_kg: with(self.acid_kg, other.acid_kg),
            lactic_kg: with(self.lactic_kg, other.lactic_kg),
            other_acid_kg: with(self.other_acid_kg, other.other_acid_kg),
        }
    }
}

impl Add for Matter {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        self.zip(other, |left, right| left + right)
    }
}

impl AddAssign for Matter {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl Sub for Matter {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self.zip(other, |left, right| left - right)
    }
}

impl Mul<f64> for Matter {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        self.zip(self, |part, _| part * factor)
    }
}

impl std::iter::Sum for Matter {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        parts.fold(Self::default(), Self::add)
    }
}
