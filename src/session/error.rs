//! What the session refuses.

use crate::design::DesignError;
use crate::file::FileError;
use std::path::PathBuf;

/// Something asked of the session that cannot be done; nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum SessionError {
    /// An input was refused.
    #[error(transparent)]
    Design(#[from] DesignError),
    /// A file could not be read or written.
    #[error(transparent)]
    File(#[from] FileError),
    /// Somebody else wrote the file since it was opened.
    #[error("{} was changed on the disk since you opened it; choose whether to reload it, to save yours under another name, or to overwrite it", path.display())]
    ChangedOnDisk {
        /// Which file.
        path: PathBuf,
    },
}
