//! Saving, the dirty mark, the file that somebody else wrote, recovery and recent files.

use std::path::PathBuf;
use vatsketch::design::{Design, Value};
use vatsketch::file::read;
use vatsketch::session::{Command, Recent, Recovery, Session, SessionError, WAIT_S};

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
fn a_file_that_somebody_else_changed_is_told_once_and_nothing_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.vat.ron");
    let mut session = Session::open(Design::default(), None).unwrap();
    session.save(&path).unwrap();
    std::fs::write(&path, "(format: 1, title: \"by another hand\")").unwrap();
    session.apply(milk(7.0)).unwrap();
    let refused = session.save(&path).unwrap_err();
    assert!(matches!(refused, SessionError::ChangedOnDisk { .. }), "{refused}");
    assert_eq!(read(&path).unwrap().title, "by another hand");
    assert!(session.is_dirty());
    session.save(&path).unwrap();
    assert_eq!(read(&path).unwrap().milk.milk_l, 7.0);
    let kept = folder.path().join("trial.vat.ron.bak");
    assert_eq!(read(&kept).unwrap().title, "by another hand");
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
fn the_recovery_copy_is_written_when_it_is_due_and_removed_when_it_is_not_needed() {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().join("not yet there");
    let mut recovery = Recovery::in_folder(&place);
    assert_eq!((recovery.left_behind(), recovery.due_in_s(0.0)), (None, None));
    let design = Design { title: "Half done".into(), ..Design::default() };
    recovery.changed(10.0);
    assert_eq!(recovery.due_in_s(10.5), Some(WAIT_S - 0.5));
    let mut open = Session::open(design.clone(), None).unwrap();
    open.apply(milk(7.0)).unwrap();
    let changed = open.design().clone();
    recovery.write_if_due(open.unsaved().0, None, 10.0 + 0.5 * WAIT_S).unwrap();
    assert_eq!(recovery.left_behind(), None);
    recovery.write_if_due(open.unsaved().0, None, 10.0 + WAIT_S).unwrap();
    assert_eq!(recovery.due_in_s(20.0), None);
    let left = Recovery::in_folder(&place).left_behind().unwrap();
    assert_eq!(left.second, None);
    let found = left.first.unwrap();
    assert_eq!((&found.design, found.id), (&changed, open.id()), "the design and its id");
    let session = Session::recovered(found).unwrap();
    assert!(session.is_dirty() && session.path().is_none() && session.id() == open.id());
    recovery.clear();
    assert_eq!(recovery.left_behind(), None);
}

/// Each design has a copy of its own; saving one removes that one's alone.
#[test]
fn both_designs_are_kept_and_each_copy_goes_when_its_design_is_saved() {
    let folder = tempfile::tempdir().unwrap();
    let mut recovery = Recovery::in_folder(folder.path());
    let mut session = Session::open(Design::default(), None).unwrap();
    assert!(matches!(session.unsaved(), (None, None)));
    session.apply(milk(7.0)).unwrap();
    session.second_from_first().unwrap();
    let (first, second) = session.unsaved();
    recovery.keep(first, second).unwrap();
    let left = recovery.left_behind().unwrap();
    let designs = [left.first.as_ref(), left.second.as_ref()].map(|file| &file.unwrap().design);
    assert_eq!(designs, [session.design(), session.design()]);
    assert_eq!(left.titles(), "an untitled design and an untitled design");
    session.save(&folder.path().join("a.vat.ron")).unwrap();
    let (first, second) = session.unsaved();
    recovery.keep(first, second).unwrap();
    let left = recovery.left_behind().unwrap();
    assert!(left.first.is_none() && left.second.is_some());
    let mut again = Session::open(Design::default(), None).unwrap();
    again.second_recovered(left.second.unwrap()).unwrap();
    assert!(again.second().unwrap().is_dirty() && again.second().unwrap().design().milk.milk_l == 7.0);
    recovery.clear();
    assert_eq!(recovery.left_behind(), None);
}

#[test]
fn a_damaged_recovery_copy_is_as_good_as_none() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("recovery.vat.ron"), "(format: 1, mi").unwrap();
    assert_eq!(Recovery::in_folder(folder.path()).left_behind(), None);
}

#[test]
fn recent_files_are_kept_the_last_first_each_once_and_eight_at_most() {
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
    std::fs::write(place.join("recent.ron"), "no list").unwrap();
    assert!(Recent::in_folder(&place).files.is_empty());
}
