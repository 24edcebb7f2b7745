//! What is said of letters that the paper cannot show.

use crate::design::Design;

/// Most letters that are named.
const MOST_NAMED: usize = 12;

/// Returns a sentence about the letters of some texts that the fonts of the paper do not have; none if they have all.
///
/// # Arguments
/// * `texts`: what the maker wrote and the paper shows, such as a title
///
/// # Example
/// ```
/// use vatsketch::export::missing_letters;
/// assert_eq!(missing_letters(["Käse für den Garten, Сыр, ½ l"]), None);
/// if let Some(said) = missing_letters(["奶酪"]) {
///     assert!(said.contains("奶 酪"));
/// }
/// ```
#[must_use]
pub fn missing_letters<'a>(texts: impl IntoIterator<Item = &'a str>) -> Option<String> {
    let mut missing: Vec<char> = Vec::new();
    for letter in texts.into_iter().flat_map(str::chars) {
        if super::printable::is_printable(letter) && !has(letter) && !missing.contains(&letter) {
            missing.push(letter);
        }
    }
    if missing.is_empty() {
        return None;
    }
    let named = missing.iter().take(MOST_NAMED).map(char::to_string).collect::<Vec<_>>().join(" ");
    let more = if missing.len() > MOST_NAMED { " and others" } else { "" };
    Some(format!("these letters cannot be printed and become “?”: {named}{more}; the design keeps what you wrote"))
}

/// Returns the same of everything that the maker writes in a design and the paper shows.
#[must_use]
pub fn missing_letters_of(design: &Design) -> Option<String> {
    let kitchen = design.kitchen.as_ref().map(|kitchen| &kitchen.name);
    let all = [&design.title, &design.note, &design.supplies.currency].into_iter().chain(kitchen);
    missing_letters(all.map(String::as_str))
}

#[cfg(feature = "paper")]
use super::fonts::has;

/// Without paper nothing is missing on it.
#[cfg(not(feature = "paper"))]
const fn has(_letter: char) -> bool {
    true
}
