//! Units by name, with the symbol that is written after a number.

/// The unit of an input or of a figure. Values are always kept in it; other units are only a way of showing them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Unit {
    /// No unit: a count or a ratio.
    One,
    /// Litre.
    Litre,
    /// Millilitre.
    Millilitre,
    /// Kilogram.
    Kilogram,
    /// Gram.
    Gram,
    /// Per cent by mass.
    Percent,
    /// Degree Celsius.
    Celsius,
    /// Watt.
    Watt,
    /// Kilowatt hour.
    KilowattHour,
    /// Second.
    Second,
    /// Minute.
    Minute,
    /// Hour.
    Hour,
    /// Day.
    Day,
    /// Millimetre.
    Millimetre,
    /// Metre per second.
    MetrePerSecond,
    /// International milk-clotting units per millilitre.
    ImcuPerMillilitre,
    /// International milk-clotting units per kilogram of milk.
    ImcuPerKilogram,
    /// Second per metre, a resistance to vapour.
    SecondPerMetre,
    /// Kilogram per litre.
    KilogramPerLitre,
    /// Millilitre per gram.
    MillilitrePerGram,
    /// Gram on each square decimetre of surface.
    GramPerSquareDecimetre,
    /// Gram in 100 millilitres.
    GramIn100Millilitre,
    /// Gram for each litre.
    GramPerLitre,
    /// Tenfold increases.
    Log10,
    /// Millions in each gram.
    MillionPerGram,
    /// Kilojoule.
    Kilojoule,
    /// Gram per hour.
    GramPerHour,
    /// Parts of milk that one part of rennet clots (Soxhlet).
    Parts,
    /// Times, as in "diluted 15 times".
    Times,
    /// Packets of dried culture.
    Packet,
}

impl Unit {
    /// Returns the symbol that is written after a number, without a space; empty for a bare number.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::One => "",
            Self::Litre => "L",
            Self::Millilitre => "mL",
            Self::Kilogram => "kg",
            Self::Gram => "g",
            Self::Percent => "%",
            Self::Celsius => "°C",
            Self::Watt => "W",
            Self::KilowattHour => "kWh",
            Self::Second => "s",
            Self::Minute => "min",
            Self::Hour => "h",
            Self::Day => "d",
            Self::Millimetre => "mm",
            Self::MetrePerSecond => "m/s",
            Self::ImcuPerMillilitre => "IMCU/mL",
            Self::ImcuPerKilogram => "IMCU/kg",
            Self::SecondPerMetre => "s/m",
            Self::KilogramPerLitre => "kg/L",
            Self::MillilitrePerGram => "mL/g",
            Self::GramPerSquareDecimetre => "g/dm²",
            Self::GramIn100Millilitre => "g/100 mL",
            Self::GramPerLitre => "g/L",
            Self::Log10 => "tenfold steps",
            Self::MillionPerGram => "million/g",
            Self::Kilojoule => "kJ",
            Self::GramPerHour => "g/h",
            Self::Parts => "parts",
            Self::Times => "×",
            Self::Packet => "packets",
        }
    }
}
