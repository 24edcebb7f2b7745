//! Which curve.

/// Which figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CurveKey {
    /// Bath and milk against time.
    Warming,
    /// Loss of mass in drying against time.
    DryingLoss,
    /// Whey from the moulds against time.
    WheyDrip,
    /// Moisture of mean, centre and surface in drying.
    Moisture,
    /// Water activity of mean and centre in drying.
    WaterActivity,
    /// Salt in the moisture against time.
    Salt,
    /// pH in the vinegar against time.
    Souring,
    /// Moisture of mean, centre and face in the vinegar.
    SoakMoisture,
    /// Salt in the moisture in the vinegar.
    SoakSalt,
    /// pH of milk, curd and cheese against time, before the vinegar.
    CurdSouring,
    /// Potential growth of germs against time.
    Germs,
}

impl CurveKey {
    /// Every figure.
    pub const ALL: [Self; 11] = [
        Self::Warming,
        Self::DryingLoss,
        Self::WheyDrip,
        Self::Moisture,
        Self::WaterActivity,
        Self::Salt,
        Self::Souring,
        Self::SoakMoisture,
        Self::SoakSalt,
        Self::CurdSouring,
        Self::Germs,
    ];

    /// Returns the word on the command line.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Warming => "warming",
            Self::DryingLoss => "drying_loss",
            Self::WheyDrip => "whey_drip",
            Self::Moisture => "moisture",
            Self::WaterActivity => "water_activity",
            Self::Salt => "salt",
            Self::Souring => "souring",
            Self::SoakMoisture => "soak_moisture",
            Self::SoakSalt => "soak_salt",
            Self::CurdSouring => "souring_of_curd",
            Self::Germs => "germs",
        }
    }

    /// Returns the figure with this key, if there is one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::curve::CurveKey;
    /// assert_eq!(CurveKey::from_key("whey_drip"), Some(CurveKey::WheyDrip));
    /// ```
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|figure| figure.key() == key)
    }

    /// Returns the heading of the figure.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Warming => "Warming",
            Self::DryingLoss => "Drying loss",
            Self::WheyDrip => "Whey from the moulds",
            Self::Moisture => "Moisture while drying",
            Self::WaterActivity => "Water activity while drying",
            Self::Salt => "Salt in moisture",
            Self::Souring => "pH in the vinegar",
            Self::SoakMoisture => "Moisture in the soak",
            Self::SoakSalt => "Salt in the soak",
            Self::CurdSouring => "pH of milk and curd",
            Self::Germs => "Growth of germs",
        }
    }
}
