//! A second design beside the open one.

use vatsketch::analysis::Alike;
use vatsketch::analysis::Likeness;
use vatsketch::batch::batch;
use vatsketch::design::{Design, MilkKind, Value};
use vatsketch::file;
use vatsketch::session::{ChangedFile, Command, Session, Which};

fn session() -> Session {
    Session::open(Design::default(), None).unwrap()
}

fn number(key: &'static str, value: f64) -> Command {
    Command::SetInput { key, value: Value::Number(value) }
}

/// The first and the second amount of milk.
fn milks(session: &Session) -> (f64, Option<f64>) {
    (session.design().milk.milk_l, session.second().map(|second| second.design().milk.milk_l))
}

fn holds_together(session: &Session) {
    assert!(session.batch() == &batch(session.design()).unwrap());
    if let Some(second) = session.second() {
        assert!(second.batch() == &batch(second.design()).unwrap());
    }
}

#[test]
fn a_copy_of_the_first_differs_nowhere_until_one_is_changed() {
    let mut session = session();
    assert!(session.second().is_none() && session.differences().is_empty() && session.differing_choices().is_empty());
    session.second_from_first().unwrap();
    assert!(session.differing_choices().is_empty());
    assert!(session.differences().iter().all(|difference| difference.likeness == Likeness::Same));
    session.apply(number("milk_l", 9.0)).unwrap();
    assert_eq!(milks(&session), (9.0, Some(6.0)));
    assert_eq!(session.differing_choices().len(), 1);
    holds_together(&session);
    session.drop_second();
    assert!(session.second().is_none());
}

#[test]
fn a_swap_is_one_step_to_undo_and_to_do_again() {
    let mut session = session();
    session.second_from_first().unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    session.swap_second().unwrap();
    assert_eq!((milks(&session), session.history().undo_name()), ((6.0, Some(9.0)), Some("Swap A and B")));
    holds_together(&session);
    session.undo().unwrap();
    assert_eq!(milks(&session), (9.0, Some(6.0)));
    session.redo().unwrap();
    assert_eq!(milks(&session), (6.0, Some(9.0)));
    holds_together(&session);
    session.undo().unwrap();
    session.undo().unwrap();
    assert_eq!((milks(&session), session.is_dirty()), ((6.0, Some(6.0)), false));
    session.undo().unwrap();
    assert_eq!((milks(&session), session.history().undo_name()), ((6.0, None), None), "opening B is a step too");
    holds_together(&session);
}

#[test]
fn without_a_second_a_swap_and_a_copy_do_nothing() {
    let mut session = session();
    session.swap_second().unwrap();
    session.copy_from_second("milk_l").unwrap();
    session.copy_to_second("milk_l").unwrap();
    assert!(session.history().undo_name().is_none() && session.last_change.is_empty());
}

#[test]
fn one_choice_is_copied_over_each_time_as_one_step() {
    let mut session = session();
    session.second_from_milk(MilkKind::Sheep, Alike::Fat).unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    session.copy_to_second("milk_l").unwrap();
    assert_eq!((milks(&session), session.history().undo_name()), ((9.0, Some(9.0)), Some("B: Milk 6 → 9 L")));
    session.copy_from_second("milk_kind").unwrap();
    assert_eq!(session.design().milk.milk_kind, MilkKind::Sheep);
    assert_eq!(session.history().undo_name(), Some("Kind of milk Cow → Sheep"));
    assert!(session.differing_choices().is_empty());
    holds_together(&session);
    session.undo().unwrap();
    assert_eq!(session.design().milk.milk_kind, MilkKind::Cow);
    assert!(session.copy_from_second("mlik").is_err() && session.copy_to_second("mlik").is_err());
}

/// A swapped design goes back to its own file, never over the other's.
#[test]
fn each_design_keeps_its_own_file_through_a_swap() {
    let folder = tempfile::tempdir().unwrap();
    let (one, other) = (folder.path().join("one.vat.ron"), folder.path().join("other.vat.ron"));
    let mut sheep = Design::default();
    sheep.milk.milk_kind = MilkKind::Sheep;
    std::fs::write(&one, file::to_text(&Design::default())).unwrap();
    std::fs::write(&other, file::to_text(&sheep)).unwrap();
    let mut session = Session::open_file(&one).unwrap();
    session.second_from_file(&other).unwrap();
    assert!(!session.second().unwrap().is_dirty());
    session.swap_second().unwrap();
    assert_eq!((session.path(), session.second().unwrap().path()), (Some(other.as_path()), Some(one.as_path())));
    assert!(!session.is_dirty());
    session.apply(number("milk_l", 7.4)).unwrap();
    session.save(&other).unwrap();
    assert_eq!(file::read(&other).unwrap().milk.milk_l, 7.4);
    assert_eq!(file::read(&one).unwrap(), Design::default());
    assert!(session.second_from_file(&folder.path().join("missing.vat.ron")).is_err());
    assert!(session.second().is_some(), "a file that cannot be read leaves the second design alone");
}

