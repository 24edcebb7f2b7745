//! What a program that ended badly left behind unsaved.

use super::own_file::OwnFile;
use super::recovery_folder::{LIST, LOCK, Place, copies_in};
use super::{OpenDesign, SessionError};
use crate::file::{DesignFile, Stamp};
use jiff::civil::DateTime;
use jiff::{Timestamp, tz::TimeZone};
use serde::{Deserialize, Serialize};
use std::fs::File;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::SystemTime;

/// What the list of a folder says of one open design.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct Entry {
    place: Place,
    /// The file that it belonged to.
    path: Option<PathBuf>,
    /// That file as it was last known: its size and a hash.
    seen: Option<(u64, u64)>,
}

impl Entry {
    pub(super) fn of(place: Place, open: &OpenDesign) -> Self {
        Self { place, path: open.path().map(Path::to_owned), seen: open.file.seen.map(Stamp::parts) }
    }
}

/// One design of what was left behind: its copy if it was not saved, and the file that it belonged to.
#[derive(Clone, Debug)]
pub struct LeftFile {
    entry: Entry,
    copy: Option<DesignFile>,
}

impl LeftFile {
    pub(super) const fn place(&self) -> Place {
        self.entry.place
    }

    /// Opens it: the copy as not yet saved, belonging to the file that it had; what was saved is opened from its file.
    pub(super) fn open(&self) -> Result<OpenDesign, SessionError> {
        let Entry { path, seen, .. } = &self.entry;
        match (&self.copy, path) {
            (Some(copy), path) => {
                let seen = seen.map(Stamp::of_parts);
                let file = OwnFile { id: copy.id, path: path.clone(), seen, ..OwnFile::none(None) };
                Ok(OpenDesign::with(file, copy.design.clone())?)
            }
            (None, Some(path)) => OpenDesign::of_file(path),
            (None, None) => Ok(OpenDesign::unchanged(crate::design::Design::default(), None)?),
        }
    }
}

/// What one program left behind. While it is there, no other program offers it.
#[derive(Clone, Debug)]
pub struct LeftBehind {
    files: Vec<LeftFile>,
    /// What is removed once it is settled.
    remove: Vec<PathBuf>,
    written: SystemTime,
    _lock: Option<Arc<File>>,
}

impl PartialEq for LeftBehind {
    fn eq(&self, other: &Self) -> bool {
        self.remove == other.remove
    }
}

impl LeftBehind {
    /// Takes a folder over if its program runs no more and it holds something that can be read; removes one that holds nothing.
    pub(super) fn take(folder: PathBuf) -> Option<Self> {
        let lock = File::open(folder.join(LOCK)).ok()?;
        lock.try_lock().ok()?;
        let copies = copies_in(&folder);
        let Some(written) = copies.iter().filter_map(|copy| std::fs::metadata(copy).ok()?.modified().ok()).max() else {
            // Nothing was unsaved. What cannot be removed now is removed at another start.
            let _ = std::fs::remove_dir_all(&folder);
            return None;
        };
        let list: Vec<Entry> =
            std::fs::read_to_string(folder.join(LIST)).ok().and_then(|text| ron::from_str(&text).ok()).unwrap_or_default();
        let of = |place: Place| {
            let copy = DesignFile::read(&folder.join(place.copy())).ok();
            let listed = list.iter().find(|entry| entry.place == place).cloned();
            let entry = listed.or_else(|| copy.is_some().then_some(Entry { place, path: None, seen: None }))?;
            Some(LeftFile { entry, copy })
        };
        let files: Vec<LeftFile> = Place::ALL.into_iter().filter_map(of).collect();
        let readable = files.iter().any(|file| file.copy.is_some());
        readable.then(|| Self { files, remove: vec![folder], written, _lock: Some(Arc::new(lock)) })
    }

    /// Returns what an earlier version left, which kept one copy for all programs.
    pub(super) fn of_old_program(folder: &Path) -> Option<Self> {
        let names = [(Place::First, "recovery.vat.ron"), (Place::Second, "recovery-second.vat.ron")];
        let paths: Vec<(Place, PathBuf)> =
            names.into_iter().map(|(place, name)| (place, folder.join(name))).filter(|(_, path)| path.exists()).collect();
        let files: Vec<LeftFile> = paths
            .iter()
            .filter_map(|(place, path)| {
                let copy = DesignFile::read(path).ok()?;
                Some(LeftFile { entry: Entry { place: *place, path: None, seen: None }, copy: Some(copy) })
            })
            .collect();
        let written = paths.iter().filter_map(|(_, path)| std::fs::metadata(path).ok()?.modified().ok()).max()?;
        let remove = paths.into_iter().map(|(_, path)| path).collect();
        (!files.is_empty()).then_some(Self { files, remove, written, _lock: None })
    }

    /// Returns its designs.
    #[must_use]
    pub fn files(&self) -> &[LeftFile] {
        &self.files
    }

    pub(super) const fn written(&self) -> SystemTime {
        self.written
    }

    /// Returns when its last copy was written, by the clock of a place.
    #[must_use]
    pub fn written_at(&self, zone: &TimeZone) -> Option<DateTime> {
        Some(Timestamp::try_from(self.written).ok()?.to_zoned_datetime(zone.clone()).datetime())
    }

    /// Returns the titles of what is not saved, in words.
    #[must_use]
    pub fn titles(&self) -> String {
        let title = |copy: &DesignFile| match copy.design.title.as_str() {
            "" => "an untitled design".to_owned(),
            title => format!("“{title}”"),
        };
        let all: Vec<String> = self.files.iter().filter_map(|file| file.copy.as_ref()).map(title).collect();
        all.join(" and ")
    }

    /// Removes it: it was opened and kept elsewhere, or given up on purpose.
    pub fn remove(self) {
        for path in &self.remove {
            // Not there is as good as removed.
            let _ = if path.is_dir() { std::fs::remove_dir_all(path) } else { std::fs::remove_file(path) };
        }
    }
}
