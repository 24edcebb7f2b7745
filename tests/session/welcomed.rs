//! Whether the maker was welcomed is kept.

use vatsketch::session::{Kept, Welcomed};

#[test]
fn it_is_kept_and_a_file_that_cannot_be_read_counts_as_none() {
    let folder = tempfile::tempdir().unwrap();
    assert!(!Kept::<Welcomed>::in_folder(folder.path()).now().once);
    Kept::<Welcomed>::in_folder(folder.path()).keep(Welcomed { once: true });
    assert!(Kept::<Welcomed>::in_folder(folder.path()).now().once);
    std::fs::write(folder.path().join("welcomed.ron"), "(once").unwrap();
    assert!(!Kept::<Welcomed>::in_folder(folder.path()).now().once);
}
