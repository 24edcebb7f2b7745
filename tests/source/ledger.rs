//! The ledger: a row for every name of a source, and no row that nothing refers to.

use crate::house::texts;
use std::collections::BTreeSet;
use syn::Item;
use vatsketch::source::ledger;

/// Returns the names that a record can give as its source, as they are declared.
fn declared() -> BTreeSet<String> {
    let (_, text) = texts("src/source", "record.rs").remove(0);
    let items = syn::parse_file(&text).unwrap().items;
    let names = items.into_iter().find_map(|item| match item {
        Item::Enum(names) if names.ident == "SourceId" => Some(names.variants),
        _ => None,
    });
    names.unwrap().into_iter().map(|name| name.ident.to_string()).collect()
}

#[test]
fn every_name_of_a_source_has_its_row() {
    let rows: BTreeSet<String> = ledger().unwrap().iter().map(|row| format!("{:?}", row.id)).collect();
    assert_eq!(rows, declared());
}

/// A row that nothing refers to would tell the maker of a source that the calculation does not rest on.
#[test]
fn every_row_is_referred_to() {
    let code: String = texts("src", ".rs")
        .into_iter()
        .filter(|(path, _)| !path.ends_with("source/record.rs"))
        .flat_map(|(_, text)| {
            text.lines().filter(|line| !line.trim_start().starts_with("//")).map(str::to_owned).collect::<Vec<_>>()
        })
        .collect::<Vec<_>>()
        .join("\n");
    let words: BTreeSet<&str> = code.split(|letter: char| !letter.is_ascii_alphanumeric() && letter != '_').collect();
    let idle: Vec<String> = declared().into_iter().filter(|name| !words.contains(name.as_str())).collect();
    assert!(idle.is_empty(), "no record, caution or figure names these sources: {idle:?}");
}

#[test]
fn every_row_says_what_it_is_and_how_much_of_it_was_seen() {
    for row in ledger().unwrap() {
        assert!(row.title.trim() == row.title && row.title.chars().count() > 10, "{:?}: title “{}”", row.id, row.title);
        assert!(row.seen.trim() == row.seen && !row.seen.is_empty(), "{:?} does not say what was seen of it", row.id);
    }
}
