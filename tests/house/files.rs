//! Small, plain files, and nothing lying about.

use super::{texts, top};

/// Lines that a source file may have; about 200 is the aim.
const MOST_LINES: usize = 400;

#[test]
fn no_source_file_is_too_long() {
    let long: Vec<String> = texts("src", ".rs")
        .into_iter()
        .chain(texts("tests", ".rs"))
        .filter(|(_, text)| text.lines().count() > MOST_LINES)
        .map(|(path, text)| format!("{} has {} lines", path.display(), text.lines().count()))
        .collect();
    assert!(long.is_empty(), "split these, one idea each:\n{}", long.join("\n"));
}

#[test]
fn every_resource_is_used_somewhere() {
    let users: String = texts("src", ".rs").into_iter().chain(texts("tests", ".rs")).map(|(_, text)| text).collect();
    let told = ["README.md", "DEVELOPERS.md", ".ci/run", "Cargo.toml"]
        .map(|name| std::fs::read_to_string(top().join(name)).unwrap())
        .concat();
    let unused: Vec<String> =
        texts_of_resources().into_iter().filter(|name| !users.contains(name.as_str()) && !told.contains(name.as_str())).collect();
    assert!(unused.is_empty(), "nothing uses these resources: {unused:?}");
}

/// Returns the names of all files below `resources`.
fn texts_of_resources() -> Vec<String> {
    let mut names = Vec::new();
    let mut folders = vec![top().join("resources")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).unwrap().map(Result::unwrap) {
            if entry.path().is_dir() {
                folders.push(entry.path());
            } else {
                names.push(entry.file_name().to_string_lossy().into_owned());
            }
        }
    }
    names
}

#[test]
fn the_top_level_is_what_the_user_asked_for() {
    let wanted = [
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "LICENSE-MIT",
        "LICENSE-APACHE",
        "src",
        "resources",
        "tests",
        "screenshots",
    ];
    let made = ["target"];
    for entry in std::fs::read_dir(top()).unwrap().map(Result::unwrap) {
        let name = entry.file_name().to_string_lossy().into_owned();
        assert!(
            name.starts_with('.') || wanted.contains(&name.as_str()) || made.contains(&name.as_str()),
            "`{name}` does not belong at the top"
        );
    }
    for name in wanted {
        assert!(top().join(name).exists(), "`{name}` is missing at the top");
    }
}
