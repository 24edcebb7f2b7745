//! What can go wrong with a file, said so that the maker knows what to do.

use crate::design::DesignError;
use std::path::{Path, PathBuf};

/// A file that cannot be read or written; nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum FileError {
    /// What is wrong with this file, as one of the others says it.
    #[error("{}: {cause}", path.display())]
    In {
        /// Which.
        path: PathBuf,
        /// What is wrong.
        cause: Box<FileError>,
    },
    /// The file cannot be read.
    #[error("cannot read {}: {cause}; check the name and that you may read it", path.display())]
    Unreadable {
        /// Which.
        path: PathBuf,
        /// What the system said.
        cause: std::io::Error,
    },
    /// The file is larger than any design.
    #[error("this file has {bytes} bytes, and no design has more than {most}; it is something else")]
    TooLarge {
        /// Its size.
        bytes: u64,
        /// The cap.
        most: u64,
    },
    /// The table of a probe is larger than any.
    #[error("this table has {bytes} bytes, and at most {most} are read; cut it to the batch")]
    TableTooLarge {
        /// Its size.
        bytes: u64,
        /// The cap.
        most: u64,
    },
    /// The file is not text.
    #[error("this file is not text (UTF-8), so Vatsketch did not write it; choose another one")]
    NotText,
    /// The text cannot be understood.
    #[error("line {line}, column {column}: {cause}; correct it in a text editor, or open its .bak file if there is one")]
    Malformed {
        /// Line, from 1.
        line: usize,
        /// Column, from 1.
        column: usize,
        /// What is wrong there.
        cause: String,
    },
    /// The format is newer than this program.
    #[error("this file has format {found}, and this program reads formats up to {newest}; open it with a newer Vatsketch")]
    TooNew {
        /// Format of the file.
        found: u32,
        /// Newest that is read.
        newest: u32,
    },
    /// The format never was.
    #[error("this file says format {found}, and there are formats 1 to {newest}; write one of them in a text editor")]
    NoSuchFormat {
        /// Format of the file.
        found: u32,
        /// Newest that is read.
        newest: u32,
    },
    /// The file holds no kitchen.
    #[error("this file holds no kitchen; choose one whose name ends in .kitchen.ron")]
    NotAKitchen,
    /// The file is no log.
    #[error(
        "this file is no log of Vatsketch: none of its lines has its check; choose another file, or another name for a new log"
    )]
    NotALog,
    /// The log is of a later format.
    #[error("this log has format {found}, and this program reads formats up to {newest}; open it with a newer Vatsketch")]
    LogTooNew {
        /// Format of the file.
        found: u32,
        /// Newest that is read.
        newest: u32,
    },
    /// Another program writes into the log.
    #[error("another program is writing into this log just now; try again")]
    LogInUse,
    /// The log is not what was read.
    #[error("this log was changed since it was read, and nothing was added to it; read it again")]
    LogChanged,
    /// A value is refused.
    #[error("the design has a value that is not possible: {0}; correct it in a text editor")]
    Value(#[from] DesignError),
    /// A text is too long.
    #[error("the {what} has {letters} letters, and at most {most} are kept; shorten it")]
    TextTooLong {
        /// Title or note.
        what: &'static str,
        /// Its length.
        letters: usize,
        /// The cap.
        most: usize,
    },
    /// The file cannot be written.
    #[error("cannot save {}: {cause}; the old file is as it was; try again, or save under another name or in another place", path.display())]
    Unwritable {
        /// Which.
        path: PathBuf,
        /// What the system said.
        cause: std::io::Error,
    },
}

impl FileError {
    /// Returns the error with the name of the file in front, unless it is named already.
    #[must_use]
    pub fn of_file(self, path: &Path) -> Self {
        match self {
            named @ (Self::In { .. } | Self::Unreadable { .. } | Self::Unwritable { .. }) => named,
            cause => Self::In { path: path.to_owned(), cause: Box::new(cause) },
        }
    }

    /// Returns whether a log was changed by somebody else since it was read.
    #[must_use]
    pub fn is_changed_log(&self) -> bool {
        matches!(self.cause(), Self::LogChanged)
    }

    /// Returns what is wrong, whatever the file is called.
    #[must_use]
    pub fn cause(&self) -> &Self {
        match self {
            Self::In { cause, .. } => cause,
            bare => bare,
        }
    }
}
