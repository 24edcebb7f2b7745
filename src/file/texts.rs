//! How much of the maker's own words a file keeps.

use super::FileError;
use crate::design::Design;

/// Greatest length of a title that a file keeps, letters.
pub const MOST_TITLE: usize = 120;
/// The same of a note.
pub const MOST_NOTE: usize = 20_000;

/// Checks that title and note are no longer than a file keeps.
///
/// # Errors
/// [`FileError::TextTooLong`] with the length and the cap.
///
/// # Example
/// ```
/// use vatsketch::{design::Design, file::check_texts};
/// assert!(check_texts(&Design { title: "x".repeat(120), ..Design::default() }).is_ok());
/// assert!(check_texts(&Design { title: "x".repeat(121), ..Design::default() }).is_err());
/// ```
pub fn check_texts(design: &Design) -> Result<(), FileError> {
    for (what, text, most) in [("title", &design.title, MOST_TITLE), ("note", &design.note, MOST_NOTE)] {
        let letters = text.chars().count();
        if letters > most {
            return Err(FileError::TextTooLong { what, letters, most });
        }
    }
    Ok(())
}
