//! The conditions at one place, the factors that they give, and which of these holds growth back.

/// What a germ meets at one place and time.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Conditions {
    /// Temperature, °C.
    pub temperature_c: f64,
    /// pH.
    pub ph: f64,
    /// Water activity, 0 to 1.
    pub water_activity: f64,
    /// Lactic acid, all forms, mmol per kg of water.
    pub lactic_mm: f64,
    /// Acetic acid, all forms, mmol per kg of water.
    pub acetic_mm: f64,
}

impl Conditions {
    /// Returns what lies a share of the way towards other conditions.
    ///
    /// # Arguments
    /// * `share`: 0 is here, 1 there
    #[must_use]
    pub fn towards(&self, there: &Self, share: f64) -> Self {
        let mix = |here: f64, there: f64| here + share * (there - here);
        Self {
            temperature_c: mix(self.temperature_c, there.temperature_c),
            ph: mix(self.ph, there.ph),
            water_activity: mix(self.water_activity, there.water_activity),
            lactic_mm: mix(self.lactic_mm, there.lactic_mm),
            acetic_mm: mix(self.acetic_mm, there.acetic_mm),
        }
    }
}

/// The factors of a growth rate, each 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrowthFactors {
    /// Of temperature.
    pub temperature: f64,
    /// Of pH by itself.
    pub ph: f64,
    /// Of water activity.
    pub water: f64,
    /// Of undissociated acids.
    pub acids: f64,
    /// Of several conditions together, each bearable by itself.
    pub interaction: f64,
}

/// What holds growth back most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeldBackBy {
    /// Everything is as the germ likes it.
    Nothing,
    /// Temperature.
    Temperature,
    /// pH by itself.
    Acidity,
    /// Water activity.
    Water,
    /// Undissociated acids.
    Acids,
    /// Several conditions together.
    Together,
}

impl HeldBackBy {
    /// Returns it in words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Nothing => "nothing",
            Self::Temperature => "temperature",
            Self::Acidity => "pH",
            Self::Water => "water activity",
            Self::Acids => "acid (its undissociated part)",
            Self::Together => "several conditions together",
        }
    }
}

impl GrowthFactors {
    /// Returns all factors multiplied.
    #[must_use]
    pub fn product(&self) -> f64 {
        self.temperature * self.ph * self.water * self.acids * self.interaction
    }

    /// Returns the smallest factor.
    #[must_use]
    pub fn least(&self) -> f64 {
        self.temperature.min(self.ph).min(self.water).min(self.acids).min(self.interaction)
    }

    /// Returns which factor is the smallest: what holds growth back most.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::growth::{GrowthFactors, HeldBackBy};
    /// let factors = GrowthFactors { temperature: 0.3, ph: 0.9, water: 0.8, acids: 1.0, interaction: 1.0 };
    /// assert_eq!(factors.held_back_by(), HeldBackBy::Temperature);
    /// ```
    #[must_use]
    pub fn held_back_by(&self) -> HeldBackBy {
        let all = [
            (HeldBackBy::Temperature, self.temperature),
            (HeldBackBy::Acidity, self.ph),
            (HeldBackBy::Water, self.water),
            (HeldBackBy::Acids, self.acids),
            (HeldBackBy::Together, self.interaction),
        ];
        let least = all.into_iter().fold((HeldBackBy::Nothing, 1.0), |least, one| if one.1 < least.1 { one } else { least });
        least.0
    }
}
