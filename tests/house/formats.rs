//! What a format may know, and how many places an input touches.

use super::{room, texts, top};
use std::path::PathBuf;
use vatsketch::design::fields;

/// The formats before the newest, and the newest.
const OLD: [u32; 6] = [1, 2, 3, 4, 5, 6];
const NEWEST: u32 = 7;

/// Returns the words of a source text, comments left out.
fn words(text: &str) -> impl Iterator<Item = &str> {
    let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
    code.flat_map(|line| line.split(|letter: char| !letter.is_alphanumeric() && letter != '_'))
}

fn names(text: &str, word: &str) -> bool {
    words(text).any(|found| found == word)
}

/// Returns the source files below a folder.
fn below(folder: &str) -> Vec<(PathBuf, String)> {
    let found = texts(folder, ".rs");
    assert!(!found.is_empty(), "{folder} has moved");
    found
}

/// A format names the one before it, from which it takes a step, and no other; only the newest knows the design.
#[test]
fn an_old_format_knows_neither_the_design_nor_a_later_format() {
    for format in OLD {
        for (path, text) in below(&format!("src/file/v{format}")) {
            let others = (1..=NEWEST).filter(|other| *other != format && *other + 1 != format).map(|other| format!("v{other}"));
            for word in others.chain(["design".to_owned(), "Design".to_owned()]) {
                assert!(!names(&text, &word), "{} names {word}", path.display());
            }
        }
    }
    let declared = std::fs::read_to_string(top().join("src/file/frozen.rs")).unwrap();
    assert!(!declared.contains("crate::design"), "the declarations are shared by all formats");
}

/// The count that DEVELOPERS.md gives for a new input: its row, the newest format, its use, its line on paper and its row among the whys. No form
/// and no command knows it by name.
#[test]
fn an_input_touches_the_places_that_the_developers_are_told() {
    // Whether pepper was treated moves no figure; it is used by a caution.
    let moves_no_figure = ["pepper_treated"];
    // The page of the supplies takes the milk at hand over; the menu of other milks leaves out the one that is chosen.
    let named_by_the_window = ["milk_l", "milk_kind"];
    let sources = below("src");
    let all = |key: &str, rooms: &[&str]| {
        let named = sources.iter().filter(|(path, text)| rooms.contains(&room(path).as_str()) && names(text, key));
        named.map(|(path, _)| path.display().to_string()).collect::<Vec<_>>()
    };
    for field in fields() {
        let key = field.key;
        let row = format!(" {key}: \"{}\"", field.label);
        // A cheese described by itself has rows of its own.
        let of_design = |path: &PathBuf| room(path) == "design" && !path.to_string_lossy().contains("described");
        let rows = sources.iter().filter(|(path, text)| of_design(path) && text.contains(&row)).count();
        let frozen = below(&format!("src/file/v{NEWEST}")).iter().filter(|(_, text)| names(text, key)).count();
        assert_eq!((rows, frozen), (1, 1), "{key}: rows in the design, files of the newest format");
        assert!(!all(key, &["process", "caution"]).is_empty(), "{key} has no use");
        assert!(!all(key, &["report"]).is_empty(), "{key} is not on paper");
        let why = all(key, &["analysis"]).iter().any(|path| path.contains("why"));
        assert_eq!(why, !moves_no_figure.contains(&key), "{key} among the whys");
        let by_name = all(key, &["ui", "session", "export"]);
        assert!(by_name.is_empty() || named_by_the_window.contains(&key), "{key} is named by {by_name:?}");
    }
}
