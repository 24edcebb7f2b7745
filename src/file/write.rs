//! Writing so that nothing is lost: a temporary file next to it, flushed to the disk, then renamed over the old one.

use super::FileError;
use std::ffi::OsString;
use std::fs::{File, OpenOptions};
use std::io::{Error, ErrorKind, Result, Write};
use std::path::{Path, PathBuf};

/// Names that are tried for the temporary file; more than one is asked for only after a crash or while another program writes.
const NAMES_TRIED: u32 = 32;

/// Writes a file whole or not at all, keeping the last version next to it as `.bak` if asked.
///
/// A link is followed, so that the file it names gets the content; the permissions of the old file are kept.
///
/// # Arguments
/// * `path`: where; its folder must exist
/// * `content`: every byte of it
/// * `keep_last`: keep what was there before as `NAME.bak`
///
/// # Errors
/// [`FileError::Unwritable`], also for a file that is marked as not to be written; the old file is then as it was, and nothing half-written stays.
pub fn write_safely(path: &Path, content: &[u8], keep_last: bool) -> std::result::Result<(), FileError> {
    // Not there yet, or a link to nothing: then the name itself is the place.
    let place = std::fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    replace(&place, content, keep_last).map_err(|cause| FileError::Unwritable { path: path.to_owned(), cause })
}

fn replace(place: &Path, content: &[u8], keep_last: bool) -> Result<()> {
    let old = std::fs::metadata(place).ok();
    if old.as_ref().is_some_and(std::fs::Metadata::is_dir) {
        return Err(Error::new(ErrorKind::IsADirectory, "there is a folder of that name"));
    }
    if let Some(folder) = place.parent().filter(|folder| !folder.as_os_str().is_empty() && !folder.is_dir()) {
        return Err(Error::new(ErrorKind::NotFound, format!("there is no folder {}", folder.display())));
    }
    // A rename would go past this mark, which asks only the folder.
    if old.as_ref().is_some_and(|old| old.permissions().readonly()) {
        return Err(Error::new(ErrorKind::PermissionDenied, "the file is marked as not to be written"));
    }
    put(place, |file| {
        if let Some(old) = &old {
            file.set_permissions(old.permissions())?;
        }
        file.write_all(content)?;
        file.sync_all()?;
        // Only now, with the new version on the disk, may the last copy be given up.
        if keep_last && old.is_some() {
            let mut last = File::open(place)?;
            put(&with_ending(place, ".bak"), |copy| {
                std::io::copy(&mut last, copy)?;
                copy.sync_all()
            })?;
        }
        Ok(())
    })
}

/// Fills a temporary file and renames it to its place; removes it if anything fails.
fn put(place: &Path, fill: impl FnOnce(&mut File) -> Result<()>) -> Result<()> {
    let (beside, mut file) = temporary(place)?;
    let done = fill(&mut file).and_then(|()| std::fs::rename(&beside, place));
    if done.is_err() {
        // The half-written file is of no use to anybody; if it cannot be removed either, the first error is the one to tell.
        let _ = std::fs::remove_file(&beside);
    } else if let Some(folder) = place.parent() {
        // So that the new name outlives a power cut. Not every system lets a folder be flushed, and the content is on the disk already.
        let _ = File::open(folder).and_then(|folder| folder.sync_all());
    }
    done
}

/// Opens a temporary file beside a place that nobody else has.
fn temporary(place: &Path) -> Result<(PathBuf, File)> {
    let mut taken = Error::from(ErrorKind::AlreadyExists);
    for number in 0..NAMES_TRIED {
        let ending = if number == 0 { ".part".to_owned() } else { format!(".{number}.part") };
        let beside = with_ending(place, &ending);
        match OpenOptions::new().write(true).create_new(true).open(&beside) {
            Ok(file) => return Ok((beside, file)),
            // A plain file was left by a crash, or another program writes just now; a folder or a link of that name was put there by somebody.
            Err(error) if error.kind() == ErrorKind::AlreadyExists && is_plain_file(&beside) => taken = error,
            Err(error) => return Err(error),
        }
    }
    Err(taken)
}

fn is_plain_file(path: &Path) -> bool {
    std::fs::symlink_metadata(path).is_ok_and(|known| known.is_file())
}

fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name: OsString = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}
