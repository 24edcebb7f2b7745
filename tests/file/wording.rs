//! Refusals in the maker's words, and what is let through.

use vatsketch::design::Design;
use vatsketch::file::{FileError, check_texts, from_text, read, to_text};

fn refusal(text: &str) -> String {
    from_text(text).unwrap_err().to_string()
}

#[test]
fn a_refusal_says_where_what_and_what_to_do() {
    let mut wrong = Vec::new();
    for (text, place, words) in [
        ("", "line 1, column 1: ", "round brackets"),
        ("(title: \"x\")", "line 1, column 12: ", "`format` is missing"),
        ("(format: 7, format: 3)", "line 1, column 13: ", "`format` is there twice"),
        ("(format: 7,\n milk: (milk_l: 5.0,\n  mlik_kind: cow))", "line 3, column 3: ", "did you mean `milk_kind`?"),
        ("(format: 7,\n milk: (milk_kind: camel))", "line 2, column 20: ", "cow, sheep, goat, buffalo, label"),
        // The parser points behind the sign, at the number itself.
        ("(format: 7,\n draining: (mould_count: -8))", "line 2, column 27: ", "below zero"),
        ("(format: 7,\n draining: (mould_count: 8.0))", "line 2, column 27: ", "`mould_count`: a whole number was expected"),
        ("(format: 7,\n draining: (mould_count: 8.0))", "line 2, column 27: ", "a point follows it here; write 8"),
        ("(format: 7) junk", "line 1, column 12: ", "take out what follows"),
        ("(format: 7))", "line 1, column 12: ", "there is one closing bracket too many"),
        (
            "(format: 7,\n milk: (\n  milk_l: 6,0,\n ))",
            "line 3, column 13: ",
            "`milk_l`: a comma stands in a number here; write 6.0 instead of 6,0",
        ),
        ("(format: 7, milk: (milk_l: 6, 5))", "line 1, column 31: ", "write 6.5 instead of 6,5"),
        (
            "(format: 7, milk: (milk_l: \"6\"))",
            "line 1, column 27: ",
            "`milk_l` must be a number, as in 6.0, but `\"6\"` stands there",
        ),
        ("(format: 7, milk: (milk_l: ))", "line 1, column 27: ", "but nothing stands there"),
        ("(format: 7, milk: (milk_l: 6 l))", "line 1, column 30: ", "write 6 without `l`"),
        ("(format: 7, milk: (milk_l: 6½))", "line 1, column 29: ", "write 6 without `½`"),
        ("(format: 7, milk: (milk_l 6))", "line 1, column 27: ", "a colon was expected after `milk_l`"),
        ("(format: 7, milk: (milk_l = 6))", "line 1, column 27: ", "a colon was expected after `milk_l`"),
        ("(format: 7, milk: (milk_l: 6.0 milk_kind: cow))", "line 1, column 32: ", "a comma was expected"),
        (
            "(format: 7, milk: (milk_kind: \"cow\"))",
            "line 1, column 31: ",
            "`milk_kind` must be one of its choices, without quotation marks, as in milk_kind: cow",
        ),
        (
            "(format: 7, drying: (tray_swap: yes))",
            "line 1, column 32: ",
            "`tray_swap` must be true or false, but `yes` stands there",
        ),
        (
            "(format: 7, draining: (mould_count: many))",
            "line 1, column 36: ",
            "`mould_count` must be a whole number, as in 8, but `many`",
        ),
        ("(format: 7, title: Twelve of them)", "line 1, column 27: ", "`title`: words must stand in quotation marks"),
        ("(format: 7, title: Twelve)", "line 1, column 19: ", "`title` must be words in quotation marks"),
        ("(format: 7, title: \"Twelve)", "line 1, column 20: ", "no closing quotation mark"),
        ("(format: 7, milk: (milk_l: 6.0)", "line 1, column 31: ", "a bracket is still open"),
        ("(format: 7,\n milk: (milk_l: 6.0,\n vat: (), )", "line 3, column 11: ", "a bracket is still open"),
        ("(format: 7,\n milk: (milk_l: 6.0,\n drying: ()))", "line 3, column 2: ", "the entry before `drying` is missing"),
        ("(format: 7,, milk: ())", "line 1, column 12: ", "two commas"),
        ("(format: 7, \"milk\": ())", "line 1, column 13: ", "`\"milk\": (` is none"),
        ("(format: 7, week: (busy: ()))", "line 1, column 25: ", "`busy` must be a list in square brackets"),
        ("(format: 7, week: (reached: (task: \"cut\")))", "line 1, column 28: ", "as in Some(3)"),
        ("(format: 7 /* begun", "line 1, column 14: ", "*/ is missing"),
    ] {
        let refused = refusal(text);
        if !(refused.starts_with(place) && refused.contains(words) && refused.contains("text editor")) {
            wrong.push(format!("`{text}`: {refused}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn no_refusal_speaks_of_the_parser() {
    let deep = format!("(format: 7, note: {}", "[".repeat(150_000));
    for text in [
        "",
        "(format: 7, milk: 3)",
        "(title: \"x\")",
        "(format: 7, milk: (x: 1))",
        "(format: 7, milk: (milk_kind: camel))",
        &deep,
        "(format: 7, milk: (milk_l: true))",
        "(format: 7, drying: (tray_swap: 1))",
        "format: 7",
        "(format: 7, title: 'x')",
        "(format: 7, 3: 3)",
        "#![enable(more)] (format: 7)",
    ] {
        let refused = refusal(text);
        for word in [
            "struct",
            "enum",
            "`Format`",
            "`Milk`",
            "`Saved`",
            "MilkKind",
            "serde",
            "float",
            "integer",
            "boolean",
            "string",
            "identifier",
            "variant",
            "raw",
        ] {
            assert!(!refused.contains(word), "{refused}");
        }
    }
    assert!(refusal(&deep).contains("nested deeper"), "{}", refusal(&deep));
}

#[test]
fn a_mark_of_the_encoding_before_the_text_is_no_part_of_it() {
    assert_eq!(from_text("\u{feff}(format: 7)").unwrap(), Design::default());
    assert_eq!(from_text("(\r\n  format: 7,\r\n)\r\n").unwrap(), Design::default());
}

#[test]
fn a_text_that_would_be_cut_is_told_before_it_is_written() {
    let long = Design { note: "é".repeat(20_001), ..Design::default() };
    let refused = check_texts(&long).unwrap_err();
    assert!(matches!(refused, FileError::TextTooLong { what: "note", letters: 20_001, most: 20_000 }), "{refused}");
    // The recovery copy is better cut than unreadable.
    assert_eq!(from_text(&to_text(&long)).unwrap().note, "é".repeat(20_000));
}

#[test]
fn a_refusal_of_a_file_names_it_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let (name, too_long) = (path.display().to_string(), format!("(format: 7, title: \"{}\")", "x".repeat(121)));
    for (content, words) in [
        (b"(format: 7, milk: (milk_l: 6,0))".as_slice(), "line 1, column 30: "),
        (b"(format: 7, milk: (milk_l: 600.0))", "a value that is not possible"),
        (b"(format: 9)", "format 9"),
        (b"(format: 0)", "format 0"),
        (b"\xff", "is not text"),
        (too_long.as_bytes(), "121 letters"),
    ] {
        std::fs::write(&path, content).unwrap();
        let refused = read(&path).unwrap_err().to_string();
        assert!(refused.starts_with(&format!("{name}: ")) && refused.contains(words), "{refused}");
        assert_eq!(refused.matches("trial.vat.ron").count(), 1, "{refused}");
    }
    std::fs::remove_file(&path).unwrap();
    assert_eq!(read(&path).unwrap_err().to_string().matches("trial.vat.ron").count(), 1);
}
