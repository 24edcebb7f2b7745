//! What the folder of a program's recovery copies holds.

use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// Name of the file that is locked while its program runs.
pub(super) const LOCK: &str = "in-use";

/// Name of the list of what a folder holds.
pub(super) const LIST: &str = "about.ron";

/// Which of the open designs a copy is of. Files of another kind can join here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub(super) enum Place {
    /// A.
    First,
    /// B.
    Second,
}

impl Place {
    pub(super) const ALL: [Self; 2] = [Self::First, Self::Second];

    /// Returns the name of its copy.
    pub(super) const fn copy(self) -> &'static str {
        match self {
            Self::First => "first.vat.ron",
            Self::Second => "second.vat.ron",
        }
    }
}

/// Returns the copies that a folder holds.
#[must_use]
pub fn copies_in(folder: &Path) -> Vec<PathBuf> {
    Place::ALL.into_iter().map(|place| folder.join(place.copy())).filter(|path| path.exists()).collect()
}
