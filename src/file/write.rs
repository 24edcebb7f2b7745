//! Writing so that nothing is lost: a temporary file next to it, flushed to the disk, then renamed over the old one.

use super::FileError;
use super::alike::make_alike;
use super::temporary::{Temporary, with_ending};
use std::fs::{File, Metadata, OpenOptions};
use std::io::{Error, ErrorKind, Read, Result, Write};
use std::path::{Path, PathBuf};

/// Links that are followed at most; more are a circle.
const LINKS_FOLLOWED: usize = 40;

/// Writes a file whole or not at all, keeping the last version next to it as `.bak` if asked. A file that has this content already is left
/// alone, and so is its last version.
///
/// A link is followed, so that the file it names gets the content. Permissions, owner, group, access list and extended attributes of the old
/// file are kept, for the last version too, where the system allows. A pipe or a device is written into, never replaced; where a last version
/// is to be kept it is refused.
///
/// # Arguments
/// * `path`: where; its folder must exist
/// * `content`: every byte of it
/// * `keep_last`: keep what was there before as `NAME.bak`
///
/// # Errors
/// [`FileError::Unwritable`], also for a file that is marked as not to be written; the old file is then as it was, and nothing half-written stays.
pub fn write_safely(path: &Path, content: &[u8], keep_last: bool) -> std::result::Result<(), FileError> {
    write(path, content, keep_last).map_err(|cause| FileError::Unwritable { path: path.to_owned(), cause })
}

/// Returns whether a path leads to something that takes bytes and is no file: a pipe or a device.
#[must_use]
pub fn is_pipe_or_device(path: &Path) -> bool {
    std::fs::metadata(path).is_ok_and(|known| !known.is_file() && !known.is_dir())
}

fn write(path: &Path, content: &[u8], keep_last: bool) -> Result<()> {
    if is_pipe_or_device(path) {
        if keep_last {
            return Err(Error::new(ErrorKind::InvalidInput, "it is not an ordinary file"));
        }
        return OpenOptions::new().write(true).open(path)?.write_all(content);
    }
    replace(&followed(path)?, content, keep_last)
}

/// Returns the place that a path names, through every link, also where nothing is there yet.
fn followed(path: &Path) -> Result<PathBuf> {
    let mut place = path.to_owned();
    for _ in 0..LINKS_FOLLOWED {
        match std::fs::read_link(&place) {
            Ok(to) => place = place.parent().map_or_else(|| to.clone(), |folder| folder.join(&to)),
            // No link: this is the place.
            Err(_) => return Ok(place),
        }
    }
    Err(Error::new(ErrorKind::InvalidInput, "this shortcut leads back to itself"))
}

fn replace(place: &Path, content: &[u8], keep_last: bool) -> Result<()> {
    let old = std::fs::metadata(place).ok();
    if old.as_ref().is_some_and(Metadata::is_dir) {
        return Err(Error::new(ErrorKind::IsADirectory, "there is a folder of that name"));
    }
    if let Some(folder) = place.parent().filter(|folder| !folder.as_os_str().is_empty() && !folder.is_dir()) {
        return Err(Error::new(ErrorKind::NotFound, format!("there is no folder {}", folder.display())));
    }
    // A rename would go past this mark, which asks only the folder.
    if old.as_ref().is_some_and(|old| old.permissions().readonly()) {
        return Err(Error::new(ErrorKind::PermissionDenied, "the file is marked as not to be written"));
    }
    if old.as_ref().is_some_and(|old| holds(place, old, content)) {
        return Ok(());
    }
    put(place, |file, beside| {
        if let Some(old) = &old {
            make_alike(file, beside, (place, old))?;
        }
        file.write_all(content)?;
        file.sync_all()?;
        // Only now, with the new version on the disk, may the last copy be given up.
        if let Some(old) = old.as_ref().filter(|_| keep_last) {
            let mut last = File::open(place)?;
            put(&with_ending(place, ".bak"), |copy, beside| {
                make_alike(copy, beside, (place, old))?;
                std::io::copy(&mut last, copy)?;
                copy.sync_all()
            })?;
        }
        Ok(())
    })
}

/// Returns whether a file holds this content already.
fn holds(place: &Path, known: &Metadata, content: &[u8]) -> bool {
    let mut there = Vec::new();
    known.len() == content.len() as u64
        && File::open(place).and_then(|file| file.take(known.len()).read_to_end(&mut there)).is_ok()
        && there == content
}

/// Fills a temporary file and renames it to its place; removes it if anything fails.
fn put(place: &Path, fill: impl FnOnce(&mut File, &Path) -> Result<()>) -> Result<()> {
    let mut temporary = Temporary::beside(place)?;
    let path = temporary.path().to_owned();
    let done = fill(temporary.file(), &path).and_then(|()| std::fs::rename(&path, place));
    if done.is_err() {
        // The half-written file is of no use to anybody; if it cannot be removed either, the first error is the one to tell.
        let _ = std::fs::remove_file(&path);
    } else if let Some(folder) = place.parent() {
        // So that the new name outlives a power cut. Not every system lets a folder be flushed, and the content is on the disk already.
        let _ = File::open(folder).and_then(|folder| folder.sync_all());
    }
    done
}
