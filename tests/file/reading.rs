//! Designs as text: there and back, and what is refused.

use crate::design::any::{any_design, any_text};
use proptest::prelude::*;
use std::io::Write;
use vatsketch::design::Design;
use vatsketch::file::{FileError, MOST_BYTES, from_text, read, to_text};

proptest! {
    #[test]
    fn any_design_comes_back_as_it_was_saved(design in any_design(0.7), title in any_text(80), note in any_text(400)) {
        let design = Design { title, note, ..design };
        prop_assert_eq!(from_text(&to_text(&design)).unwrap(), design);
    }

    #[test]
    fn no_damage_to_a_file_breaks_the_reader_or_lets_a_bad_number_in(at in 0.0..1.0_f64, letter: char, take: bool) {
        let mut text: Vec<char> = to_text(&Design::default()).chars().collect();
        let at = (at * text.len() as f64) as usize;
        if take { text.truncate(at) } else { text[at] = letter }
        if let Ok(design) = from_text(&String::from_iter(text)) {
            prop_assert!(design.check().is_ok());
        }
    }
}

#[test]
fn members_that_are_missing_have_their_defaults() {
    assert_eq!(from_text("(format: 7)").unwrap(), Design::default());
    let short = from_text("// by hand\n(format: 7, milk: (milk_l: 9.0), drying: (tray_swap: false))").unwrap();
    assert_eq!((short.milk.milk_l, short.drying.tray_swap), (9.0, false));
    assert_eq!(short.vat, Design::default().vat);
}

#[test]
fn malformed_text_names_line_and_column() {
    let refused = from_text("(\n  format: 7,\n  milk: (milk_l: x6),\n)").unwrap_err();
    let FileError::Malformed { line, column, .. } = refused else { panic!("{refused}") };
    assert_eq!(line, 3);
    assert!((17..=19).contains(&column), "column {column}");
    assert!(refused.to_string().starts_with("line 3, column "), "{refused}");
    for text in
        ["", "(", "format: 3", "(format: one)", "(format: 7, milk: (milk_l: 6.0)", "(format: 7) and more", "(title: \"no format\")"]
    {
        let refused = from_text(text).unwrap_err();
        assert!(matches!(refused, FileError::Malformed { .. }), "`{text}`: {refused}");
    }
}

#[test]
fn an_unknown_member_is_refused_by_name() {
    for text in ["(format: 7, milk: (milk_litres: 6.0))", "(format: 7, milk_litres: 6.0)", "(format: 7, drying: (milk_litres: ()))"]
    {
        let refused = from_text(text).unwrap_err().to_string();
        assert!(refused.contains("milk_litres") && refused.starts_with("line 1, column "), "{refused}");
    }
}

#[test]
fn a_newer_format_is_told_as_such_whatever_else_it_holds() {
    for text in ["(format: 8)", "(format: 99, ageing: (cave: [1, 2, 3]), milk: \"of another shape\")"] {
        let refused = from_text(text).unwrap_err();
        assert!(matches!(refused, FileError::TooNew { newest: 7, .. }), "{refused}");
        assert!(refused.to_string().contains("newer Vatsketch"), "{refused}");
    }
}

#[test]
fn a_format_that_never_was_is_not_called_newer() {
    let refused = from_text("(format: 0)").unwrap_err().to_string();
    assert!(refused.contains("format 0") && !refused.contains("newer"), "{refused}");
}

#[test]
fn a_value_out_of_its_range_is_refused_with_the_range() {
    for (text, key) in [
        ("(format: 7, milk: (milk_l: 1e9))", "milk_l"),
        ("(format: 7, milk: (milk_l: NaN))", "milk_l"),
        ("(format: 7, drying: (drying_h: -inf))", "drying_h"),
        ("(format: 7, draining: (mould_count: 0))", "mould_count"),
        ("(format: 7, draining: (mould_count: 4000000000))", "mould_count"),
    ] {
        let refused = from_text(text).unwrap_err();
        assert!(matches!(refused, FileError::Value(_)), "`{text}`: {refused}");
        assert!(refused.to_string().contains(key), "{refused}");
    }
    for text in [
        "(format: 7, draining: (mould_count: 2.5))",
        "(format: 7, draining: (mould_count: -1))",
        "(format: 7, milk: (milk_kind: camel))",
    ] {
        assert!(matches!(from_text(text).unwrap_err(), FileError::Malformed { .. }), "`{text}`");
    }
}

#[test]
fn a_text_that_is_too_long_is_refused() {
    let refused = from_text(&format!("(format: 7, title: \"{}\")", "é".repeat(121))).unwrap_err();
    assert!(matches!(refused, FileError::TextTooLong { letters: 121, most: 120, .. }), "{refused}");
    assert!(from_text(&format!("(format: 7, title: \"{}\")", "é".repeat(120))).is_ok());
}

#[test]
fn deep_nesting_is_refused_without_a_crash() {
    for (open, begin) in
        [("[", "(format: 7, note: "), ("(", "(format: 7, milk: "), ("Some(", "(format: 7, unknown: "), ("{", ""), ("[", "")]
    {
        let text = format!("{begin}{}", open.repeat(150_000));
        assert!(matches!(from_text(&text).unwrap_err(), FileError::Malformed { .. }), "{open} after {begin}");
    }
}

#[test]
fn a_file_that_is_missing_too_large_or_no_text_is_refused_by_its_own_words() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let refused = read(&path).unwrap_err().to_string();
    assert!(refused.contains("trial.vat.ron") && refused.contains("check the name"), "{refused}");
    assert!(matches!(read(folder.path()).unwrap_err(), FileError::Unreadable { .. }), "a folder is no file");

    std::fs::write(&path, [b'(', 0xff, 0xfe, b')']).unwrap();
    assert!(matches!(read(&path).unwrap_err().cause(), FileError::NotText));

    let mut file = std::fs::File::create(&path).unwrap();
    file.write_all(&vec![b' '; MOST_BYTES as usize + 1]).unwrap();
    let refused = read(&path).unwrap_err();
    assert!(matches!(refused.cause(), FileError::TooLarge { most: MOST_BYTES, .. }), "{refused}");
    assert!(matches!(from_text(&" ".repeat(MOST_BYTES as usize + 1)).unwrap_err(), FileError::TooLarge { .. }));
}
