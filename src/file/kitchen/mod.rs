//! A kitchen as a file of its own (`*.kitchen.ron`), which any design may take over.

pub(in crate::file) mod v1;

use super::FileError;
use super::read::{content, format_of, parsed, stripped};
use crate::design::KnownKitchen;
use serde::de::IgnoredAny;
use serde::{Deserialize, Deserializer, Serialize};
use std::path::Path;

/// The newest format.
const FORMAT: u32 = 1;

/// A file of format 1.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Saved {
    format: u32,
    kitchen: v1::Kitchen,
}

/// Whether there is a kitchen at all, whatever it holds.
#[derive(Deserialize)]
struct Members {
    #[serde(default)]
    kitchen: IsThere,
}

/// Whether a member is there.
#[derive(Default)]
struct IsThere(bool);

impl<'de> Deserialize<'de> for IsThere {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        IgnoredAny::deserialize(deserializer).map(|IgnoredAny| Self(true))
    }
}

/// Reads the file of a kitchen.
///
/// # Errors
/// [`FileError`], which names the file; with line and column where the text cannot be understood.
pub fn read_kitchen(path: &Path) -> Result<KnownKitchen, FileError> {
    content(path).and_then(|text| kitchen_from_text(&text)).map_err(|error| error.of_file(path))
}

/// Reads the text of a kitchen's file.
///
/// # Errors
/// As for [`read_kitchen`].
///
/// # Example
/// ```
/// use vatsketch::file::{kitchen_from_text, kitchen_to_text};
/// let text = "(format: 1, kitchen: (name: \"an invented kitchen\", estimates: []))";
/// let kitchen = kitchen_from_text(text)?;
/// assert_eq!(kitchen_from_text(&kitchen_to_text(&kitchen))?, kitchen);
/// # Ok::<(), vatsketch::file::FileError>(())
/// ```
pub fn kitchen_from_text(text: &str) -> Result<KnownKitchen, FileError> {
    let text = stripped(text)?;
    let Members { kitchen: IsThere(there) } = parsed(text)?;
    if !there {
        return Err(FileError::NotAKitchen);
    }
    format_of(text, FORMAT)?;
    Ok(parsed::<Saved>(text)?.kitchen.try_into()?)
}

/// Returns a kitchen as the text of its file.
#[must_use]
pub fn kitchen_to_text(kitchen: &KnownKitchen) -> String {
    let pretty = ron::ser::PrettyConfig::new().struct_names(false);
    let saved = Saved { format: FORMAT, kitchen: kitchen.into() };
    // Plain numbers and words always have a RON form; an empty text would be refused when read.
    let body = ron::ser::to_string_pretty(&saved, pretty).unwrap_or_default();
    format!("// A kitchen as a Vatsketch log tells of it. Units stand beside the numbers; unknown names are refused.\n{body}\n")
}
