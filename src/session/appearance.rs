//! How the window looks, kept between two starts; no part of any design.

use super::kept::Keepable;
use crate::units::{Temperatures, Units, Volumes};
use serde::{Deserialize, Serialize};

/// Which colours.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Colours {
    /// As the desktop has them.
    #[default]
    Desktop,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

/// How the window looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "Written")]
pub struct Appearance {
    /// Which colours.
    pub colours: Colours,
    /// Size of everything, per cent.
    pub size_percent: u16,
    /// How quantities are shown.
    pub units: Units,
}

impl Default for Appearance {
    fn default() -> Self {
        Self { colours: Colours::Desktop, size_percent: 100, units: Units::METRIC }
    }
}

/// What a file may say, also one of an earlier program, which knew two switches in the place of the units.
#[derive(Deserialize)]
#[serde(default)]
struct Written {
    colours: Colours,
    size_percent: u16,
    units: Units,
    fahrenheit: bool,
    cups: bool,
}

impl Default for Written {
    fn default() -> Self {
        let Appearance { colours, size_percent, units } = Appearance::default();
        Self { colours, size_percent, units, fahrenheit: false, cups: false }
    }
}

impl From<Written> for Appearance {
    fn from(written: Written) -> Self {
        let Written { colours, size_percent, mut units, fahrenheit, cups } = written;
        // No file has both the switches and the units.
        if fahrenheit {
            units.temperatures = Temperatures::Fahrenheit;
        }
        if cups {
            units.volumes = Volumes::UsCups;
        }
        Self { colours, size_percent, units }
    }
}

impl Keepable for Appearance {
    const FILE: &'static str = "look.ron";

    /// A size that nobody could read or reach the menu at is none.
    fn checked(self) -> Self {
        if (50..=400).contains(&self.size_percent) { self } else { Self::default() }
    }
}
