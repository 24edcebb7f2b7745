//! The id of a design in its file.

use crate::design::any::any_text;
use proptest::prelude::*;
use vatsketch::design::{Design, DesignId};
use vatsketch::file::{DesignFile, FileError, from_text, to_text};

const ID: &str = "5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3";

fn refusal(text: &str) -> String {
    let refused = DesignFile::from_text(text).unwrap_err();
    assert!(matches!(refused, FileError::Malformed { .. }), "{refused}");
    refused.to_string()
}

#[test]
fn an_id_is_kept_as_plain_text_next_to_the_title() {
    let id = Some(DesignId::read(ID).unwrap());
    let text = DesignFile { id, design: Design::default() }.to_text();
    assert!(text.contains(&format!("format: 7,\n    id: \"{ID}\",\n    title: ")), "{text}");
    assert_eq!(DesignFile::from_text(&text).unwrap().id, id);
    // Typed by hand in capitals it is the same id.
    assert_eq!(DesignFile::from_text(&format!("(format: 7, id: \"{}\")", ID.to_uppercase())).unwrap().id, id);
}

#[test]
fn a_design_without_an_id_has_no_such_member() {
    assert!(!to_text(&Design::default()).contains("\n    id: "));
    for text in ["(format: 1)", "(format: 2)", "(format: 3)", "(format: 7)"] {
        assert_eq!(DesignFile::from_text(text).unwrap().id, None, "{text}");
    }
}

#[test]
fn a_wrong_id_is_refused_with_its_place_and_what_to_do() {
    let wrong = [
        "",
        "my first vat",
        "5b0f6a4e-3c1d-4f7a-9d2e",
        "5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94fx",
        // No random one: nothing but zeros, a name, a time.
        "00000000-0000-0000-0000-000000000000",
        "20649095-320f-5631-8e48-23ad09e88201",
        "01890a5d-ac96-774b-bcce-b302099a8057",
    ];
    for id in wrong {
        let refused = refusal(&format!("(\n  format: 7,\n  id: \"{id}\",\n)"));
        assert!(refused.starts_with("line 3, column "), "{refused}");
        assert!(
            refused.contains(&format!("`{id}` is no id of a design")) && refused.contains("take the entry `id` out"),
            "{refused}"
        );
    }
    let refused = refusal(&format!("(format: 7, id: \"{}\")", "x".repeat(100_000)));
    assert!(refused.len() < 500, "a long id is not repeated whole");
}

#[test]
fn an_id_that_is_no_text_and_one_in_an_old_format_are_refused() {
    for text in ["(format: 7, id: 7)", "(format: 7, id: None)", "(format: 7, id: Some(\"x\"))"] {
        let refused = refusal(text);
        assert!(refused.starts_with("line 1, column "), "{refused}");
    }
    assert!(refusal(&format!("(format: 3, id: \"{ID}\")")).contains("there is no entry called `id` here"));
}

proptest! {
    #[test]
    fn any_id_and_any_words_come_back(bits: u128, title in any_text(80), note in any_text(400)) {
        let id = DesignId::from_random_bits(bits);
        prop_assert_eq!(DesignId::read(&id.to_string()).unwrap(), id);
        let file = DesignFile { id: Some(id), design: Design { title, note, ..Design::default() } };
        let text = file.to_text();
        prop_assert_eq!(&DesignFile::from_text(&text).unwrap(), &file);
        prop_assert_eq!(from_text(&text).unwrap(), file.design);
    }
}
