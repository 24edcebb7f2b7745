//! Writing without loss.

use std::collections::BTreeSet;
use std::path::Path;
use vatsketch::file::{FileError, stamp, write_safely};

fn names(folder: &Path) -> BTreeSet<String> {
    std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned()).collect()
}

fn set(names: &[&str]) -> BTreeSet<String> {
    names.iter().map(|name| (*name).to_owned()).collect()
}

#[test]
fn the_last_version_is_kept_beside_and_nothing_half_written_stays() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    write_safely(&path, b"one", true).unwrap();
    assert_eq!(names(folder.path()), set(&["a.vat.ron"]));
    write_safely(&path, b"two", true).unwrap();
    write_safely(&path, b"three", true).unwrap();
    assert_eq!(std::fs::read(&path).unwrap(), b"three");
    assert_eq!(std::fs::read(folder.path().join("a.vat.ron.bak")).unwrap(), b"two");
    assert_eq!(names(folder.path()), set(&["a.vat.ron", "a.vat.ron.bak"]));
}

#[test]
fn without_the_wish_no_last_version_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("list.ron");
    write_safely(&path, b"one", false).unwrap();
    write_safely(&path, b"two", false).unwrap();
    assert_eq!(names(folder.path()), set(&["list.ron"]));
}

/// A folder in the place of the temporary file stands for a disk that takes nothing more: it holds for every user, also for one who may write anywhere.
#[test]
fn the_old_file_stays_as_it_was_when_nothing_can_be_written() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    write_safely(&path, b"old", true).unwrap();
    std::fs::create_dir(folder.path().join("a.vat.ron.part")).unwrap();
    let refused = write_safely(&path, b"new", true).unwrap_err();
    assert!(matches!(refused, FileError::Unwritable { .. }), "{refused}");
    assert!(refused.to_string().contains("the old file is as it was"), "{refused}");
    assert_eq!(std::fs::read(&path).unwrap(), b"old");
    assert!(!folder.path().join("a.vat.ron.bak").exists());
}

#[test]
fn a_path_that_is_a_folder_or_lies_in_none_is_refused_and_leaves_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let inner = folder.path().join("inner");
    std::fs::create_dir(&inner).unwrap();
    for keep_last in [true, false] {
        assert!(write_safely(&inner, b"new", keep_last).is_err());
        assert!(write_safely(&folder.path().join("missing").join("a.ron"), b"new", keep_last).is_err());
    }
    assert_eq!(names(folder.path()), set(&["inner"]));
    assert!(names(&inner).is_empty());
}

#[test]
fn the_stamp_tells_a_changed_file_and_a_missing_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.ron");
    assert_eq!(stamp(&path), None);
    write_safely(&path, b"one", false).unwrap();
    let first = stamp(&path);
    assert!(first.is_some() && first == stamp(&path));
    write_safely(&path, b"longer", false).unwrap();
    assert_ne!(first, stamp(&path));
}
