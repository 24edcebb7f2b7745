//! Cautions in few words.

use std::path::Path;
use vatsketch::caution::{Caution, Severity};
use vatsketch::report::brief;
use vatsketch::source::SourceId;

/// What a line of the page beside the vat holds.
const MOST_LETTERS: usize = 70;

fn caution(key: &'static str) -> Caution {
    let what = "The whole of it, said at length.".to_owned();
    Caution { key, severity: Severity::Stop, caused_by: None, what, remedy: String::new(), source: SourceId::FoodCode }
}

/// Returns the key of every caution, read from the sources: the first word in quotes after each `Caution::new(`.
fn keys() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/caution");
    let texts = std::fs::read_dir(folder).unwrap().map(|entry| std::fs::read_to_string(entry.unwrap().path()).unwrap());
    let after = |text: String| text.split("Caution::new(").skip(1).map(str::to_owned).collect::<Vec<_>>();
    texts.flat_map(after).map(|rest| rest.split('"').nth(1).unwrap().to_owned()).collect()
}

#[test]
fn every_caution_has_a_short_form_that_fits_a_line() {
    let keys = keys();
    assert!(keys.len() > 40, "{keys:?}");
    for key in keys {
        let caution = caution(key.leak());
        let said = brief(&caution);
        assert!(said != caution.what, "`{}` has no short form", caution.key);
        assert!(said.chars().count() <= MOST_LETTERS && said.ends_with('.'), "{}: {said}", caution.key);
    }
}

#[test]
fn a_caution_without_a_short_form_is_said_in_full() {
    let new = caution("of_tomorrow");
    assert_eq!(brief(&new), new.what);
}
