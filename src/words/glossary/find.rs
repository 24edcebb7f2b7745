//! Finding a word that is explained: all in order, by what a reader types, by the label that has it.

use super::exact::EXACT_WORDS;
use super::term::Term;
use super::trade::TRADE_WORDS;

/// Returns every word that is explained, in the order of the alphabet.
///
/// # Example
/// ```
/// use vatsketch::words::terms;
/// assert!(terms().is_sorted_by_key(|term| term.term.to_lowercase()));
/// ```
#[must_use]
pub fn terms() -> Vec<&'static Term> {
    let mut all: Vec<&Term> = EXACT_WORDS.iter().chain(TRADE_WORDS).collect();
    all.sort_by_key(|term| term.term.to_lowercase());
    all
}

/// Returns the words that have some letters in their name or their explanation, whatever the case; those with them in the name first.
///
/// # Arguments
/// * `wanted`: what is looked for; everything is found by nothing
///
/// # Example
/// ```
/// use vatsketch::words::{terms, terms_with};
/// let found = terms_with("Rennet ");
/// assert_eq!(found[0].term, "rennet");
/// assert!(found[1..].iter().any(|term| term.term == "casein"), "rennet is in its explanation");
/// assert_eq!(terms_with(""), terms());
/// ```
#[must_use]
pub fn terms_with(wanted: &str) -> Vec<&'static Term> {
    let wanted = wanted.trim().to_lowercase();
    let has = |text: &str| text.to_lowercase().contains(&wanted);
    let (mut found, rest): (Vec<&Term>, Vec<&Term>) = terms().into_iter().partition(|term| has(term.term));
    found.extend(rest.into_iter().filter(|term| has(term.means)));
    found
}

/// Returns the word that a label names, if it is one that is explained: an exact word before one of the trade, and the longest
/// where there are several.
///
/// # Example
/// ```
/// use vatsketch::words::explained;
/// assert_eq!(explained("Water activity when dried, mean").map(|term| term.term), Some("water activity"));
/// assert_eq!(explained("Cheeses"), None);
/// ```
#[must_use]
pub fn explained(label: &str) -> Option<&'static Term> {
    let label = label.to_lowercase();
    let longest = |list: &'static [Term]| {
        list.iter().filter(|term| names(&label, &term.term.to_lowercase())).max_by_key(|term| term.term.len())
    };
    // “Calcium chloride, as dihydrate” is asked about for its last word.
    longest(EXACT_WORDS).or_else(|| longest(TRADE_WORDS))
}

/// Returns whether a text has a term as whole words.
fn names(text: &str, term: &str) -> bool {
    let apart = |letter: Option<char>| letter.is_none_or(|letter| !letter.is_alphanumeric());
    text.match_indices(term).any(|(at, _)| {
        let (before, after) =
            (text.get(..at).and_then(|text| text.chars().last()), text.get(at + term.len()..).and_then(|text| text.chars().next()));
        apart(before) && apart(after)
    })
}
