//! What was not saved when a program ended badly. A recovery that is dropped stands for a crash: its lock is freed and its copies stay.

use vatsketch::design::{Design, Value};
use vatsketch::file;
use vatsketch::session::{Command, LeftBehind, Recovery, Session, WAIT_S};

fn milk(litres: f64) -> Command {
    Command::SetInput { key: "milk_l", value: Value::Number(litres) }
}

fn changed(title: &str) -> Session {
    let mut session = Session::open(Design { title: title.into(), ..Design::default() }, None).unwrap();
    session.apply(milk(7.0)).unwrap();
    session
}

fn titles(left: &[LeftBehind]) -> Vec<String> {
    left.iter().map(LeftBehind::titles).collect()
}

#[test]
fn the_copy_is_written_when_it_is_due_and_offered_once_its_program_is_gone() {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().join("not yet there");
    let mut recovery = Recovery::in_folder(&place);
    assert!(recovery.left_behind().is_empty() && recovery.due_in_s(0.0).is_none());
    recovery.changed(10.0);
    assert_eq!(recovery.due_in_s(10.5), Some(WAIT_S - 0.5));
    let open = changed("Half done");
    recovery.write_if_due(open.open_designs(), 10.0 + 0.5 * WAIT_S).unwrap();
    assert!(!recovery.folder().exists());
    recovery.write_if_due(open.open_designs(), 10.0 + WAIT_S).unwrap();
    assert!(recovery.due_in_s(20.0).is_none() && recovery.folder().exists());
    let other = Recovery::in_folder(&place);
    assert!(other.left_behind().is_empty(), "its program still runs");
    drop(recovery);
    let left = other.left_behind();
    assert_eq!(titles(&left), ["“Half done”"]);
    let session = Session::recovered(&left[0]).unwrap();
    assert_eq!((session.design(), session.id()), (open.design(), open.id()));
    assert!(session.is_dirty() && session.path().is_none());
    left.into_iter().for_each(LeftBehind::remove);
    assert!(other.left_behind().is_empty());
}

#[test]
fn what_one_window_asks_about_no_other_window_offers() {
    let folder = tempfile::tempdir().unwrap();
    Recovery::in_folder(folder.path()).keep(changed("Half done").open_designs()).unwrap();
    let (one, other) = (Recovery::in_folder(folder.path()), Recovery::in_folder(folder.path()));
    let asked = one.left_behind();
    assert_eq!((asked.len(), other.left_behind().len()), (1, 0));
    drop(asked);
    assert_eq!(other.left_behind().len(), 1, "not settled, so it is offered at another start");
}

#[test]
fn several_are_listed_the_last_first_and_a_living_one_is_none_of_them() {
    let folder = tempfile::tempdir().unwrap();
    for (title, day) in [("Monday", 1), ("Wednesday", 3), ("Tuesday", 2)] {
        let mut recovery = Recovery::in_folder(folder.path());
        recovery.keep(changed(title).open_designs()).unwrap();
        let copy = std::fs::File::open(recovery.folder().join("first.vat.ron")).unwrap();
        copy.set_modified(std::time::SystemTime::UNIX_EPOCH + std::time::Duration::from_hours(24 * day)).unwrap();
    }
    let mut living = Recovery::in_folder(folder.path());
    living.keep(changed("Today").open_designs()).unwrap();
    let left = Recovery::in_folder(folder.path()).left_behind();
    assert_eq!(titles(&left), ["“Wednesday”", "“Tuesday”", "“Monday”"]);
    let at = left[0].written_at(&jiff::tz::TimeZone::UTC).unwrap();
    assert_eq!(at, jiff::civil::date(1970, 1, 4).at(0, 0, 0, 0));
}

