//! Whether a file changed on the disk since it was opened.

use std::path::Path;
use std::time::SystemTime;

/// Size and time of a file as it was last read or written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    bytes: u64,
    changed: Option<SystemTime>,
}

/// Returns the stamp of a file; nothing if it is not there.
#[must_use]
pub fn stamp(path: &Path) -> Option<Stamp> {
    let known = std::fs::metadata(path).ok()?;
    Some(Stamp { bytes: known.len(), changed: known.modified().ok() })
}
