//! What is kept between two starts and is no part of any design: one small file each.

use crate::file::write_safely;
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::path::{Path, PathBuf};

/// Something that is kept in a file of its own.
pub trait Keepable: Serialize + DeserializeOwned + Copy + Default + PartialEq {
    /// Name of the file.
    const FILE: &'static str;

    /// Returns it without what could not be used.
    #[must_use]
    fn checked(self) -> Self;
}

/// Something that is kept, and where.
#[derive(Clone, Debug)]
pub struct Kept<T> {
    store: PathBuf,
    now: T,
}

impl<T: Keepable> Kept<T> {
    /// Returns what is kept in a folder; the usual where there is nothing or it cannot be read.
    ///
    /// # Example
    /// ```
    /// use vatsketch::session::{Appearance, Kept, WindowPlace};
    /// let folder = tempfile::tempdir().unwrap();
    /// assert_eq!(Kept::<Appearance>::in_folder(folder.path()).now(), Appearance::default());
    /// let place = WindowPlace { size: Some([900.0, 700.0]), ..WindowPlace::default() };
    /// Kept::<WindowPlace>::in_folder(folder.path()).keep(place);
    /// assert_eq!(Kept::<WindowPlace>::in_folder(folder.path()).now(), place);
    /// ```
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        let store = folder.join(T::FILE);
        let now: T = read(&store).unwrap_or_default();
        Self { store, now: now.checked() }
    }

    /// Returns it.
    #[must_use]
    pub const fn now(&self) -> T {
        self.now
    }

    /// Keeps something else, if it is something else.
    pub fn keep(&mut self, other: T) {
        if self.now != other {
            self.now = other;
            write(&self.store, &other);
        }
    }
}

/// Returns what a small file holds; nothing where it is not there or cannot be read.
pub(super) fn read<T: DeserializeOwned>(store: &Path) -> Option<T> {
    std::fs::read_to_string(store).ok().and_then(|text| ron::from_str(&text).ok())
}

/// Writes a small file. What cannot be kept is no reason to trouble the maker.
pub(super) fn write(store: &Path, value: &impl Serialize) {
    if let Ok(text) = ron::to_string(value) {
        let _ = store.parent().map(std::fs::create_dir_all);
        let _ = write_safely(store, text.as_bytes(), false);
    }
}
