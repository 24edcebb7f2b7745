//! Names that are offered for files.

use std::path::PathBuf;

/// Returns a path with an ending, unless it has one that will do.
pub(in crate::ui) fn with_ending(path: PathBuf, will_do: &str, ending: &str) -> PathBuf {
    let has = path.to_string_lossy().to_lowercase().ends_with(will_do);
    if has { path } else { PathBuf::from(format!("{}{ending}", path.to_string_lossy())) }
}

/// Returns a file name made of a title: letters and digits, the rest as hyphens.
pub(in crate::ui) fn file_name(title: &str, ending: &str) -> String {
    let words: Vec<String> =
        title.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty()).map(str::to_lowercase).collect();
    let stem = if words.is_empty() { "untitled".to_owned() } else { words.join("-") };
    format!("{}{ending}", stem.chars().take(60).collect::<String>())
}
