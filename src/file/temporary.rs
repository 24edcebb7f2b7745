//! The temporary file beside a file that is written. It is locked as long as it is filled, so that what a crash left is told from what
//! another program fills just now.

use std::ffi::OsString;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::{Error, ErrorKind, Result};
use std::path::{Path, PathBuf};

/// Names that are tried; more than one is asked for only while other programs write the same file.
const NAMES_TRIED: u32 = 32;

/// A name can be lost to another program between two looks at it; then it is tried again.
const TRIES: u32 = 100;

/// A temporary file that nobody else has.
#[derive(Debug)]
pub(super) struct Temporary {
    path: PathBuf,
    file: File,
}

impl Temporary {
    /// Opens one beside a place. What a crash left there is cleared away.
    ///
    /// # Errors
    /// What the disk says, or which path is in the way.
    pub(super) fn beside(place: &Path) -> Result<Self> {
        let mut number = 0;
        for _ in 0..TRIES {
            let ending = if number == 0 { ".part".to_owned() } else { format!(".{number}.part") };
            let path = with_ending(place, &ending);
            let made = OpenOptions::new().write(true).create_new(true).open(&path);
            match made {
                Ok(file) => match hold(&path, &file) {
                    Held::Ours => return Ok(Self { path, file }),
                    Held::Gone => {}
                    Held::Taken => number += 1,
                },
                // One look: what is looked at twice may be another program's new file the second time.
                Err(error) if error.kind() == ErrorKind::AlreadyExists => match std::fs::symlink_metadata(&path) {
                    Ok(known) if !known.is_file() => {
                        return Err(Error::new(
                            ErrorKind::AlreadyExists,
                            format!("a folder or link called {} is in the way; rename it", path.display()),
                        ));
                    }
                    Ok(_) if !cleared(&path)? => number += 1,
                    // Cleared away, or it went: it was another program's.
                    Ok(_) | Err(_) => {}
                },
                Err(error) => return Err(error),
            }
            if number >= NAMES_TRIED {
                return Err(Error::new(
                    ErrorKind::AlreadyExists,
                    format!("another program is saving this file; {} is in use", path.display()),
                ));
            }
        }
        Err(Error::new(ErrorKind::AlreadyExists, "another program is saving this file"))
    }

    pub(super) fn path(&self) -> &Path {
        &self.path
    }

    pub(super) const fn file(&mut self) -> &mut File {
        &mut self.file
    }
}

/// Whose a file is.
enum Held {
    /// Ours, until it is closed.
    Ours,
    /// Another program's.
    Taken,
    /// Nobody's: its name leads to it no more.
    Gone,
}

fn hold(path: &Path, file: &File) -> Held {
    match file.try_lock() {
        Err(TryLockError::WouldBlock) => Held::Taken,
        // Where the disk knows no locks, a file that was made just now is ours all the same.
        Err(TryLockError::Error(_)) => Held::Ours,
        Ok(()) if leads_to(path, file) => Held::Ours,
        Ok(()) => Held::Gone,
    }
}

/// Removes a temporary file that nobody fills; returns whether its name may be free now.
fn cleared(path: &Path) -> Result<bool> {
    let file = match OpenOptions::new().write(true).open(path) {
        Ok(file) => file,
        Err(error) => return Ok(error.kind() == ErrorKind::NotFound),
    };
    match file.try_lock() {
        Ok(()) if leads_to(path, &file) => std::fs::remove_file(path).map(|()| true),
        // Its program has just renamed it.
        Ok(()) => Ok(true),
        Err(_) => Ok(false),
    }
}

/// Returns whether a name leads to an open file.
#[cfg(unix)]
fn leads_to(path: &Path, file: &File) -> bool {
    use std::os::unix::fs::MetadataExt;
    let id = |known: std::fs::Metadata| (known.dev(), known.ino());
    file.metadata().ok().map(id) == std::fs::symlink_metadata(path).ok().map(id)
}

/// Returns whether a name leads to an open file: on other systems an open file keeps its name.
#[cfg(not(unix))]
fn leads_to(path: &Path, _: &File) -> bool {
    path.exists()
}

/// Returns a path with an ending put after it.
pub(super) fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name: OsString = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}