/// The second was closed after the swap: undo brings it back first, and each design keeps its own file.
#[test]
fn undoing_a_swap_whose_second_was_closed_keeps_the_files_apart() {
    let folder = tempfile::tempdir().unwrap();
    let one = folder.path().join("one.vat.ron");
    std::fs::write(&one, file::to_text(&Design::default())).unwrap();
    let mut session = Session::open_file(&one).unwrap();
    session.second_from_milk(MilkKind::Goat, Alike::Fat).unwrap();
    session.swap_second().unwrap();
    session.copy_to_second("milk_kind").unwrap();
    session.drop_second();
    for _ in 0..3 {
        session.undo().unwrap();
    }
    assert_eq!((session.design(), session.path(), session.is_dirty()), (&Design::default(), Some(one.as_path()), false));
    let second = session.second().unwrap();
    assert_eq!((second.design().milk.milk_kind, second.path()), (MilkKind::Goat, None));
    holds_together(&session);
}

#[test]
fn a_swap_ends_a_running_drag_as_its_own_step() {
    let mut session = session();
    session.second_from_first().unwrap();
    session.begin_drag();
    session.apply(number("milk_l", 7.0)).unwrap();
    session.swap_second().unwrap();
    assert_eq!(milks(&session), (6.0, Some(7.0)));
    session.undo().unwrap();
    assert_eq!((milks(&session), session.history().undo_name()), ((7.0, Some(6.0)), Some("Milk 6 → 7 L")));
}

#[test]
fn the_second_is_saved_to_its_own_file_and_the_first_keeps_its_own() {
    let folder = tempfile::tempdir().unwrap();
    let (one, other) = (folder.path().join("one.vat.ron"), folder.path().join("other.vat.ron"));
    std::fs::write(&one, file::to_text(&Design::default())).unwrap();
    let mut session = Session::open_file(&one).unwrap();
    session.save_second(&other).unwrap();
    assert!(!other.exists(), "without a second there is nothing to save");
    session.second_from_milk(MilkKind::Sheep, Alike::Fat).unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    session.save_second(&other).unwrap();
    let second = session.second().unwrap();
    assert!(!second.is_dirty() && second.path() == Some(other.as_path()));
    assert_eq!(file::read(&other).unwrap(), *second.design());
    assert!(session.is_dirty() && session.path() == Some(one.as_path()));
    assert_eq!(file::read(&one).unwrap(), Design::default());
}

#[test]
fn a_second_that_somebody_else_wrote_over_is_saved_only_when_asked() {
    let folder = tempfile::tempdir().unwrap();
    let other = folder.path().join("other.vat.ron");
    let mut session = session();
    session.second_from_milk(MilkKind::Sheep, Alike::Fat).unwrap();
    session.save_second(&other).unwrap();
    std::fs::write(&other, file::to_text(&Design::default())).unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    session.copy_to_second("milk_l").unwrap();
    let told = session.save_second(&other).unwrap_err();
    assert!(matches!(told, vatsketch::session::SessionError::ChangedOnDisk { .. }), "{told}");
    assert!(session.second().unwrap().is_dirty());
    assert_eq!(session.changed_on_disk(), [ChangedFile { which: Which::Second, gone: false }]);
    session.overwrite(Which::Second).unwrap();
    assert_eq!(file::read(&other).unwrap().milk.milk_l, 9.0);
}

#[test]
fn a_save_that_fails_leaves_the_second_unsaved() {
    let folder = tempfile::tempdir().unwrap();
    let mut session = session();
    session.second_from_first().unwrap();
    assert!(session.save_second(&folder.path().join("missing").join("b.vat.ron")).is_err());
    let second = session.second().unwrap();
    assert!(second.is_dirty() && second.path().is_none());
}

/// The ghost of the first design would lie on the second one's curve.
#[test]
fn a_swap_leaves_no_ghost_and_says_what_it_moved() {
    let mut session = session();
    session.second_from_first().unwrap();
    session.apply(number("milk_l", 9.0)).unwrap();
    assert!(session.before().is_some());
    session.swap_second().unwrap();
    assert!(session.before().is_none() && session.last_change.starts_with("Swap A and B: "), "{}", session.last_change);
    session.undo().unwrap();
    assert!(session.before().is_none() && session.last_change.starts_with("Undo: Swap A and B: "), "{}", session.last_change);
}

#[test]
fn what_was_done_to_the_second_is_said() {
    let mut session = session();
    session.second_from_milk(MilkKind::Sheep, Alike::Fat).unwrap();
    assert_eq!(
        session.last_change,
        "B is the same vat from sheep's milk. What stays the same: fat in the milk, cream or skimmed milk is added."
    );
    session.copy_to_second("milk_kind").unwrap();
    assert_eq!(session.last_change, "B: Kind of milk Sheep → Cow");
    session.drop_second();
    assert_eq!(session.last_change, "B is closed.");
}
