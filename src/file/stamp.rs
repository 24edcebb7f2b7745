//! Whether a file changed on the disk since it was opened.

use super::{MOST_BYTES, is_pipe_or_device};
use std::hash::{DefaultHasher, Hasher};
use std::io::Read;
use std::path::Path;

/// What a file held when it was last read or written: its size, and a hash of its bytes.
///
/// The time of the last change is left out on purpose: a file that was only touched or copied back is the same design, and two changes
/// within one tick of the disk's clock have the same time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    bytes: u64,
    hash: u64,
}

impl Stamp {
    /// Returns its size in bytes and its hash, to be kept elsewhere.
    #[must_use]
    pub const fn parts(self) -> (u64, u64) {
        (self.bytes, self.hash)
    }

    /// Returns the stamp of a size and a hash that were kept. A later version of the program may hash otherwise: then a file counts as
    /// changed that is not, which costs a question and loses nothing.
    #[must_use]
    pub const fn of_parts((bytes, hash): (u64, u64)) -> Self {
        Self { bytes, hash }
    }
}

/// Returns the stamp of a file; nothing if it is not there or cannot be read.
///
/// No design is larger than [`MOST_BYTES`], so no more than that is hashed; a change beyond it is seen by the size.
#[must_use]
pub fn stamp(path: &Path) -> Option<Stamp> {
    // A pipe would keep us waiting for somebody to write into it.
    if is_pipe_or_device(path) {
        return None;
    }
    let file = std::fs::File::open(path).ok()?;
    let bytes = file.metadata().ok()?.len();
    let mut content = Vec::new();
    file.take(MOST_BYTES).read_to_end(&mut content).ok()?;
    let mut hasher = DefaultHasher::new();
    hasher.write(&content);
    Some(Stamp { bytes, hash: hasher.finish() })
}
