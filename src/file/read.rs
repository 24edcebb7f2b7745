//! Reading a design, whatever is in the file.

use super::design_file::DesignFile;
use super::place::Place;
use super::{FileError, check_texts, v1, v2, v3, v4, v5, v6, v7, wording};
use crate::design::Design;
use serde::de::DeserializeOwned;
use std::io::Read;
use std::path::Path;

/// Greatest size of a design file; a real one has about 3 kB.
pub const MOST_BYTES: u64 = 1 << 20;
/// The newest format.
const NEWEST: u32 = 7;

/// The first member alone, to learn the format before anything else is understood.
#[derive(serde::Deserialize)]
struct Format {
    format: u32,
}

impl DesignFile {
    /// Reads a file.
    ///
    /// # Errors
    /// [`FileError`], which names the file; with line and column where the text cannot be understood.
    pub fn read(path: &Path) -> Result<Self, FileError> {
        content(path).and_then(|text| Self::from_text(&text)).map_err(|error| error.of_file(path))
    }

    /// Reads a design from something that is no file, such as standard input.
    ///
    /// # Arguments
    /// * `name`: what errors call it
    ///
    /// # Errors
    /// As for [`DesignFile::read`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::file::DesignFile;
    /// let error = DesignFile::read_from("(format: 5,, )".as_bytes(), "standard input").unwrap_err();
    /// assert!(error.to_string().starts_with("standard input: line 1, column 12: "));
    /// ```
    pub fn read_from(input: impl Read, name: &str) -> Result<Self, FileError> {
        let name = Path::new(name);
        whole(input, name).and_then(|text| Self::from_text(&text)).map_err(|error| error.of_file(name))
    }

    /// Reads the text of a file, of whatever format.
    ///
    /// # Errors
    /// As for [`DesignFile::read`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::{Design, DesignId}, file::DesignFile};
    /// let file = DesignFile { id: Some(DesignId::from_random_bits(7)), design: Design::default() };
    /// assert_eq!(DesignFile::from_text(&file.to_text())?, file);
    /// assert_eq!(DesignFile::from_text("(format: 3)")?.id, None);
    /// # Ok::<(), vatsketch::file::FileError>(())
    /// ```
    pub fn from_text(text: &str) -> Result<Self, FileError> {
        let file = saved(text)?.into_design()?;
        check_texts(&file.design)?;
        file.design.check()?;
        Ok(file)
    }

    /// Returns the text of a file, in the newest format.
    ///
    /// Title and note are cut to what a file keeps, so that the text can always be read again; ask [`check_texts`] first where nothing may
    /// be lost.
    #[must_use]
    pub fn to_text(&self) -> String {
        v7::to_text(self.id, &self.design)
    }

    /// Returns the same on one line, as a log keeps it.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Design, file::DesignFile};
    /// let file = DesignFile { id: None, design: Design { note: "two\nlines".into(), ..Design::default() } };
    /// assert!(!file.to_line().contains('\n'));
    /// assert_eq!(DesignFile::from_text(&file.to_line())?, file);
    /// # Ok::<(), vatsketch::file::FileError>(())
    /// ```
    #[must_use]
    pub fn to_line(&self) -> String {
        v7::to_line(self.id, &self.design)
    }
}

/// Reads a design from a file, without its id.
///
/// # Errors
/// As for [`DesignFile::read`].
pub fn read(path: &Path) -> Result<Design, FileError> {
    DesignFile::read(path).map(|file| file.design)
}

/// Reads a design from text, without its id.
///
/// # Errors
/// As for [`DesignFile::read`].
///
/// # Example
/// ```
/// use vatsketch::{design::Design, file};
/// let design = Design { title: "Trial".into(), ..Design::default() };
/// assert_eq!(file::from_text(&file::to_text(&design))?, design);
/// # Ok::<(), file::FileError>(())
/// ```
pub fn from_text(text: &str) -> Result<Design, FileError> {
    DesignFile::from_text(text).map(|file| file.design)
}

/// Returns a design as the text of a file that has no id; otherwise as [`DesignFile::to_text`].
#[must_use]
pub fn to_text(design: &Design) -> String {
    v7::to_text(None, design)
}

/// Returns the text of a file, if it can be that of a design.
pub(super) fn content(path: &Path) -> Result<String, FileError> {
    let unreadable = |cause| FileError::Unreadable { path: path.to_owned(), cause };
    let file = std::fs::File::open(path).map_err(unreadable)?;
    let bytes = file.metadata().map_err(unreadable)?.len();
    if bytes > MOST_BYTES {
        return Err(FileError::TooLarge { bytes, most: MOST_BYTES });
    }
    whole(file, path)
}

/// Returns all of a text; a pipe or a growing file has no honest size, so the reading is capped as well.
fn whole(input: impl Read, path: &Path) -> Result<String, FileError> {
    let mut content = Vec::new();
    let unreadable = |cause| FileError::Unreadable { path: path.to_owned(), cause };
    input.take(MOST_BYTES + 1).read_to_end(&mut content).map_err(unreadable)?;
    if content.len() as u64 > MOST_BYTES {
        return Err(FileError::TooLarge { bytes: content.len() as u64, most: MOST_BYTES });
    }
    String::from_utf8(content).map_err(|_| FileError::NotText)
}

/// Returns the format that a text says it has.
///
/// * `newest`: that this program knows
pub(super) fn format_of(text: &str, newest: u32) -> Result<u32, FileError> {
    let Format { format } = parsed(text)?;
    match format {
        0 => Err(FileError::NoSuchFormat { found: format, newest }),
        newer if newer > newest => Err(FileError::TooNew { found: format, newest }),
        known => Ok(known),
    }
}

/// Returns what a text says, brought to the newest format step by step.
fn saved(text: &str) -> Result<v7::Saved, FileError> {
    let text = stripped(text)?;
    let format = format_of(text, NEWEST)?;
    Ok(match format {
        1 => v6_of(v4::Saved::from(v3::Saved::from(v2::Saved::from(parsed::<v1::Saved>(text)?)))).into(),
        2 => v6_of(v4::Saved::from(v3::Saved::from(parsed::<v2::Saved>(text)?))).into(),
        3 => v6_of(v4::Saved::from(parsed::<v3::Saved>(text)?)).into(),
        4 => v6_of(parsed::<v4::Saved>(text)?).into(),
        5 => v6::Saved::from(parsed::<v5::Saved>(text)?).into(),
        6 => parsed::<v6::Saved>(text)?.into(),
        _ => parsed(text)?,
    })
}

/// Returns what a file of format 4 says, brought to format 6.
fn v6_of(saved: v4::Saved) -> v6::Saved {
    v5::Saved::from(saved).into()
}

/// Returns a text without the mark of the encoding that some editors put first, which is no part of it.
pub(super) fn stripped(text: &str) -> Result<&str, FileError> {
    if text.len() as u64 > MOST_BYTES {
        return Err(FileError::TooLarge { bytes: text.len() as u64, most: MOST_BYTES });
    }
    Ok(text.strip_prefix('\u{feff}').unwrap_or(text))
}

pub(super) fn parsed<T: DeserializeOwned>(text: &str) -> Result<T, FileError> {
    ron::from_str(text).map_err(|error| {
        // The parser points from the sign before to where it could not go on.
        let (start, end) = (error.span.start, error.span.end);
        let cause = wording::cause(&error.code, &Place::at(text, end.line, end.col));
        FileError::Malformed { line: start.line, column: start.col, cause }
    })
}
