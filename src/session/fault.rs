//! The log of faults: what the program knows of a breakdown of its own, next to the recovery copies.

use std::backtrace::Backtrace;
use std::fs::OpenOptions;
use std::io::{Result, Write};
use std::panic::PanicHookInfo;
use std::path::{Path, PathBuf};

/// Where faults are noted.
///
/// # Example
/// ```
/// let folder = tempfile::tempdir().unwrap();
/// let log = vatsketch::session::FaultLog::in_folder(folder.path());
/// log.note("the first fault").unwrap();
/// log.note("the second fault").unwrap();
/// let text = std::fs::read_to_string(log.path()).unwrap();
/// assert!(text.contains("the first fault") && text.contains("the second fault"));
/// ```
#[derive(Clone, Debug)]
pub struct FaultLog {
    path: PathBuf,
}

impl FaultLog {
    /// Returns the log of a folder that is made when it is first needed.
    #[must_use]
    pub fn in_folder(folder: &Path) -> Self {
        Self { path: folder.join("faults.log") }
    }

    /// Returns where it is.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Returns what is done when a thread breaks down: what the normal hook does, and a note with the name of the thread and its calls.
    pub fn hook<F>(self, normal: F) -> impl Fn(&PanicHookInfo<'_>) + Send + Sync
    where
        F: Fn(&PanicHookInfo<'_>) + Send + Sync,
    {
        move |panic| {
            normal(panic);
            let thread = std::thread::current();
            let words = format!("thread {}: {panic}\n{}", thread.name().unwrap_or("without a name"), Backtrace::force_capture());
            // Where it cannot be noted, the normal hook has said it all the same.
            let _ = self.note(&words);
        }
    }

    /// Notes a fault with the time, after those that are there.
    ///
    /// # Errors
    /// What the disk says.
    pub fn note(&self, words: &str) -> Result<()> {
        if let Some(folder) = self.path.parent() {
            std::fs::create_dir_all(folder)?;
        }
        let mut log = OpenOptions::new().create(true).append(true).open(&self.path)?;
        // In one piece, so that two threads that break down together are read one after the other.
        log.write_all(format!("{} vatsketch {}\n{words}\n\n", super::now().at, env!("CARGO_PKG_VERSION")).as_bytes())
    }
}
