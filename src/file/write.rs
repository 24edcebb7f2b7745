//! Writing so that nothing is lost: a temporary file beside, flushed, then renamed over the old one.

use super::FileError;
use std::ffi::OsString;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Writes a file whole or not at all, keeping the last version beside it as `.bak` if asked.
///
/// # Arguments
/// * `path`: where; its folder must exist
/// * `content`: every byte of it
/// * `keep_last`: keep what was there before as `NAME.bak`
///
/// # Errors
/// [`FileError::Unwritable`]; the old file is then as it was, and nothing half-written stays.
pub fn write_safely(path: &Path, content: &[u8], keep_last: bool) -> Result<(), FileError> {
    let beside = with_ending(path, ".part");
    let written = write_through(&beside, content).and_then(|()| {
        if keep_last && path.exists() {
            std::fs::copy(path, with_ending(path, ".bak"))?;
        }
        std::fs::rename(&beside, path)
    });
    written.map_err(|cause| {
        // The half-written file is of no use to anybody; if it cannot be removed either, the first error is the one to tell.
        let _ = std::fs::remove_file(&beside);
        FileError::Unwritable { path: path.to_owned(), cause }
    })
}

fn write_through(path: &Path, content: &[u8]) -> std::io::Result<()> {
    let mut file = std::fs::File::create(path)?;
    file.write_all(content)?;
    file.flush()?;
    file.sync_all()
}

fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name: OsString = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}
