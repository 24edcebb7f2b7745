//! One word for one thing: the glossary holds window, paper and command line together.

use crate::house::{texts, texts_of};
use std::collections::BTreeSet;
use std::path::Path;
use vatsketch::words::{EXACT_WORDS, TRADE_WORDS, explained, terms, terms_with};

fn is_glossary(path: &Path) -> bool {
    path.parent().is_some_and(|folder| folder.ends_with("words/glossary"))
}

/// Returns whether a text has some words in a row, whatever their case.
fn has(text: &str, words: &str) -> bool {
    let plain =
        |text: &str| format!(" {} ", text.to_lowercase().split(|c: char| !c.is_alphanumeric()).collect::<Vec<_>>().join(" "));
    plain(text).contains(&plain(words))
}

/// Returns a text without the names of its placeholders and without seconds a metre, which is a unit.
fn without_names_and_units(said: &str) -> String {
    let parts = said.replace("s/m", "");
    parts.split('{').map(|part| part.split_once('}').map_or(part, |(_, after)| after)).collect::<Vec<_>>().join(" ")
}

#[test]
fn no_text_has_another_word_for_what_the_glossary_explains() {
    let mut found = Vec::new();
    for (path, text) in texts("src", ".rs").into_iter().chain(texts("resources", ".typ")).chain(texts("resources", ".md")) {
        // The glossary itself lists them.
        if is_glossary(&path) {
            continue;
        }
        for said in texts_of(&text, path.extension().is_some_and(|ending| ending == "rs")) {
            let said = &without_names_and_units(said);
            for term in terms() {
                let other = term.instead_of.iter().filter(|other| has(said, other));
                found.extend(other.map(|other| format!("{}: “{other}” for “{}” in: {said}", path.display(), term.term)));
            }
        }
    }
    assert!(found.is_empty(), "one term for one thing:\n{}", found.join("\n"));
}

#[test]
fn every_term_is_used_somewhere_and_explained_in_short_sentences() {
    let said: Vec<String> = texts("src", ".rs")
        .into_iter()
        .filter(|(path, _)| !is_glossary(path))
        .flat_map(|(_, text)| texts_of(&text, true).into_iter().map(str::to_owned).collect::<Vec<_>>())
        .chain(texts("resources", ".typ").into_iter().map(|(_, text)| text))
        .collect();
    for term in terms() {
        let several = format!("{}s", term.term);
        assert!(said.iter().any(|said| has(said, term.term) || has(said, &several)), "nobody says “{}”", term.term);
        assert!(term.means.ends_with('.') && term.means.len() < 200, "{}", term.term);
    }
    for list in [EXACT_WORDS, TRADE_WORDS] {
        assert!(list.is_sorted_by_key(|term| term.term.to_lowercase()));
    }
    let once: BTreeSet<&str> = terms().iter().map(|term| term.term).collect();
    assert_eq!(once.len(), terms().len(), "a word is explained once");
}

#[test]
fn a_label_is_explained_by_its_longest_term() {
    assert_eq!(explained("Salt in moisture when dried").map(|term| term.term), Some("salt in moisture"));
    assert_eq!(explained("Blended sample below pH 4.2 after").map(|term| term.term), Some("blended sample"));
    assert_eq!(explained("Calcium chloride, as dihydrate").map(|term| term.term), Some("dihydrate"), "the exact word first");
    assert_eq!(explained("Weight of curd").map(|term| term.term), Some("curd"));
    assert_eq!(explained("Caseinate"), None, "a part of a word is not the word");
}

#[test]
fn words_are_found_by_a_part_of_their_name_or_of_their_explanation() {
    let names = |wanted: &str| terms_with(wanted).iter().map(|term| term.term).collect::<Vec<_>>();
    assert_eq!(names("RENN")[0], "rennet");
    assert!(names("rennet").contains(&"casein") && !names("rennet").contains(&"tray"));
    assert_eq!(names("gooseberry"), Vec::<&str>::new());
    assert_eq!(names("  ").len(), terms().len());
}

#[test]
fn the_reader_of_words_sees_them_in_a_row() {
    assert!(has("The cheese comes to rest, at pH 4", "comes to rest") && !has("rest comes to it", "comes to rest"));
}
