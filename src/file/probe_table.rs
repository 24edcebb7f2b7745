//! The table of a probe, read as text.

use super::FileError;
use std::path::Path;

/// Greatest size of a table; a probe that writes every second fills it in some weeks.
const MOST_BYTES: u64 = 32 << 20;

/// Returns the text of a table; letters that are no UTF-8 are replaced, since only a heading may have them.
///
/// # Errors
/// [`FileError::Unreadable`], [`FileError::TableTooLarge`].
///
/// # Example
/// ```
/// assert!(vatsketch::file::read_table(std::path::Path::new("no/such/table.csv")).is_err());
/// ```
pub fn read_table(path: &Path) -> Result<String, FileError> {
    let unreadable = |cause| FileError::Unreadable { path: path.to_owned(), cause };
    let bytes = std::fs::metadata(path).map_err(unreadable)?.len();
    if bytes > MOST_BYTES {
        return Err(FileError::TableTooLarge { bytes, most: MOST_BYTES }.of_file(path));
    }
    Ok(String::from_utf8_lossy(&std::fs::read(path).map_err(unreadable)?).into_owned())
}
