//! What can be chosen.

use serde::{Deserialize, Serialize};

/// How temperatures are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Temperatures {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

/// How volumes are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Volumes {
    /// Litres and millilitres.
    #[default]
    Litres,
    /// United States cups and fluid ounces.
    UsCups,
    /// United States quarts and fluid ounces.
    UsQuarts,
    /// Imperial pints and fluid ounces.
    ImperialPints,
}

/// How masses are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Masses {
    /// Kilograms and grams.
    #[default]
    Kilograms,
    /// Pounds and ounces.
    Pounds,
}

/// How times of two days and more are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum LongTimes {
    /// Each as it is usual: drying and soaking in hours, keeping in days.
    #[default]
    Usual,
    /// All in days.
    Days,
    /// All in hours.
    Hours,
}

/// How the time of the day is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Clock {
    /// From 0:00 to 23:59.
    #[default]
    Hours24,
    /// From 12:00 am to 11:59 pm.
    Hours12,
}

/// How quantities are shown: a way of looking, handed down as a parameter; the metric ones of the calculation if nothing was chosen.
///
/// Lengths, concentrations, strengths and the constants of the sources stay metric: no kitchen measures them otherwise.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(default)]
pub struct Units {
    /// How temperatures are shown.
    pub temperatures: Temperatures,
    /// How volumes are shown.
    pub volumes: Volumes,
    /// How masses are shown.
    pub masses: Masses,
    /// How times of two days and more are shown.
    pub long_times: LongTimes,
    /// How the time of the day is shown.
    pub clock: Clock,
}

impl Units {
    /// Those of the calculation.
    pub const METRIC: Self = Self {
        temperatures: Temperatures::Celsius,
        volumes: Volumes::Litres,
        masses: Masses::Kilograms,
        long_times: LongTimes::Usual,
        clock: Clock::Hours24,
    };

    /// What a kitchen in the United States measures in.
    pub const US: Self = Self {
        temperatures: Temperatures::Fahrenheit,
        volumes: Volumes::UsQuarts,
        masses: Masses::Pounds,
        long_times: LongTimes::Usual,
        clock: Clock::Hours12,
    };

    /// What a British kitchen with older measures measures in: the thermometer is in degrees Celsius there too.
    pub const IMPERIAL: Self = Self {
        temperatures: Temperatures::Celsius,
        volumes: Volumes::ImperialPints,
        masses: Masses::Pounds,
        long_times: LongTimes::Usual,
        clock: Clock::Hours24,
    };

    /// Returns whether everything is shown as it is calculated.
    #[must_use]
    pub fn are_metric(self) -> bool {
        self == Self::METRIC
    }
}
