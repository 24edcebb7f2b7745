//! The id of a design: who draws one, who keeps it, and that nothing else looks at it.

use std::collections::BTreeSet;
use std::path::Path;
use vatsketch::analysis::Alike;
use vatsketch::design::{Design, DesignId, MilkKind, Value};
use vatsketch::file::DesignFile;
use vatsketch::session::{Command, Recovery, Saved, Session};

fn new() -> Session {
    Session::open(Design::default(), None).unwrap()
}

fn milk(litres: f64) -> Command {
    Command::SetInput { key: "milk_l", value: Value::Number(litres) }
}

fn id_in(path: &Path) -> Option<DesignId> {
    DesignFile::read(path).unwrap().id
}

#[test]
fn a_new_design_draws_an_id_and_its_own_file_keeps_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    let mut session = new();
    let id = session.id();
    assert!(id.is_some() && id != new().id(), "each has its own");
    assert_eq!(session.save(&path).unwrap(), Saved::Named);
    session.apply(milk(7.0)).unwrap();
    session.save(&path).unwrap();
    assert_eq!((session.id(), id_in(&path)), (id, id));
    let mut again = Session::open_file(&path).unwrap();
    again.save(&path).unwrap();
    assert_eq!((again.id(), id_in(&path)), (id, id), "opened and saved again");
}

#[test]
fn under_another_name_it_is_another_design() {
    let folder = tempfile::tempdir().unwrap();
    let (one, other) = (folder.path().join("one.vat.ron"), folder.path().join("other.vat.ron"));
    let mut session = new();
    session.save(&one).unwrap();
    let id = session.id();
    assert_eq!(session.save(&other).unwrap(), Saved::Named);
    assert_eq!(id_in(&one), id);
    assert!(id_in(&other).is_some() && id_in(&other) != id && id_in(&other) == session.id());
}

#[test]
fn a_file_without_an_id_gets_one_when_it_is_saved_and_that_is_said_once() {
    let folder = tempfile::tempdir().unwrap();
    for format in 1..=4 {
        let path = folder.path().join(format!("{format}.vat.ron"));
        std::fs::write(&path, format!("(format: {format}, title: \"Old\")")).unwrap();
        let mut session = Session::open_file(&path).unwrap();
        assert_eq!(session.id(), None, "none is drawn before it is saved");
        let saved = session.save(&path).unwrap();
        assert_eq!(saved, Saved::NamedFirst);
        assert!(saved.notice().unwrap().contains("may show them twice"));
        assert!(session.id().is_some() && id_in(&path) == session.id());
        assert_eq!(session.save(&path).unwrap().notice(), None);
    }
}

#[test]
fn a_save_that_fails_draws_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    std::fs::write(&path, "(format: 3)").unwrap();
    let mut session = Session::open_file(&path).unwrap();
    assert!(session.save(&folder.path().join("missing").join("a.vat.ron")).is_err());
    assert_eq!(session.id(), None);
}

#[test]
fn a_second_design_has_its_own_id_and_takes_it_along_when_the_two_are_swapped() {
    let mut session = new();
    let first = session.id();
    let mut seen = BTreeSet::from([first]);
    session.second_from_first().unwrap();
    assert!(seen.insert(session.second().unwrap().id()), "a copy");
    session.second_from_milk(MilkKind::Goat, Alike::Fat).unwrap();
    let second = session.second().unwrap().id();
    assert!(second.is_some() && seen.insert(second), "another milk");
    session.swap_second().unwrap();
    assert_eq!((session.id(), session.second().unwrap().id()), (second, first));
    session.undo().unwrap();
    assert_eq!((session.id(), session.second().unwrap().id()), (first, second));
}

#[test]
fn undo_the_dirty_mark_and_the_comparison_do_not_look_at_the_id() {
    let folder = tempfile::tempdir().unwrap();
    let (one, other) = (folder.path().join("one.vat.ron"), folder.path().join("other.vat.ron"));
    std::fs::write(&one, "(format: 3)").unwrap();
    let mut session = Session::open_file(&one).unwrap();
    session.apply(milk(7.0)).unwrap();
    session.save(&other).unwrap();
    assert!(!session.is_dirty());
    let id = session.id();
    session.undo().unwrap();
    assert!(session.is_dirty() && session.id() == id);
    session.redo().unwrap();
    assert!(!session.is_dirty() && session.id() == id);
    session.second_from_first().unwrap();
    assert!(session.differing_choices().is_empty() && session.design() == session.second().unwrap().design());
}

#[test]
fn a_recovered_design_keeps_its_id_and_its_file_gets_it_back() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.vat.ron");
    let mut session = new();
    session.save(&path).unwrap();
    session.apply(milk(7.0)).unwrap();
    let mut recovery = Recovery::in_folder(folder.path());
    recovery.keep(session.open_designs()).unwrap();
    drop(recovery);
    let left = Recovery::in_folder(folder.path()).left_behind();
    let mut recovered = Session::recovered(&left[0]).unwrap();
    assert_eq!(recovered.id(), session.id());
    assert_eq!(recovered.save(&path).unwrap(), Saved::Named);
    assert_eq!(id_in(&path), session.id());
}
