//! Where the window is on the desktop and how large, kept between two starts; no part of any design.

use crate::file::write_safely;
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// Smallest and largest side of a window that is taken for one, points.
const SIDES: std::ops::RangeInclusive<f32> = 200.0..=20_000.0;

/// Where a window is and how large, in points of the desktop.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct WindowPlace {
    /// Width and height of what is inside its frame.
    pub size: Option<[f32; 2]>,
    /// Its left top corner, where the desktop tells it.
    pub corner: Option<[f32; 2]>,
    /// Whether it has all the room that there is.
    pub maximised: bool,
}

impl WindowPlace {
    /// Returns it without what nobody could see or reach.
    fn checked(self) -> Self {
        let is_side = |side: &f32| SIDES.contains(side);
        let size = self.size.filter(|size| size.iter().all(is_side));
        let corner = self.corner.filter(|corner| corner.iter().all(|at| at.is_finite() && at.abs() <= *SIDES.end()));
        Self { size, corner, ..self }
    }
}

/// The place of the window, and where it is kept.
#[derive(Clone, Debug)]
pub struct KeptPlace {
    store: PathBuf,
    kept: WindowPlace,
}

impl KeptPlace {
    /// Returns the place kept in a folder; none where there is none or it cannot be read.
    ///
    /// # Example
    /// ```
    /// use vatsketch::session::{KeptPlace, WindowPlace};
    /// let folder = tempfile::tempdir().unwrap();
    /// let place = WindowPlace { size: Some([900.0, 700.0]), ..WindowPlace::default() };
    /// KeptPlace::in_folder(folder.path()).keep(place);
    /// assert_eq!(KeptPlace::in_folder(folder.path()).place(), place);
    /// ```
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        let store = folder.join("window.ron");
        let read: Option<WindowPlace> = std::fs::read_to_string(&store).ok().and_then(|text| ron::from_str(&text).ok());
        Self { store, kept: read.unwrap_or_default().checked() }
    }

    /// Returns the place.
    #[must_use]
    pub const fn place(&self) -> WindowPlace {
        self.kept
    }

    /// Keeps a place, if it is another one.
    pub fn keep(&mut self, place: WindowPlace) {
        if self.kept == place {
            return;
        }
        self.kept = place;
        if let Ok(text) = ron::to_string(&place) {
            // A place that cannot be kept is no reason to trouble the maker.
            let _ = self.store.parent().map(std::fs::create_dir_all);
            let _ = write_safely(&self.store, text.as_bytes(), false);
        }
    }
}
