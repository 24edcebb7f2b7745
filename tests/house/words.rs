//! Words that may not stand.

use super::texts;

#[test]
fn no_source_holds_a_reminder_without_an_issue() {
    let reminder = ["TO", "DO"].concat();
    let found: Vec<String> = texts("src", ".rs")
        .into_iter()
        .filter(|(_, text)| {
            text.contains(&reminder) || text.contains("FIXME") || text.contains("todo!") || text.contains("unimplemented!")
        })
        .map(|(path, _)| path.display().to_string())
        .collect();
    assert!(found.is_empty(), "{found:?}");
}

/// Not in comments either; common words that merely contain the letters are spelled otherwise here.
#[test]
fn no_food_is_called_safe() {
    let mut found = Vec::new();
    for (path, text) in texts("src", ".rs")
        .into_iter()
        .chain(texts("resources", ".typ"))
        .chain(texts("resources", ".vat.ron"))
        .chain(texts("resources", ".md"))
    {
        for (at, line) in text.lines().enumerate() {
            let lower = line.to_lowercase();
            let words: Vec<&str> = lower.split(|letter: char| !letter.is_alphabetic()).collect();
            // `write_safely` names a way of writing files and is no claim about a food.
            if words.contains(&"safe") {
                found.push(format!("{}:{}", path.display(), at + 1));
            }
        }
    }
    assert!(found.is_empty(), "{found:?}");
}

/// Words that say or imply that a food may be eaten.
const CLAIMS: [&str; 11] =
    ["safe", "ready", "eat", "eats", "eaten", "eating", "edible", "harmless", "wholesome", "shelf-stable", "first taste"];

/// Where one of [`CLAIMS`] claims nothing: who must not eat it, and the old names of members and options that scripts may use.
const NO_CLAIMS: [&str; 6] =
    ["must not eat it", "{must_not_eat}", "--ready", "`ready_h`", "never says that a food may be eaten", "ready-made"];

/// Returns the text literals of a source without comments; of other files all of it.
pub(crate) fn texts_of(source: &str, is_code: bool) -> Vec<&str> {
    let lines = source.lines().filter(|line| !line.trim_start().starts_with("//"));
    // One word of small letters and underscores is a key, which no maker reads.
    let is_key = |text: &&str| text.contains('_') && text.chars().all(|c| c == '_' || c.is_ascii_lowercase() || c.is_ascii_digit());
    if is_code {
        lines.flat_map(|line| line.split('"').skip(1).step_by(2)).filter(|text| !is_key(text)).collect()
    } else {
        lines.collect()
    }
}

/// Returns the claims in a text.
fn claims(text: &str) -> Vec<&'static str> {
    let bare = NO_CLAIMS.iter().fold(text.to_lowercase(), |text, known| text.replace(known, ""));
    // A literal that is one word is a key and not said to anybody.
    if bare == "ready" {
        return Vec::new();
    }
    let spaced = |words: &str| format!(" {} ", words.split(|c: char| !c.is_alphabetic()).collect::<Vec<_>>().join(" "));
    let said = spaced(&bare);
    CLAIMS.into_iter().filter(|claim| said.contains(&spaced(claim))).collect()
}

#[test]
fn no_text_says_that_a_food_may_be_eaten() {
    let code = texts("src", ".rs").into_iter().map(|file| (file, true));
    let others = [".typ", ".vat.ron", ".md"].into_iter().flat_map(|ending| texts("resources", ending));
    let readme = (super::top().join("README.md"), std::fs::read_to_string(super::top().join("README.md")).unwrap());
    let mut found = Vec::new();
    for ((path, text), is_code) in code.chain(others.chain([readme]).map(|file| (file, false))) {
        for line in texts_of(&text, is_code) {
            found.extend(claims(line).into_iter().map(|claim| format!("{}: “{claim}” in: {line}", path.display())));
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn the_reader_of_claims_sees_words_and_leaves_keys_alone() {
    assert_eq!(claims("Cheeses ready: Friday"), ["ready"]);
    assert_eq!(claims("until the first taste"), ["first taste"]);
    assert!(claims("ready").is_empty() && claims("heat the bath already").is_empty() && claims("They must not eat it.").is_empty());
}
