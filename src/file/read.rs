//! Reading a design, whatever is in the file.

use super::{FileError, check_texts, v1, v2, v3, wording};
use crate::design::Design;
use std::io::Read;
use std::path::Path;

/// Greatest size of a design file; a real one has about 3 kB.
pub const MOST_BYTES: u64 = 1 << 20;
/// The newest format.
const NEWEST: u32 = 3;

/// The first member alone, to learn the format before anything else is understood.
#[derive(serde::Deserialize)]
struct Format {
    format: u32,
}

/// Reads a design from a file.
///
/// # Errors
/// [`FileError`]; with line and column where the text cannot be understood.
pub fn read(path: &Path) -> Result<Design, FileError> {
    let unreadable = |cause| FileError::Unreadable { path: path.to_owned(), cause };
    let file = std::fs::File::open(path).map_err(unreadable)?;
    let bytes = file.metadata().map_err(unreadable)?.len();
    if bytes > MOST_BYTES {
        return Err(FileError::TooLarge { bytes, most: MOST_BYTES });
    }
    // A pipe or a growing file has no honest size, so the reading is capped as well.
    let mut content = Vec::new();
    file.take(MOST_BYTES + 1).read_to_end(&mut content).map_err(unreadable)?;
    if content.len() as u64 > MOST_BYTES {
        return Err(FileError::TooLarge { bytes: content.len() as u64, most: MOST_BYTES });
    }
    from_text(std::str::from_utf8(&content).map_err(|_| FileError::NotText)?)
}

/// Reads a design from text.
///
/// # Errors
/// As for [`read`].
///
/// # Example
/// ```
/// use vatsketch::{design::Design, file};
/// let design = Design { title: "Trial".into(), ..Design::default() };
/// assert_eq!(file::from_text(&file::to_text(&design))?, design);
/// # Ok::<(), file::FileError>(())
/// ```
pub fn from_text(text: &str) -> Result<Design, FileError> {
    if text.len() as u64 > MOST_BYTES {
        return Err(FileError::TooLarge { bytes: text.len() as u64, most: MOST_BYTES });
    }
    // Some editors put a mark of the encoding first; it is no part of the text.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let malformed = |error: ron::error::SpannedError| FileError::Malformed {
        line: error.span.start.line,
        column: error.span.start.col,
        cause: wording::cause(&error.code),
    };
    let Format { format } = ron::from_str(text).map_err(malformed)?;
    if format == 0 {
        return Err(FileError::NoSuchFormat { found: format, newest: NEWEST });
    }
    if format > NEWEST {
        return Err(FileError::TooNew { found: format, newest: NEWEST });
    }
    let design = match format {
        1 => ron::from_str::<v1::Saved>(text).map_err(malformed)?.into_design(),
        2 => ron::from_str::<v2::Saved>(text).map_err(malformed)?.into_design(),
        _ => ron::from_str::<v3::Saved>(text).map_err(malformed)?.into_design()?,
    };
    check_texts(&design)?;
    design.check()?;
    Ok(design)
}
