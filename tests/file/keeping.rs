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
fn what_a_crash_left_behind_is_cleared_away() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(folder.path().join("a.vat.ron.part"), "half of someth").unwrap();
    write_safely(&path, b"new", true).unwrap();
    assert_eq!(std::fs::read(&path).unwrap(), b"new");
    assert_eq!(count(folder.path()), 1);
}

#[test]
fn what_another_program_is_writing_just_now_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let (path, theirs) = (folder.path().join("a.vat.ron"), folder.path().join("a.vat.ron.part"));
    std::fs::write(&theirs, "half of someth").unwrap();
    let held = std::fs::File::open(&theirs).unwrap();
    held.lock().unwrap();
    write_safely(&path, b"new", true).unwrap();
    assert_eq!((std::fs::read(&path).unwrap(), std::fs::read(&theirs).unwrap()), (b"new".to_vec(), b"half of someth".to_vec()));
    assert_eq!(count(folder.path()), 2);
}

/// Eight programs, here threads, save the same file again and again: each time it is one of their versions, whole.
#[test]
fn many_who_write_one_file_never_mix_their_versions() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::thread::scope(|scope| {
        for writer in 0..8_u8 {
            let path = &path;
            scope.spawn(move || {
                for round in 0..40_u8 {
                    write_safely(path, &vec![b'a' + writer; 10_000 + usize::from(round)], true).unwrap();
                    let there = std::fs::read(path).unwrap();
                    assert!(there.len() >= 10_000 && there.iter().all(|byte| *byte == there[0]));
                }
            });
        }
    });
    assert_eq!(count(folder.path()), 2, "the file and its last version");
}

#[test]
fn a_file_that_holds_the_content_already_is_left_alone_and_so_is_its_last_version() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    write_safely(&path, b"one", true).unwrap();
    write_safely(&path, b"two", true).unwrap();
    let written = std::fs::metadata(&path).unwrap().modified().unwrap();
    write_safely(&path, b"two", true).unwrap();
    assert_eq!(std::fs::metadata(&path).unwrap().modified().unwrap(), written);
    assert_eq!(std::fs::read(folder.path().join("a.vat.ron.bak")).unwrap(), b"one");
}

#[cfg(unix)]
#[test]
fn a_link_to_nothing_yet_makes_the_file_that_it_names() {
    let folder = tempfile::tempdir().unwrap();
    let (real, link, circle) =
        (folder.path().join("real.vat.ron"), folder.path().join("link.vat.ron"), folder.path().join("o.vat.ron"));
    std::os::unix::fs::symlink("real.vat.ron", &link).unwrap();
    write_safely(&link, b"new", true).unwrap();
    assert!(std::fs::symlink_metadata(&link).unwrap().is_symlink());
    assert_eq!(std::fs::read(&real).unwrap(), b"new");
    std::os::unix::fs::symlink("o.vat.ron", &circle).unwrap();
    assert!(write_safely(&circle, b"new", true).unwrap_err().to_string().contains("leads back to itself"));
}

/// The last version is no more open to others than the file was.
#[cfg(unix)]
#[test]
fn the_last_version_has_the_permissions_owner_and_attributes_of_the_file() {
    use std::os::unix::fs::{MetadataExt, PermissionsExt};
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(&path, "old").unwrap();
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o640)).unwrap();
    // Only who may give files away can try this; for everybody else the owner is the same before and after.
    let _ = std::os::unix::fs::chown(&path, Some(12_345), Some(23_456));
    // Not every disk keeps attributes; then there are none before and after.
    let _ = xattr::set(&path, "user.from", b"a friend");
    let known = |path: &Path| {
        let known = std::fs::metadata(path).unwrap();
        (known.mode() & 0o777, known.uid(), known.gid(), xattr::get(path, "user.from").unwrap_or_default())
    };
    let before = known(&path);
    write_safely(&path, b"new", true).unwrap();
    assert_eq!((known(&path), known(&folder.path().join("a.vat.ron.bak"))), (before.clone(), before));
}

/// A pipe takes the bytes and stays a pipe.
#[cfg(unix)]
#[test]
fn a_pipe_is_written_into_and_never_replaced() {
    use std::io::Read;
    use std::os::unix::fs::FileTypeExt;
    let folder = tempfile::tempdir().unwrap();
    let pipe = folder.path().join("pipe.ics");
    assert!(std::process::Command::new("mkfifo").arg(&pipe).status().unwrap().success());
    assert!(write_safely(&pipe, b"new", true).unwrap_err().to_string().contains("not an ordinary file"));
    let reader = std::thread::spawn({
        let pipe = pipe.clone();
        move || {
            let mut text = String::new();
            std::fs::File::open(pipe).unwrap().read_to_string(&mut text).unwrap();
            text
        }
    });
    write_safely(&pipe, b"a week", false).unwrap();
    assert_eq!(reader.join().unwrap(), "a week");
    assert!(std::fs::symlink_metadata(&pipe).unwrap().file_type().is_fifo());
    assert_eq!(count(folder.path()), 1);
}

#[cfg(unix)]
#[test]
fn a_link_in_the_place_of_the_temporary_file_is_not_written_through() {
    let folder = tempfile::tempdir().unwrap();
    let (path, other) = (folder.path().join("a.vat.ron"), folder.path().join("other"));
    std::fs::write(&other, "of somebody else").unwrap();
    std::os::unix::fs::symlink(&other, folder.path().join("a.vat.ron.part")).unwrap();
    let refused = write_safely(&path, b"new", true).unwrap_err().to_string();
    assert!(refused.contains("a.vat.ron.part is in the way; rename it"), "{refused}");
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
    std::fs::write(&path, "(format: 7, milk: (milk_l: 5.0))").unwrap();
    let seen = stamp(&path);
    std::fs::write(&path, "(format: 7, milk: (milk_l: 5.0))").unwrap();
    assert_eq!(stamp(&path), seen, "written again with the same content");
    // As long as before, and perhaps within the same tick of the disk's clock.
    std::fs::write(&path, "(format: 7, milk: (milk_l: 6.0))").unwrap();
    assert_ne!(stamp(&path), seen);
}
