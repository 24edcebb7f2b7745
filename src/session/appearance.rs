//! How the window looks, kept between two starts; no part of any design.

use crate::file::write_safely;
use crate::units::{Temperatures, Units, Volumes};
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

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

/// The appearance and where it is kept.
#[derive(Clone, Debug)]
pub struct KeptAppearance {
    store: PathBuf,
    kept: Appearance,
}

impl KeptAppearance {
    /// Returns the appearance kept in a folder; the usual one where there is none or it cannot be read.
    ///
    /// # Example
    /// ```
    /// use vatsketch::session::{KeptAppearance, Appearance};
    /// assert_eq!(KeptAppearance::in_folder("/no/such/folder".as_ref()).appearance(), Appearance::default());
    /// ```
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        let store = folder.join("look.ron");
        let read: Option<Appearance> = std::fs::read_to_string(&store).ok().and_then(|text| ron::from_str(&text).ok());
        // A size that nobody could read or reach the menu at is none.
        let kept = read.filter(|appearance| (50..=400).contains(&appearance.size_percent)).unwrap_or_default();
        Self { store, kept }
    }

    /// Returns the appearance.
    #[must_use]
    pub const fn appearance(&self) -> Appearance {
        self.kept
    }

    /// Keeps an appearance, if it is another one.
    pub fn keep(&mut self, appearance: Appearance) {
        if self.kept == appearance {
            return;
        }
        self.kept = appearance;
        if let Ok(text) = ron::to_string(&appearance) {
            // An appearance that cannot be kept is no reason to trouble the maker.
            let _ = self.store.parent().map(std::fs::create_dir_all);
            let _ = write_safely(&self.store, text.as_bytes(), false);
        }
    }
}
