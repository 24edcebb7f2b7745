//! Refusals in the maker's words, and what is let through.

use vatsketch::design::Design;
use vatsketch::file::{FileError, check_texts, from_text, to_text};

fn refusal(text: &str) -> String {
    from_text(text).unwrap_err().to_string()
}

#[test]
fn a_refusal_says_where_what_and_what_to_do() {
    for (text, place, words) in [
        ("", "line 1, column 1: ", "round brackets"),
        ("(title: \"x\")", "line 1, column 12: ", "`format` is missing"),
        ("(format: 4, format: 3)", "line 1, column 13: ", "`format` is there twice"),
        ("(format: 4,\n milk: (milk_l: 5.0,\n  mlik_kind: cow))", "line 3, column 3: ", "did you mean `milk_kind`?"),
        ("(format: 4,\n milk: (milk_kind: camel))", "line 2, column 20: ", "cow, sheep, goat, buffalo, label"),
        // The parser points behind the sign, at the number itself.
        ("(format: 4,\n draining: (mould_count: -8))", "line 2, column 27: ", "below zero"),
        ("(format: 4,\n draining: (mould_count: 8.0))", "line 2, column 27: ", "whole number was written with a point"),
        ("(format: 4) junk", "line 1, column 12: ", "something follows"),
    ] {
        let refused = refusal(text);
        assert!(refused.starts_with(place), "`{text}`: {refused}");
        assert!(refused.contains(words), "`{text}`: {refused}");
        assert!(refused.contains("text editor"), "`{text}`: {refused}");
    }
}

#[test]
fn no_refusal_speaks_of_the_parser() {
    let deep = format!("(format: 4, note: {}", "[".repeat(150_000));
    for text in
        ["", "(format: 4, milk: 3)", "(title: \"x\")", "(format: 4, milk: (x: 1))", "(format: 4, milk: (milk_kind: camel))", &deep]
    {
        let refused = refusal(text);
        for word in ["struct", "enum", "`Format`", "`Milk`", "`Saved`", "MilkKind", "ron::", "serde"] {
            assert!(!refused.contains(word), "{refused}");
        }
    }
    assert!(refusal(&deep).contains("nested deeper"), "{}", refusal(&deep));
}

#[test]
fn a_mark_of_the_encoding_before_the_text_is_no_part_of_it() {
    assert_eq!(from_text("\u{feff}(format: 4)").unwrap(), Design::default());
    assert_eq!(from_text("(\r\n  format: 4,\r\n)\r\n").unwrap(), Design::default());
}

#[test]
fn a_text_that_would_be_cut_is_told_before_it_is_written() {
    let long = Design { note: "é".repeat(20_001), ..Design::default() };
    let refused = check_texts(&long).unwrap_err();
    assert!(matches!(refused, FileError::TextTooLong { what: "note", letters: 20_001, most: 20_000 }), "{refused}");
    // The recovery copy is better cut than unreadable.
    assert_eq!(from_text(&to_text(&long)).unwrap().note, "é".repeat(20_000));
}
