//! Files opened or saved lately.

use super::kept;
use super::own_file::from_root;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// How many are kept.
const MOST_KEPT: usize = 8;

/// Files opened or saved lately, the last one first.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Recent {
    store: Option<PathBuf>,
    /// The files.
    pub files: Vec<PathBuf>,
    missing: BTreeSet<PathBuf>,
}

impl Recent {
    /// Returns the list kept in a folder; empty where there is none or it cannot be read.
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        let store = folder.join("recent.ron");
        let mut files: Vec<PathBuf> = kept::read(&store).unwrap_or_default();
        files.truncate(MOST_KEPT);
        let mut recent = Self { store: Some(store), files, missing: BTreeSet::new() };
        recent.look();
        recent
    }

    /// Looks which files are there: when the window comes to the front, not whenever the list is drawn.
    pub fn look(&mut self) {
        self.missing = self.files.iter().filter(|path| !path.exists()).cloned().collect();
    }

    /// Returns whether a file was there when it was last looked for.
    #[must_use]
    pub fn is_there(&self, path: &Path) -> bool {
        !self.missing.contains(path)
    }

    /// Puts a file first, and keeps the list.
    pub fn note(&mut self, path: &Path) {
        // From the root of the disk, for another day the program may start in another folder.
        let path = from_root(path);
        self.files.retain(|kept| *kept != path);
        self.files.insert(0, path);
        self.files.truncate(MOST_KEPT);
        self.look();
        if let Some(store) = &self.store {
            kept::write(store, &self.files);
        }
    }
}