/// Each design has a copy of its own; saving one removes that one's alone.
#[test]
fn both_designs_are_kept_each_with_the_file_it_belongs_to() {
    let folder = tempfile::tempdir().unwrap();
    let (one, other) = (folder.path().join("one.vat.ron"), folder.path().join("other.vat.ron"));
    for path in [&one, &other] {
        std::fs::write(path, file::to_text(&Design::default())).unwrap();
    }
    let mut recovery = Recovery::in_folder(folder.path());
    let mut session = Session::open_file(&one).unwrap();
    session.second_from_file(&other).unwrap();
    recovery.keep(session.open_designs()).unwrap();
    assert!(!recovery.folder().exists(), "nothing is unsaved");
    session.apply(milk(7.0)).unwrap();
    session.copy_to_second("milk_l").unwrap();
    recovery.keep(session.open_designs()).unwrap();
    session.save(&one).unwrap();
    recovery.keep(session.open_designs()).unwrap();
    drop(recovery);
    let left = Recovery::in_folder(folder.path()).left_behind();
    assert_eq!(titles(&left), ["an untitled design"], "the second one alone");
    let mut again = Session::recovered(&left[0]).unwrap();
    assert!(!again.is_dirty() && again.path() == Some(one.as_path()), "what was saved is opened from its file");
    let second = again.second().unwrap();
    assert!(second.is_dirty() && second.path() == Some(other.as_path()) && second.design().milk.milk_l == 7.0);
    assert_eq!(second.id(), session.second().unwrap().id());
    again.save_second(&other).unwrap();
    assert_eq!(file::read(&other).unwrap().milk.milk_l, 7.0);
}

#[test]
fn a_recovered_design_is_not_saved_unasked_over_what_somebody_else_wrote_since() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("one.vat.ron");
    std::fs::write(&path, file::to_text(&Design::default())).unwrap();
    let mut session = Session::open_file(&path).unwrap();
    session.apply(milk(7.0)).unwrap();
    Recovery::in_folder(folder.path()).keep(session.open_designs()).unwrap();
    std::fs::write(&path, "(format: 1, title: \"by another hand\")").unwrap();
    let mut again = Session::recovered(&Recovery::in_folder(folder.path()).left_behind()[0]).unwrap();
    assert_eq!(again.changed_on_disk().len(), 1);
    assert!(again.save(&path).is_err());
    assert_eq!(file::read(&path).unwrap().title, "by another hand");
}

#[test]
fn a_folder_that_holds_nothing_is_removed_and_a_damaged_copy_is_as_good_as_none() {
    let folder = tempfile::tempdir().unwrap();
    let mut recovery = Recovery::in_folder(folder.path());
    let session = changed("Half done");
    recovery.keep(session.open_designs()).unwrap();
    let (own, copy) = (recovery.folder().to_owned(), recovery.folder().join("first.vat.ron"));
    drop(recovery);
    std::fs::write(&copy, "(format: 1, mi").unwrap();
    assert!(Recovery::in_folder(folder.path()).left_behind().is_empty() && copy.exists(), "what cannot be read is not removed");
    std::fs::remove_file(&copy).unwrap();
    assert!(Recovery::in_folder(folder.path()).left_behind().is_empty() && !own.exists());
}

/// Earlier versions kept one copy of each design for all programs.
#[test]
fn what_an_earlier_version_left_is_offered_too() {
    let folder = tempfile::tempdir().unwrap();
    let old = folder.path().join("recovery.vat.ron");
    std::fs::write(&old, "(format: 1, mi").unwrap();
    assert!(Recovery::in_folder(folder.path()).left_behind().is_empty());
    std::fs::write(&old, file::to_text(changed("Half done").design())).unwrap();
    let left = Recovery::in_folder(folder.path()).left_behind();
    assert_eq!(titles(&left), ["“Half done”"]);
    assert_eq!(Session::recovered(&left[0]).unwrap().design().milk.milk_l, 7.0);
    left.into_iter().for_each(LeftBehind::remove);
    assert!(!old.exists());
}

/// What is unsaved may be private, as a title or a note is.
#[cfg(unix)]
#[test]
fn nobody_else_may_read_the_copies() {
    use std::os::unix::fs::PermissionsExt;
    let folder = tempfile::tempdir().unwrap();
    let mut recovery = Recovery::in_folder(folder.path());
    recovery.keep(changed("Half done").open_designs()).unwrap();
    assert_eq!(std::fs::metadata(recovery.folder()).unwrap().permissions().mode() & 0o777, 0o700);
}
