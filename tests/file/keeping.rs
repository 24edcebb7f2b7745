//! What a safe writing keeps: links, permissions, the mark against writing, the files of others.

use std::path::Path;
use vatsketch::file::{stamp, write_safely};

fn count(folder: &Path) -> usize {
    std::fs::read_dir(folder).unwrap().count()
}

#[test]
fn a_file_marked_as_not_to_be_written_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(&path, "old").unwrap();
    let mut permissions = std::fs::metadata(&path).unwrap().permissions();
    permissions.set_readonly(true);
    std::fs::set_permissions(&path, permissions).unwrap();
    let refused = write_safely(&path, b"new", true).unwrap_err().to_string();
    assert!(refused.contains("a.vat.ron") && refused.contains("marked as not to be written"), "{refused}");
    assert_eq!(std::fs::read(&path).unwrap(), b"old");
    assert_eq!(count(folder.path()), 1, "neither a copy nor a half-written file stays");
}

#[cfg(unix)]
#[test]
fn a_link_is_followed_and_stays_a_link() {
    let folder = tempfile::tempdir().unwrap();
    let (real, link) = (folder.path().join("real.vat.ron"), folder.path().join("link.vat.ron"));
    std::fs::write(&real, "old").unwrap();
    std::os::unix::fs::symlink(&real, &link).unwrap();
    write_safely(&link, b"new", true).unwrap();
    assert!(std::fs::symlink_metadata(&link).unwrap().is_symlink());
    assert_eq!(std::fs::read(&real).unwrap(), b"new");
    assert_eq!(std::fs::read(folder.path().join("real.vat.ron.bak")).unwrap(), b"old");
}

#[cfg(unix)]
#[test]
fn the_permissions_of_the_old_file_are_kept() {
    use std::os::unix::fs::PermissionsExt;
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(&path, "old").unwrap();
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o600)).unwrap();
    write_safely(&path, b"new", false).unwrap();
    assert_eq!(std::fs::metadata(&path).unwrap().permissions().mode() & 0o777, 0o600);
}

#[test]
fn what_a_crash_left_behind_neither_blocks_the_writing_nor_is_written_over() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    let left = folder.path().join("a.vat.ron.part");
    std::fs::write(&left, "half of someth").unwrap();
    write_safely(&path, b"new", true).unwrap();
    assert_eq!(std::fs::read(&path).unwrap(), b"new");
    assert_eq!(std::fs::read(&left).unwrap(), b"half of someth");
    assert_eq!(count(folder.path()), 2);
}

#[cfg(unix)]
#[test]
fn a_link_in_the_place_of_the_temporary_file_is_not_written_through() {
    let folder = tempfile::tempdir().unwrap();
    let (path, other) = (folder.path().join("a.vat.ron"), folder.path().join("other"));
    std::fs::write(&other, "of somebody else").unwrap();
    std::os::unix::fs::symlink(&other, folder.path().join("a.vat.ron.part")).unwrap();
    assert!(write_safely(&path, b"new", true).is_err());
    assert_eq!(std::fs::read(&other).unwrap(), b"of somebody else");
    assert!(!path.exists());
}

#[test]
fn a_copy_that_cannot_be_renewed_stops_the_writing_and_stays_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    write_safely(&path, b"one", true).unwrap();
    write_safely(&path, b"two", true).unwrap();
    // A folder in the place of the copy's temporary file: nothing can be written there, whoever runs this.
    std::fs::create_dir(folder.path().join("a.vat.ron.bak.part")).unwrap();
    assert!(write_safely(&path, b"three", true).is_err());
    assert_eq!(std::fs::read(&path).unwrap(), b"two");
    assert_eq!(std::fs::read(folder.path().join("a.vat.ron.bak")).unwrap(), b"one");
    assert!(!folder.path().join("a.vat.ron.part").exists());
}

#[test]
fn a_stamp_sees_a_change_of_one_letter_and_not_a_touch() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(&path, "(format: 4, milk: (milk_l: 5.0))").unwrap();
    let seen = stamp(&path);
    std::fs::write(&path, "(format: 4, milk: (milk_l: 5.0))").unwrap();
    assert_eq!(stamp(&path), seen, "written again with the same content");
    // As long as before, and perhaps within the same tick of the disk's clock.
    std::fs::write(&path, "(format: 4, milk: (milk_l: 6.0))").unwrap();
    assert_ne!(stamp(&path), seen);
}
