//! The rules of the house, held by tests that read the sources.

mod circles;
mod constants;
mod desktop;
mod files;
mod formats;
mod imports;
mod packages;
mod paths;
mod readme;
mod supply;
mod uncut;
mod words;

use std::path::{Path, PathBuf};
pub(crate) use words::texts_of;

/// Returns the top level of the checkout.
fn top() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Returns every file below a folder whose name ends so, with its text.
pub(crate) fn texts(folder: &str, ending: &str) -> Vec<(PathBuf, String)> {
    let mut found = Vec::new();
    let mut folders = vec![top().join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).unwrap().map(Result::unwrap) {
            let path = entry.path();
            if path.is_dir() {
                folders.push(path);
            } else if path.to_string_lossy().ends_with(ending) {
                let text = std::fs::read_to_string(&path).unwrap();
                found.push((path, text));
            }
        }
    }
    found.sort();
    found
}

/// Returns the folder of `src` in which a file stands; the file's stem for one that stands in `src` itself.
fn room(path: &Path) -> String {
    let inside = path.strip_prefix(top().join("src")).unwrap();
    inside.components().next().unwrap().as_os_str().to_string_lossy().trim_end_matches(".rs").to_owned()
}
