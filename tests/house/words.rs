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

/// No figure, label, help or caution calls a food so; common words that merely contain the letters are spelled otherwise here.
#[test]
fn no_food_is_called_safe() {
    let mut found = Vec::new();
    for (path, text) in texts("src", ".rs").into_iter().chain(texts("resources", ".typ")).chain(texts("resources", ".vat.ron")) {
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
