//! Saving, the dirty mark, the file that somebody else wrote, and recent files.

use std::path::PathBuf;
use vatsketch::design::{Design, Value};
use vatsketch::file::read;
use vatsketch::session::{ChangedFile, Command, Recent, Saved, Session, SessionError, Which};

fn milk(litres: f64) -> Command {
    Command::SetInput { key: "milk_l", value: Value::Number(litres) }
}

#[test]
fn dirty_means_that_the_design_differs_from_the_saved_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    assert!(!session.is_dirty());
    session.apply(milk(7.0)).unwrap();
    assert!(session.is_dirty());
    session.save(&path).unwrap();
    assert!(!session.is_dirty() && session.path() == Some(path.as_path()));
    session.undo().unwrap();
    assert!(session.is_dirty());
    session.redo().unwrap();
    assert!(!session.is_dirty());
    assert_eq!(&Session::open_file(&path).unwrap().design().clone(), session.design());
}

#[test]
fn a_file_that_somebody_else_changed_is_written_over_only_when_asked_and_nothing_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.save(&path).unwrap();
    std::fs::write(&path, "(format: 1, title: \"by another hand\")").unwrap();
    session.apply(milk(7.0)).unwrap();
    let refused = session.save(&path).unwrap_err();
    assert!(matches!(refused, SessionError::ChangedOnDisk { .. }), "{refused}");
    assert_eq!(read(&path).unwrap().title, "by another hand");
    assert!(session.is_dirty() && session.save(&path).is_err(), "it is asked each time");
    session.overwrite(Which::First).unwrap();
    assert_eq!(read(&path).unwrap().milk.milk_l, 7.0);
    let kept = folder.path().join("trial.vat.ron.bak");
    assert_eq!(read(&kept).unwrap().title, "by another hand");
}

#[test]
fn what_has_not_changed_is_not_written_again() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.save(&path).unwrap();
    session.apply(milk(7.0)).unwrap();
    session.save(&path).unwrap();
    let written = std::fs::metadata(&path).unwrap().modified().unwrap();
    assert_eq!(session.save(&path).unwrap(), Saved::Unchanged);
    assert_eq!(std::fs::metadata(&path).unwrap().modified().unwrap(), written);
    let last = folder.path().join("trial.vat.ron.bak");
    assert_eq!(read(&last).unwrap().milk.milk_l, 6.0, "the last version is not turned over");
}

#[test]
fn what_somebody_else_wrote_can_be_taken_and_the_own_version_comes_back_with_undo() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.save(&path).unwrap();
    session.apply(milk(7.0)).unwrap();
    assert!(session.changed_on_disk().is_empty());
    std::fs::write(&path, "(format: 1, title: \"by another hand\")").unwrap();
    assert_eq!(session.changed_on_disk(), [ChangedFile { which: Which::First, gone: false }]);
    session.reload(Which::First).unwrap();
    assert_eq!((session.design().title.as_str(), session.is_dirty()), ("by another hand", false));
    assert!(session.changed_on_disk().is_empty());
    assert_eq!(session.history().undo_name(), Some("Reload trial.vat.ron"));
    session.undo().unwrap();
    assert_eq!((session.design().milk.milk_l, session.is_dirty()), (7.0, true));
    std::fs::remove_file(&path).unwrap();
    assert_eq!(session.changed_on_disk(), [ChangedFile { which: Which::First, gone: true }]);
    assert!(session.reload(Which::First).is_err() && session.design().milk.milk_l == 7.0);
    session.overwrite(Which::First).unwrap();
    assert_eq!(read(&path).unwrap().milk.milk_l, 7.0);
}

#[test]
fn a_save_that_fails_leaves_the_design_dirty_and_the_old_path() {
    let folder = tempfile::tempdir().unwrap();
    let mut session = Session::open(Design::default(), None).unwrap();
    session.apply(milk(7.0)).unwrap();
    let refused = session.save(&folder.path().join("missing").join("a.vat.ron")).unwrap_err();
    assert!(matches!(refused, SessionError::File(_)), "{refused}");
    assert!(session.is_dirty() && session.path().is_none());
}

#[test]
fn a_drag_that_still_runs_is_saved_as_it_stands() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.begin_drag();
    session.apply(milk(9.0)).unwrap();
    session.save(&path).unwrap();
    assert_eq!(read(&path).unwrap().milk.milk_l, 9.0);
    assert_eq!(session.history().undo_name(), Some("Milk 6 → 9 L"));
}

#[test]
fn recent_files_are_kept_the_last_first_each_once_from_the_root_and_eight_at_most() {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().join("state");
    let mut recent = Recent::in_folder(&place);
    assert!(recent.files.is_empty());
    for number in (0..10).chain([5]) {
        recent.note(&PathBuf::from(format!("/home/maker/{number}.vat.ron")));
    }
    let again = Recent::in_folder(&place);
    let names: Vec<String> = again.files.iter().map(|path| path.file_stem().unwrap().to_string_lossy()[..1].to_owned()).collect();
    assert_eq!(names, ["5", "9", "8", "7", "6", "4", "3", "2"]);
    recent.note(std::path::Path::new("here.vat.ron"));
    assert_eq!(recent.files[0], std::env::current_dir().unwrap().join("here.vat.ron"));
    std::fs::write(place.join("recent.ron"), "no list").unwrap();
    assert!(Recent::in_folder(&place).files.is_empty());
}
