//! Files opened or saved lately.

use super::own_file::from_root;
use crate::file::write_safely;
use std::path::{Path, PathBuf};

/// How many are kept.
const MOST_KEPT: usize = 8;

/// Files opened or saved lately, the last one first.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Recent {
    store: Option<PathBuf>,
    /// The files.
    pub files: Vec<PathBuf>,
}

impl Recent {
    /// Returns the list kept in a folder; empty where there is none or it cannot be read.
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        let store = folder.join("recent.ron");
        let text = std::fs::read_to_string(&store).unwrap_or_default();
        let mut files: Vec<PathBuf> = ron::from_str(&text).unwrap_or_default();
        files.truncate(MOST_KEPT);
        Self { store: Some(store), files }
    }

    /// Puts a file first, and keeps the list.
    pub fn note(&mut self, path: &Path) {
        // From the root of the disk, for another day the program may start in another folder.
        let path = from_root(path);
        self.files.retain(|kept| *kept != path);
        self.files.insert(0, path);
        self.files.truncate(MOST_KEPT);
        if let (Some(store), Ok(text)) = (&self.store, ron::to_string(&self.files)) {
            // A list that cannot be kept is no reason to trouble the maker.
            let _ = store.parent().map(std::fs::create_dir_all);
            let _ = write_safely(store, text.as_bytes(), false);
        }
    }
}
