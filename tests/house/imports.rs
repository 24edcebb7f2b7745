//! Data flows one way: each folder imports only what stands before it.

use super::{room, texts};
use std::collections::{BTreeMap, BTreeSet};

/// What each folder may import, itself and the folders named for it.
fn allowed() -> BTreeMap<&'static str, Vec<&'static str>> {
    let core = ["source", "numeric", "law", "design", "process"];
    let read = ["source", "numeric", "law", "design", "units", "record", "process", "batch", "figure", "caution"];
    let said = ["source", "numeric", "law", "design", "units", "record", "process", "batch", "figure", "caution", "analysis"];
    let session = [&said[..], &["plan", "curve", "kitchen", "words", "report", "export", "file"]].concat();
    let with = |few: &[&'static str], more: &[&'static str]| few.iter().chain(more).copied().collect::<Vec<_>>();
    BTreeMap::from([
        ("source", vec![]),
        ("numeric", vec![]),
        ("law", vec!["source", "numeric"]),
        ("design", vec!["source"]),
        ("units", vec!["law", "design"]),
        ("process", vec!["source", "numeric", "law", "design"]),
        ("record", vec!["source", "law", "design", "units"]),
        ("batch", with(&core, &[])),
        ("figure", with(&core, &["units", "batch"])),
        ("caution", with(&core, &["batch"])),
        ("analysis", with(&read, &[])),
        ("curve", with(&said, &[])),
        ("kitchen", with(&said, &["curve"])),
        ("plan", with(&said, &[])),
        ("words", with(&said, &["plan", "kitchen"])),
        ("report", with(&said, &["plan", "curve", "words"])),
        ("export", with(&said, &["plan", "curve", "words", "report"])),
        ("file", vec!["source", "design", "record"]),
        ("session", with(&session, &[])),
        ("cli", with(&session, &["session"])),
        ("ui", with(&session, &["session"])),
        ("main", with(&session, &["session", "cli", "ui"])),
        ("lib", with(&session, &["session", "cli", "ui"])),
    ])
}

/// Returns the folders that a source text names after `crate::` or `vatsketch::`, comments left out.
fn imported(text: &str, rooms: &BTreeSet<&str>) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for line in text.lines().filter(|line| !line.trim_start().starts_with("//")) {
        for (at, _) in line.match_indices("crate::").chain(line.match_indices("vatsketch::")) {
            let rest = &line[at..].split_once("::").unwrap().1;
            // `use crate::{a, b::c}` names several folders at once.
            let list = rest.strip_prefix('{').map_or(*rest, |inner| inner);
            let names = if rest.starts_with('{') { list.split([',', '{', '}', ' ']).collect() } else { vec![*rest] };
            for name in names {
                let word: String = name.chars().take_while(|letter| letter.is_ascii_alphanumeric() || *letter == '_').collect();
                if rooms.contains(word.as_str()) {
                    found.insert(word);
                }
            }
        }
    }
    found
}

#[test]
fn every_folder_imports_only_what_stands_before_it() {
    let allowed = allowed();
    let rooms: BTreeSet<&str> = allowed.keys().copied().filter(|room| !matches!(*room, "main" | "lib")).collect();
    let mut wrong = Vec::new();
    for (path, text) in texts("src", ".rs") {
        let own = room(&path);
        let may = allowed.get(own.as_str()).unwrap_or_else(|| panic!("src/{own} is new: say in this test what it may import"));
        for other in imported(&text, &rooms) {
            if other != own && !may.contains(&other.as_str()) {
                wrong.push(format!("{} imports {other}", path.display()));
            }
        }
    }
    assert!(wrong.is_empty(), "against the direction of the house:\n{}", wrong.join("\n"));
}

#[test]
fn the_reader_of_imports_sees_single_and_grouped_ones() {
    let rooms = BTreeSet::from(["law", "design", "ui"]);
    let found = imported("use crate::law::Matter;\nuse crate::{design::Unit, ui};\n// use crate::nothing;", &rooms);
    assert_eq!(found, BTreeSet::from(["law".to_owned(), "design".to_owned(), "ui".to_owned()]));
}

#[test]
fn the_core_knows_no_clock_file_thread_or_widget() {
    let core = [
        "source", "numeric", "law", "design", "units", "record", "process", "batch", "figure", "caution", "analysis", "plan",
        "curve", "kitchen", "words", "report",
    ];
    let outside = [
        "std::fs",
        "std::time",
        "std::thread",
        "std::env",
        "std::net",
        "std::process",
        "egui",
        "Instant::now",
        "SystemTime",
        "Timestamp::now",
        "Zoned::now",
        "TimeZone::system",
    ];
    let mut wrong = Vec::new();
    for (path, text) in texts("src", ".rs") {
        if core.contains(&room(&path).as_str()) {
            let code = text.lines().filter(|line| !line.trim_start().starts_with("//")).collect::<Vec<_>>().join("\n");
            wrong.extend(outside.iter().filter(|word| code.contains(**word)).map(|word| format!("{}: {word}", path.display())));
        }
    }
    assert!(wrong.is_empty(), "the core reaches outside:\n{}", wrong.join("\n"));
}
