//! Letters that may be shown as they are.

/// Returns a text that came from a file without what is no letter: control characters, which could give orders to the terminal it is printed
/// on, and marks that turn the direction of writing around, which could make it read as something else.
///
/// # Source
/// Unicode Standard Annex 9, 2.1 to 2.4: the explicit directional embeddings, overrides and isolates.
///
/// # Example
/// ```
/// use vatsketch::export::printable;
/// assert_eq!(printable("a\u{1b}[2Jb"), "a\u{fffd}[2Jb");
/// assert_eq!(printable("a\u{202e}b"), "a\u{fffd}b");
/// ```
#[must_use]
pub fn printable(text: &str) -> String {
    text.chars().map(|letter| if is_printable(letter) { letter } else { '\u{fffd}' }).collect()
}

/// Returns whether a letter may be printed as it is; the end of a line may.
pub(super) fn is_printable(letter: char) -> bool {
    let turns_around = matches!(letter, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    let breaks = matches!(letter, '\u{2028}' | '\u{2029}');
    letter == '\n' || !(letter.is_control() || turns_around || breaks)
}
